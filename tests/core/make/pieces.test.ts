/** Cut lists worked out by hand, from measures that are all given and round: what a maker would write on a scrap of board. */
import { askedOf } from '../../../src/core/link/fields';
import { describe, expect, test } from 'vitest';
import { MAKE_FIELDS, DEFAULT_MAKE, type MakePlan } from '../../../src/core/make/fields';
import { gluedPieces, NO_TURN, type MakePiece, cutSizeOf } from '../../../src/core/make/piece';
import { makePieces } from '../../../src/core/make/pieces';
import { measuresOf, usualFor, thicknessOf } from '../../../src/core/make/plan';
import { anyPlan } from '../support/any-plan';
import fc from 'fast-check';
import { areaOf } from '../../../src/core/base/piece';
import { stripsOf } from '../../../src/core/make/accordion';
import { insideOf, lidOf, trayOf } from '../../../src/core/make/box';
import { caseOf } from '../../../src/core/make/case';
import { encodePlan } from '../../../src/core/link/plan-link';
import { decodePlan } from '../../../src/core/link/read-plan-link';
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

function size(given: Partial<MakePlan>, name: string): readonly [number, number, number] {
  const one = pieces(given).find((piece) => piece.name === name);
  if (!one) throw new Error(`no ${name} among ${pieces(given).map((piece) => piece.name)}`);
  return [one.widthMm, one.heightMm, one.count];
}

/** Any plan that the fields allow. */
export const plans = anyPlan(MAKE_FIELDS, DEFAULT_MAKE);

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
    square: 3,
    joint: 8,
    spine: 16,
    margin: 3,
    flap: 30,
    tie: 200,
    slackWidth: 4,
    slackHeight: 6,
    slackThickness: 2,
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
      thickness: 20,
      slackWidth: 2,
      slackHeight: 2,
      slackThickness: 2,
      lidDepth: 8,
      lidRoom: 1,
      covering: 0.25,
      margin: 1,
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

describe('worked by hand', () => {
  test('a case: Vaughn’s boards are as wide as the book and 1/4 in longer, as far apart as the book is thick and two joints', () => {
    const eighth = 25.4 / 8;
    const book = { width: 127, height: 203.2, thickness: 25.4, square: eighth, joint: eighth, spine: 25.4, board: 2.5 };
    const [width, height] = size(book, 'board');
    expect(width).toBeCloseTo(127, 9);
    expect(height).toBeCloseTo(203.2 + 25.4 / 4, 9);
    expect(size(book, 'cover')[0] - 2 * 127).toBeCloseTo(25.4 + 2 * eighth, 9);
  });
  test('a slip case of the University of Brighton: a book of 113 × 157 × 12 mm in 2 mm board', () => {
    const given = { project: 'slip-case', width: 113, height: 157, thickness: 12, board: 2 } as const;
    // The worksheet makes the sides as wide as the book and one board.
    expect(size(given, 'side')).toEqual([115, 163, 2]);
    expect(size(given, 'back')).toEqual([14, 163, 1]);
    expect(size(given, 'top and bottom')).toEqual([113, 14, 2]);
  });
  test('a quarter binding covers what the full one covers, and the lap twice', () => {
    const quarter = pieces({ cover: 'quarter' });
    const cut = (name: string) => cutSizeOf(quarter.find((one) => one.name === name)!);
    const full = cutSizeOf(pieces({}).find((one) => one.name === 'cover')!);
    expect(cut('spine cloth').widthMm + 2 * cut('side').widthMm).toBeCloseTo(full.widthMm + 2 * 3, 9);
    expect(cut('side').heightMm).toBe(full.heightMm);
  });
  test('an accordion of twelve panels of 100 from strips of 420: four and a tab, four and a tab, four', () => {
    const given = { project: 'accordion', width: 100, panels: 12, sheet: 420 } as const;
    expect(stripsOf(plan(given), 10)).toEqual({ panels: [4, 4, 4], total: 1220 });
    expect(size(given, 'strip 1, 4 panels and a tab')[0]).toBe(410);
    expect(size(given, 'strip 3, 4 panels')[0]).toBe(400);
  });
  test('thickness from leaves: 96 of 110 µm are 10.56 mm', () => {
    expect(thicknessOf(plan({ thicknessFrom: 'leaves' }))).toBeCloseTo(10.56, 9);
  });
  test('a portfolio’s linings stand back 3 mm on every side of the boards', () => {
    const [width, height] = size({ project: 'portfolio' }, 'board');
    expect(size({ project: 'portfolio' }, 'lining')).toEqual([width - 6, height - 6, 2]);
  });
});

