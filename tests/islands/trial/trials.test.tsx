/** The trial islands in a page, without the network and without a real clock. */
import { cleanup, fireEvent, render, screen, within } from '@testing-library/preact';
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { cellsOf } from '../../../src/core/trial/analysis';
import { drawOrder, STANDARD_QUESTIONS } from '../../../src/core/trial/design';
import type { Trial } from '../../../src/core/trial/record';
import TrialCards from '../../../src/islands/trial/TrialCards';
import TrialPlan from '../../../src/islands/trial/TrialPlan';
import TrialRead from '../../../src/islands/trial/TrialRead';
import TrialRun from '../../../src/islands/trial/TrialRun';
import { HeatTable } from '../../../src/islands/trial/HeatTable';
import { clockText } from '../../../src/core/base/clock-text';
import { openShelf } from '../../../src/stores/trial/shelf';
import { trialWith } from '../../core/support/trial';

const PATHS = { planAt: '/plan/', runAt: '/run/', readAt: '/read/', cardsAt: '/cards/', trialsAt: '/trials/' };
const SHELF = [
  { value: 'pva', text: 'PVA, as supplied' },
  { value: 'eva', text: 'EVA dispersion' },
  { value: 'wheat-starch-paste-thin', text: 'Wheat starch paste, thin' },
];
const OPEN = trialWith(() => undefined, { id: 't-open' });
const DEMO = trialWith(() => 'pass', { id: 'demo', demo: true, name: 'Invented' });

/** Papers × adhesives × 4 on two questions; the first adhesive passes on the heavier half, the others by turns. */
function largeTrial(papers: number, glues: number, over: Partial<Trial> = {}): Trial {
  const design = {
    papers: Array.from({ length: papers }, (_, i) => ({
      id: `paper-${i + 1}`,
      name: `P${i + 1}`,
      grammage: 20 + 10 * i,
    })),
    glues: Array.from({ length: glues }, (_, i) => ({ id: `glue-${i + 1}`, name: `G${i + 1}` })),
    holds: [20],
    replicates: 4,
  };
  const questions = STANDARD_QUESTIONS.slice(0, 2);
  return trialWith(() => undefined, {
    id: 't-large',
    ...design,
    questions,
    swatches: drawOrder(design, 1).map((swatch) => {
      const heavy = Number(swatch.paper.slice(6)) > papers / 2;
      const passes = swatch.glue === 'glue-1' ? heavy : swatch.block % 2 === 0;
      return {
        ...swatch,
        outcomes: Object.fromEntries(questions.map(({ id }) => [id, passes ? ('pass' as const) : ('fail' as const)])),
      };
    }),
    ...over,
  });
}

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

const TOOLS = [
  { value: 'brush-full', text: 'Bristle brush, full coat' },
  { value: 'roller', text: 'Foam or short-pile roller' },
];

