/** The sheets calculator, as a reader meets it. */
import { cleanup, fireEvent, render, screen, within } from '@testing-library/preact';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import Sheets from '../../../src/islands/cut/Cut';
import { answer, doing, linkRead, text } from '../support/reader';

const field = (id: string) => document.getElementById(`cut-${id}`) as HTMLInputElement;
const type = (id: string, value: string) => doing(() => fireEvent.input(field(id), { target: { value } }));
const pick = (id: string, value: string) => doing(() => fireEvent.change(field(id), { target: { value } }));
const press = (name: string) => doing(() => fireEvent.click(screen.getByRole('button', { name })));
const message = (id: string) => text(document.getElementById(`cut-${id}-error`));
const link = () => decodeURIComponent(screen.getByLabelText<HTMLInputElement>(/^Link to exactly/).value);

const open = async (tail = '') => {
  window.history.replaceState(null, '', `/cut/${tail}`);
  await doing(() =>
    render(<Sheets address="/cut/" cautions={{ knife: { title: 'Knives', text: 'Fingers behind the edge.' } }} />),
  );
  await linkRead();
};

/** By hand: boards of 50 × 100 out of 100 × 100, two a sheet. */
const HALVES = '?v=1&in=mm&sheets=board~100x100~long&pieces=1~half~50x100x1~height&kits=4&kerf=0';

beforeEach(() => window.history.replaceState(null, '', '/'));
afterEach(cleanup);

describe('the answer', () => {
  test('says the sheets, the proof and the caution, and draws each sheet with its words', async () => {
    await open(HALVES);
    expect(answer()).toContain('2 sheets of board. Left over: nothing of the board. Proved');
    expect(answer()).toContain('Fingers behind the edge');
    const drawing = screen.getByRole('img', { name: /^A sheet of board, 100 × 100 mm, cut into 2 × half/ });
    // the sheet and its two pieces, and one cut
    expect(drawing.querySelectorAll('rect')).toHaveLength(3);
    expect(drawing.querySelectorAll('line')).toHaveLength(1);
    expect(screen.getByText('Cut 2 sheets like this')).toBeTruthy();
    expect(text(screen.getByText('The cuts, in order').nextElementSibling)).toMatch(
      /Cut the sheet from top to bottom, 50 mm from the left edge: 2 × piece 1 \(half\)\./,
    );
  });
  test('follows the kits, the size and the grain', async () => {
    await open(HALVES);
    await type('kits', '5');
    expect(answer()).toContain('3 sheets of board');
    await pick('stock-0-size', 'a4');
    // By hand: grain long is upright in A4, so pieces of 50 × 100 stand: four across, two down.
    expect(field('stock-0-high').value).toBe('297');
    expect(answer()).toContain('1 sheet of board');
  });
  test('a saw takes room: two halves no longer come out of one sheet', async () => {
    await open(HALVES);
    await type('kerf', '1');
    expect(answer()).toContain('4 sheets of board');
    expect(text(screen.getByRole('group', { name: 'Look out' }))).toMatch(/^Each cut takes 1 mm/);
  });
});

describe('rows', () => {
  test('a piece is added, filled in and taken away', async () => {
    await open(HALVES);
    await press('Add a piece');
    // an empty row is a message, not a lost answer
    expect(answer()).toContain('2 sheets of board');
    expect(message('piece-1-wide')).toMatch(/^The width of piece 2 is missing/);
    // the words of the form: its labels say "Sheet 1" and "Number"
    await type('piece-1-count', '0');
    expect(message('piece-1-count')).toMatch(/^The number of piece 2 must be/);
    await type('piece-1-count', '1');
    await type('piece-1-wide', '100');
    await type('piece-1-high', '100');
    expect(answer()).toContain('6 sheets of board');
    await press('Remove piece 2');
    expect(answer()).toContain('2 sheets of board');
  });
  test('a second sheet takes the pieces that name it; taken away, they go back to the first', async () => {
    await open(HALVES.replace('height', 'height_1~cover~40x40x1~either'));
    await press('Add a sheet');
    await type('stock-1-name', 'cloth');
    await pick('piece-1-stock', '2');
    expect(answer()).toContain('2 sheets of board and 1 sheet of cloth');
    expect(link()).toContain('pieces=1~half~50x100x1~height_2~cover~40x40x1~either');
    await press('Remove sheet 2');
    expect(link()).toContain('pieces=1~half~50x100x1~height_1~cover~40x40x1~either');
    expect(answer()).not.toContain('cloth');
  });
  test('another unit writes the lengths anew and leaves what cannot be read', async () => {
    await open(HALVES);
    await pick('unit', 'cm');
    expect(field('stock-0-wide').value).toBe('10');
    expect(field('piece-0-wide').value).toBe('5');
    expect(answer()).toContain('2 sheets of board');
    await type('piece-0-wide', 'wide');
    await pick('unit', 'in');
    expect(field('piece-0-wide').value).toBe('wide');
    // 100 mm, which no 32nd of an inch is
    expect(field('stock-0-wide').value).toBe('3.93701');
  });
});

describe('bad input stands beside its field, and nothing is lost', () => {
  test.for([
    ['kits', '0', /whole number from 1 to 200/],
    ['kits', 'NaN', /whole number from 1 to 200/],
    ['piece-0-wide', '0', /must be from 1 to 5000 mm/],
    ['piece-0-wide', '120', /“half” is larger than the sheet: 20 mm too long for the sheet’s width/],
    ['piece-0-count', '1.5', /whole number from 1 to 999/],
    ['stock-0-high', 'Infinity', /is a length such as/],
    ['stock-0-trim', '50', /trim leaves nothing of the sheet/],
    ['stock-0-price', 'cheap', /number from 0 to 100000/],
    ['kerf', '99', /from 0 to 10 mm/],
  ] as const)('%s: "%s"', async ([id, value, says]) => {
    await open(HALVES);
    const before = answer();
    await type(id, value);
    expect(field(id).value).toBe(value);
    expect(message(id)).toMatch(says);
    expect(answer()).toBe(before);
  });
  test('grain that cannot be kept says what would help', async () => {
    await open('?sheets=board~100x200~long&pieces=1~strip~150x50x1~width&kits=1');
    expect(answer()).toContain('1 sheet of board');
    await pick('piece-0-grain', 'height');
    expect(message('piece-0-grain')).toMatch(/too long for the sheet’s width\. Turned, across the grain, it would fit/);
  });
  test('no pieces and too many', async () => {
    await open(HALVES);
    await press('Remove piece 1');
    expect(screen.getAllByText('Give at least one piece.').length).toBeGreaterThan(1);
    await press('Add a piece');
    await type('piece-0-wide', '10');
    await type('piece-0-high', '10');
    await type('piece-0-count', '999');
    expect(screen.getAllByText(/That is 3996 pieces; one plan takes at most 2000/).length).toBeGreaterThan(1);
  });
});

describe('links', () => {
  test('what was seen comes back, and a link that cannot be answered is named', async () => {
    await open(HALVES);
    const tail = new URL(screen.getByLabelText<HTMLInputElement>(/^Link to exactly/).value).search;
    const seen = answer();
    cleanup();
    await open(tail);
    expect(answer()).toBe(seen);
    cleanup();
    await open('?sheets=board~100x100~long&pieces=1~huge~500x500x1~either&kits=2');
    const region = within(screen.getByRole('region', { name: 'The answer' }));
    expect(text(region.getByRole('status'))).toMatch(/could not be read.*sheets, pieces/);
    expect(answer()).not.toMatch(/NaN|undefined|Infinity/);
  });
});
