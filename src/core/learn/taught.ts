/** What swatches have changed in an answer, and which of them changed it most. */
import type { InTurns } from '../base/turns';
import type { Draws, DrawsFor } from '../choose/draws';
import type { Ranked } from '../choose/finding';
import { SAMPLES } from '../choose/ranking';
import type { TaughtBy } from '../choose/seen';
import { isOthers } from './condition';
import type { JobPaper } from '../paper/asked-paper';
import { learnedDrawsInTurns, pairKey, reweigh, withoutEachPair, type Keep, type Learned } from './reweigh';

export interface Taught {
  /** swatches that the model was asked about */
  readonly swatches: number;
  /** how many of them come from published trials */
  readonly others: number;
  /** of whose bench the answer is now, as its maker is called */
  readonly own: string | undefined;
  /** versions of the bench that count, of those that were weighed */
  readonly effective: number;
  /** 1: the swatches count in full; less where they were softened */
  readonly softened: number;
}

/** One pair of paper and adhesive that was tried. */
export interface Pair {
  readonly paperName: string;
  readonly adhesive: string;
  readonly swatches: number;
  /** how much the weights of the versions would move back without it: half the sum of the differences, 0–1 */
  readonly share: number;
}

/** The draws for each adhesive; stops now and then. `keeps`: how much of each condition counts for an adhesive, by its id; all of it where none is named. */
export function* drawsForTaught(
  learned: Learned,
  paper: JobPaper,
  keeps: ReadonlyMap<string, Keep> = new Map(),
  count: number = SAMPLES,
): InTurns<DrawsFor> {
  const all = yield* learnedDrawsInTurns(learned, paper, count);
  const kept = new Map<string, Draws>();
  for (const [adhesiveId, keep] of keeps) kept.set(adhesiveId, yield* learnedDrawsInTurns(learned, paper, count, keep));
  return (adhesiveId) => kept.get(adhesiveId) ?? all;
}

/** How many swatches taught, of whose bench, and how far their say was softened. */
export function taughtBy(learned: Learned): Taught {
  const { effective, softened } = reweigh(learned);
  const others = learned.asked
    .filter(({ condition }) => isOthers(condition.bench))
    .reduce((sum, { condition }) => sum + condition.seen.length, 0);
  return { swatches: learned.swatches, others, own: learned.own, effective, softened };
}

/** The pairs that were tried, those that moved the weights most first; stops after each. */
export function* pairsInTurns(learned: Learned): InTurns<readonly Pair[]> {
  const { weights } = reweigh(learned);
  const without = yield* withoutEachPair(learned);
  const pairs = new Map<string, Pair>();
  for (const { condition } of learned.asked) {
    const { paperName, adhesive, seen } = condition;
    const key = pairKey(condition);
    const before = without.get(key)!;
    const swatches = (pairs.get(key)?.swatches ?? 0) + seen.length;
    const share = weights.reduce((sum, weight, i) => sum + Math.abs(weight - before[i]!), 0) / 2;
    pairs.set(key, { paperName, adhesive, swatches, share });
  }
  return [...pairs.values()].sort((a, b) => b.share - a.share || (a.paperName < b.paperName ? -1 : 1));
}

/** A move of the chance that is worth telling: half a tenth. */
const WORTH_TELLING = 0.05;

export interface Moved {
  readonly adhesiveId: string;
  readonly before: number;
  readonly now: number;
}

/** Adhesives whose chance the swatches moved enough to be told, those that moved most first. */
export function movedBy(before: readonly Ranked[], now: readonly Ranked[]): readonly Moved[] {
  const chances = new Map(before.map(({ adhesiveId, chance }) => [adhesiveId, chance]));
  return now
    .map(({ adhesiveId, chance }) => ({ adhesiveId, before: chances.get(adhesiveId) ?? chance, now: chance }))
    .filter(({ before: was, now: is }) => Math.abs(is - was) >= WORTH_TELLING)
    .sort((a, b) => Math.abs(b.now - b.before) - Math.abs(a.now - a.before));
}

/** What a link carries of them: how many swatches, and a digest of the weights they give. */
export function digestOf(learned: Learned): TaughtBy {
  const { weights } = reweigh(learned);
  let hash = 0x811c9dc5;
  for (const weight of weights) hash = Math.imul(hash ^ Math.round(weight * 1e4), 0x01000193) >>> 0;
  return { swatches: learned.swatches, digest: (hash & 0xffffff).toString(16).padStart(6, '0') };
}
