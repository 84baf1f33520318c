/** What is drawn of each project, worked by hand for contents of 100 × 200 × 10 mm in board of 2 mm, turn-ins 15: y runs down. */
import { describe, expect, it, test } from 'vitest';
import { DEFAULT_MAKE, type MakePlan } from '../../../src/core/make/fields';
import { PROJECT_IDS } from '../../../src/core/make/projects';
import { measuresOf } from '../../../src/core/make/plan';
import {
  chain,
  cornerSketch,
  fold,
  rectangle,
  type Dimension,
  type Sketch,
  mitred,
} from '../../../src/core/make/sketch';
import { SKETCHES } from '../../../src/core/make/sketches';
import fc from 'fast-check';
import { makeAnswer } from '../../../src/core/make/answer';
const BOOK = {
  width: 100,
  height: 200,
  thickness: 10,
  board: 2,
  turnIn: 15,
  corner: 3,
  square: 3,
  joint: 8,
  spine: 14,
  slackWidth: 4,
  slackHeight: 6,
  slackThickness: 2,
  flap: 30,
  lidDepth: 8,
  lidRoom: 1,
  covering: 0.25,
};

function drawn(given: Partial<MakePlan>): readonly Sketch[] {
  const plan = { ...DEFAULT_MAKE, ...BOOK, ...given };
  return SKETCHES[plan.project](plan, measuresOf(plan));
}

/** "board "spine strip" 103 0 14 206": look, label, left, top, width, height. */
const shapesOf = ({ shapes }: Sketch) =>
  shapes.map(({ look, label, points }) => {
    const [xs, ys] = [points.map(([x]) => x), points.map(([, y]) => y)];
    const [x, y] = [Math.min(...xs), Math.min(...ys)];
    const size = [x, y, Math.max(...xs) - x, Math.max(...ys) - y].map((mm) => Number(mm.toFixed(3)));
    return `${look}${label === undefined ? '' : ` "${label}"`} ${size.join(' ')}`;
  });

/** The measures of one side and level, with where they begin: "-15: 15 95 8". */
function measured({ dimensions }: Sketch, side: Dimension['side'], level: 0 | 1) {
  const row = dimensions.filter((one) => one.side === side && one.level === level);
  return row.length === 0
    ? ''
    : `${row[0]!.from}: ${row.map(({ from, to }) => Number((to - from).toFixed(3))).join(' ')}`;
}

const allMeasures = (sketch: Sketch) =>
  (['top', 'left'] as const).flatMap((side) => ([0, 1] as const).map((level) => measured(sketch, side, level)));

const plan = (given: Partial<MakePlan>): MakePlan => ({ ...DEFAULT_MAKE, ...given });

function answerFor(given: Partial<MakePlan>) {
  const found = makeAnswer(plan(given));
  if (!found.ok) throw new Error(found.errors[0]?.message);
  return found.value;
}

describe('what a sketch is made of', () => {
  it('a rectangle goes round from its top left corner; without a label it has none', () => {
    expect(rectangle('board', 1, 2, 10, 20, 'a')).toEqual({
      look: 'board',
      label: 'a',
      points: [
        [1, 2],
        [11, 2],
        [11, 22],
        [1, 22],
      ],
    });
    expect(rectangle('board', 1, 2, 10, 20)).not.toHaveProperty('label');
    expect(fold([1, 2], [3, 4])).toEqual({
      look: 'fold',
      points: [
        [1, 2],
        [3, 4],
      ],
    });
  });
  it('a chain runs end to end and passes over what has no length', () => {
    expect(chain('top', 5, [10, 0, 20])).toEqual([
      { side: 'top', from: 5, to: 15, level: 0 },
      { side: 'top', from: 15, to: 35, level: 0 },
    ]);
    expect(chain('left', 0, [7], 1)).toEqual([{ side: 'left', from: 0, to: 7, level: 1 }]);
    expect(chain('top', 0, [0])).toEqual([]);
  });
});

