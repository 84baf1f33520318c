/** What is mixed for a class, and which piece the chooser is asked about. */
import { roundUpForJug } from '../../../src/core/base/rounding';
import { describe, expect, it } from 'vitest';
import { NO_TURN, piece, type MakePiece } from '../../../src/core/make/piece';
import type { WetAdhesive } from '../../../src/core/records/records';
import { classAnswer } from '../../../src/core/class/answer';
import { classCover } from '../../../src/core/class/glue';
import { chooserJob, slipsFor } from '../../../src/core/class/laying';
import { DEFAULT_CLASS, kitsOf, type ClassPlan } from '../../../src/core/class/plan';
import { catalogue } from '../../../src/data/catalogue';
const plan = (change: Partial<ClassPlan> = {}): ClassPlan => ({ ...DEFAULT_CLASS, ...change });

const wet = (id: string) => catalogue.adhesives.get(id) as WetAdhesive;

function answerOf(change: Partial<ClassPlan>) {
  const found = classAnswer(plan(change), catalogue);
  if (!found.ok) throw new Error(found.errors[0]?.message);
  return found.value;
}

describe('what is mixed', () => {
  it('the jelly first, with a little over for what sticks: as much as its share of the batch', () => {
    const { batches } = answerOf({});
    expect(batches.map(({ plan: { kind } }) => kind)).toEqual(['powder', 'stretch']);
    // one to one, so half of what is made and a share of it lost, up to a round figure
    const [jelly, mixed] = batches.map((one) => one.plan);
    expect(jelly!.need).toBe(roundUpForJug(mixed!.need / 2 / 0.95));
    // three of glue to one of jelly: a quarter
    const [less, more] = answerOf({ adhesive: 'pva-mc-3-1' }).batches.map((one) => one.plan);
    expect(less!.need).toBe(roundUpForJug(more!.need / 4 / 0.95));
  });
  it('one batch of what is made of powder alone, none of what comes in a pot', () => {
    expect(answerOf({ adhesive: 'methylcellulose-2-5' }).batches).toHaveLength(1);
    expect(answerOf({ adhesive: 'pva' }).batches).toEqual([]);
  });
  it('for the pieces of the project, as many times as there are kits', () => {
    const cover = classCover(plan({ people: 5, spare: 2 }), [piece('cover', 'paper', 100, 200)]);
    expect(cover).toMatchObject({ thing: 'own', makers: 7, unit: 'mm', adhesive: 'pva-mc-1-1' });
    expect(cover.pieces[0]).toMatchObject({ widthMm: 100 });
    expect(kitsOf(plan({ people: 5, spare: 2 }))).toBe(7);
  });
});

describe('which piece the chooser is asked about', () => {
  const turned = { top: 10, right: 0, bottom: 0, left: 0 };
  const asked = (...pieces: MakePiece[]) => {
    const { widthMm, heightMm, atHand } = chooserJob(plan(), pieces);
    expect(atHand).toEqual(['pva-mc-1-1']);
    return [widthMm, heightMm];
  };
  const board = piece('board', 'board', 900, 900, { turnIn: turned });
  const dry = piece('dry', 'paper', 800, 800, { gluedFaces: 0, turnIn: turned });
  const lining = piece('lining', 'lining', 300, 300);
  it('the largest that turns in, as it is cut, wherever it turns in', () => {
    const small = piece('a', 'paper', 100, 100, { turnIn: turned });
    const large = piece('b', 'paper', 200, 90, { turnIn: turned });
    expect(asked(board, dry, lining, small, large)).toEqual([200, 100]);
    expect(asked(board, dry, lining, large, small)).toEqual([200, 100]);
    for (const side of ['top', 'right', 'bottom', 'left'] as const)
      expect(asked(lining, piece('c', 'paper', 50, 50, { turnIn: { ...NO_TURN, [side]: 5 } }))).not.toEqual([300, 300]);
    // of long and narrow and square ones the larger by area, not by side
    expect(asked(piece('d', 'paper', 400, 10, { turnIn: turned }), small)).toEqual([100, 110]);
  });
  it('the largest that is glued, where none turns in', () => {
    expect(asked(board, dry, piece('a', 'paper', 100, 100), lining)).toEqual([300, 300]);
  });
  it('in whole millimetres, as far as the chooser goes', () => {
    expect(asked(piece('a', 'paper', 100.4, 4000))).toEqual([100, 3000]);
    expect(asked(piece('a', 'paper', 2, 99.6))).toEqual([5, 100]);
  });
  it('each piece that is laid as a whole is timed, the one that takes longest first', () => {
    const part = piece('tab', 'paper', 500, 500, { gluedPart: { widthMm: 10, heightMm: 10 } });
    const slips = slipsFor(plan(), [board, dry, part, piece('a', 'paper', 100, 100), lining], wet('pva'), catalogue);
    expect(slips.map(({ name }) => name)).toEqual(['lining', 'a']);
    // 56 s for a square metre, and less by the power 0.37 of the area, common practice
    expect(slips.map(({ needed }) => needed)).toEqual([23, 10]);
  });
});