describe('the planner', () => {
  const show = () =>
    render(
      <TrialPlan
        families={[{ value: 'unryu', text: 'Unryu' }]}
        adhesives={SHELF}
        substrates={[{ value: 'binders-board', text: 'Board' }]}
        tools={TOOLS}
        coats={{ 'brush-full': { low: 40, middle: 65, high: 110, basis: 'from-memory' } }}
        runAt="/run/"
        next={[
          { id: 'cover', says: 'How much it takes', path: '/cover/' },
          { id: 'cut', says: 'Cut it from sheets', path: '/cut/' },
        ]}
      />,
    );
  test('ends in its next steps, which carry its figures once one is meant', async () => {
    show();
    const next = screen.getByRole('navigation', { name: 'Next' });
    const link = (name: string) => within(next).getByRole('link', { name }).getAttribute('href');
    expect(link('How much it takes')).toBe('/cover/');
    fireEvent.input(screen.getByLabelText('Swatches of each'), { target: { value: '3' } });
    fireEvent.focusIn(within(next).getByRole('link', { name: 'How much it takes' }));
    // one paper with two adhesives: three swatches of 50 × 70 mm with the first, six boards for both
    await expect.poll(() => link('How much it takes')).toMatch(/pieces=\d+x\d+x3(?:&|$)/);
    expect(decodeURIComponent(link('Cut it from sheets')!)).toMatch(/1~board~\d+x\d+x6~height/);
  });
  test('says how many swatches, and what so few can show', async () => {
    show();
    fireEvent.input(screen.getByLabelText('Swatches of each'), { target: { value: '3' } });
    expect(await screen.findByRole('heading', { name: '6 swatches' })).toBeTruthy();
    // two questions: 1 in 32 is not below 1 in 40
    expect(await screen.findByText(/^With 3 each, with 2 comparisons on the page, no outcome tells/)).toBeTruthy();
    fireEvent.input(screen.getByLabelText('Swatches of each'), { target: { value: '4' } });
    expect(await screen.findByText(/always against never, not 3 of 4 against 1 of 4.*“partly”/)).toBeTruthy();
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
  test('papers and adhesives come and go; a name follows the pick from the shelf until one is typed', async () => {
    show();
    fireEvent.click(screen.getByRole('button', { name: 'Add a paper' }));
    expect(await screen.findByRole('heading', { name: '16 swatches' })).toBeTruthy();
    const first = screen.getByRole('group', { name: 'Adhesive 1' });
    fireEvent.input(within(first).getByLabelText('What you call it'), { target: { value: 'Old pot' } });
    fireEvent.change(within(first).getByLabelText('On the shelf it is'), { target: { value: 'eva' } });
    await expect
      .poll(() => (within(first).getByLabelText('What you call it') as HTMLInputElement).value)
      .toBe('Old pot');
    const second = screen.getByRole('group', { name: 'Adhesive 2' });
    fireEvent.change(within(second).getByLabelText('On the shelf it is'), { target: { value: 'eva' } });
    await expect
      .poll(() => (within(second).getByLabelText('What you call it') as HTMLInputElement).value)
      .toBe('EVA dispersion');
    fireEvent.click(screen.getByRole('button', { name: 'Remove paper 2' }));
    expect(await screen.findByRole('heading', { name: '8 swatches' })).toBeTruthy();
  });
});

describe('the bench', () => {
  test('judges, goes on, and undoes', async () => {
    openShelf().put(OPEN);
    at(OPEN.id);
    render(<TrialRun {...PATHS} adhesives={SHELF} tools={TOOLS} />);
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
  test('says how a swatch is made, and takes another tool for the whole trial', async () => {
    openShelf().put(OPEN);
    at(OPEN.id);
    render(<TrialRun {...PATHS} adhesives={SHELF} tools={TOOLS} />);
    await expect.poll(() => document.querySelector('.run-what')?.textContent).toContain('full brush');
    fireEvent.change(screen.getByLabelText('Spread with'), { target: { value: 'roller' } });
    await expect.poll(() => document.querySelector('.run-what')?.textContent).toContain('roller');
    expect(openShelf().read(OPEN.id)?.method).toEqual({ tool: 'roller' });
  });
  test('a trial that is not here is said to be elsewhere', async () => {
    at('t-nowhere');
    render(<TrialRun {...PATHS} adhesives={SHELF} tools={TOOLS} />);
    expect(await screen.findByText(/holds no such trial/)).toBeTruthy();
  });
  test('a swatch laid before the page opened counts from then', async () => {
    vi.useFakeTimers({ toFake: ['Date'] });
    const laidAt = Date.now() - 5000;
    openShelf().put({ ...OPEN, swatches: OPEN.swatches.map((one) => (one.number === 1 ? { ...one, laidAt } : one)) });
    at(OPEN.id);
    render(<TrialRun {...PATHS} adhesives={SHELF} tools={TOOLS} />);
    // 20 s in all, 5 gone
    expect((await screen.findByRole('timer')).textContent).toBe('0:15');
  });
  test('clock words', () => {
    expect([0, 7, 65, 3600].map(clockText)).toEqual(['0:00', '0:07', '1:05', '1:00:00']);
  });
});

describe('an adhesive by its name and by the shelf’s', () => {
  const glues = [
    { id: 'glue-1', name: 'Old pot', record: 'eva' },
    { id: 'glue-2', name: 'PVA, as supplied', record: 'pva' },
  ];
  test('at the bench and on the cards both stand, where they differ', async () => {
    const trial = { ...OPEN, glues };
    openShelf().put(trial);
    at(trial.id);
    render(<TrialRun {...PATHS} adhesives={SHELF} tools={TOOLS} />);
    const place = trial.swatches.find(({ glue }) => glue === 'glue-1')!.number;
    fireEvent.click((await screen.findAllByText(/Old pot/))[0]!);
    await expect.poll(() => document.querySelector('.run-number')?.textContent).toBe(String(place));
    expect(document.querySelector('.run-what')?.textContent).toContain('Old poton the shelf: EVA dispersion');
    cleanup();
    render(<TrialCards demo={trial} adhesives={SHELF} />);
    const cards = [...document.querySelectorAll('.card')].map(({ textContent }) => textContent ?? '');
    expect(cards.filter((text) => text.includes('Old poton the shelf: EVA dispersion'))).toHaveLength(6);
    expect(cards.filter((text) => text.includes('PVA, as suppliedlift after'))).toHaveLength(6);
  });
  test('a trial of the time when an old name was kept says so, until it is settled', async () => {
    const doubtful = {
      ...OPEN,
      glues: [{ id: 'glue-1', name: 'PVA', record: 'eva', doubtful: true as const }, glues[1]!],
    };
    openShelf().put(doubtful);
    at(doubtful.id);
    render(<TrialRun {...PATHS} adhesives={SHELF} tools={TOOLS} />);
    expect(await screen.findByText(/The name “PVA” may not match what was glued/)).toBeTruthy();
    fireEvent.click(screen.getByRole('button', { name: 'It was EVA dispersion' }));
    await expect.poll(() => screen.queryByText(/may not match/)).toBeNull();
    expect(openShelf().read(doubtful.id)?.glues[0]).toEqual({ id: 'glue-1', name: 'EVA dispersion', record: 'eva' });
    openShelf().put(doubtful);
    fireEvent.click(await screen.findByRole('button', { name: 'It was PVA' }));
    await expect.poll(() => openShelf().read(doubtful.id)?.glues[0]).toEqual({ id: 'glue-1', name: 'PVA' });
  });
});

describe('the reading page', () => {
  test('says that it is still working, tables first, and then what a large trial shows', async () => {
    const large = largeTrial(12, 6);
    openShelf().put(large);
    at(large.id);
    render(<TrialRead demo={DEMO} {...PATHS} adhesives={SHELF} />);
    expect(await screen.findByText(/^Still working/)).toBeTruthy();
    await expect.poll(() => document.querySelectorAll('.heat').length).toBe(2);
    await expect.poll(() => screen.queryByText(/^Still working:/)).toBeNull();
    // for each question what came out, and one fold below how sure that is
    expect(document.querySelectorAll('.takeaways')).toHaveLength(4);
    expect(document.querySelectorAll('details:not([open]) > .takeaways')).toHaveLength(2);
    expect(screen.getByText(/^This page asks \d+ times/)).toBeTruthy();
    // the curves come after that, one by one
    await expect.poll(() => screen.queryByText(/Still working on the curve/)).toBeNull();
    expect(document.querySelectorAll('polyline.ink')).toHaveLength(2);
  }, 120_000);
  test('compares two adhesives either way round', async () => {
    render(<TrialRead demo={largeTrial(3, 2, { demo: true })} {...PATHS} adhesives={SHELF} />);
    const [one] = screen.getAllByLabelText('One');
    const [other] = screen.getAllByLabelText('The other');
    const mean = () => one!.closest('details')!.querySelector('td')!.textContent;
    const before = mean();
    fireEvent.change(one!, { target: { value: 'glue-2' } });
    expect(await screen.findByText('Choose two different adhesives.')).toBeTruthy();
    fireEvent.change(other!, { target: { value: 'glue-1' } });
    await expect.poll(() => screen.queryByText('Choose two different adhesives.')).toBeNull();
    expect(before === mean() || before === `−${mean()}` || `−${before}` === mean()).toBe(true);
    expect(before).not.toBe('0');
    expect(before).not.toBe(mean());
  });
  test('opens with the invented trial, and says that it is', () => {
    render(<TrialRead demo={DEMO} {...PATHS} adhesives={SHELF} />);
    expect(screen.getByText(/nobody laid these swatches/)).toBeTruthy();
  });
  test('a name is text', async () => {
    const nasty = { ...trialWith(() => 'pass'), id: 't-x', name: '<img src=x onerror=alert(1)>' };
    openShelf().put(nasty);
    at('t-x');
    render(<TrialRead demo={DEMO} {...PATHS} adhesives={SHELF} />);
    expect(await screen.findByRole('heading', { name: nasty.name })).toBeTruthy();
    expect(document.querySelector('img')).toBeNull();
  });
  test('the table tells how a pairing stands by word and by pattern', () => {
    const trial = trialWith(({ glue }) => (glue === 'glue-1' ? 'pass' : 'fail'));
    const twice = { ...trial, swatches: trial.swatches.flatMap((one) => [one, { ...one, number: one.number + 100 }]) };
    render(<HeatTable trial={twice} cells={cellsOf(twice, 'lift')} question="Lifts" />);
    const cells = [...document.querySelectorAll('td')].map((td) => [td.dataset['standing'], td.textContent]);
    // Clopper and Pearson at 95 %: 6 of 6 is 54 to 100 % (the sixth root of 0.025), 0 of 6 is 0 to 46 %
    expect(cells[0]).toEqual(['mostly passes', '6 of 6mostly passes54\u00a0% to 100\u00a0%']);
    expect(cells[1]).toEqual(['mostly fails', '0 of 6mostly fails0\u00a0% to 46\u00a0%']);
  });
});

test('an address that names the invented trial itself shows its cards; one that names a stranger says that it is not here', async () => {
  at(DEMO.id);
  render(<TrialCards demo={DEMO} adhesives={SHELF} />);
  await screen.findByText(/These are the cards of the invented trial/);
  expect(screen.queryByText(/holds no such trial/)).toBeNull();
  cleanup();
  at('t-of-somebody');
  render(<TrialCards demo={DEMO} adhesives={SHELF} />);
  await screen.findByText(/holds no such trial/);
});

test('cards come in the drawn order; labels bear numbers only', async () => {
  render(<TrialCards demo={DEMO} adhesives={SHELF} />);
  const numbers = () => [...document.querySelectorAll('.card-number')].map(({ textContent }) => Number(textContent));
  expect(numbers()).toEqual(DEMO.swatches.map(({ number }) => number));
  fireEvent.click(screen.getByRole('radio', { name: /Labels/ }));
  await expect
    .poll(() => document.querySelector('.labels')?.textContent)
    .toBe(DEMO.swatches.map(({ number }) => number).join(''));
});
