/** Projects: pieces that fit each other, whatever is made and however it is measured. */
import { askedOf } from '../../../src/core/link/fields';
import { anyPlan } from '../support/any-plan';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { areaOf } from '../../../src/core/base/piece';
import { accordionCovers, liddedBox, notebookCase, slipCase } from '../../../src/core/cover/pieces';
import { stripsOf } from '../../../src/core/make/accordion';
import { insideOf, lidOf, trayOf } from '../../../src/core/make/box';
import { caseOf } from '../../../src/core/make/case';
import { DEFAULT_MAKE, MAKE_FIELDS, type MakePlan } from '../../../src/core/make/fields';
import { PROJECT_IDS } from '../../../src/core/make/projects';
import { MEASURES } from '../../../src/core/make/measures';
import { cutSizeOf, gluedPieces, type MakePiece } from '../../../src/core/make/piece';
import { makePieces } from '../../../src/core/make/pieces';
import { measuresOf, thicknessOf } from '../../../src/core/make/plan';
import { PROJECTS } from '../../../src/core/make/projects';
import { COVER_FIELDS, rowsOf } from '../../../src/core/cover/plan';
import { coverTailFor } from '../../../src/core/handover/make-to-cover';
import { encodePlan } from '../../../src/core/link/plan-link';
import { decodePlan } from '../../../src/core/link/read-plan-link';

const plan = (given: Partial<MakePlan>): MakePlan => ({ ...DEFAULT_MAKE, ...given });
function pieces(given: Partial<MakePlan>): readonly MakePiece[] {
  const found = makePieces(plan(given));
  if (!found.ok) throw new Error(found.errors[0]?.message);
  return found.value;
}
function size(given: Partial<MakePlan>, name: string): readonly [number, number, number] {
  const one = pieces(given).find((piece) => piece.name === name);
  if (!one) throw new Error(`no ${name} among ${pieces(given).map((piece) => piece.name)}`);
  return [one.widthMm, one.heightMm, one.count];
}
const errorOf = (given: Partial<MakePlan>) => {
  const found = makePieces(plan(given));
  return found.ok ? undefined : found.errors[0]?.field;
};

/** Any plan that the fields allow. */
export const plans = anyPlan(MAKE_FIELDS, DEFAULT_MAKE);

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

describe('says no in the right place', () => {
  test.each([
    ['joint', { joint: 2, board: 3 }],
    ['joint', { width: 20, joint: 20 }],
    ['onBoard', { cover: 'quarter', onBoard: 200 }],
    ['lap', { cover: 'quarter', onBoard: 10, lap: 20 }],
    ['sheet', { project: 'accordion', sheet: 100 }],
    ['lidDepth', { project: 'lidded-box', lidDepth: 100 }],
    ['leaves', { thicknessFrom: 'leaves', leaves: 5000, caliper: 3000 }],
  ] as const)('%s', (field, given) => {
    expect(errorOf(given)).toBe(field);
  });
  test('a measure set for one project does not bear on another', () => {
    expect(pieces({ slackWidth: 30, lidDepth: 200, tab: 60 })).toEqual(pieces({}));
  });
});

describe('the cover calculator and the projects cover the same', () => {
  const body = { widthMm: 148, heightMm: 210, thicknessMm: 12, boardMm: 2.5 };
  const area = (all: Parameters<typeof areaOf>[0][]) => all.reduce((sum, one) => sum + areaOf(one), 0);
  test.each([
    ['notebook', notebookCase, {}],
    ['accordion', accordionCovers, {}],
    ['slip-case', slipCase, { lined: 'no' }],
    ['lidded-box', liddedBox, { lined: 'no' }],
  ] as const)('%s', (project, preset, given) => {
    expect(area(gluedPieces(pieces({ project, ...given })))).toBeCloseTo(area(preset(body)), 9);
  });
});

test('the link to the coverage calculator carries every glued piece, for any plan', () => {
  fc.assert(
    fc.property(plans, (one) => {
      const found = makePieces(one);
      if (!found.ok) return;
      const { plan: cover, dropped } = decodePlan(coverTailFor(one, found.value), COVER_FIELDS);
      expect(dropped).toEqual([]);
      expect(cover).toMatchObject({ thing: 'own', unit: one.unit });
      const glued = gluedPieces(found.value).slice(0, 20);
      const rows = rowsOf(cover);
      expect(rows.length).toBe(glued.length);
      // to a tenth of a millimetre on each side of each piece
      glued.forEach((piece, i) => {
        expect(Math.abs(rows[i]!.piece.widthMm - piece.widthMm)).toBeLessThan(0.051);
        expect(rows[i]!.piece.count).toBe(piece.count);
      });
    }),
    { numRuns: 300 },
  );
});

test('each project names its measures, and each measure is asked by some project', () => {
  const used = new Set(PROJECT_IDS.flatMap((id) => PROJECTS[id].measures));
  expect([...used].sort()).toEqual(Object.keys(MEASURES).sort());
});
