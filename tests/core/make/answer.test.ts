/** What a maker is told of a project, on a book of round measures: what to cut, from what, and which measures may be changed. */
import { describe, expect, it, test } from 'vitest';
import { makeAnswer } from '../../../src/core/make/answer';
import { DEFAULT_MAKE, type MakePlan } from '../../../src/core/make/fields';
import { PROJECT_IDS } from '../../../src/core/make/projects';
/** Boards 100 + 3 − 8 wide and 200 + 6 high; the cover over both, two joints and the spine, 15 turned in all round. */
const BOOK = { width: 100, height: 200, thickness: 10, board: 2, turnIn: 15, square: 3, joint: 8, spine: 14 } as const;

function answered(given: Partial<MakePlan> = {}) {
  const found = makeAnswer({ ...DEFAULT_MAKE, ...BOOK, ...given });
  if (!found.ok) throw new Error(found.errors[0]?.message);
  return found.value;
}

const plainly = (text: string) => text.replaceAll('\u00a0', ' ');

const plan = (given: Partial<MakePlan>): MakePlan => ({ ...DEFAULT_MAKE, ...given });

function answerFor(given: Partial<MakePlan>) {
  const found = makeAnswer(plan(given));
  if (!found.ok) throw new Error(found.errors[0]?.message);
  return found.value;
}

describe('what is said first', () => {
  it('what it is for, the boards, the covering as it is cut, and how many pieces there are', () => {
    const { sentence, brief } = answered();
    expect(plainly(sentence)).toMatch(
      /^For the text block of 100 × 200 × 10 mm, in board of 2 mm: two boards of 95 × 206 mm; the cover is cut 250 × 236 mm\. 6 pieces in all/,
    );
    expect(brief.map(plainly)).toEqual(['two boards', '95 × 206 mm']);
  });
  test.for([
    // the sizes that go in, 2 or 4 mm of room where that is usual, and two boards where they stand outside
    ['accordion', 'two boards', '106 × 206 mm', /the cover is cut 136 × 236 mm/],
    ['slip-case', 'two sides', '102 × 206 mm', /the cover of sides and back is cut/],
    ['lidded-box', 'the base of the tray', '102 × 202 mm', /the tray: cover of the walls is cut/],
    ['portfolio', 'two boards', '99 × 210 mm', /the cover is cut/],
  ] as const)('of the %s', ([project, what, size, cover]) => {
    const { brief, sentence } = answered({ project });
    expect(brief.map(plainly)).toEqual([what, size]);
    expect(plainly(sentence)).toContain(`${what} of ${size}`);
    expect(plainly(sentence)).toMatch(cover);
  });
  it('the size in the reader’s unit and by the marks of a rule, the thickness of the board as it was typed', () => {
    const inches = answered({ unit: 'in', width: 101.6, height: 203.2, thickness: 12.7, board: 3.175 });
    expect(plainly(inches.sentence)).toMatch(/4 × 8 × 1\/2 in, in board of 1\/8 in/);
    // 4 in and 3 − 8 mm are 3.803 in, 8 in and 6 mm are 8.236 in: the nearest 32nds
    expect(plainly(inches.brief[1])).toBe('3 13/16 × 8 1/4 in');
    expect(plainly(inches.asked)).toMatch(/^[A-Z].*, 4 × 8 in$/);
    // 100 mm are 3.937 in
    expect(plainly(answered({ unit: 'in' }).sentence)).toMatch(/of 3 15\/16 × /);
    expect(plainly(answered({ unit: 'cm', board: 2.25 }).sentence)).toMatch(/10 × 20 × 1 cm, in board of 0\.225 cm/);
  });
  it('what leaves come to, to a mark of the rule, and that sewing swells', () => {
    const leaves = { thicknessFrom: 'leaves', leaves: 100, caliper: 112 } as const;
    expect(plainly(answered(leaves).sentence)).toMatch(/pieces in all.*The leaves come to 11 mm.*sewing/);
    expect(answered({ ...leaves, thicknessFrom: 'measured' }).sentence).not.toMatch(/leaves come/);
    expect(answered({ ...leaves, project: 'accordion' }).sentence).not.toMatch(/leaves come/);
    expect(answered({ ...leaves, project: 'slip-case' }).sentence).toMatch(/leaves come/);
  });
  it('the figures by which two answers are told apart: board, cut cover, pieces', () => {
    expect(answered().figures).toEqual([95, 206, 250, 236, 6]);
  });
});

