/** The ratio that is told for a job: shapes a teacher would recognise, runs and easy parts by hand, and one answer with the shelf. */
import { describe, expect, test } from 'vitest';
import { bestRatio, easyParts, mixOf, widestRun } from '../../../src/core/choose/best-ratio';
import { DEFAULT_JOB, type Job } from '../../../src/core/choose/job';
import { rank } from '../../../src/core/choose/ranking';
import { liquidOf } from '../../../src/core/adhesive/liquid';
import type { WetAdhesive } from '../../../src/core/records/records';
import { catalogue } from '../../../src/data/catalogue';
import { jobWith } from '../support/jobs';

const JAR = ['pva', 'methylcellulose'];
const curve = (family: string, grammage: number) => bestRatio(jobWith(family, grammage), catalogue, JAR)!.curves[0]!;

describe('PVA and methylcellulose', () => {
  const curves = {
    tissue: curve('unryu', 25),
    soft: curve('soft-mulberry-tissue', 35),
    lokta: curve('lokta-light', 55),
    printed: curve('chiyogami', 70),
    leathery: curve('leather-like-mulberry', 90),
    cloth: curve('paper-backed-cloth', 230),
  };
  test('light and thirsty sheets want more methylcellulose, heavy and slow ones less (common practice, no source)', () => {
    const share = Object.values(curves).map(({ best }) => best.share);
    expect(share).toEqual(share.toSorted((a, b) => a - b));
    expect(curves.tissue.best.share).toBeLessThan(0.4);
    expect(curves.cloth.best.share).toBeGreaterThan(0.6);
  });
  test('a mix does better than either alone on a tissue; PVA alone is hardly worse on heavy cloth', () => {
    const { tissue, cloth } = curves;
    const [jelly, pva] = [tissue.points[0]!, tissue.points.at(-1)!];
    expect(tissue.best.chance).toBeGreaterThan(jelly.chance + 0.2);
    expect(tissue.best.chance).toBeGreaterThan(pva.chance + 0.2);
    expect(cloth.points.at(-1)!.chance).toBeGreaterThan(cloth.best.chance - 0.05);
  });
  test.for(Object.entries(curves))('%s: the run holds the best, and the easy parts lie in the run', ([, found]) => {
    expect(found.points.map(({ share }) => share)).toEqual(Array.from({ length: 21 }, (_, i) => i / 20));
    const { from, to } = found.works!;
    expect(found.best.share).toBeGreaterThanOrEqual(from);
    expect(found.best.share).toBeLessThanOrEqual(to);
    const [pva, jelly] = found.easy;
    expect(pva / (pva + jelly)).toBeGreaterThanOrEqual(from - 1e-9);
    expect(pva / (pva + jelly)).toBeLessThanOrEqual(to + 1e-9);
  });
  test('between neighbours no chance jumps by more than a third', () => {
    for (const { points } of Object.values(curves))
      for (const [i, { chance }] of points.entries())
        if (i > 0) expect(Math.abs(chance - points[i - 1]!.chance)).toBeLessThan(0.34);
  });
});

describe('what is at hand', () => {
  const asked = (have: readonly string[], job: Job = DEFAULT_JOB) =>
    bestRatio(job, catalogue, have)?.curves.map(({ of, with: rest }) => `${of} ${rest}`.replace(/-\d+(-\d)?/g, ''));
  test('nothing can be mixed of one bottle', () => {
    expect(asked(['pva'])).toBeUndefined();
    expect(asked(['glue-stick', 'film-double-sided'])).toBeUndefined();
  });
  test('a powder, or a jelly made of it, goes with the bottle', () => {
    expect(asked(JAR)).toEqual(['pva methylcellulose']);
    expect(asked(['pva', 'methylcellulose-4'])).toEqual(['pva methylcellulose']);
    expect(asked(['eva', 'wheat-starch'])).toEqual(['eva wheat-starch-paste']);
    expect(asked(['methylcellulose', 'wheat-starch'])).toEqual(['wheat-starch-paste methylcellulose']);
  });
  test('with everything at hand each pair is tried, and all three', () => {
    expect(asked([])).toHaveLength(3);
    expect(bestRatio(DEFAULT_JOB, catalogue, [])!.three!.parts).toHaveLength(3);
  });
  test('a job with a part that means nothing is answered all the same', () => {
    expect(bestRatio({ ...DEFAULT_JOB, substrate: 'nowhere' }, catalogue, JAR)).toEqual(
      bestRatio(DEFAULT_JOB, catalogue, JAR),
    );
  });
});

describe('a mix made here and the same on the shelf', () => {
  const shelf = catalogue.adhesives.get('pva-mc-1-1') as WetAdhesive;
  const made = mixOf(shelf.parts, catalogue);
  test('are one liquid, and hold nearly alike', () => {
    expect(liquidOf(made, catalogue)).toEqual(liquidOf(shelf, catalogue));
    expect(made.hold.porous).toBeCloseTo(shelf.hold.porous, 1);
    expect(made.undoneWithWater).toBe(shelf.undoneWithWater);
    expect(made.longLived).toBe(shelf.longLived);
  });
  test('have nearly one chance', () => {
    const job = jobWith('chiyogami', 70);
    const own = rank(job, { ...catalogue, adhesives: new Map([...catalogue.adhesives, [made.id, made]]) });
    const of = (id: string) => own.find(({ adhesiveId }) => adhesiveId === id)!.chance;
    expect(Math.abs(of(made.id) - of('pva-mc-1-1'))).toBeLessThan(0.03);
  });
  test('half PVA stays; three quarters of paste come undone in part; paste wholly', () => {
    const undone = (pva: number, paste: number) =>
      mixOf(
        [
          { of: 'pva', parts: pva },
          { of: 'wheat-starch-paste-12', parts: paste },
        ].filter(({ parts }) => parts > 0),
        catalogue,
      ).undoneWithWater;
    expect(undone(1, 1)).toBe('no');
    expect(undone(1, 3)).toBe('partly');
    expect(undone(0, 1)).toBe('yes');
  });
  test('of nothing, or of what is not wet, there is none', () => {
    expect(() => mixOf([], catalogue)).toThrow(RangeError);
    expect(() => mixOf([{ of: 'glue-stick', parts: 1 }], catalogue)).toThrow(/glue-stick/);
  });
});

describe('runs and parts, by hand', () => {
  const at = (...chances: number[]) => chances.map((chance, i) => ({ share: i / 10, chance }));
  test('the widest unbroken run counts, not the highest', () => {
    expect(widestRun(at(0.9, 0.1, 0.6, 0.6, 0.6, 0.2), 0.55)).toEqual({ from: 0.2, to: 0.4 });
    expect(widestRun(at(0.6), 0.55)).toEqual({ from: 0, to: 0 });
    expect(widestRun(at(0.1, 0.2), 0.55)).toBeUndefined();
  });
  test('anything from 3:2 to 1:2: say 1:1', () => {
    expect(easyParts(0.5, { from: 1 / 3, to: 3 / 5 })).toEqual([1, 1]);
  });
  test('a narrow run takes what lies in it, and no run what is nearest to the best', () => {
    expect(easyParts(0.75, { from: 0.7, to: 0.78 })).toEqual([3, 1]);
    expect(easyParts(0.31, undefined)).toEqual([1, 2]);
    expect(easyParts(1, { from: 1, to: 1 })).toEqual([1, 0]);
  });
});
