/** A ranking brought up to date by one's own swatches, with the model's own answer kept beside it. */
import type { Ranked } from '../choose/finding';
import type { Job } from '../choose/job';
import { inOrder, verdictOf, weighedUp } from '../choose/ranking';
import type { Catalogue } from '../records/records';
import {
  testimonyOf,
  updateChance,
  witnessesFor,
  type Testimony,
  type TestedThing,
  type Updated,
} from './trial-evidence';
import type { Trial } from '../trial/record';

export const THINGS_TOLD = ['spread', 'lift', 'bond', 'flat'] as const satisfies readonly TestedThing[];

/** What swatches say about one job: adhesive id → chance → what was seen. */
export type Evidence = ReadonlyMap<string, Readonly<Partial<Record<TestedThing, Testimony>>>>;

/** What these trials say about a job; empty when none of their swatches is near it. */
export function evidenceFor(trials: readonly Trial[], job: Job, catalogue: Catalogue): Evidence {
  const records = new Set(trials.flatMap(({ glues }) => glues.flatMap(({ record }) => record ?? [])));
  const found = new Map<string, Partial<Record<TestedThing, Testimony>>>();
  for (const id of records) {
    if (!catalogue.adhesives.has(id)) continue;
    const witnesses = witnessesFor(trials, id, job, catalogue);
    const told = THINGS_TOLD.flatMap((thing) => {
      const testimony = testimonyOf(witnesses[thing]);
      return testimony.swatches > 0 ? [[thing, testimony] as const] : [];
    });
    if (told.length > 0) found.set(id, Object.fromEntries(told));
  }
  return found;
}

export interface TrialsTold {
  readonly adhesiveId: string;
  readonly modelChance: number;
  readonly chance: number;
  readonly things: Readonly<Partial<Record<TestedThing, Updated>>>;
}

export interface Adjusted<R extends Ranked> {
  readonly choices: readonly R[];
  /** for each adhesive that swatches speak of, the model alone beside the two together */
  readonly told: ReadonlyMap<string, TrialsTold>;
}

/** Verdicts that a chance decides; the others stand whatever a swatch shows. */
const BY_CHANCE: ReadonlySet<string> = new Set(['sound', 'likely', 'touch-and-go', 'unlikely']);

/** The ranking with the chances that swatches speak of brought up to date, in its new order. */
export function adjustRanking<R extends Ranked>(
  choices: readonly R[],
  evidence: Evidence,
  catalogue: Catalogue,
): Adjusted<R> {
  const told = new Map<string, TrialsTold>();
  const adjusted = choices.map((choice): R => {
    const seen = evidence.get(choice.adhesiveId);
    const adhesive = catalogue.adhesives.get(choice.adhesiveId);
    if (!seen || !adhesive) return choice;
    const things: Partial<Record<TestedThing, Updated>> = {};
    const chances = { ...choice.chances };
    for (const thing of THINGS_TOLD) {
      const testimony = seen[thing];
      if (!testimony) continue;
      const updated = updateChance(choice.chances[thing], testimony);
      things[thing] = updated;
      chances[thing] = updated.withTrials;
    }
    const weigh = (of: typeof chances) => weighedUp(of, choice.weights);
    // The chances hang together in the model; the whole is moved by as much as its parts are.
    const before = Math.max(1e-6, weigh(choice.chances));
    const chance = Math.min(1, (choice.chance * weigh(chances)) / before);
    told.set(choice.adhesiveId, { adhesiveId: choice.adhesiveId, modelChance: choice.chance, chance, things });
    const verdict = BY_CHANCE.has(choice.verdict) ? verdictOf(chance) : choice.verdict;
    return { ...choice, chances, chance, verdict };
  });
  return { choices: inOrder(adjusted), told };
}

const LETTERS: Readonly<Record<TestedThing, string>> = { spread: 's', lift: 'l', bond: 'b', flat: 'f' };
const MOST_TOLD = 12;

/** Evidence as a short word for a link: "pva.l.285.300.3", joined by "~"; sums in hundredths. */
export function encodeEvidence(evidence: Evidence): string {
  return [...evidence]
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .slice(0, MOST_TOLD)
    .flatMap(([id, things]) =>
      THINGS_TOLD.flatMap((thing) => {
        const told = things[thing];
        if (!told) return [];
        return [id, LETTERS[thing], Math.round(told.passes * 100), Math.round(told.weight * 100), told.swatches].join(
          '.',
        );
      }),
    )
    .join('~');
}

/** The evidence in such a word; parts that are none are left out. Never throws. */
export function decodeEvidence(text: unknown): Evidence {
  const found = new Map<string, Partial<Record<TestedThing, Testimony>>>();
  if (typeof text !== 'string') return found;
  for (const part of text
    .slice(0, 3000)
    .split('~')
    .slice(0, MOST_TOLD * THINGS_TOLD.length)) {
    const [, id, letter, passed, weighed, counted] =
      /^([a-z0-9-]{1,60})\.([slbf])\.(\d{1,6})\.(\d{1,6})\.(\d{1,4})$/.exec(part) ?? [];
    const thing = THINGS_TOLD.find((one) => LETTERS[one] === letter);
    const [passes, weight, swatches] = [passed, weighed, counted].map(Number) as [number, number, number];
    if (id === undefined || thing === undefined || swatches < 1 || passes > weight || weight > swatches * 100) continue;
    found.set(id, { ...found.get(id), [thing]: { passes: passes / 100, weight: weight / 100, swatches } });
  }
  return found;
}