describe('one corner, larger', () => {
  const sketch = () => cornerSketch(15, 4);
  it('the board, the turn-ins, and the sheet cut across no further than is drawn', () => {
    // far enough to see both turn-ins and as much board again: 2 · 15 + 4
    expect(shapesOf(sketch())).toEqual(['cover -15 -15 49 49', 'board "board" 0 0 34 34']);
    expect(allMeasures(sketch())).toEqual(['-15: 15', '', '-15: 15', '']);
  });
  it('the cut lies as far from the point of the board as it is said to, at 45°', () => {
    const { from, to, mm } = sketch().aslant!;
    expect([from, mm]).toEqual([[0, 0], 4]);
    expect(Math.hypot(...to)).toBeCloseTo(4, 9);
    expect(to[0]).toBeCloseTo(to[1], 9);
    expect(to[0]).toBeLessThan(0);
    // the cut runs through it: two corners of the sheet with the same sum
    const onCut = sketch().shapes[0]!.points.filter(([x, y]) => Math.abs(x + y - (to[0] + to[1])) < 1e-9);
    expect(onCut).toHaveLength(2);
  });
  it('what is left reaches no further than the sheet', () => {
    const { to } = cornerSketch(15, 40).aslant!;
    expect(to[0]).toBeCloseTo(-15, 9);
    expect(to[1]).toBeCloseTo(-15, 9);
  });
  it('is drawn last of every project, with its own turn-in and corner', () => {
    for (const project of PROJECT_IDS) {
      const { title, aslant, dimensions } = drawn({ project }).at(-1)!;
      expect(title).toMatch(/corner/);
      expect([aslant?.mm, dimensions[0]!.to - dimensions[0]!.from]).toEqual([3, 15]);
    }
  });
});

describe('a case', () => {
  const boards = ['board "board" 0 0 95 206', 'board "spine strip" 103 0 14 206', 'board "board" 125 0 95 206'];
  test('full: boards 95 wide, joints 8, spine 14, in one cover with its turn-ins', () => {
    const [sketch] = drawn({ project: 'notebook', slackWidth: undefined, slackHeight: undefined });
    expect(shapesOf(sketch!)).toEqual(['cover -15 -15 250 236', ...boards]);
    expect(allMeasures(sketch!)).toEqual(['-15: 15 95 8 14 8 95 15', '-15: 250', '-15: 15 206 15', '-15: 236']);
    expect(sketch!.shapes[0]!.points).toHaveLength(8);
    expect(sketch!.title).not.toMatch(/cloth/);
  });
  test('quarter: cloth 20 over each board, sides from the fore-edge to 4 over the cloth, mitred at the fore-edge', () => {
    const [sketch] = drawn({ project: 'notebook', cover: 'quarter', onBoard: 20, lap: 4 });
    expect(shapesOf(sketch!)).toEqual([
      'cover 75 -15 70 236',
      // 95 − 20 + 4 wide, and the turn-in
      'cover -15 -15 94 236',
      'cover 141 -15 94 236',
      ...boards,
    ]);
    expect(sketch!.shapes.slice(0, 3).map(({ points }) => points.length)).toEqual([4, 6, 6]);
    expect(sketch!.title).toMatch(/cloth over the spine/);
  });
});

test('a portfolio: its case, and flaps of 30 after a wall of 12, held 25 on the board', () => {
  const [sketch, flaps] = drawn({ project: 'portfolio' });
  // 104 × 206 goes in
  expect(shapesOf(sketch!)[1]).toBe('board "board" 0 0 99 212');
  expect(shapesOf(flaps!)).toEqual([
    'sheet "contents" 0 0 104 206',
    ...['cover 0 -42 104 67', 'cover 0 181 104 67', 'cover 79 0 67 206'],
    ...['fold "head flap" 0 -42 104 30', 'fold "tail flap" 0 218 104 30', 'fold "fore-edge flap" 116 0 30 206'],
    // folds at each edge of the contents and at the top of each wall
    ...['fold 0 0 104 0', 'fold 0 -12 104 0', 'fold 0 206 104 0', 'fold 0 218 104 0'],
    ...['fold 104 0 0 206', 'fold 116 0 0 206'],
  ]);
  expect(allMeasures(flaps!)).toEqual(['0: 79 25 12 30', '', '-42: 30 12 25 156 25 12 30', '']);
});

