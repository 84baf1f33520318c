/** The trial islands in a page, without the network and without a real clock. */
import { cleanup, fireEvent, render, screen, within } from '@testing-library/preact';
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { cellsOf } from '../../../src/core/trial/analysis';
import TrialCards from '../../../src/islands/trial/TrialCards';
import TrialPlan from '../../../src/islands/trial/TrialPlan';
import TrialRead from '../../../src/islands/trial/TrialRead';
import TrialRun from '../../../src/islands/trial/TrialRun';
import { HeatTable } from '../../../src/islands/trial/HeatTable';
import { clockText } from '../../../src/islands/trial/RunClock';
import { openShelf } from '../../../src/stores/trial/shelf';
import { trialWith } from '../../core/support/trial';

const PATHS = { planAt: '/plan/', runAt: '/run/', readAt: '/read/', cardsAt: '/cards/', trialsAt: '/trials/' };
const OPEN = trialWith(() => undefined, { id: 't-open' });
const DEMO = trialWith(() => 'pass', { id: 'demo', demo: true, name: 'Invented' });

beforeEach(() => {
  localStorage.clear();
  openShelf().refresh();
});
afterEach(() => {
  cleanup();
  window.history.replaceState(null, '', '/');
  vi.useRealTimers();
});

const at = (id: string) => window.history.replaceState(null, '', `/?trial=${id}`);

describe('the planner', () => {
  const show = () =>
    render(
      <TrialPlan
        families={[{ value: 'unryu', text: 'Unryu' }]}
        adhesives={[
          { value: 'pva', text: 'PVA' },
          { value: 'eva', text: 'EVA' },
        ]}
        substrates={[{ value: 'binders-board', text: 'Board' }]}
        coat={{ low: 40, middle: 65, high: 110, basis: 'from-memory' }}
        runAt="/run/"
      />,
    );
  test('says how many swatches, and what so few can show', async () => {
    show();
    fireEvent.input(screen.getByLabelText('Swatches of each'), { target: { value: '3' } });
    expect(await screen.findByRole('heading', { name: '6 swatches' })).toBeTruthy();
    expect(screen.getByText(/always against never, not 2 of 3 against 1 of 3/)).toBeTruthy();
  });
  test('an impossible number is named beside its field, and the last answer stays', async () => {
    show();
    const field = screen.getByLabelText('Swatches of each');
    fireEvent.input(field, { target: { value: '99' } });
    const message = await screen.findAllByText(/whole number from 1 to 12/);
    expect(message.some(({ id }) => id === 'plan-replicates-error')).toBe(true);
    expect(field.getAttribute('aria-invalid')).toBe('true');
    expect(screen.getByRole('heading', { name: '8 swatches' })).toBeTruthy();
    expect((field as HTMLInputElement).value).toBe('99');
  });
  test('papers and adhesives come and go; a name of one’s own survives a pick from the shelf', async () => {
    show();
    fireEvent.click(screen.getByRole('button', { name: 'Add a paper' }));
    expect(await screen.findByRole('heading', { name: '16 swatches' })).toBeTruthy();
    const first = screen.getByRole('group', { name: 'Adhesive 1' });
    fireEvent.input(within(first).getByLabelText('What you call it'), { target: { value: 'Old pot' } });
    fireEvent.change(within(first).getByLabelText('On the shelf it is'), { target: { value: 'eva' } });
    await expect
      .poll(() => (within(first).getByLabelText('What you call it') as HTMLInputElement).value)
      .toBe('Old pot');
    fireEvent.click(screen.getByRole('button', { name: 'Take out paper 2' }));
    expect(await screen.findByRole('heading', { name: '8 swatches' })).toBeTruthy();
  });
});

describe('the bench', () => {
  test('judges, goes on, and undoes', async () => {
    openShelf().put(OPEN);
    at(OPEN.id);
    render(<TrialRun {...PATHS} />);
    const pass = await screen.findByRole('button', { name: 'Pass' });
    fireEvent.click(pass);
    await expect.poll(() => screen.getByRole('button', { name: 'Pass' }).getAttribute('aria-pressed')).toBe('true');
    expect(openShelf().read(OPEN.id)?.swatches[0]?.outcomes).toEqual({ lift: 'pass' });
    fireEvent.click(screen.getByRole('button', { name: 'Next to do' }));
    await expect.poll(() => document.querySelector('.run-number')?.textContent).toBe('2');
    fireEvent.click(screen.getByRole('button', { name: 'Undo' }));
    await expect.poll(() => document.querySelector('.run-number')?.textContent).toBe('1');
    expect(openShelf().read(OPEN.id)?.swatches[0]?.outcomes).toEqual({});
  });
  test('a trial that is not here is said to be elsewhere', async () => {
    at('t-nowhere');
    render(<TrialRun {...PATHS} />);
    expect(await screen.findByText(/holds no such trial/)).toBeTruthy();
  });
  test('a swatch laid before the page opened counts from then', async () => {
    const laidAt = Date.now() - 5000;
    openShelf().put({ ...OPEN, swatches: OPEN.swatches.map((one) => (one.number === 1 ? { ...one, laidAt } : one)) });
    at(OPEN.id);
    render(<TrialRun {...PATHS} />);
    // 20 s in all, 5 gone: 15 left, or 14 by the time it is looked at
    expect((await screen.findByRole('timer')).textContent).toMatch(/^0:1[45]$/);
  });
  test('clock words', () => {
    expect([0, 7, 65, 3600].map(clockText)).toEqual(['0:00', '0:07', '1:05', '1:00:00']);
  });
});

describe('the reading page', () => {
  test('opens with the invented trial, and says that it is', () => {
    render(<TrialRead demo={DEMO} {...PATHS} />);
    expect(screen.getByText(/nobody laid these swatches/)).toBeTruthy();
  });
  test('a name is text', async () => {
    const nasty = { ...trialWith(() => 'pass'), id: 't-x', name: '<img src=x onerror=alert(1)>' };
    openShelf().put(nasty);
    at('t-x');
    render(<TrialRead demo={DEMO} {...PATHS} />);
    expect(await screen.findByRole('heading', { name: nasty.name })).toBeTruthy();
    expect(document.querySelector('img')).toBeNull();
  });
  test('the table tells how a pairing stands by word and by pattern', () => {
    const trial = trialWith(({ glue }) => (glue === 'glue-1' ? 'pass' : 'fail'));
    const twice = { ...trial, swatches: trial.swatches.flatMap((one) => [one, { ...one, number: one.number + 100 }]) };
    render(<HeatTable trial={twice} cells={cellsOf(twice, 'lift')} question="Lifts" />);
    const cells = [...document.querySelectorAll('td')].map((td) => [td.dataset['standing'], td.textContent]);
    // Wilson at 95 %: 6 of 6 is 61 to 100 %, 0 of 6 is 0 to 39 %
    expect(cells[0]).toEqual(['mostly passes', '6 of 6mostly passes61\u00a0% to 100\u00a0%']);
    expect(cells[1]).toEqual(['mostly fails', '0 of 6mostly fails0\u00a0% to 39\u00a0%']);
  });
});

test('cards come in the drawn order; labels bear numbers only', async () => {
  render(<TrialCards demo={DEMO} />);
  const numbers = () => [...document.querySelectorAll('.card-number')].map(({ textContent }) => Number(textContent));
  expect(numbers()).toEqual(DEMO.swatches.map(({ number }) => number));
  fireEvent.click(screen.getByRole('radio', { name: /Labels/ }));
  await expect
    .poll(() => document.querySelector('.labels')?.textContent)
    .toBe(DEMO.swatches.map(({ number }) => number).join(''));
});
