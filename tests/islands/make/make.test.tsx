/** The project calculator, as a reader meets it. */
import { cleanup, fireEvent, render, screen, waitFor, within } from '@testing-library/preact';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import Make from '../../../src/islands/make/Make';
import { answer, doing, linkRead, pick, text, type } from '../support/reader';

const choose = (label: string) => doing(() => fireEvent.click(screen.getByLabelText(label)));
const field = (label: RegExp) => screen.getByLabelText<HTMLInputElement>(label);
const sizeOf = (piece: string) => {
  const row = screen.getAllByRole('row').find((one) => text(one).startsWith(piece));
  return row && text(within(row).getAllByRole('cell')[0]!);
};

const open = async (tail = '') => {
  window.history.replaceState(null, '', `/make/${tail}`);
  await doing(() => render(<Make cautions={{ knife: { title: 'Knives', text: 'Cut slowly.' } }} address="/make/" />));
  await linkRead();
};

beforeEach(() => window.history.replaceState(null, '', '/'));
afterEach(cleanup);

describe('what is made', () => {
  test('a notebook of 148 × 210 × 12: boards, spine strip and cover, by hand', async () => {
    await open();
    // 148 + 3 − 7 by 210 + 6; 12 + 2 × 2.5; 2 × 144 + 2 × 7 + 17 + 2 × 18 by 216 + 36
    expect(sizeOf('board')).toBe('144 × 216');
    expect(sizeOf('spine strip')).toBe('17 × 216');
    expect(sizeOf('cover')).toBe('355 × 252');
  });
  test('the slip case of a published worksheet', async () => {
    await open();
    await choose('Slip case');
    await type(/^Width/, '113');
    await type(/^Height/, '157');
    await type(/^Board, thickness/, '2');
    expect(sizeOf('side')).toBe('115 × 163');
    expect(sizeOf('back')).toBe('14 × 163');
    expect(sizeOf('top and bottom')).toBe('113 × 14');
  });
  test.for(['Accordion with hard covers', 'Slip case', 'Lidded box', 'Portfolio with flaps'])(
    '%s has drawings with words, pieces, steps and the caution',
    async (name) => {
      await open();
      await choose(name);
      const drawings = screen.getAllByRole('img');
      expect(drawings.length).toBeGreaterThanOrEqual(3);
      for (const one of drawings) {
        const words = one.getAttribute('aria-label') ?? '';
        if (!/code of the link/i.test(words)) expect(words).toMatch(/to scale\. From .*\d/);
        expect(one.outerHTML).not.toMatch(/NaN|undefined|Infinity/);
      }
      expect(screen.getAllByRole('row').length).toBeGreaterThan(3);
      expect(screen.getAllByRole('listitem').length).toBeGreaterThan(5);
      expect(screen.getByRole('note')).toBeTruthy();
    },
  );
});

describe('measures', () => {
  test('what is usual stands there until it is overridden, and again when emptied', async () => {
    await open();
    expect(field(/^Square/).placeholder).toBe('3');
    await type(/^Square/, '5');
    expect(sizeOf('board')).toBe('146 × 220');
    await type(/^Square/, '');
    expect(sizeOf('board')).toBe('144 × 216');
  });
  test('the usual spine follows the board', async () => {
    await open();
    await type(/^Board, thickness/, '3');
    expect(field(/^Spine strip/).placeholder).toBe('18');
  });
  test('in inches, with fractions', async () => {
    await open();
    await pick('Lengths in', 'in');
    await type(/^Width/, '5 1/2');
    await type(/^Square/, '1/8');
    await type(/^Joint/, '1/4');
    expect(sizeOf('board')).toMatch(/^5 3\/8 × /);
  });
  test('leaves and their caliper make a thickness', async () => {
    await open();
    await pick('Its thickness', 'leaves');
    await type(/^Leaves/, '200');
    await type(/^Caliper/, '100');
    // 20 mm and two boards of 2.5
    expect(sizeOf('spine strip')).toBe('25 × 216');
    expect(answer()).toContain('The leaves come to 20 mm');
  });
});

describe('bad input', () => {
  test.for([
    [/^Square/, '-1', 'square', /from 0 to 30 mm/],
    [/^Thickness/, '0', 'thickness', /from 1 to 200 mm/],
    [/^Width/, '99999', 'width', /from 20 to 1000 mm/],
    [/^Joint/, '2', 'joint', /at least as wide as the board is thick, 2\.5 mm/],
    [/^Turn-in/, 'wide', 'turnIn', /is a length such as 235/],
    [/^Height/, '', 'height', /is missing/],
  ] as const)(
    '%s "%s": said beside the field, the last answer kept, nothing lost',
    async ([label, silly, id, says]) => {
      await open();
      const before = sizeOf('cover');
      await type(label, silly);
      expect(field(label).value).toBe(silly);
      expect(field(label).getAttribute('aria-invalid')).toBe('true');
      expect(text(document.getElementById(`make-${id}-error`))).toMatch(says);
      expect(sizeOf('cover')).toBe(before);
      expect(document.body.textContent).not.toMatch(/NaN|Infinity|undefined/);
    },
  );
  test('warns of squares wider than the joint', async () => {
    await open();
    await type(/^Square/, '9');
    expect(text(screen.getByRole('group', { name: 'Look out' }))).toMatch(
      /squares, 9 mm, are wider than the joints, 7 mm/,
    );
  });
});

describe('links', () => {
  test('a link brings back the plan, to the last digit', async () => {
    await open('?v=1&make=lidded-box&in=mm&wide=100.25&thick=41&layer=0.35&seen=2_1_2_3_4_5');
    expect(field(/^Width/).value).toBe('100.25');
    expect(field(/^One covering/).value).toBe('0.35');
    expect(answer()).toMatch(/Whoever sent this link saw other figures/);
  });
  test('what cannot be read is named and left at its usual value', async () => {
    await open('?v=1&make=castle&wide=-5&joint=0&high=250');
    expect(answer()).toMatch(/make \(castle\).*wide \(-5\).*joint \(0\)/);
    expect(field(/^Height/).value).toBe('250');
    expect(sizeOf('cover')).toBe('355 × 292');
  });
  test('a joint that the board cannot turn in is put back', async () => {
    await open('?v=1&make=notebook&board=5&joint=3');
    expect(answer()).toMatch(/left at its usual value: joint/);
    expect(field(/^Joint/).value).toBe('');
  });
  test('the glued pieces go along to the coverage calculator', async () => {
    await open();
    const link = screen.getByRole('link', { name: 'How much it takes' }).getAttribute('href') ?? '';
    const query = new URL(link, 'https://example.org').searchParams;
    expect(query.get('thing')).toBe('own');
    expect(query.get('pieces')).toBe('319x216x1t18-18-18-18_148x210x2');
  });
  test('a change is announced once the typing has paused', async () => {
    await open();
    await type(/^Width/, '160');
    await waitFor(() =>
      expect(text(document.querySelector('.bench-answer [aria-live="polite"].visually-hidden'))).toMatch(/156 × 216/),
    );
  });
});
