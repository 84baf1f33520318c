/** Cut lists worked out by hand, from measures that are all given and round: what a maker would write on a scrap of board. */
import { askedOf } from '../../../src/core/link/fields';
import { describe, expect, test } from 'vitest';
import { MAKE_FIELDS, DEFAULT_MAKE, type MakePlan } from '../../../src/core/make/fields';
import { gluedPieces, NO_TURN, type MakePiece } from '../../../src/core/make/piece';
import { makePieces } from '../../../src/core/make/pieces';
import { measuresOf, usualFor } from '../../../src/core/make/plan';

const plan = (given: Partial<MakePlan>): MakePlan => ({ ...DEFAULT_MAKE, ...given });
function pieces(given: Partial<MakePlan>): readonly MakePiece[] {
  const found = makePieces(plan(given));
  if (!found.ok) throw new Error(found.errors[0]?.message);
  return found.value;
}
/** "2 × side: paper 79 × 206, grain height, turn-ins 15 15 15 0" and what is glued, one line a row. */
const written = (all: readonly MakePiece[]) =>
  all.map(({ name, stock, widthMm, heightMm, count, grain, turnIn, inside, gluedFaces, gluedPart }) => {
    const { top, right, bottom, left } = turnIn;
    const turns = top + right + bottom + left > 0 ? `, turn-ins ${top} ${right} ${bottom} ${left}` : '';
    const part = gluedPart ? ` on ${gluedPart.widthMm} × ${gluedPart.heightMm}` : '';
    const glue = gluedFaces > 0 ? `, glued ${gluedFaces}${part}` : '';
    return `${count} × ${name}: ${inside ? 'inside ' : ''}${stock} ${widthMm} × ${heightMm} ${grain}${turns}${glue}`;
  });

const BODY = { width: 100, height: 200, thickness: 10, board: 2, turnIn: 15 } as const;

describe('a notebook of 100 × 200 × 10 mm, square 3, joint 8, spine 14', () => {
  const book = { ...BODY, square: 3, joint: 8, spine: 14, onBoard: 20, lap: 4 } as const;
  // boards 100 + 3 − 8 wide and 200 + 6 high
  const boards = ['2 × board: board 95 × 206 height', '1 × spine strip: board 14 × 206 height'];
  const ends = '2 × endpaper, folded once: inside paper 200 × 200 height, glued 1 on 100 × 200';
  test('full: two boards, two joints and the spine in one cover', () => {
    expect(written(pieces(book))).toEqual([
      ...boards,
      '1 × cover: paper 220 × 206 height, turn-ins 15 15 15 15, glued 1',
      ends,
    ]);
  });
  test('quarter: cloth over the joints and 20 of each board, sides from there less the lap', () => {
    expect(written(pieces({ ...book, cover: 'quarter' }))).toEqual([
      ...boards,
      '1 × spine cloth: cloth 70 × 206 height, turn-ins 15 0 15 0, glued 1',
      '2 × side: paper 79 × 206 height, turn-ins 15 15 15 0, glued 1',
      ends,
    ]);
  });
  test('a lining as wide as the block is thick, a hollow three times that, glued twice on one third', () => {
    expect(written(pieces({ ...book, back: 'lining' })).at(-1)).toBe(
      '1 × spine lining: inside paper 10 × 200 height, glued 1',
    );
    const hollow = pieces({ ...book, back: 'hollow' }).at(-1)!;
    expect(written([hollow])).toEqual(['1 × hollow: inside paper 30 × 200 height, glued 2 on 10 × 200']);
    // two strips of glue, 10 × 200 each
    expect(gluedPieces([{ ...hollow, count: 3 }])).toEqual([
      { name: 'hollow', widthMm: 10, heightMm: 200, count: 6, turnInMm: NO_TURN },
    ]);
  });
});

