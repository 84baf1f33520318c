/** The chooser with swatches on the device: what it learns, what its link says, and the switch that leaves it out. */
import { atom } from 'nanostores';
import { expect, test, vi } from 'vitest';
import { bestRatio } from '../../../src/core/choose/best-ratio';
import type { Draws } from '../../../src/core/choose/draws';
import { decodeTaught } from '../../../src/core/choose/seen';
import { DEFAULT_JOB } from '../../../src/core/choose/job';
import { digestOf } from '../../../src/core/learn/taught';
import { STANDARD_QUESTIONS } from '../../../src/core/trial/design';
import type { Trial } from '../../../src/core/trial/record';
import { openLearning } from '../../../src/stores/choose/learning';
import { createChoosePage } from '../../../src/stores/choose/choose-page';
import { openEvidence } from '../../../src/stores/choose/evidence';
import { withBenches } from '../../../src/stores/shared/on-bench';
import { trialWith } from '../../core/support/trial';
import { readCatalogue } from '../../tools/read-content';

const catalogue = readCatalogue();
const questions = STANDARD_QUESTIONS.filter(({ kind }) => kind === 'lift' || kind === 'board');
/** PVA tears lokta, and pulls the face off the board below wove paper, again and again. */
const torn = trialWith(() => undefined, {
  papers: [
    { id: 'p', name: 'Lokta', family: 'lokta-light' },
    { id: 'q', name: 'Wove', family: 'wove-text' },
  ],
  glues: [{ id: 'a', name: 'Vinyl', record: 'pva' }],
  questions,
  swatches: Array.from({ length: 8 }, (_, i) => ({
    number: i + 1,
    paper: i % 2 ? 'p' : 'q',
    glue: 'a',
    hold: 40,
    block: 1 + (i >> 1),
    outcomes: i % 2 ? ({ lift: 'fail', board: 'pass' } as const) : ({ lift: 'pass', board: 'fail' } as const),
  })),
});
const clean: Trial = {
  ...torn,
  swatches: torn.swatches.map((swatch) => ({ ...swatch, outcomes: { lift: 'pass', board: 'pass' } })),
};
/** A paper that is unlike both. */
const JOB = { ...DEFAULT_JOB, paper: { family: 'kozo-medium' }, placeSeconds: 40 };
const open = (trials: readonly Trial[]) => {
  const page = createChoosePage(catalogue, JOB);
  const $trials = atom(trials);
  return { page, $trials, evidence: openEvidence(page, $trials, undefined, undefined) };
};
const chanceOf = (page: ReturnType<typeof createChoosePage>) =>
  page.$choices.get().find(({ adhesiveId }) => adhesiveId === 'pva')!.chance;

test('swatches of other papers move the answer; the switch puts it back; the link says how many', async () => {
  const { page, evidence } = open([torn]);
  const alone = page.$modelChoices.get().find(({ adhesiveId }) => adhesiveId === 'pva')!.chance;
  await vi.waitFor(() => expect(evidence.$firsts.get()).toBeDefined(), { timeout: 180_000 });
  expect(evidence.learning.$taught.get()!.swatches).toBe(8);
  const withTorn = chanceOf(page);
  expect(withTorn).not.toBe(alone);
  // A chance near never moves up a little by the mere knowledge that the constants are less sure: so torn against clean.
  const other = open([clean]);
  await vi.waitFor(() => expect(other.evidence.$firsts.get()).toBeDefined(), { timeout: 180_000 });
  expect(withTorn).toBeLessThan(chanceOf(other.page) - 0.05);
  const jar = ['pva', 'methylcellulose-2-5'];
  const curve = (learned?: Draws) =>
    bestRatio(JOB, catalogue, jar, learned)!.curves[0]!.points.map(({ chance }) => chance);
  expect(curve(page.$adjust.get()!.learned!)).not.toEqual(curve());
  const sent = decodeTaught(new URLSearchParams(page.$tail.get()).get('ls'));
  expect(sent?.swatches).toBe(8);
  evidence.turn(false);
  expect(chanceOf(page)).toBe(alone);
  expect(page.$tail.get()).not.toContain('ls=');
  evidence.turn(true);
  expect(chanceOf(page)).toBe(withTorn);
  await vi.waitFor(() => expect(evidence.learning.$pairs.get()).toHaveLength(2), { timeout: 180_000 });
});

test('no swatches, and invented ones, leave the model alone', async () => {
  for (const trials of [[], [{ ...torn, demo: true as const }]]) {
    const { page, evidence } = open(trials);
    const before = page.$choices.get();
    await new Promise((resolve) => setTimeout(resolve));
    expect(evidence.learning.$learned.get()).toBeUndefined();
    expect(page.$choices.get()).toEqual(before);
    expect(page.$tail.get()).not.toContain('ls=');
  }
});

test('a link that had learned says so where its swatches are not', () => {
  const page = createChoosePage(catalogue, JOB);
  page.load(`?${page.$tail.get()}&ls=8.0a1b2c`);
  expect(page.$link.get().taught).toEqual({ swatches: 8, digest: '0a1b2c', firsts: [] });
  page.load(`?${page.$tail.get()}&ls=nonsense`);
  expect(page.$link.get().taught).toBeUndefined();
});

const BENCH = 'brush-full_coat_98_100_102~binders-board_drinks_3.4_3.5_3.6';

test('one’s own swatches are weighed on the bench of the job, anew when another is named, and it is said', async () => {
  const $bench = atom<string | undefined>(undefined);
  const { $learned, $taught } = openLearning(atom([torn]), withBenches(catalogue), $bench);
  const learned = async (isMeasured: boolean) => {
    await vi.waitFor(() => expect($taught.get()?.onMeasured).toBe(isMeasured), { timeout: 180_000 });
    return digestOf($learned.get()!);
  };
  const usual = await learned(false);
  $bench.set(BENCH);
  expect(await learned(true)).not.toEqual(usual);
  $bench.set(undefined);
  expect(await learned(false)).toEqual(usual);
});

test('a link carries the bench that its swatches were weighed on', async () => {
  const page = createChoosePage(withBenches(catalogue), { ...JOB, bench: BENCH });
  const evidence = openEvidence(page, atom([torn]), undefined, undefined);
  await vi.waitFor(() => expect(evidence.$firsts.get()).toBeDefined(), { timeout: 180_000 });
  const sent = new URLSearchParams(page.$tail.get());
  expect(sent.get('bench')).toBe(BENCH);
  expect(decodeTaught(sent.get('ls'))).toMatchObject(digestOf(evidence.learning.$learned.get()!));
});
