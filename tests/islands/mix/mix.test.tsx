/** The mixing and coverage calculators, as a reader meets them. */
import { cleanup, fireEvent, render, screen, waitFor, within } from '@testing-library/preact';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import Cover from '../../../src/islands/cover/Cover';
import Mix from '../../../src/islands/mix/Mix';
import { answer, doing, linkRead, pick, press, text, type } from '../support/reader';

const openMix = async (tail = '') => {
  window.history.replaceState(null, '', `/mix/${tail}`);
  await doing(() =>
    render(<Mix cautions={{ 'powder-dust': { title: 'Powder dust', text: 'Weigh it slowly.' } }} address="/mix/" />),
  );
  await linkRead();
};
const openCover = async (tail = '') => {
  window.history.replaceState(null, '', `/cover/${tail}`);
  const cautions = {
    'hot-liquid': { title: 'Hot glue scalds', text: 'Keep it in a water bath.' },
    preservatives: { title: 'It can irritate skin', text: 'Read the label.' },
  };
  const hurts = { 'animal-glue-hot': ['hot-liquid'], 'pva-mc-1-1': ['preservatives'] };
  await doing(() =>
    render(<Cover address="/cover/" flat={{ facts: [], warnings: [] }} cautions={cautions} hurts={hurts} />),
  );
  await linkRead();
};

beforeEach(() => window.history.replaceState(null, '', '/'));
afterEach(cleanup);

