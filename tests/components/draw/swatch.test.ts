/** Swatches: small, the same each time, and true to the record they are drawn from. */
import { expect, test } from 'vitest';
import sharp from 'sharp';
import { swatchSvg, SWATCH, type Looks } from '../../../src/components/draw/swatch';
import { admit } from '../../../src/schemas/door';
import { contentFiles, lessonParts } from '../../../src/schemas/read-content';

const PAPERS = [...admit(contentFiles(), lessonParts()).content.papers];
const looksOf = (id: string): Looks => PAPERS.find(([one]) => one === id)![1].looks;
/** What one may weigh before it is squeezed, bytes. */
const LIMIT = 12_000;

test('every paper has one, of 12 kB at most, without a number that is none', () => {
  expect(PAPERS.length).toBeGreaterThan(40);
  for (const [id, { looks }] of PAPERS) {
    const svg = swatchSvg(id, looks);
    expect(Buffer.byteLength(svg), id).toBeLessThanOrEqual(LIMIT);
    expect(svg, id).not.toMatch(/NaN|Infinity|undefined|null|style=|<script/);
    for (const view of ['flat', 'light', 'torn']) expect(svg).toContain(`<view id="${view}"`);
  }
});

test('the same record gives the same swatch, another name another one', () => {
  expect(swatchSvg('unryu', looksOf('unryu'))).toBe(swatchSvg('unryu', looksOf('unryu')));
  expect(swatchSvg('other', looksOf('unryu'))).not.toBe(swatchSvg('unryu', looksOf('unryu')));
});

/** Mean light of one view, 0 to 255. */
async function lightOf(svg: string, view: number): Promise<number> {
  const scale = 2;
  const { data } = await sharp(Buffer.from(svg), { density: 72 * scale })
    .extract({ left: Math.round(view * 122 * scale) + 4, top: 4, width: 220, height: 220 })
    .greyscale()
    .raw()
    .toBuffer({ resolveWithObject: true });
  return data.reduce((sum, value) => sum + value, 0) / data.length;
}

test('more light comes through a tissue than through a board, as their records say', async () => {
  const [tissue, laid, board] = await Promise.all(
    ['kozo-tissue', 'laid-text', 'grey-board-as-sheet'].map((id) => lightOf(swatchSvg(id, looksOf(id)), 1)),
  );
  expect(tissue!).toBeGreaterThan(laid! + 10);
  expect(laid!).toBeGreaterThan(board! + 10);
});

test('what a record does not name is not drawn', () => {
  const plain = looksOf('wove-text');
  expect(swatchSvg('x', plain)).not.toContain('id="l"');
  const laid = { ...plain, laidLines: looksOf('laid-text').laidLines, chainLines: looksOf('laid-text').chainLines };
  expect(swatchSvg('x', laid)).toContain('id="l"');
  expect(swatchSvg('x', laid)).toContain('id="c"');
  expect(swatchSvg('x', { ...plain, print: 'marbled' }).length).toBeGreaterThan(swatchSvg('x', plain).length + 1000);
  expect(SWATCH.wide).toBe(360);
});

test('papers that are taken for one another do not say the same of what to look for', () => {
  const said = PAPERS.map(([, { looks }]) => looks.lookFor);
  expect(new Set(said).size).toBe(said.length);
});
