/** What a maker is warned of, on each side of its line. */
import { describe, expect, it } from 'vitest';
import { makeAnswer } from '../../../src/core/make/answer';
import { DEFAULT_MAKE, type MakePlan } from '../../../src/core/make/fields';
import { makePieces } from '../../../src/core/make/pieces';
const plan = (given: Partial<MakePlan>): MakePlan => ({ ...DEFAULT_MAKE, ...given });

function answerFor(given: Partial<MakePlan>) {
  const found = makeAnswer(plan(given));
  if (!found.ok) throw new Error(found.errors[0]?.message);
  return found.value;
}

const warnings = (given: Partial<MakePlan>) => answerFor(given).warnings.join('\n');

const plainly = (text: string) => text.replaceAll('\u00a0', ' ');

describe('warnings, on each side of their lines', () => {
  it.each([
    ['thicker than they are wide', { width: 30, thickness: 31 }, { width: 30, thickness: 30 }],
    ['wider than the joints', { square: 7.1, joint: 7 }, { square: 7, joint: 7 }],
    ['hard to hold and lay straight', { spine: 3.9, thickness: 3 }, { spine: 4, thickness: 3 }],
    ['will gape', { spine: 11.9 }, { spine: 12 }],
    ['would lie on each other', { width: 30, turnIn: 15.1 }, { width: 30, turnIn: 15 }],
    ['little left to hold', { turnIn: 10.4 }, { turnIn: 10.5 }],
    ['point of the board can show', { corner: 2.4 }, { corner: 2.5 }],
    ['will be bulky', { corner: 6.3 }, { corner: 6.25 }],
    ['odd number of panels', { project: 'accordion', panels: 11 }, { project: 'accordion', panels: 12 }],
    ['odd number of panels', { project: 'accordion', panels: 11 }, { project: 'notebook', panels: 11 }],
    [
      'less than a millimetre',
      { project: 'slip-case', slackThickness: 0.9 },
      { project: 'slip-case', slackThickness: 1 },
    ],
    ['draws a vacuum', { project: 'lidded-box', lidRoom: 0.4 }, { project: 'lidded-box', lidRoom: 0.5 }],
  ] as const)('%s', (words, over, under) => {
    expect(warnings(over)).toContain(words);
    expect(warnings(under)).not.toContain(words);
  });
});

describe('pieces that no sheet or hand can make', () => {
  const said = (given: Partial<MakePlan>) => {
    const found = makePieces(plan(given));
    return found.ok ? undefined : { ...found.errors[0]!, message: plainly(found.errors[0]!.message) };
  };
  it('are refused beside the measure that makes them', () => {
    expect(said({ cover: 'quarter', onBoard: 145 })).toMatchObject({ field: 'onBoard' });
    expect(said({ project: 'portfolio', width: 40, height: 60, joint: 5, margin: 28 })?.field).toBe('margin');
    expect(said({ project: 'portfolio', width: 40, height: 60, joint: 5, margin: 28 })?.message).toContain(
      'narrower than 1 mm',
    );
  });
});
