/** What is said and drawn of a project: steps, warnings and drawings, for plans whose numbers are easy by hand. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { makeAnswer } from '../../../src/core/make/answer';
import { DEFAULT_MAKE, type MakePlan } from '../../../src/core/make/fields';
import { PROJECT_IDS } from '../../../src/core/make/projects';
import { makePieces } from '../../../src/core/make/pieces';
import { measuresOf } from '../../../src/core/make/plan';
import { mitred } from '../../../src/core/make/sketch';
import { SKETCHES } from '../../../src/core/make/sketches';

const plan = (given: Partial<MakePlan>): MakePlan => ({ ...DEFAULT_MAKE, ...given });
function answered(given: Partial<MakePlan>) {
  const found = makeAnswer(plan(given));
  if (!found.ok) throw new Error(found.errors[0]?.message);
  return found.value;
}
const steps = (given: Partial<MakePlan>) => answered(given).steps.join('\n');
const warnings = (given: Partial<MakePlan>) => answered(given).warnings.join('\n');
const plainly = (text: string) => text.replaceAll('\u00a0', ' ');

describe('steps name only what this plan has', () => {
  it('a notebook', () => {
    expect(steps({})).not.toMatch(/on the back of the block|spine cloth/);
    expect(steps({ back: 'lining' })).toContain('Glue the lining on the back');
    expect(steps({ back: 'hollow' })).toContain('Glue the hollow on the back');
    expect(steps({ cover: 'quarter' })).toContain('Spread the spine cloth');
    expect(steps({ cover: 'quarter' })).not.toContain('Spread the cover,');
    expect(steps({})).toContain('Spread the cover, lay the boards');
  });
  it('an accordion: tabs only where strips are joined', () => {
    expect(steps({ project: 'accordion' })).not.toContain('tabs');
    expect(steps({ project: 'accordion', width: 100, sheet: 420 })).toContain('Glue strip to strip on the tabs');
  });
  it('a slip case, a box and a portfolio: linings and ties', () => {
    for (const project of ['slip-case', 'lidded-box'] as const) {
      expect(steps({ project, lined: 'yes' })).toMatch(/[Ll]in(e|ings)/);
      expect(steps({ project, lined: 'no' })).not.toMatch(/Line (each|the) |linings/);
    }
    expect(steps({ project: 'portfolio', ties: '3' })).toContain('Draw the ties');
    expect(steps({ project: 'portfolio', ties: '0' })).not.toContain('ties through slits');
  });
});

describe('the sentence', () => {
  it('says what is made, in the unit that was typed', () => {
    expect(plainly(answered({}).sentence)).toMatch(/148 × 210 × 12 mm, in board of 2\.5 mm: two boards of /);
    expect(plainly(answered({ unit: 'cm' }).sentence)).toContain('14.8 × 21 × 1.2 cm');
    // 6 in is 152.4 mm, 8 in 203.2 mm, 1/2 in 12.7 mm
    expect(plainly(answered({ unit: 'in', width: 152.4, height: 203.2, thickness: 12.7 }).sentence)).toContain(
      '6 × 8 × 1/2 in',
    );
    expect(answered({ unit: 'in' }).unitWord).toBe('inches');
  });
  it('says what leaves come to, but not of an accordion', () => {
    // 96 leaves of 110 µm are 10.56 mm
    expect(answered({ thicknessFrom: 'leaves' }).sentence).toMatch(/The leaves come to 10\.[56]/);
    expect(answered({ thicknessFrom: 'leaves', project: 'accordion' }).sentence).not.toContain('leaves come to');
    expect(answered({}).sentence).not.toContain('leaves come to');
    expect(plainly(answered({ project: 'accordion' }).sentence)).toContain('148 × 210 mm, in board');
  });
});

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

describe('drawings', () => {
  const given: readonly Partial<MakePlan>[] = [
    ...PROJECT_IDS.map((project) => ({ project })),
    ...([{ cover: 'quarter' }, { project: 'portfolio', cover: 'quarter' }] as const),
    ...([{ project: 'accordion', width: 100, sheet: 420 }] as const),
  ];
  it.each(given)('of %o have the measures of their pieces', (one) => {
    const whole = plan(one);
    for (const sketch of SKETCHES[whole.project](whole, measuresOf(whole))) {
      const all = sketch.shapes.flatMap(({ points }) => points);
      for (const [side, axis] of [
        ['top', 0],
        ['left', 1],
      ] as const) {
        const along = all.map((point) => point[axis]);
        for (const { from, to } of sketch.dimensions.filter((dimension) => dimension.side === side)) {
          expect(to).toBeGreaterThan(from);
          // no measure reaches beyond what is drawn
          expect(from).toBeGreaterThanOrEqual(Math.min(...along) - 1e-9);
          expect(to).toBeLessThanOrEqual(Math.max(...along) + 1e-9);
        }
      }
    }
  });
  it('draws the folds of an accordion between its panels, and one at the tab', () => {
    const folds = (one: Partial<MakePlan>) => {
      const whole = plan({ project: 'accordion', ...one });
      const [strip] = SKETCHES.accordion(whole, measuresOf(whole));
      return {
        title: strip!.title,
        at: strip!.shapes.filter(({ look }) => look === 'fold').map(({ points }) => points[0]![0]),
      };
    };
    expect(folds({ width: 100, panels: 4 })).toEqual({ title: 'The strip; dashed are its folds', at: [100, 200, 300] });
    const joined = folds({ width: 100, panels: 12, sheet: 420 });
    expect(joined).toEqual({ title: 'Strip 1 of 3; dashed are its folds', at: [100, 200, 300, 400] });
  });
  it('says every measure of a drawing in words, too', () => {
    for (const one of given)
      for (const { words, figures, height } of answered(one).pictures) {
        expect(words).toMatch(/, to scale\. From left to right: /);
        expect(words).not.toMatch(/NaN|undefined|Infinity/);
        for (const { text } of figures) expect(words).toContain(text);
        expect(height).toBeGreaterThan(0);
      }
  });
  it('cuts a corner at 45°, as far from the board as it was told', () => {
    // a turn-in of 18 and 4 left at the corner: the cut crosses both turn-ins where x + y = −4√2
    const turn = { top: 18, right: 18, bottom: 18, left: 18 };
    const { points } = mitred(0, 0, 100, 200, turn, 4);
    expect(points).toHaveLength(8);
    const off = 4 * Math.SQRT2;
    const expected = [
      ...[
        [-18, 18 - off],
        [18 - off, -18],
        [100 - 18 + off, -18],
        [118, 18 - off],
      ],
      ...[
        [118, 200 - 18 + off],
        [100 - 18 + off, 218],
        [18 - off, 218],
        [-18, 200 - 18 + off],
      ],
    ];
    for (const [x, y] of points)
      expect(expected.some(([ex, ey]) => Math.abs(ex! - x) < 1e-9 && Math.abs(ey! - y) < 1e-9)).toBe(true);
    // without a turn-in on a side, or with the cut beyond the sheet, the corner stays
    expect(mitred(0, 0, 100, 200, { ...turn, left: 0 }, 4).points).toHaveLength(6);
    expect(mitred(0, 0, 100, 200, turn, 26).points).toHaveLength(4);
  });
  it('goes round clockwise, so that no drawing crosses itself', () => {
    const side = fc.integer({ min: 0, max: 30 });
    fc.assert(
      fc.property(side, side, side, side, fc.integer({ min: 1, max: 30 }), (top, right, bottom, left, corner) => {
        const { points } = mitred(0, 0, 300, 300, { top, right, bottom, left }, corner);
        points.forEach(([x, y], i) => {
          const [bx, by] = points[(i + 1) % points.length]!;
          const [cx, cy] = points[(i + 2) % points.length]!;
          expect((bx - x) * (cy - by) - (by - y) * (cx - bx)).toBeGreaterThanOrEqual(-1e-9);
        });
      }),
      { numRuns: 60 },
    );
  });
});
