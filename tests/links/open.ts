/**
 * Opens a link in the state of the page it belongs to, as that page does, and says what a reader then has before
 * them: the job, what could not be read, the answer. Here and nowhere else these tests touch the calculators.
 */
import { atom, type ReadableAtom } from 'nanostores';
import { answerSentence, VERDICT_WORDS } from '../../src/core/choose/answer-words';
import { choose, type Choice } from '../../src/core/choose/choose';
import { DEFAULT_JOB, type Job } from '../../src/core/choose/job';
import { decodeSeen, encodeSeen } from '../../src/core/choose/seen';
import { durationSpan } from '../../src/core/base/format';
import type { Fact } from '../../src/core/base/fact';
import type { MixAnswer } from '../../src/core/mix/answer';
import type { CoverAnswer } from '../../src/core/cover/answer';
import type { FlatAnswer } from '../../src/core/flat/answer';
import type { MakeAnswer } from '../../src/core/make/answer';
import type { CutAnswer } from '../../src/core/cut/answer';
import type { MeasureAnswer } from '../../src/core/measure/answer';
import { atOnce } from '../../src/core/base/turns';
import type { ClassSheet } from '../../src/core/class/sheet';
import { flatFacts } from '../../src/core/handover/cover-flat';
import { mixStretchedWithSlip } from '../../src/core/handover/mix-stretch-slip';
import type { FieldTable, PlanOf } from '../../src/core/link/fields';
import { MODEL_VERSION } from '../../src/core/link/model-version';
import { mixAnswerer } from '../../src/core/mix/any';
import type { Catalogue } from '../../src/core/records/records';
import type { Trial } from '../../src/core/trial/record';
import { createChoosePage } from '../../src/stores/choose/choose-page';
import { openEvidence } from '../../src/stores/choose/evidence';
import { layingInTurns } from '../../src/stores/class/class-laying';
import { createClass } from '../../src/stores/class/class';
import { createCover } from '../../src/stores/cover/cover';
import { createCut } from '../../src/stores/cut/cut';
import { createFlat } from '../../src/stores/flat/flat';
import { createMake } from '../../src/stores/make/make';
import { createMeasure } from '../../src/stores/measure/measure';
import { createMix } from '../../src/stores/mix/mix';
import type { PlanStore } from '../../src/stores/shared/plan';
import { loadPlan } from '../../src/stores/shared/plan-link';
import { fromLinkTail, linkTail } from '../../src/stores/trial/files';

export { decodeSeen, encodeSeen, MODEL_VERSION };

export const ROOMS = ['choose', 'mix', 'cover', 'flat', 'make', 'cut', 'measure', 'class', 'trial'] as const;
export type Room = (typeof ROOMS)[number];

export interface Opened {
  /** the link that the page gives out for it now, with the answer; of a trial what it holds, as JSON */
  readonly again: string;
  /** what could not be read, each as the reader is told */
  readonly dropped: readonly string[];
  /** what the reader is told that the sender saw, where today's answer is another */
  readonly other?: string;
  /** the answer in words and figures, without the prose around it */
  readonly answer: readonly string[];
}

type Opener = (link: string) => Opened | Promise<Opened>;

/** A function that opens links, each in the state of a page that has just been opened. */
export function opener(catalogue: Catalogue): (room: Room, link: string) => Promise<Opened> {
  // what a page shows before it reads its link, worked out once
  const usual = choose(DEFAULT_JOB, catalogue);
  const laying = layingInTurns();
  const openers: Readonly<Record<Room, Opener>> = {
    choose: (link) => openChooser(link, catalogue, usual),
    mix: openPlan(
      () => createMix(catalogue, mixAnswerer(mixStretchedWithSlip)),
      (answer: MixAnswer) => [
        answer.sentence,
        ...answer.portions.map(({ name, amount, or }) => `${amount}${or ? ` (${or})` : ''} ${name}`),
        ...(answer.rounding ? [answer.rounding] : []),
        ...facts(answer.facts),
        ...(answer.slip?.rows ?? []).map(({ name, low, high }) => `${name}: ${durationSpan(low, high)}`),
        ...warnings(answer.warnings),
      ],
    ),
    cover: openPlan(
      () => createCover(catalogue, flatFacts),
      (answer: CoverAnswer) => [
        answer.sentence,
        answer.brief.join(': '),
        ...facts(answer.facts),
        ...warnings(answer.warnings),
      ],
    ),
    flat: openPlan(
      () => createFlat(catalogue),
      (answer: FlatAnswer) => [
        answer.sentence,
        ...facts(answer.facts),
        ...warnings(answer.warnings),
        ...answer.remedies.map(({ what }) => `- ${what}`),
      ],
    ),
    make: openPlan(
      () => createMake(),
      (answer: MakeAnswer) => [
        answer.sentence,
        ...answer.rows.map(({ name, size, count, from }) => `${count} ${name} ${size} ${from}`),
        ...warnings(answer.warnings),
        `${answer.steps.length} steps`,
      ],
    ),
    cut: openPlan(
      () => createCut(),
      (answer: CutAnswer) => [
        answer.sentence,
        ...facts(answer.facts),
        `${answer.stocks.flatMap(({ sheets }) => sheets).length} drawings`,
        ...warnings(answer.warnings),
      ],
    ),
    measure: openPlan(
      () => createMeasure(catalogue),
      (answer: MeasureAnswer) => [
        answer.sentence,
        answer.text,
        ...facts(answer.facts),
        answer.weights.map(({ name, pounds }) => `${Number(pounds.toPrecision(3))} lb ${name}`).join(', '),
        ...warnings(answer.warnings),
      ],
    ),
    class: openPlan(
      () => createClass(catalogue),
      (sheet: ClassSheet, plan) => {
        const { handout, warnings: said } = atOnce(laying(plan, sheet, catalogue));
        return [
          sheet.sentence,
          ...sheet.materials.map(({ what, amount }) => `${amount} ${what}`),
          sheet.schedule.map(({ when }) => when).join(', '),
          handout.verdict,
          handout.glue,
          ...warnings(said),
        ];
      },
    ),
    trial: openTrial,
  };
  return async (room, link) => openers[room](link);
}

