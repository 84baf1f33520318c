/** The order of making, for a book of round measures. The order is common practice, no source. */
import { describe, expect, it } from 'vitest';
import { DEFAULT_MAKE, type MakePlan } from '../../../src/core/make/fields';
import { PROJECT_IDS } from '../../../src/core/make/projects';
import { measuresOf } from '../../../src/core/make/plan';
import { makeSteps } from '../../../src/core/make/steps';
import { makeWarnings } from '../../../src/core/make/warnings';
import { makeAnswer } from '../../../src/core/make/answer';
const BOOK = { width: 100, height: 200, thickness: 10, board: 2, square: 3, joint: 8, spine: 14 } as const;

const whole = (given: Partial<MakePlan>): MakePlan => ({ ...DEFAULT_MAKE, ...BOOK, ...given });

const steps = (given: Partial<MakePlan>) =>
  makeSteps(whole(given), measuresOf(whole(given))).map(({ text }) => text.replaceAll('\u00a0', ' '));

const warnings = (given: Partial<MakePlan>) => makeWarnings(whole(given), measuresOf(whole(given)));

const plan = (given: Partial<MakePlan>): MakePlan => ({ ...DEFAULT_MAKE, ...given });

function answerFor(given: Partial<MakePlan>) {
  const found = makeAnswer(plan(given));
  if (!found.ok) throw new Error(found.errors[0]?.message);
  return found.value;
}

const stepLines = (given: Partial<MakePlan>) => answerFor(given).steps.join('\n');

describe('the steps', () => {
  it('begin with the grain of every sheet and end under weight or with weights', () => {
    for (const project of PROJECT_IDS) {
      const all = steps({ project });
      expect(all[0]).toMatch(/grain/);
      expect(all.at(-1)).toMatch(/weight|dry/);
      expect(new Set(all).size).toBe(all.length);
    }
  });
  it('are those of what is made, from its own first cut to its own last', () => {
    expect(steps({ project: 'slip-case' })[1]).toMatch(/back, top and bottom to one width/);
    expect(steps({ project: 'slip-case' }).at(-1)).toMatch(/block of the book’s size inside/);
    expect(steps({ project: 'lidded-box' })[1]).toMatch(/walls round the base/);
    expect(steps({ project: 'lidded-box' }).at(-1)).toMatch(/dry open, apart/);
    expect(steps({ project: 'accordion' })[1]).toMatch(/grain along the folds/);
    expect(steps({ project: 'notebook' })[1]).toMatch(/spine strip of 14 mm/);
  });
  /** The steps of `more` are those of `less` and one besides, which these words are of. */
  const addsOne = (less: Partial<MakePlan>, more: Partial<MakePlan>, words: RegExp) => {
    const added = steps(more).filter((step) => !steps(less).includes(step));
    expect(added).toEqual([expect.stringMatching(words)]);
    expect(steps(more)).toHaveLength(steps(less).length + 1);
  };
  it('have one more for a lined back, joined strips, a lining, ties', () => {
    addsOne({ back: 'none' }, { back: 'lining' }, /lining on the back/);
    addsOne({ back: 'none' }, { back: 'hollow' }, /hollow on the back/);
    addsOne({ project: 'accordion' }, { project: 'accordion', sheet: 410, tab: 9 }, /on the tabs of 9 mm/);
    addsOne({ project: 'slip-case', lined: 'no' }, { project: 'slip-case', lined: 'yes' }, /^Line each board/);
    addsOne({ project: 'lidded-box', lined: 'no' }, { project: 'lidded-box', lined: 'yes' }, /^Line the walls/);
    addsOne({ project: 'portfolio', ties: '0' }, { project: 'portfolio', ties: '1' }, /^Draw the ties/);
  });
  it('score the flaps for a wall as high as what goes in and its room', () => {
    const own = { project: 'portfolio', slackThickness: 3 } as const;
    expect(steps(own).join('\n')).toMatch(/a wall of 13 mm/);
  });
});

describe('what is warned of, and of which project alone', () => {
  const about = (word: RegExp, given: Partial<MakePlan>) => warnings(given).some((one) => word.test(one));
  it('squares and spine strips where there is a case to close', () => {
    for (const project of ['notebook', 'portfolio'] as const) {
      expect(about(/squares, 9\smm/, { project, square: 9 })).toBe(true);
      expect(about(/gape/, { project, spine: 9 })).toBe(true);
    }
    for (const project of ['accordion', 'slip-case', 'lidded-box'] as const)
      expect(about(/squares|gape|hard to hold/, { project, square: 9, spine: 2 })).toBe(false);
  });
  it('a turn-in past the middle: of a case by its shorter side, of a box by its width', () => {
    // a low and wide book: boards 46 high, and 50 where there is room round it, half of which is 25
    const low = { width: 100, height: 40, turnIn: 26 } as const;
    for (const project of ['notebook', 'accordion', 'portfolio'] as const)
      expect(about(/past the middle/, { ...low, project }), project).toBe(true);
    for (const project of ['slip-case', 'lidded-box'] as const)
      expect(about(/past the middle/, { ...low, project }), project).toBe(false);
    expect(about(/past the middle/, { width: 40, height: 100, turnIn: 21, project: 'slip-case' })).toBe(true);
  });
  it('contents thicker than wide, but not an accordion, which has no thickness to give', () => {
    expect(about(/thicker than they are wide/, { project: 'accordion', thickness: 120 })).toBe(false);
    expect(about(/thicker than they are wide/, { project: 'slip-case', thickness: 120 })).toBe(true);
  });
  it('room in slip case and box, air under a lid alone', () => {
    for (const project of ['slip-case', 'lidded-box'] as const)
      expect(about(/less than a millimetre/, { project, slackThickness: 0 })).toBe(true);
    expect(about(/less than a millimetre/, { project: 'portfolio', slackThickness: 0 })).toBe(false);
    expect(about(/vacuum/, { project: 'lidded-box', lidRoom: 0.2 })).toBe(true);
    expect(about(/vacuum/, { project: 'slip-case', lidRoom: 0.2 })).toBe(false);
  });
});

describe('steps name only what this plan has', () => {
  it('a notebook', () => {
    expect(stepLines({})).not.toMatch(/on the back of the block|spine cloth/);
    expect(stepLines({ back: 'lining' })).toContain('Glue the lining on the back');
    expect(stepLines({ back: 'hollow' })).toContain('Glue the hollow on the back');
    expect(stepLines({ cover: 'quarter' })).toContain('Spread the spine cloth');
    expect(stepLines({ cover: 'quarter' })).not.toContain('Spread the cover,');
    expect(stepLines({})).toContain('Spread the cover, lay the boards');
  });
  it('an accordion: tabs only where strips are joined', () => {
    expect(stepLines({ project: 'accordion' })).not.toContain('tabs');
    expect(stepLines({ project: 'accordion', width: 100, sheet: 420 })).toContain('Glue strip to strip on the tabs');
  });
  it('a slip case, a box and a portfolio: linings and ties', () => {
    for (const project of ['slip-case', 'lidded-box'] as const) {
      expect(stepLines({ project, lined: 'yes' })).toMatch(/[Ll]in(e|ings)/);
      expect(stepLines({ project, lined: 'no' })).not.toMatch(/Line (each|the) |linings/);
    }
    expect(stepLines({ project: 'portfolio', ties: '3' })).toContain('Draw the ties');
    expect(stepLines({ project: 'portfolio', ties: '0' })).not.toContain('ties through slits');
  });
});