describe('holds for any plan', () => {
  const good = (check: (plan: MakePlan, pieces: readonly MakePiece[]) => void) => {
    let answered = 0;
    fc.assert(
      fc.property(plans, (one) => {
        const found = makePieces(one);
        if (!found.ok) {
          for (const { field, message } of found.errors) {
            expect(askedOf(one, MAKE_FIELDS)).toContain(field);
            expect(message).not.toMatch(/NaN|undefined|Infinity/);
          }
          return;
        }
        answered += 1;
        check(one, found.value);
      }),
      { numRuns: 400 },
    );
    expect(answered).toBeGreaterThan(100);
  };

  test('every piece has a size, a count and turn-ins that are numbers', () => {
    good((_, all) => {
      for (const one of all) {
        const { widthMm, heightMm } = cutSizeOf(one);
        for (const mm of [one.widthMm, one.heightMm, widthMm, heightMm, one.count])
          expect(Number.isFinite(mm) && mm >= 1).toBe(true);
        if (one.gluedPart) {
          expect(one.gluedPart.widthMm).toBeLessThanOrEqual(one.widthMm + 1e-9);
          expect(one.gluedPart.heightMm).toBeLessThanOrEqual(one.heightMm + 1e-9);
        }
      }
      for (const one of gluedPieces(all)) expect(areaOf(one)).toBeGreaterThan(0);
    });
  });
  test('a case closes: its cover is two boards, two joints, the spine and two turn-ins', () => {
    good((one, all) => {
      if (one.project !== 'notebook' || one.cover !== 'full') return;
      const m = measuresOf(one);
      const board = all.find(({ name }) => name === 'board')!;
      const cover = cutSizeOf(all.find(({ name }) => name === 'cover')!);
      expect(cover.widthMm).toBeCloseTo(2 * board.widthMm + 2 * m.joint + m.spine + 2 * m.turnIn, 6);
      // Closed, the board reaches from its joint to a square beyond the leaves.
      expect(m.joint + board.widthMm).toBeCloseTo(one.width + m.square, 6);
      expect(caseOf(one, m).board.width).toBe(board.widthMm);
    });
  });
  test('a lid goes over the covered tray, and the tray takes what goes in', () => {
    good((one) => {
      if (one.project !== 'lidded-box') return;
      const m = measuresOf(one);
      const [tray, lid] = [trayOf(one, m), lidOf(one, m)];
      expect(tray.inside.width).toBeGreaterThanOrEqual(one.width);
      expect(lid.inside.width).toBeGreaterThanOrEqual(tray.outside.width + 2 * m.covering + m.lidRoom);
      expect(lid.inside.height).toBeGreaterThanOrEqual(tray.outside.height + 2 * m.covering + m.lidRoom);
    });
  });
  test('a slip case is inside as large as the book and its slack', () => {
    good((one, all) => {
      if (one.project !== 'slip-case') return;
      const m = measuresOf(one);
      const side = all.find(({ name }) => name === 'side')!;
      expect(side.widthMm - one.board).toBeCloseTo(one.width + m.slackWidth, 6);
      expect(side.heightMm - 2 * one.board).toBeCloseTo(one.height + m.slackHeight, 6);
      expect(insideOf(one, m).thickness).toBeGreaterThanOrEqual(thicknessOf(one));
    });
  });
  test('an accordion’s strips hold all of its panels, and fit the sheet', () => {
    good((one, all) => {
      if (one.project !== 'accordion') return;
      const m = measuresOf(one);
      const { panels } = stripsOf(one, m.tab);
      expect(panels.reduce((sum, count) => sum + count, 0)).toBe(one.panels);
      const strips = all.filter(({ name }) => name.startsWith('strip'));
      expect(strips.reduce((sum, { count }) => sum + count, 0)).toBe(panels.length);
      if (one.sheet !== undefined)
        for (const { widthMm } of strips) expect(widthMm).toBeLessThanOrEqual(one.sheet + 1e-9);
    });
  });
  test('a link brings back the very plan', () => {
    fc.assert(
      fc.property(plans, (one) => {
        const link = encodePlan(one, MAKE_FIELDS);
        expect(decodePlan(link, MAKE_FIELDS)).toEqual({ plan: one, dropped: [] });
      }),
    );
  });
  test('any text for a link gives a plan and never throws', () => {
    const keys = Object.values(MAKE_FIELDS).map(({ key }) => key);
    const values = fc.oneof(fc.string(), fc.constantFrom('', '-1', '1e9', 'NaN', 'Infinity', '0', '3,5', '%E0%A4%A'));
    const tails = fc
      .array(fc.tuple(fc.constantFrom(...keys), values))
      .map((pairs) => pairs.map((p) => p.join('=')).join('&'));
    fc.assert(
      fc.property(fc.oneof(fc.string(), tails), (text) => {
        const { plan: found } = decodePlan(text, MAKE_FIELDS);
        const made = makePieces(found);
        expect(made.ok || made.errors.length > 0).toBe(true);
        expect(JSON.stringify(made)).not.toMatch(/NaN|Infinity|null/);
      }),
      { numRuns: 300 },
    );
  });
});
