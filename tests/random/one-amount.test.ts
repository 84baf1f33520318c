/** The same amount and the same size in every room: no two numbers for one thing, in five hundred jobs drawn at random. */
import { describe, expect, test } from 'vitest';
import { inUnit } from '../../src/core/base/length-text';
import { seededUniform } from '../../src/core/base/random';
import { coverAnswer } from '../../src/core/cover/answer';
import { COVER_FIELDS, DEFAULT_COVER } from '../../src/core/cover/plan';
import { cutAnswer } from '../../src/core/cut/answer';
import { CUT_FIELDS } from '../../src/core/cut/plan';
import { classCutPlan } from '../../src/core/class/cutting';
import { batchesFor, classCover, classCoverage } from '../../src/core/class/glue';
import { DEFAULT_CLASS, kitsOf, projectOf } from '../../src/core/class/plan';
import { materials } from '../../src/core/class/shopping';
import { mixPlanFor } from '../../src/core/handover/cover-to-mix';
import { coverTailFor } from '../../src/core/handover/make-to-cover';
import { cutTailOf } from '../../src/core/handover/make-to-cut';
import { decodePlan } from '../../src/core/link/read-plan-link';
import { makeAnswer } from '../../src/core/make/answer';
import { PROJECT_IDS } from '../../src/core/make/projects';
import { mixAnswerer } from '../../src/core/mix/any';
import { mixStretched } from '../../src/core/mix/stretch';
import { catalogue } from '../../src/data/catalogue';

const JOBS = 500;
const random = seededUniform(20_261_128);
const from = (low: number, high: number) => low + (high - low) * random();
const oneOf = <T>(list: readonly T[]): T => list[Math.floor(random() * list.length)]!;
const wet = [...catalogue.adhesives.values()].filter(({ form }) => form === 'wet').map(({ id }) => id);
const mix = mixAnswerer((plan, records) => mixStretched(plan, records));

const jobs = Array.from({ length: JOBS }, () => ({
  ...DEFAULT_CLASS,
  project: oneOf(PROJECT_IDS),
  unit: oneOf(['mm', 'cm', 'in'] as const),
  width: from(60, 260),
  height: from(60, 300),
  thickness: from(4, 70),
  board: from(1, 3),
  stock: oneOf(['paper', 'cloth'] as const),
  people: Math.round(from(1, 30)),
  spare: Math.round(from(0, 3)),
  loss: Math.round(from(0, 30)),
  adhesive: oneOf(wet),
  tool: oneOf([...catalogue.techniques.keys()]),
}));
/** Those that can be made; a few that are drawn cannot, and say so. */
const made = jobs.flatMap((plan) => {
  const project = makeAnswer(projectOf(plan));
  return project.ok ? [{ plan, project: project.value }] : [];
});

test('most of the jobs drawn can be made', () => {
  expect(made.length).toBeGreaterThan(0.8 * JOBS);
});

describe('a piece is of one size', () => {
  test('where it is measured, where it is cut, in a class, and where it is covered', () => {
    for (const { plan, project } of made) {
      const text = (widthMm: number, heightMm: number) =>
        `${inUnit(widthMm, plan.unit)} × ${inUnit(heightMm, plan.unit)}`.replaceAll(' ', '\u00a0');
      const said = project.rows.map(({ size }) => size.replaceAll(' ', '\u00a0'));
      const cut = decodePlan(cutTailOf(projectOf(plan), project.pieces), CUT_FIELDS);
      expect(cut.dropped).toEqual([]);
      expect(cut.plan.pieces.map(({ widthMm, heightMm }) => text(widthMm, heightMm))).toEqual(said);
      const forClass = classCutPlan(plan, project.pieces);
      expect(forClass.pieces.map(({ widthMm, heightMm }) => text(widthMm, heightMm))).toEqual(said);
      const covered = decodePlan(coverTailFor(projectOf(plan), project.pieces), COVER_FIELDS);
      expect(covered.dropped).toEqual([]);
      const whole = project.pieces.flatMap((piece, i) => (piece.gluedFaces > 0 && !piece.gluedPart ? [said[i]] : []));
      const sizes = covered.plan.pieces.map(({ widthMm, heightMm, turnInMm }) => {
        const { top, right, bottom, left } =
          typeof turnInMm === 'object'
            ? turnInMm
            : { top: turnInMm ?? 0, right: turnInMm ?? 0, bottom: turnInMm ?? 0, left: turnInMm ?? 0 };
        return text(widthMm + left + right, heightMm + top + bottom);
      });
      for (const size of whole) expect(sizes, `${plan.project} in ${plan.unit}`).toContain(size);
    }
  });
});

describe('an amount is one amount', () => {
  test('what is to be had in hand is what is mixed, alone and in a class, and what is bought is in it', () => {
    let mixed = 0;
    for (const { plan, project } of made) {
      const { plan: pieces } = decodePlan(coverTailFor(projectOf(plan), project.pieces), COVER_FIELDS);
      const alone = { ...DEFAULT_COVER, ...pieces, adhesive: plan.adhesive, tool: plan.tool, loss: plan.loss };
      const forClass = classCover(plan, project.pieces);
      const together = classCoverage(forClass, catalogue);
      const one = coverAnswer(alone, catalogue);
      const asMany = coverAnswer({ ...alone, makers: kitsOf(plan) }, catalogue);
      if (!one.ok || !together.ok || !asMany.ok) throw new Error('a job drawn here can be covered');
      expect(together.value.buyMillilitres).toBe(asMany.value.buyMillilitres);
      expect(one.value.buyMillilitres).toBeGreaterThanOrEqual(one.value.coverage.mixMillilitres.high - 1e-9);

      const asked = mixPlanFor(alone, one.value.buyMillilitres, catalogue);
      if (!asked) continue;
      mixed += 1;
      expect(asked.need).toBe(Math.max(1, one.value.buyMillilitres));
      expect(asked.loss).toBe(0);
      const found = mix(asked, catalogue);
      if (!found.ok) throw new Error(found.errors[0]?.message);
      if (asked.kind === 'stretch')
        expect(found.value.brief[1].replace(/[\u202f\u00a0 ]/g, '')).toBe(`${one.value.buyMillilitres}ml`);

      const batches = batchesFor(forClass, together.value.buyMillilitres, catalogue);
      const last = batches.at(-1)!;
      expect(last.plan.need).toBe(together.value.buyMillilitres);
      const adhesive = catalogue.adhesives.get(plan.adhesive)!;
      if (adhesive.form !== 'wet') throw new Error('only what is spread wet is mixed');
      const bought = materials(plan, NO_SHEETS, together.value, batches, adhesive, catalogue);
      const portions = batches.flatMap((batch) => batch.mix.portions);
      for (const { what, amount } of bought)
        expect(portions.some((portion) => portion.name === what && portion.amount === amount)).toBe(true);
      expect(bought.length).toBeGreaterThan(0);
      // the jelly that is made the day before is enough for the mix
      if (batches.length === 2) {
        const share = last.plan.extenderParts / (last.plan.baseParts + last.plan.extenderParts);
        expect(batches[0]!.plan.need).toBeGreaterThanOrEqual(last.plan.need * share);
      }
    }
    expect(mixed).toBeGreaterThan(100);
  });
});

/** The sheets are another matter, and slow: their sizes are held to above. */
const NO_SHEETS = (() => {
  const some = cutAnswer(decodePlan('', CUT_FIELDS).plan);
  if (!some.ok) throw new Error('the usual sheets can be cut');
  return { ...some.value, stocks: [] };
})();