describe('a portfolio for 100 × 200 × 10 mm with 4, 6 and 2 mm of room', () => {
  const folder = {
    ...BODY,
    project: 'portfolio',
    ...{ square: 3, joint: 8, spine: 16, margin: 3, flap: 30, tie: 200 },
    ...{ slackWidth: 4, slackHeight: 6, slackThickness: 2 },
  } as const;
  const rows = [
    // 104 × 206 goes in: 104 + 3 − 8, 206 + 6
    '2 × board: board 99 × 212 height',
    '1 × spine strip: board 16 × 212 height',
    '1 × cover: paper 230 × 212 height, turn-ins 15 15 15 15, glued 1',
    // the spine, and a joint and 25 on each side
    '1 × inner joint: cloth 82 × 206 height, glued 1',
    // 25 on the board, 10 + 2 up the side, 30 over the contents
    '2 × flap at head and tail: inside paper 104 × 67 width, glued 1 on 104 × 25',
    '1 × flap at the fore-edge: inside paper 67 × 206 height, glued 1 on 25 × 206',
    '2 × lining: lining 93 × 206 height, glued 1',
  ];
  test.each([
    ['0', []],
    ['1', ['2 × tie, of tape: cloth 12 × 200 height, glued 1 on 12 × 30']],
    ['3', ['6 × tie, of tape: cloth 12 × 200 height, glued 1 on 12 × 30']],
  ] as const)('with %s pairs of ties', (ties, last) => {
    expect(written(pieces({ ...folder, ties }))).toEqual([...rows, ...last]);
  });
});

describe('round a book of 100 × 200 × 20 mm', () => {
  test('a slip case: 100 × 202 × 22 inside, 102 × 206 × 26 outside, linings 1 mm back', () => {
    const given = { ...BODY, project: 'slip-case', thickness: 20, slackWidth: 0, slackHeight: 2, slackThickness: 2 };
    const boards = [
      '2 × side: board 102 × 206 height',
      '1 × back: board 22 × 206 height',
      '2 × top and bottom: board 100 × 22 either',
      '1 × cover of sides and back: paper 230 × 206 height, turn-ins 15 15 15 15, glued 1',
      '2 × cover of top and bottom: paper 102 × 26 either, glued 1',
    ];
    const linings = [
      '2 × lining of a side: lining 98 × 200 height, glued 1',
      '1 × lining of the back: lining 20 × 200 height, glued 1',
      '2 × lining of top and bottom: lining 98 × 20 either, glued 1',
    ];
    const own = { ...given, margin: 1 } as Partial<MakePlan>;
    expect(written(pieces({ ...own, lined: 'yes' }))).toEqual([...boards, ...linings]);
    expect(written(pieces({ ...own, lined: 'no' }))).toEqual(boards);
  });
  test('a box: tray 102 × 202 × 22 inside; lid larger by two boards, four coverings of 0.25 and 1 mm of air', () => {
    const own = {
      ...BODY,
      project: 'lidded-box',
      ...{ thickness: 20, slackWidth: 2, slackHeight: 2, slackThickness: 2 },
      ...{ lidDepth: 8, lidRoom: 1, covering: 0.25, margin: 1 },
    } as const;
    const tray = [
      '1 × tray: base: board 102 × 202 height',
      '2 × tray: long wall: board 206 × 24 width',
      '2 × tray: short wall: board 102 × 24 width',
      '1 × tray: cover of the walls: paper 624 × 24 either, turn-ins 15 15 15 15, glued 1',
      '1 × tray: cover of the base: paper 106 × 206 height, glued 1',
    ];
    const lid = [
      '1 × lid: top: board 108 × 208 height',
      '2 × lid: long wall: board 212 × 10 width',
      '2 × lid: short wall: board 108 × 10 width',
      '1 × lid: cover of the walls: paper 648 × 10 either, turn-ins 15 15 15 15, glued 1',
      '1 × lid: cover of the top: paper 112 × 212 height, glued 1',
    ];
    expect(written(pieces({ ...own, lined: 'no' }))).toEqual([...tray, ...lid]);
    expect(written(pieces({ ...own, lined: 'yes' }))).toEqual([
      ...tray,
      '1 × tray: lining of the base: lining 100 × 200 height, glued 1',
      '1 × tray: lining of the walls: lining 606 × 20 either, glued 1',
      ...lid,
      '1 × lid: lining of the top: lining 106 × 206 height, glued 1',
      '1 × lid: lining of the walls: lining 630 × 6 either, glued 1',
    ]);
  });
});

