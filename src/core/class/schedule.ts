/**
 * What is to be done when, reckoned backwards from the class. How long people take to cut is from memory; the
 * standing of jelly and paste is published (see the lessons on each); the rest is common practice, no source.
 */
import type { CutAnswer } from '../cut/answer';
import { heatAtBench } from '../adhesive/natures';
import type { WetAdhesive } from '../records/records';
import { DAY, HOUR, lasting } from './clock';
import type { Batch } from './glue';

export interface ClassStep {
  /** minutes from the start of the class; before it is below 0 */
  readonly at: number;
  readonly what: string;
}

/** Minutes a practised hand takes for one straight cut. From memory. */
const CUT_MINUTES = { board: 1.5, other: 0.6 };
/** More than this is not cut on one afternoon. Our own line. */
const ONE_AFTERNOON = 4 * HOUR;

/** Minutes to cut everything for the class, all sheets of it. */
export function cuttingMinutes(cut: CutAnswer): number {
  return cut.stocks.reduce((sum, { stock, sheets }) => {
    const each = stock.name === 'board' ? CUT_MINUTES.board : CUT_MINUTES.other;
    return sum + sheets.reduce((cuts, { steps, plan }) => cuts + steps.length * plan.times, 0) * each;
  }, 0);
}

/** Minutes for showing the whole of it before anybody begins, and for pressing and clearing up at the end. Common practice, no source. */
const SHOWING = 15;
const CLEARING = 20;

/** When one of `of` steps before the press is begun: evenly between the showing and the press, at five minutes. */
const stepAt = (step: number, of: number, length: number): number =>
  Math.min(length, Math.round((SHOWING + (step * Math.max(0, length - SHOWING - CLEARING)) / of) / 5) * 5);

interface Day {
  readonly cut: CutAnswer;
  readonly batches: readonly Batch[];
  readonly adhesive: WetAdhesive;
  /** minutes of the class */
  readonly length: number;
  /** minute of the day at which it starts */
  readonly startsAt: number;
  /** what is done in the class, in order; the last of them is to put it under weight */
  readonly steps: readonly string[];
}

/** What is done when, in minutes from the start of the class; before it below 0. */
export function scheduleFor({ cut, batches, adhesive, length, startsAt, steps }: Day): readonly ClassStep[] {
  const making = steps.slice(0, -1);
  const press = steps.at(-1)!;
  const cutting = cuttingMinutes(cut);
  const days = Math.max(1, Math.ceil(cutting / ONE_AFTERNOON));
  // At nine of the morning, counted from the start of the class.
  const nine = (daysBefore: number): number => -daysBefore * DAY + 9 * HOUR - startsAt;
  const tasks: ClassStep[] = [
    { at: nine(7), what: 'Buy what is on the list. Ask everybody who brings their own paper for a swatch of it.' },
    {
      at: nine(2 + days),
      what: 'Make one yourself, in the room if you can, with these materials. Try a swatch of paper, glue and board, and time it.',
    },
    {
      at: nine(days),
      what: `Mark the grain on every sheet and cut the pieces: about ${lasting(cutting)} for one practised hand${days > 1 ? `, spread over ${days} days` : ''}. Put them up as kits.`,
    },
    ...batches.flatMap(({ plan, mix }): ClassStep[] => {
      const amounts = mix.portions.map(({ name, amount }) => `${amount} of ${name}`).join(', ');
      if (plan.kind === 'powder')
        return [
          {
            at: nine(1) + 5 * HOUR,
            what: `Make the ${adhesive.parts.length === 2 && plan.powder === 'gelatine' ? 'gelatine' : 'jelly'}: ${amounts}. It stands until the next day, to swell and clear.`,
          },
        ];
      if (plan.kind === 'paste')
        return [
          {
            at: -5 * HOUR,
            what: `Soak the starch, then cook the paste: ${amounts}. Half an hour’s soaking, a quarter of an hour or more of cooking, and time to cool under a cover.`,
          },
          { at: -1.5 * HOUR, what: 'Sieve the cold paste, and thin it as it is to be used.' },
        ];
      return [
        {
          at: -HOUR,
          what: `Stir the mix together: ${amounts}. Stir it well, but beat no air into it, and keep it covered.`,
        },
      ];
    }),
    ...(heatAtBench(adhesive)
      ? [
          {
            at: -2 * HOUR,
            // What is made up the day before has soaked since then.
            what: `${batches.length === 0 ? 'Soak and warm' : 'Melt'} the ${adhesive.short}, and keep it at its heat.`,
          },
        ]
      : []),
    {
      at: -45,
      what: 'Lay out the places: kit, brush, folder, damp cloth, waste sheets. Fill the pots last and cover them.',
    },
    { at: 0, what: 'The class begins. Show the whole of it once, with the clock, before anybody picks up a brush.' },
    ...making.map((what, i): ClassStep => ({ at: stepAt(i, making.length, length), what })),
    { at: Math.max(Math.round(length / 2), length - 40), what: 'Last gluing. What is not laid now is not laid today.' },
    {
      at: Math.max(Math.round((length * 3) / 4), length - 20),
      what: `${press} Wash the brushes.`,
    },
    {
      at: length,
      what: 'The class ends. Work goes home between two boards, tied, with a note that says when it may be opened.',
    },
    {
      at: length + 16 * HOUR,
      what: 'Dry enough to open, if the room is as you said.',
    },
  ];
  return tasks.sort((a, b) => a.at - b.at);
}
