/** The picture that a link to an answer is shown with holds the swatch of the paper that the answer is about. */
import { readFileSync } from 'node:fs';
import path from 'node:path';
import sharp from 'sharp';
import { expect, test } from 'vitest';
import { DIST, PAGES, tagsOf } from './support/dist';

const ANSWERS = PAGES.filter(({ file }) => /^answers\/[^/]+\/index\.html$/.test(file));

type Rgb = readonly [red: number, green: number, blue: number];
const far = (a: Rgb, b: Rgb) => Math.hypot(a[0] - b[0], a[1] - b[1], a[2] - b[2]);

/** The mean colour of each of nine equal fields of a square of a picture. */
async function fields(picture: sharp.Sharp, left: number, top: number, side: number): Promise<Rgb[]> {
  const third = Math.floor(side / 3);
  const square = await picture
    .extract({ left, top, width: third * 3, height: third * 3 })
    .removeAlpha()
    .raw()
    .toBuffer();
  return Array.from({ length: 9 }, (_, field): Rgb => {
    const sum: [number, number, number] = [0, 0, 0];
    for (let y = 0; y < third; y += 1)
      for (let x = 0; x < third; x += 1) {
        const at = 3 * ((Math.floor(field / 3) * third + y) * third * 3 + (field % 3) * third + x);
        for (const i of [0, 1, 2] as const) sum[i] += square[at + i]!;
      }
    return [sum[0] / third ** 2, sum[1] / third ** 2, sum[2] / third ** 2];
  });
}

/** The flat view of a paper's swatch as its file shows it: the first of three squares side by side. */
const swatches = new Map<string, Promise<Rgb[]>>();
const swatchOf = (paper: string): Promise<Rgb[]> => {
  const known =
    swatches.get(paper) ??
    (async () => {
      const file = sharp(path.join(DIST, 'swatches', `${paper}.svg`), { density: 144 });
      const { height = 0 } = await file.metadata();
      const inset = Math.round((height * 8) / 264);
      return fields(file.flatten({ background: '#fff' }), inset, inset, height - 2 * inset);
    })();
  swatches.set(paper, known);
  return known;
};

/** Inside the frame of the swatch, of 264 × 264, which stands at the right of a picture of 1200 × 630. */
const INNER = { left: 860, top: 158, side: 246 };

test('each answer has one, and the swatch in it is that of the paper on its page', async () => {
  expect(ANSWERS.length).toBeGreaterThan(150);
  for (const page of ANSWERS) {
    const tags = tagsOf(page);
    const address = tags
      .find(({ attributes }) => attributes.get('property') === 'og:image')!
      .attributes.get('content')!;
    const file = path.join(DIST, 'share', new URL(address).pathname.split('/').at(-1)!);
    const picture = sharp(readFileSync(file));
    const { width, height } = await picture.metadata();
    expect([width, height], page.file).toEqual([1200, 630]);
    // the first picture after the list of the swatch's views has begun
    const list = tags.findIndex(
      ({ name, attributes }) => name === 'ul' && /\bswatch\b/.test(attributes.get('class') ?? ''),
    );
    const shown = tags
      .slice(list)
      .find(({ name }) => name === 'img')!
      .attributes.get('src')!;
    const paper = /\/([\w-]+)\.svg#/.exec(shown)![1]!;
    const [seen, meant] = await Promise.all([fields(picture, INNER.left, INNER.top, INNER.side), swatchOf(paper)]);
    // few colours are kept in a picture, and its frame is left out here: alike, and not the same
    const apart = seen.map((colour, i) => far(colour, meant[i]!));
    expect(apart.reduce((sum, one) => sum + one, 0) / 9, `${page.file}: ${paper}`).toBeLessThan(6);
  }
});
