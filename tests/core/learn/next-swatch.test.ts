/** Which swatch is most worth making, and when none is. */
import { describe, expect, test } from 'vitest';
import { atOnce } from '../../../src/core/base/turns';
import { DEFAULT_JOB } from '../../../src/core/choose/job';
import { firstPlaceInTurns, LEAST_WORTH, nextSwatches, type Asking } from '../../../src/core/learn/next-swatch';
import type { Learned } from '../../../src/core/learn/reweigh';
import { readCatalogue } from '../../tools/read-content';

const catalogue = readCatalogue();
const NOTHING: Learned = { asked: [], own: undefined, swatches: 0 };
const asking = (family: string, among: readonly string[], over: Partial<Asking> = {}): Asking => ({
  job: { ...DEFAULT_JOB, paper: { family }, placeSeconds: 60 },
  among,
  papers: [{ family }, { family: 'copy' }],
  holds: [20, 60],
  ...over,
});
const open = asking('marbled', ['pva', 'pva-mc-1-1', 'wheat-starch-paste-12']);
describe('an open choice', () => {
  const told = nextSwatches(open, NOTHING, catalogue);
  test('at most three, each of another pair, the best first, each worth its paper', () => {
    expect(told.swatches.length).toBeGreaterThan(0);
    expect(told.swatches.length).toBeLessThanOrEqual(3);
    expect(new Set(told.swatches.map(({ paper, adhesive }) => `${paper.family} ${adhesive}`)).size).toBe(
      told.swatches.length,
    );
    told.swatches.forEach(({ settles, clean }, i) => {
      expect(settles).toBeGreaterThanOrEqual(LEAST_WORTH);
      expect(settles).toBeLessThanOrEqual(told.wrong + 1e-9);
      expect(settles).toBeLessThanOrEqual(told.swatches[i - 1]?.settles ?? 1);
      expect(clean).toBeGreaterThan(0);
      expect(clean).toBeLessThan(1);
    });
  });
  test('a swatch whose outcome is certain beforehand is never worth making', () => {
    for (const { clean } of told.swatches) expect(clean).toBeLessThan(0.99);
  });
  test('the same question, the same answer', () => {
    expect(nextSwatches(open, NOTHING, catalogue)).toEqual(told);
  });
  test('the order in which adhesives are named does not change what stands first', () => {
    const turned = asking('marbled', [...open.among].reverse());
    expect(nextSwatches(turned, NOTHING, catalogue).first).toBe(told.first);
    expect(atOnce(firstPlaceInTurns(turned, NOTHING, catalogue)).first).toBe(told.first);
  });
});

test('a choice that is clear needs no swatch: paste on thin tissue against PVA', () => {
  const told = nextSwatches(asking('kozo-tissue', ['pva', 'wheat-starch-paste-thin']), NOTHING, catalogue);
  expect(told).toMatchObject({ first: 'wheat-starch-paste-thin', settled: true, swatches: [] });
  expect(told.wrong).toBeLessThan(0.1);
});