describe('an accordion of panels of 100 × 200', () => {
  const own = { ...BODY, project: 'accordion', square: 3, tab: 10 } as const;
  const covers = [
    '2 × board: board 106 × 206 height',
    '2 × cover: paper 106 × 206 height, turn-ins 15 15 15 15, glued 1',
  ];
  test('in one strip: the first and the last panel are pasted down', () => {
    const rows = [...covers, '1 × strip, 12 panels: inside paper 1200 × 200 height, glued 1 on 200 × 200'];
    expect(written(pieces({ ...own, panels: 12 }))).toEqual(rows);
    expect(written(pieces({ ...own, panels: 12, sheet: 1200 }))).toEqual(rows);
  });
  test('in two: a panel and a tab are glued, and a panel', () => {
    expect(written(pieces({ ...own, panels: 6, sheet: 310 }))).toEqual([
      ...covers,
      '1 × strip 1, 3 panels and a tab: inside paper 310 × 200 height, glued 1 on 110 × 200',
      '1 × strip 2, 3 panels: inside paper 300 × 200 height, glued 1 on 100 × 200',
    ]);
  });
  test('in three and in five: those between take glue on the tab alone, and two or more of them are one row', () => {
    const first = '1 × strip 1, 3 panels and a tab: inside paper 310 × 200 height, glued 1 on 110 × 200';
    const middle = '3 panels and a tab: inside paper 310 × 200 height, glued 1 on 10 × 200';
    expect(written(pieces({ ...own, panels: 8, sheet: 310 }))).toEqual([
      ...covers,
      first,
      `1 × strip 2, ${middle}`,
      '1 × strip 3, 2 panels: inside paper 200 × 200 height, glued 1 on 100 × 200',
    ]);
    expect(written(pieces({ ...own, panels: 13, sheet: 310 }))).toEqual([
      ...covers,
      first,
      `3 × strips 2 to 4, each, ${middle}`,
      '1 × strip 5, 1 panel: inside paper 100 × 200 height, glued 1 on 100 × 200',
    ]);
  });
});

describe('what is usual', () => {
  test('cloth on a fifth of the board, and 3 mm at least', () => {
    // boards 148 + 3 − 7 wide; in a portfolio 4 wider
    expect(usualFor(plan({ width: 148 })).onBoard).toBeCloseTo(144 / 5, 9);
    expect(usualFor(plan({ width: 148, project: 'portfolio', cover: 'quarter' })).onBoard).toBeCloseTo(148 / 5, 9);
    expect(usualFor(plan({ width: 20, joint: 12 })).onBoard).toBe(3);
  });
  test('flaps that reach in by a third of the width, and 10 mm at least', () => {
    expect(usualFor(plan({ project: 'portfolio', width: 150 })).flap).toBe(50);
    expect(usualFor(plan({ project: 'portfolio', width: 24 })).flap).toBe(10);
  });
  test('a joint of 7 mm, wider for boards of which two are thicker than that', () => {
    expect(usualFor(plan({ board: 2.5 })).joint).toBe(7);
    expect(usualFor(plan({ board: 5 })).joint).toBe(10);
  });
  test('a measure that is out of sight does not bear', () => {
    expect(measuresOf(plan({ cover: 'quarter', onBoard: 50, lap: 9 }))).toMatchObject({ onBoard: 50, lap: 9 });
    expect(measuresOf(plan({ cover: 'full', onBoard: 50, lap: 9 }))).toMatchObject({ lap: 3 });
    expect(measuresOf(plan({ cover: 'full', onBoard: 50 })).onBoard).not.toBe(50);
    expect(measuresOf(plan({ project: 'portfolio', ties: '1', tie: 90 })).tie).toBe(90);
    expect(measuresOf(plan({ project: 'portfolio', ties: '0', tie: 90 })).tie).toBe(250);
  });
});