const facts = (list: readonly Fact[]): string[] => list.map(({ label, value }) => `${label}: ${value}`);
const warnings = (list: readonly string[]): string[] => list.map((text) => `! ${text}`);

/** The job in a link: all of it but what its sender saw. */
export const jobIn = (link: string): string =>
  link
    .split('&')
    .filter((pair) => !pair.startsWith('seen='))
    .join('&');

/** Calculators whose fields are said in a table share one way of opening. */
function openPlan<S extends FieldTable, A>(
  create: () => PlanStore<S, A>,
  say: (answer: A, plan: PlanOf<S>) => readonly string[],
): Opener {
  return async (link) => {
    const store = create();
    loadPlan(store, link);
    await loaded(store.$isLoading);
    const problems = store.$problems.get().map(({ message }) => `! ${message}`);
    const other = store.$otherAnswer.get();
    const solved = store.$solved.get();
    return {
      again: store.$tail.get(),
      dropped: store.$link.get().dropped,
      ...(other && { other: other.slice(0, 2).join(' and ') }),
      answer: [...problems, ...say(solved.answer, solved.plan)],
    };
  };
}

/** Until an answer that takes its time is there. */
const loaded = ($isLoading: ReadableAtom<boolean>): Promise<void> =>
  new Promise((resolve) => {
    const stop = $isLoading.subscribe((isLoading) => {
      // the answer is set after the word that it is there
      if (!isLoading) setTimeout(() => (stop(), resolve()));
    });
  });

const NO_TRIALS = atom<readonly Trial[]>([]);

function openChooser(link: string, catalogue: Catalogue, usual: readonly Choice[]): Opened {
  const now = (job: Job) => (job === DEFAULT_JOB ? usual : choose(job, catalogue));
  const store = createChoosePage(catalogue, DEFAULT_JOB, { now });
  store.load(link);
  openEvidence(store, NO_TRIALS, new URLSearchParams(link).get('ev') ?? undefined, undefined);
  const [first, ...others] = store.$choices.get();
  const other = store.$otherAnswer.get();
  const { p10, p90 } = first!.slipSeconds;
  return {
    again: store.$tail.get(),
    dropped: store.$link.get().dropped,
    ...(other && { other: encodeSeen(other) }),
    answer: [
      [VERDICT_WORDS[first!.verdict], first!.adhesiveId, first!.chance.toFixed(2), durationSpan(p10, p90)].join(', '),
      answerSentence(first!, catalogue),
      ...others.slice(0, 2).map(({ adhesiveId, verdict }) => `${VERDICT_WORDS[verdict]}, ${adhesiveId}`),
    ],
  };
}

/** A trial without what later shapes of the record have added: its number, and whether a name may be another's. */
function asFirstShaped(trial: Trial) {
  return { ...trial, version: 1, glues: trial.glues.map(({ doubtful: _doubtful, ...glue }) => glue) };
}

/** A link of a trial carries the whole trial, packed; it is held to what it unfolds to, before and after it is packed again. */
async function openTrial(link: string): Promise<Opened> {
  const { trials, notes } = await fromLinkTail(link);
  const again = await Promise.all(
    trials.map(async (trial) => {
      const tail = await linkTail(trial);
      return tail === undefined ? [] : (await fromLinkTail(tail)).trials;
    }),
  );
  return {
    // a trial is brought up to the record's present shape as it is read; the links were kept at the first
    again: JSON.stringify(again.flat().map(asFirstShaped)),
    dropped: notes,
    answer: trials.map(
      ({ name, papers, glues, swatches }) =>
        `${name}: ${papers.length} papers, ${glues.length} adhesives, ${swatches.length} swatches`,
    ),
  };
}
