/** The picture that a link is shown with says the whole sentence of its answer, beside the swatch and not over it. */
import sharp from 'sharp';
import { expect, test } from 'vitest';
import { sharePng, shareSvg } from '../../../src/components/share/picture';

const SENTENCE =
  'Sound. Put thin wheat starch paste on the back of the paper; you have about 50 s to 5 min to move it.';
const WORDS = { title: 'Lokta, light, on board', label: 'Which adhesive?' };
const red = () =>
  sharp({ create: { width: 264, height: 264, channels: 3, background: '#c01010' } })
    .png()
    .toBuffer();

/** Letters that are drawn, each as an outline; a space has none. */
const letters = (svg: string) => [...svg.matchAll(/<path transform="[^"]*" d="[^"]+"/g)].length;

test('every letter of the sentence is drawn', () => {
  const drawn = letters(shareSvg({ ...WORDS, sentence: SENTENCE })) - letters(shareSvg(WORDS));
  expect(drawn).toBe(SENTENCE.replaceAll(' ', '').length);
});

test('a sentence that has no room is told, and not cut short', () => {
  const long = Array.from({ length: 6 }, () => SENTENCE).join(' ');
  expect(() => shareSvg({ ...WORDS, sentence: long })).toThrow('no room for all of');
});

/** How many pixels of a part of the picture are as dark as ink or as red as the swatch. */
async function count(picture: Buffer, left: number, top: number, width: number, height: number) {
  const data = await sharp(picture).extract({ left, top, width, height }).removeAlpha().raw().toBuffer();
  let [ink, swatch] = [0, 0];
  for (let at = 0; at < data.length; at += 3) {
    const [r, g, b] = [data[at]!, data[at + 1]!, data[at + 2]!];
    if (r < 120 && g < 120 && b < 120) ink += 1;
    if (r > 150 && g < 60 && b < 60) swatch += 1;
  }
  return { ink, swatch };
}

test('the swatch stands whole at the right, and no word runs into it', async () => {
  const picture = await sharePng({ ...WORDS, sentence: SENTENCE, swatch: await red() });
  const [all, right, left] = await Promise.all([
    count(picture, 0, 0, 1200, 630),
    count(picture, 846, 144, 354, 280),
    count(picture, 0, 144, 846, 390),
  ]);
  expect(all.swatch).toBeGreaterThan(260 ** 2);
  expect(right.swatch).toBe(all.swatch);
  expect(right.ink).toBeLessThan(200);
  expect(left.swatch).toBe(0);
  // the title and two or three lines of a sentence
  expect(left.ink).toBeGreaterThan(4000);
});