describe('what is asked', () => {
  const asks = (given: Partial<MakePlan>) => askedOf(plan(given), MAKE_FIELDS);
  test('the thickness, or leaves and their caliper; of an accordion neither', () => {
    expect(asks({ thicknessFrom: 'measured' })).toContain('thickness');
    expect(asks({ thicknessFrom: 'measured' })).not.toContain('leaves');
    expect(asks({ thicknessFrom: 'leaves' })).toEqual(expect.arrayContaining(['thicknessFrom', 'leaves', 'caliper']));
    expect(asks({ thicknessFrom: 'leaves' })).not.toContain('thickness');
    const accordion = asks({ project: 'accordion' });
    expect(accordion.filter((field) => /thick|leaves|caliper/.test(field))).toEqual([]);
    expect(accordion.slice(0, 6)).toEqual(['project', 'unit', 'width', 'height', 'board', 'stock']);
  });
  test('cloth and lap of a quarter binding alone, ties where there are some', () => {
    for (const project of ['notebook', 'portfolio'] as const) {
      expect(asks({ project, cover: 'quarter' })).toEqual(expect.arrayContaining(['onBoard', 'lap', 'square']));
      expect(asks({ project, cover: 'full' })).not.toContain('onBoard');
      expect(asks({ project, cover: 'full' })).not.toContain('lap');
      expect(asks({ project, cover: 'full' })).toContain('square');
    }
    expect(asks({ project: 'portfolio', ties: '1' })).toContain('tie');
    expect(asks({ project: 'portfolio', ties: '0' })).not.toContain('tie');
    expect(asks({ project: 'portfolio', ties: '0' })).toContain('flap');
  });
});

describe('the edge of what can be', () => {
  const errorOf = (given: Partial<MakePlan>) => {
    const found = makePieces(plan(given));
    return found.ok ? undefined : found.errors[0];
  };
  test.each([
    ['joint', { joint: 3, board: 3 }, { joint: 2.9, board: 3 }],
    ['joint', { width: 20, square: 0, joint: 10, board: 2 }, { width: 20, square: 0, joint: 10.1, board: 2 }],
    ['joint', { project: 'portfolio', joint: 3, board: 3 }, { project: 'portfolio', joint: 2.9, board: 3 }],
    // boards 148 + 3 − 7 wide
    ['onBoard', { cover: 'quarter', onBoard: 143 }, { cover: 'quarter', onBoard: 144 }],
    ['onBoard', { cover: 'quarter', onBoard: 143, lap: 0 }, { cover: 'quarter', onBoard: 143.5, lap: 0 }],
    ['lap', { cover: 'quarter', onBoard: 10, lap: 10 }, { cover: 'quarter', onBoard: 10, lap: 10.1 }],
    ['sheet', { project: 'accordion', sheet: 158, tab: 10 }, { project: 'accordion', sheet: 157.9, tab: 10 }],
    // as deep as the tray is high: 12 + 2 + 2.5
    ['lidDepth', { project: 'lidded-box', lidDepth: 16.5 }, { project: 'lidded-box', lidDepth: 16.6 }],
    ['leaves', { thickness: 1 }, { thickness: 0.9 }],
    ['leaves', { thickness: 200, width: 300 }, { thickness: 200.1, width: 300 }],
    ['margin', { project: 'slip-case', margin: 6 }, { project: 'slip-case', margin: 7 }],
  ] as const)('%s', (field, fits, tooFar) => {
    expect(errorOf(fits)).toBeUndefined();
    expect(errorOf(tooFar)?.field).toBe(field);
  });
  test('lap and cloth do not matter to a full cover, nor a strip’s length to one that is not given', () => {
    expect(errorOf({ cover: 'full', onBoard: 500, lap: 50 })).toBeUndefined();
    expect(errorOf({ project: 'accordion', sheet: undefined })).toBeUndefined();
    expect(errorOf({ project: 'slip-case', cover: 'quarter', onBoard: 10, lap: 20 })).toBeUndefined();
  });
  test('the message names what would do', () => {
    expect(errorOf({ project: 'lidded-box', lidDepth: 100 })?.message).toMatch(/16\.5\u00a0mm, and no deeper/);
    expect(errorOf({ project: 'accordion', sheet: 100 })?.message).toMatch(/at least 158\u00a0mm/);
    expect(errorOf({ cover: 'quarter', onBoard: 200 })?.message).toMatch(/which is 144\u00a0mm wide/);
  });
});