describe('an accordion', () => {
  test('in one strip: a fold between each two panels, and no tab', () => {
    const [strip] = drawn({ project: 'accordion', panels: 4 });
    expect(shapesOf(strip!)).toEqual([
      'sheet 0 0 400 200',
      ...['fold 100 0 0 200', 'fold 200 0 0 200', 'fold 300 0 0 200'],
    ]);
    expect(allMeasures(strip!)).toEqual(['0: 100', '0: 400', '0: 200', '']);
    expect(strip!.title).toMatch(/^The strip/);
  });
  test('joined: a fold at the tab too, and the tab measured', () => {
    const [strip] = drawn({ project: 'accordion', panels: 6, sheet: 310, tab: 10 });
    expect(shapesOf(strip!)).toEqual([
      'sheet 0 0 310 200',
      ...['fold 100 0 0 200', 'fold 200 0 0 200', 'fold 300 0 0 200'],
    ]);
    expect(allMeasures(strip!)).toEqual(['0: 100 10', '0: 310', '0: 200', '']);
    expect(strip!.title).toMatch(/^Strip 1 of 2/);
  });
  test('a cover: board larger by the square all round, the panel in its middle', () => {
    const [, cover] = drawn({ project: 'accordion' });
    expect(shapesOf(cover!)).toEqual(['cover -15 -15 136 236', 'board 0 0 106 206', 'sheet "paste-down" 3 3 100 200']);
    expect(allMeasures(cover!)).toEqual(['-15: 15 106 15', '-15: 136', '-15: 15 206 15', '-15: 236']);
    expect(cover!.shapes[0]!.points).toHaveLength(8);
  });
});

test('a slip case: two sides with the back between, top and bottom at one of them, and the cover round three', () => {
  // inside 104 × 206 × 12; sides a board wider and two boards higher
  const [boards, cover] = drawn({ project: 'slip-case' });
  expect(shapesOf(boards!)).toEqual([
    ...['board "side" 0 0 106 210', 'board "back" 106 0 12 210', 'board "side" 118 0 106 210'],
    ...['board "top" 0 -12 104 12', 'board "bottom" 0 210 104 12'],
  ]);
  expect(allMeasures(boards!)).toEqual(['0: 104', '0: 106 12 106', '-12: 12 210 12', '']);
  // the back stands between the sides: with their thickness the cover is 16 there
  expect(shapesOf(cover!)).toEqual([
    'cover -15 -15 258 240',
    ...['board "side" 0 0 106 210', 'board "back" 108 0 12 210', 'board "side" 122 0 106 210'],
  ]);
  expect(allMeasures(cover!)).toEqual(['-15: 15 106 16 106 15', '-15: 258', '-15: 15 210 15', '-15: 240']);
});

test('a box: a base with walls as high as what goes in and the base, long ones over the ends; a lid the same', () => {
  const [tray, lid] = drawn({ project: 'lidded-box' });
  // inside 104 × 206 × 12
  expect(shapesOf(tray!)).toEqual([
    'board "base" 0 0 104 206',
    ...['board "short wall" 0 -14 104 14', 'board "short wall" 0 206 104 14'],
    ...['board "long wall" -14 -2 14 210', 'board "long wall" 104 -2 14 210'],
  ]);
  expect(allMeasures(tray!)).toEqual(['-14: 14 104 14', '', '-14: 14 206 14', '-2: 210']);
  // outside 108 × 210, four coverings of 0.25 and 1 of air
  expect(shapesOf(lid!)[0]).toBe('board "top" 0 0 110 212');
  expect(shapesOf(lid!)[1]).toBe('board "short wall" 0 -10 110 10');
  expect([tray!.title, lid!.title]).toEqual([expect.stringMatching(/tray/), expect.stringMatching(/lid/)]);
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
      for (const { words, figures, height } of answerFor(one).pictures) {
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