describe('the table', () => {
  it('each piece as it is cut, how many, from what, and how its grain runs', () => {
    const rows = answered({ cover: 'quarter', onBoard: 20, lap: 4 }).rows.map((row) => ({
      ...row,
      size: plainly(row.size),
    }));
    expect(rows).toEqual([
      { name: 'board', size: '95 × 206', count: 2, from: expect.stringMatching(/^board, .*along its height/) },
      { name: 'spine strip', size: '14 × 206', count: 1, from: expect.stringMatching(/^board/) },
      { name: 'spine cloth', size: '70 × 236', count: 1, from: expect.stringMatching(/^cloth, .*along its height/) },
      { name: 'side', size: '94 × 236', count: 2, from: expect.stringMatching(/^paper/) },
      { name: 'endpaper, folded once', size: '200 × 200', count: 2, from: expect.stringMatching(/^paper/) },
    ]);
  });
  it('grain along the width of what is laid across, either way where it does not matter, and lining paper', () => {
    const from = (project: MakePlan['project'], name: string) =>
      answered({ project }).rows.find((row) => row.name === name)?.from;
    expect(from('lidded-box', 'tray: long wall')).toMatch(/^board, .*along its width/);
    expect(from('lidded-box', 'tray: cover of the walls')).toMatch(/^paper, .*either way/);
    expect(from('slip-case', 'lining of a side')).toMatch(/^lining paper, .*along its height/);
  });
  it('names its unit', () => {
    expect((['mm', 'cm', 'in'] as const).map((unit) => answered({ unit }).unitWord)).toEqual([
      'millimetres',
      'centimetres',
      'inches',
    ]);
  });
});

describe('the measures', () => {
  const usual = (given: Partial<MakePlan>) =>
    Object.fromEntries(answered(given).measures.map((one) => [one.id, one.usual]));
  it('those that bear on this project and no other fields, with what is usual', () => {
    // squares 3 and turn-ins 18 mm are common, the joint 7, the spine the block and two boards
    expect(usual({})).toEqual({ square: '3', joint: '7', spine: '14', turnIn: '18', corner: '2' });
    expect(Object.keys(usual({ cover: 'quarter' }))).toEqual(expect.arrayContaining(['onBoard', 'lap']));
    expect(Object.keys(usual({ project: 'accordion' })).sort()).toEqual(['corner', 'square', 'tab', 'turnIn']);
  });
  it('by the marks of a rule, but a layer of covering as thin as it is', () => {
    // a quarter of a millimetre is 0.00984 in
    expect(usual({ project: 'lidded-box', unit: 'mm' })).toMatchObject({ covering: '0.25', lidRoom: '1' });
    expect(usual({ project: 'lidded-box', unit: 'cm' })).toMatchObject({ covering: '0.025' });
    expect(usual({ project: 'lidded-box', unit: 'in' })).toMatchObject({ covering: '0.00984' });
    // 18 mm lie nearest to 23/32 in; a third of 12 mm of tray to 5/32
    expect(usual({ project: 'lidded-box', unit: 'in' })).toMatchObject({ turnIn: '23/32', lidDepth: '5/32' });
  });
});

it('each project is drawn, and its steps and warnings come along', () => {
  for (const project of PROJECT_IDS) {
    const { pictures, steps, pieces, rows } = answered({ project });
    expect(pictures.length).toBeGreaterThan(0);
    expect(steps.length).toBeGreaterThan(4);
    expect(rows.map(({ name }) => name)).toEqual(pieces.map(({ name }) => name));
  }
  expect(answered().warnings).toEqual([]);
  expect(answered({ spine: 3, thickness: 3 }).warnings).toHaveLength(1);
});

it('what cannot be made is refused beside its field', () => {
  const found = makeAnswer({ ...DEFAULT_MAKE, ...BOOK, joint: 1 });
  expect(found.ok ? [] : found.errors.map(({ field }) => field)).toEqual(['joint']);
});

describe('the sentence', () => {
  it('says what is made, in the unit that was typed', () => {
    expect(plainly(answerFor({}).sentence)).toMatch(/148 × 210 × 12 mm, in board of 2\.5 mm: two boards of /);
    expect(plainly(answerFor({ unit: 'cm' }).sentence)).toContain('14.8 × 21 × 1.2 cm');
    // 6 in is 152.4 mm, 8 in 203.2 mm, 1/2 in 12.7 mm
    expect(plainly(answerFor({ unit: 'in', width: 152.4, height: 203.2, thickness: 12.7 }).sentence)).toContain(
      '6 × 8 × 1/2 in',
    );
    expect(answerFor({ unit: 'in' }).unitWord).toBe('inches');
  });
  it('says what leaves come to, but not of an accordion', () => {
    // 96 leaves of 110 µm are 10.56 mm
    expect(answerFor({ thicknessFrom: 'leaves' }).sentence).toMatch(/The leaves come to 10\.[56]/);
    expect(answerFor({ thicknessFrom: 'leaves', project: 'accordion' }).sentence).not.toContain('leaves come to');
    expect(answerFor({}).sentence).not.toContain('leaves come to');
    expect(plainly(answerFor({ project: 'accordion' }).sentence)).toContain('148 × 210 mm, in board');
  });
});
