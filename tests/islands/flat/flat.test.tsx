/** The calculator of warp, as a reader meets it. */
import { cleanup, render, screen, within } from '@testing-library/preact';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import Flat from '../../../src/islands/flat/Flat';
import { answer, doing, linkRead, pick, press, text, type } from '../support/reader';

const field = (label: RegExp | string) => screen.getByLabelText<HTMLInputElement>(label);
const link = () => field(/^Link to exactly/).value.replace(/^[^?]*/, '');

const open = async (tail = '') => {
  window.history.replaceState(null, '', `/flat/${tail}`);
  const cautions = { 'valued-original': { title: 'Valued originals', text: 'Ask a conservator first.' } };
  await doing(() => render(<Flat cautions={cautions} address="/flat/" />));
  await linkRead();
};

beforeEach(() => window.history.replaceState(null, '', '/'));
afterEach(cleanup);

describe('what is typed', () => {
  test('a wider board bows further, and a board without weight on it further still', async () => {
    await open();
    expect(answer()).toMatch(/It will bow a little.*mm towards the paper when dry/);
    await type(/^Board’s width/, '30 cm');
    expect(answer()).toMatch(/It (?:may|will) warp/);
    const pressed = answer();
    await type(/^Under weight for/, '0');
    expect(answer()).not.toBe(pressed);
    expect(answer()).toMatch(/Without weight/);
  });
  test.for([
    ['wide', /^Board’s width/, 'width', /such as 235/],
    ['', /^Board’s width/, 'width', /from 10 to 2000 mm/],
    ['99', /^Its humidity/, 'humidity', /relative humidity of your room must be a number from 5 to 95 %/],
    ['-4', /^Where it will live/, 'later', /from 5 to 95 %/],
    ['80', /^Your room/, 'celsius', /temperature must be a number from 5 to 40 °C/],
    ['NaN', /^Under weight for/, 'press', /from 0 to 336 h/],
    ['5000', /^Paper’s weight/, 'paperWeight', /from 5 to 600 g\/m²/],
  ] as const)('"%s" for %s: a message beside it, the last answer, nothing lost', async ([silly, label, id, says]) => {
    await open();
    const before = answer();
    await type(label, silly);
    expect(field(label).value).toBe(silly);
    expect(field(label).getAttribute('aria-invalid')).toBe('true');
    expect(text(document.getElementById(`warp-${id}-error`))).toMatch(says);
    expect(field(label).getAttribute('aria-describedby')).toContain(`warp-${id}-error`);
    expect(answer()).toBe(before);
    expect(document.body.textContent).not.toMatch(/Infinity|undefined|\bNaN\b(?!")/);
  });
  test('another unit writes both lengths anew; the bow stays in millimetres', async () => {
    await open();
    // the lengths of the job stand before the bow, in the unit they were typed in
    const bow = () => answer().replace(/^Marbled paper, [\d.]+ × [\d.]+ \w+(?=It will)/, '');
    const before = bow();
    expect(before).toMatch(/^It will/);
    await pick('Both in', 'cm');
    expect(field(/^Board’s height/).value).toBe('21.6');
    expect(bow()).toBe(before);
    await pick('Both in', 'in');
    expect(field(/^Board’s height/).value).toBe('8 1/2');
    expect(answer()).toMatch(/mm towards the paper/);
  });
  test('a lining is asked for only where there is one, and turns the answer', async () => {
    await open();
    expect(screen.queryByLabelText(/^Lining’s weight/)).toBe(null);
    await press(screen.getByLabelText('a lining, glued with the same'));
    expect(screen.getByRole('img', { name: /The edge of the board/ })).toBeTruthy();
    expect(answer()).toMatch(/It will lie flat/);
    await pick('Lining’s grain', 'width');
    expect(answer()).toMatch(/make a saddle of the board/);
  });
});

describe('what helps', () => {
  test('a remedy is tried, the answer follows, and it is taken back', async () => {
    await open();
    const before = link();
    const button = screen.getByRole('button', { name: /^Try this: Both faces covered alike/ });
    expect(text(button.closest('td'))).toMatch(/^flat within/);
    await press(button);
    expect(answer()).toMatch(/It will lie flat.*flat within/);
    expect(document.activeElement?.id).toBe('warp-answer');
    expect(screen.queryByRole('button', { name: /Both faces covered alike/ })).toBe(null);
    await press(screen.getByRole('button', { name: 'Back to what it was' }));
    expect(link()).toBe(before);
  });
  test('the drawing says in words what the table says in figures', async () => {
    await open();
    const drawn = screen.getByRole('img', { name: /The edge of the board/ }).getAttribute('aria-label')!;
    const table = within(screen.getByRole('region', { name: 'The answer' })).getByRole('table');
    const dry = within(table).getByRole('row', { name: /^dry/ });
    expect(drawn).toContain(`dry, from the press, ${within(dry).getAllByRole('cell')[0]!.textContent}`);
  });
  test('cautions stand below', async () => {
    await open();
    expect(screen.getByRole('note', { name: 'Caution: Valued originals' })).toBeTruthy();
  });
});

describe('links', () => {
  test('a link opened again shows the same fields and the same answer', async () => {
    await open();
    await pick('The cover paper is most like', 'wove-text');
    await type(/^Paper’s weight/, '120');
    await type(/^Board’s thickness/, '1,5');
    await press(screen.getByLabelText('a lining, glued with the same'));
    await type(/^Lining’s weight/, '60');
    await type(/^Where it will live/, '70');
    const [sent, said] = [link(), answer()];
    cleanup();
    await open(sent);
    expect(answer()).toBe(said);
    expect(link()).toBe(sent);
    expect(field(/^Board’s thickness/).value).toBe('1.5');
    expect(field(/^Lining’s weight/).value).toBe('60');
    expect(screen.queryByRole('status')).toBe(null);
  });
  test('what cannot be read is named, and the rest is taken', async () => {
    await open('?v=1&paper=moon-paper&wide=300&rh=wet&board=leather&glue=%E0%A4%A');
    const said = text(screen.getByRole('status'));
    for (const part of ['rh (wet)', 'paper', 'board', 'glue']) expect(said).toContain(part);
    expect(field(/^Board’s width/).value).toBe('300');
  });
  test('a sender who saw other figures is told of', async () => {
    await open('?v=1&wide=148&seen=1_9.5_1_12_1');
    expect(text(screen.getByRole('status'))).toMatch(/other figures/);
  });
});