describe('mixing', () => {
  test('twice the strength is twice the powder', async () => {
    await openMix();
    expect(answer()).toContain('5.6 g');
    await type(/^Strength/, '5');
    expect(answer()).toContain('11.1 g');
  });
  test('a decimal comma is a decimal mark', async () => {
    await openMix();
    await type(/^Strength/, '5,0');
    expect(answer()).toContain('11.1 g');
  });
  test.for(['', 'abc', '-2', '0', '1e9', '99999', 'NaN', '２'])(
    '"%s" for the strength: a message, the last answer, nothing lost',
    async (silly) => {
      await openMix();
      const before = answer();
      await type(/^Strength/, silly);
      const field = screen.getByLabelText<HTMLInputElement>(/^Strength/);
      expect(field.value).toBe(silly);
      expect(field.getAttribute('aria-invalid')).toBe('true');
      expect(text(document.getElementById('mix-percent-error'))).toMatch(
        /The strength must be a number from 0\.05 to 40/,
      );
      expect(answer()).toBe(before);
      expect(document.body.textContent).not.toMatch(/Infinity|undefined|\bNaN\b(?!")/);
      await type(/^Strength/, '2.5');
      expect(document.getElementById('mix-percent-error')).toBe(null);
    },
  );
  test('another kind of job asks other things and keeps what was typed', async () => {
    await openMix();
    await type(/^Strength/, '3');
    await press(screen.getByLabelText('Cook starch paste'));
    expect(answer()).toMatch(/wheat starch/);
    await press(screen.getByLabelText('Dissolve a powder in water'));
    expect(screen.getByLabelText<HTMLInputElement>(/^Strength/).value).toBe('3');
  });
  test('a target above the stock says so beside its field and offers powder', async () => {
    await openMix('?do=dilute');
    await type(/^It is/, '2');
    await type(/^I want/, '3');
    expect(text(document.getElementById('mix-target-error'))).toMatch(/Water only weakens.*g of powder/);
  });
  test('stretching fetches the model and then shows the time to move', async () => {
    await openMix('?do=stretch');
    await waitFor(() => expect(answer()).toMatch(/PVA alone/));
    expect(text(document.body)).toMatch(/a fifth as thick as PVA/);
  });
  test('a link that cannot be read is answered with what is usual, and says what was dropped', async () => {
    await openMix('?v=7&do=brew&percent=plenty');
    expect(text(screen.getByRole('status'))).toMatch(/do \(brew\).*percent \(plenty\)/);
    expect(answer()).toContain('5.6 g');
  });
  test('a sender’s other figures are shown beside today’s', async () => {
    await openMix('?do=powder&percent=2.5&seen=1_7.5_300');
    expect(text(screen.getByRole('status'))).toContain('7.5 and 300');
  });
  test('cautions stand where the work calls for them', async () => {
    await openMix();
    expect(screen.getByRole('note', { name: 'Caution: Powder dust' })).toBeTruthy();
    await press(screen.getByLabelText('Thin or thicken what I have'));
    expect(screen.queryByRole('note', { name: 'Caution: Powder dust' })).toBe(null);
  });
});

describe('covering', () => {
  test('the amount is a range with a figure to have in hand, and it carries over', async () => {
    await openCover();
    expect(answer()).toMatch(/Have 20 ml .* takes 6\.9 to 19 ml/);
    const link = screen.getByRole<HTMLAnchorElement>('link', { name: 'Mix it' });
    expect(link.getAttribute('href')).toMatch(/^\/mix\/\?v=1&.*do=stretch&.*need=20&loss=0/);
    await pick('The adhesive', 'pva');
    expect(screen.queryByRole('link', { name: 'Mix it' })).toBe(null);
  });
  test('the cautions are those of the adhesive that is chosen', async () => {
    const told = () => screen.getAllByRole('note').flatMap((note) => note.getAttribute('aria-label') ?? []);
    await openCover();
    expect(told()).toEqual(['Caution: It can irritate skin']);
    await pick('The adhesive', 'animal-glue-hot');
    expect(told()).toEqual(['Caution: Hot glue scalds']);
  });
  test('what the water does to the sheet follows once its model has come', async () => {
    await openCover();
    await pick('The paper is most like', 'kozo-tissue');
    await waitFor(() => expect(answer()).toMatch(/wet through/));
    await pick('The paper is most like', 'chiyogami');
    expect(text(document.body)).toMatch(/It dries flat/);
  });
  test('lengths take inches and fractions; another unit writes them anew', async () => {
    await openCover();
    await type(/^Its width/, '9 1/4 in');
    expect(document.getElementById('cover-width-error')).toBe(null);
    await pick('Lengths in', 'in');
    expect(screen.getByLabelText<HTMLInputElement>(/^Its width/).value).toBe('9 1/4');
    await type(/^Its width/, 'wide');
    expect(text(document.getElementById('cover-width-error'))).toMatch(/such as 9 1\/4/);
    await pick('Lengths in', 'cm');
    expect(screen.getByLabelText<HTMLInputElement>(/^Its width/).value).toBe('wide');
  });
  test('pieces are added, mended and taken away', async () => {
    await openCover();
    await pick('What do you cover?', 'own');
    await press(screen.getByRole('button', { name: 'Add a piece' }));
    const third = screen.getByRole('group', { name: 'Piece 3' });
    expect(text(third)).toMatch(/width of row 3 is missing/);
    await doing(() => fireEvent.input(within(third).getByLabelText(/^Width/), { target: { value: '100' } }));
    await doing(() => fireEvent.input(within(third).getByLabelText(/^Height/), { target: { value: '200' } }));
    expect(document.querySelector('.problem-list')).toBe(null);
    await press(screen.getByRole('button', { name: 'Remove piece 3' }));
    expect(screen.queryByRole('group', { name: 'Piece 3' })).toBe(null);
  });
  test('a board that weighs less after gluing is a slip, beside its field', async () => {
    await openCover();
    await pick('Its coat', 'weighed');
    await type(/^Board after/, '100');
    expect(text(document.getElementById('cover-after-error'))).toMatch(/must weigh more/);
  });
  test('a class: twelve makers take about twelve times as much', async () => {
    await openCover();
    await type('Makers', '12');
    expect(answer()).toMatch(/Have 230 ml .* takes 82 to 230 ml/);
  });
});
