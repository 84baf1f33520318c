/**
 * Swatches re-weigh the ensemble. The versions of a bench that the chooser draws (a set of constants, how far the truth
 * may depart from it, and where the board, the glue, the brush and the room's other numbers lie) are each asked how
 * likely they made what was seen, and weighed by it. How far the constants depart is everybody's; a bench is its maker's
 * own, one draw for all its swatches; a sheet is one draw for all the swatches cut from it, over which is averaged.
 */
import { atOnce, type InTurns } from '../base/turns';
import { DIMENSIONS, drawsOf, PAPER_DIMENSIONS, type Draws, type Hand } from '../choose/draws';
import { kindOf } from '../choose/kind';
import type { BondConstants } from '../joint/constants';
import { SETS } from '../joint/ensemble';
import type { JobPaper } from '../paper/asked-paper';
import type { Catalogue } from '../records/records';
import { handsOf } from './hand';
import { isSheet, ownBench, type Condition, type SwatchSeen } from './condition';
import { likelihoodOf } from './likelihood';
import { partWay } from './loose-sets';
import {
  departedConstants,
  departureAt,
  marginsInTurns,
  pool,
  POOL,
  SHEET_DRAWS,
  SHEETS,
  type MarginsOf,
} from './versions';

/** The weights are softened until at least this many versions count for as much as equals. A judgement of ours. */
export const LEAST_EFFECTIVE = 24;
/** How alike the swatches of one pair are beyond what the model says: of many, one more tells less. Estimate. */
export const ALIKE = 0.1;

/** The swatches of one condition, asked of every version and every draw of the sheet. */
interface Asked {
  readonly condition: Condition;
  /** log likelihood of version v on sheet s at v·SHEETS + s */
  readonly logs: Float32Array;
}

export interface Learned {
  readonly asked: readonly Asked[];
  /** the bench that an answer is for; undefined where nobody has swatches */
  readonly own: string | undefined;
  readonly swatches: number;
}

/** Weights of the versions, with how far they had to be softened. */
export interface Reweighed {
  /** of each version, together 1 */
  readonly weights: Float64Array;
  /** how many equal versions would count as much: (Σw)² ÷ Σw² */
  readonly effective: number;
  /** 1: the swatches count in full; 0: not at all */
  readonly softened: number;
}

/**
 * Asks every version about each condition, stopping now and then. `own`: the bench that answers are for; `ownRecords`:
 * the records as they are on it, where it was measured. What another has swatched is weighed by the records alone.
 */
export function* learnInTurns(
  conditions: readonly Condition[],
  catalogue: Catalogue,
  own: string | undefined = ownBench(conditions),
  ask: MarginsOf = marginsInTurns,
  ownRecords: Catalogue = catalogue,
): InTurns<Learned> {
  const asked: Asked[] = [];
  for (const condition of conditions) {
    const records = condition.bench === own ? ownRecords : catalogue;
    asked.push({ condition, logs: yield* askAll(condition, records, ask) });
  }
  return { asked, own, swatches: conditions.reduce((sum, { seen }) => sum + seen.length, 0) };
}

let hands: ReturnType<typeof handsOf> | undefined;
/** The hand of each version, drawn when it is first asked. */
const HANDS: ReturnType<typeof handsOf> = (version, kind) => (hands ??= handsOf(POOL))(version, kind);

/** The same as factors, by the kind of film. */
const handsByKind = new Map<string, readonly Hand[]>();
function handsFor(kind: string): readonly Hand[] {
  let known = handsByKind.get(kind);
  if (!known) {
    known = Array.from({ length: POOL }, (_, version) => {
      const { spread, lift } = HANDS(version, kind);
      return { spread: Math.exp(spread), lift: Math.exp(lift) };
    });
    handsByKind.set(kind, known);
  }
  return known;
}

/** Versions asked between two stops. */
const AT_A_TIME = 32;

function* askAll(condition: Condition, catalogue: Catalogue, ask: MarginsOf): InTurns<Float32Array> {
  const margins = yield* ask(condition, catalogue);
  const logs = new Float32Array(POOL * SHEETS);
  const outcomes = countsOf(condition.seen).map(({ seen, count }) => ({ reads: likelihoodOf(seen), count }));
  const byVersion = handsFor(kindOf(catalogue.adhesives.get(condition.adhesive)!, catalogue));
  for (let version = 0; version < POOL; version += 1) {
    if (version % AT_A_TIME === 0) yield;
    const hand = byVersion[version]!;
    for (let sheet = 0; sheet < SHEETS; sheet += 1) {
      const found = margins(version, sheet);
      let sum = 0;
      for (const { reads, count } of outcomes) sum += count * Math.log(reads(found, hand));
      logs[version * SHEETS + sheet] = sum;
    }
  }
  return logs;
}

/** Swatches that showed the same, counted. */
function countsOf(all: readonly SwatchSeen[]): readonly { readonly seen: SwatchSeen; readonly count: number }[] {
  const counts = new Map<string, { seen: SwatchSeen; count: number }>();
  for (const seen of all) {
    const key = [seen.spread, seen.lift, seen.board, seen.cockle, seen.stuck].join();
    const known = counts.get(key);
    if (known) known.count += 1;
    else counts.set(key, { seen, count: 1 });
  }
  return [...counts.values()];
}

/** How much of a condition counts: 1 all of it, 0 nothing. */
export type Keep = (condition: Condition) => number;
const ALL: Keep = () => 1;

/** How much each swatch of a pair counts, so that many of one pair do not speak as if they were of many. */
function pairShares({ asked }: Learned): (condition: Condition) => number {
  const counts = new Map<string, number>();
  for (const { condition } of asked)
    counts.set(pairKey(condition), (counts.get(pairKey(condition)) ?? 0) + condition.seen.length);
  return (condition) => 1 / (1 + (counts.get(pairKey(condition))! - 1) * ALIKE);
}

/** log Σ exp, of values that may be far below zero. */
function logSum(values: ArrayLike<number>, from = 0, to = values.length, step = 1): number {
  let top = -Infinity;
  for (let i = from; i < to; i += step) if (values[i]! > top) top = values[i]!;
  if (top === -Infinity) return top;
  let sum = 0;
  for (let i = from; i < to; i += step) sum += Math.exp(values[i]! - top);
  return top + Math.log(sum);
}

/** The swatches that were cut from one sheet. */
interface Sheet {
  readonly bench: string;
  readonly paper: JobPaper;
  /** log likelihood of them all by version and draw of the sheet */
  readonly logs: Float64Array;
  /** the same by version, the sheet itself averaged over */
  readonly said: Float64Array;
}
type Sheets = ReadonlyMap<string, Sheet>;

/** The sheets, with what was kept of their swatches; stops after each condition and each sheet. */
function* sheetsInTurns(learned: Learned, keep: Keep): InTurns<Sheets> {
  const share = pairShares(learned);
  const sheets = new Map<string, Sheet>();
  for (const { condition, logs } of learned.asked) {
    yield;
    const counts = keep(condition) * share(condition);
    if (counts <= 0) continue;
    const { bench, paper } = condition;
    let sheet = sheets.get(condition.sheet);
    if (!sheet) {
      sheet = { bench, paper, logs: new Float64Array(POOL * SHEETS), said: new Float64Array(POOL) };
      sheets.set(condition.sheet, sheet);
    }
    for (let i = 0; i < logs.length; i += 1) sheet.logs[i]! += counts * logs[i]!;
  }
  for (const { logs, said } of sheets.values()) {
    yield;
    average(logs, said);
  }
  return sheets;
}

/** Every pair that was tried, with the weights as they would be without it; stops after each. */
export function* withoutEachPair(learned: Learned): InTurns<ReadonlyMap<string, Float64Array>> {
  const share = pairShares(learned);
  const { sheets } = yield* weighInTurns(learned);
  const pairs = new Map<string, Asked[]>();
  for (const one of learned.asked) {
    const key = pairKey(one.condition);
    pairs.set(key, [...(pairs.get(key) ?? []), one]);
  }
  const found = new Map<string, Float64Array>();
  for (const [key, all] of pairs) {
    yield;
    // Only the sheet of the pair weighs otherwise without it.
    const { sheet: id } = all[0]!.condition;
    const sheet = sheets.get(id)!;
    const logs = sheet.logs.slice();
    for (const one of all) {
      const counts = share(one.condition);
      for (let i = 0; i < logs.length; i += 1) logs[i]! -= counts * one.logs[i]!;
    }
    const said = average(logs, new Float64Array(POOL));
    found.set(key, together(new Map(sheets).set(id, { ...sheet, logs, said }), learned.own).weights);
  }
  return found;
}

/** Which pair of sheet and adhesive a condition is of. */
export const pairKey = ({ sheet, adhesive }: Condition): string => `${sheet} ${adhesive}`;

/** Weights of the versions of the own bench by what was kept of the swatches. */
export const reweigh = (learned: Learned, keep: Keep = ALL): Reweighed => atOnce(weighInTurns(learned, keep)).result;

interface Weighed {
  readonly sheets: Sheets;
  readonly result: Reweighed;
}

/** All of them are weighed once for an answer, its digest and what taught it. */
const wholes = new WeakMap<Learned, Weighed>();
/** The same with the sheets themselves, stopping now and then: on a phone it takes more than a turn. */
export function* weighInTurns(learned: Learned, keep: Keep = ALL): InTurns<Weighed> {
  const known = keep === ALL ? wholes.get(learned) : undefined;
  if (known) return known;
  const sheets = yield* sheetsInTurns(learned, keep);
  const found = { sheets, result: together(sheets, learned.own) };
  if (keep === ALL) wholes.set(learned, found);
  return found;
}

/** Averages over the draws of a sheet, version by version, into `said`, which is given back. */
function average(logs: Float64Array, said: Float64Array): Float64Array {
  for (let version = 0; version < POOL; version += 1)
    said[version] = logSum(logs, version * SHEETS, (version + 1) * SHEETS) - Math.log(SHEETS);
  return said;
}

function together(sheets: Sheets, own: string | undefined): Reweighed {
  const byBench = new Map<string, Float64Array>();
  for (const { bench, said } of sheets.values()) {
    let sum = byBench.get(bench);
    if (!sum) byBench.set(bench, (sum = new Float64Array(POOL)));
    for (let version = 0; version < POOL; version += 1) sum[version]! += said[version]!;
  }
  const total = new Float64Array(POOL);
  for (const [bench, logs] of byBench) {
    const ours = bench === own ? logs : byDeparture(logs);
    for (let version = 0; version < POOL; version += 1) total[version]! += ours[version]!;
  }
  return softened(total);
}

/** Of another's bench only how far the constants depart is ours too: the mean over the versions that depart alike. */
function byDeparture(logs: Float64Array): Float64Array {
  const alike = new Map<number, number[]>();
  logs.forEach((log, version) => {
    const at = departureAt(version);
    const some = alike.get(at);
    if (some) some.push(log);
    else alike.set(at, [log]);
  });
  const means = new Map([...alike].map(([at, some]) => [at, logSum(some) - Math.log(some.length)]));
  return logs.map((_, version) => means.get(departureAt(version))!);
}

/** Of a search by halves: to a ten-millionth. */
const SOFTENING_STEPS = 24;

/** Weights from log likelihoods, softened as little as keeps `LEAST_EFFECTIVE` versions. */
export function softened(logs: Float64Array): Reweighed {
  const top = logs.reduce((most, log) => Math.max(most, log), -Infinity);
  let [low, high] = [0, 1];
  if (effectiveAt(logs, top, 1) >= LEAST_EFFECTIVE) low = 1;
  else
    for (let step = 0; step < SOFTENING_STEPS; step += 1) {
      const middle = (low + high) / 2;
      if (effectiveAt(logs, top, middle) < LEAST_EFFECTIVE) high = middle;
      else low = middle;
    }
  const weights = logs.map((log) => Math.exp((log - top) * low));
  const all = weights.reduce((sum, weight) => sum + weight, 0);
  return { weights: weights.map((weight) => weight / all), effective: effectiveAt(logs, top, low), softened: low };
}

/** How many equal versions these count as, raised to this power; `top` is the greatest log. */
function effectiveAt(logs: Float64Array, top: number, power: number): number {
  let [sum, squares] = [0, 0];
  for (const log of logs) {
    const weight = Math.exp((log - top) * power);
    sum += weight;
    squares += weight * weight;
  }
  return (sum * sum) / squares;
}

type LearnedDraws = Draws & Omit<Reweighed, 'weights'>;

/**
 * As many draws as asked for from the weighed versions, each as often as its weight says. Where the job's sheet is one
 * that swatches were cut from, its own numbers are drawn by what they showed as well. With no swatches these are the
 * even draws. `keep`: how much of each condition counts. Stops now and then.
 */
export function* learnedDrawsInTurns(
  learned: Learned,
  paper: JobPaper,
  count: number,
  keep: Keep = ALL,
): InTurns<LearnedDraws> {
  const { sheets, result } = yield* weighInTurns(learned, keep);
  yield;
  const { weights, effective, softened: power } = result;
  const versions = drawn(weights, count);
  const from = pool();
  const points = new Float64Array(count * DIMENSIONS);
  const known = [...sheets.values()].find((sheet) => sheet.bench === learned.own && isSheet(paper, sheet.paper));
  const lots = drawsOf(count).points;
  versions.forEach((version, i) => {
    points.set(from.points.subarray(version * DIMENSIONS, (version + 1) * DIMENSIONS), i * DIMENSIONS);
    // A sheet that nothing is known of is drawn evenly, whichever versions count.
    const [lies, at] = known
      ? [SHEET_DRAWS.points, sheetAt(known.logs, version, power, lots[i * DIMENSIONS]!) * DIMENSIONS]
      : [lots, i * DIMENSIONS];
    points.set(lies.subarray(at, at + PAPER_DIMENSIONS), i * DIMENSIONS);
  });
  const constants = departing(effective, versions);
  return { count, points, constants, effective, softened: power, hand: (kind) => handBy(weights, kind) };
}

/** The same in one go. */
export const learnedDraws = (learned: Learned, paper: JobPaper, count: number): LearnedDraws =>
  atOnce(learnedDrawsInTurns(learned, paper, count));

/**
 * The constants of these versions, departing the more fully the more the swatches have said. Where nothing is known,
 * the ensemble's own.
 */
function departing(effective: number, versions: readonly number[]): readonly BondConstants[] {
  const said = Math.max(0, 1 - effective / POOL);
  const { constants } = pool();
  const departed = departedConstants();
  return versions.map((version) => partWay(constants[version]!, departed[version]!, said < 1e-9 ? 0 : said));
}

/** The hand of this bench, for a kind of film, as the weighed versions have it in the mean. */
function handBy(weights: Float64Array, kind: string): Hand {
  let [spread, lift] = [0, 0];
  weights.forEach((weight, version) => {
    const logged = HANDS(version, kind);
    spread += weight * logged.spread;
    lift += weight * logged.lift;
  });
  // what is left of nothing by rounding is nothing
  const factor = (log: number) => (Math.abs(log) < 1e-9 ? 1 : Math.exp(log));
  return { spread: factor(spread), lift: factor(lift) };
}

/** `count` versions, evenly along the weights, set by set. */
function drawn(weights: Float64Array, count: number): number[] {
  const found: number[] = [];
  let [reached, at] = [0, 0];
  const place = (i: number) => (i % (POOL / SETS)) * SETS + Math.floor(i / (POOL / SETS));
  for (let i = 0; i < count; i += 1) {
    const wanted = (i + 0.5 * (SETS / POOL)) / count;
    while (at < POOL - 1 && reached + weights[place(at)]! <= wanted) reached += weights[place(at++)]!;
    found.push(place(at));
  }
  return found;
}

/** Which draw of the sheet, by how well each explains what was seen on it, at `lot` (0–1) of the way through them. */
function sheetAt(logs: Float64Array, version: number, power: number, lot: number): number {
  const from = version * SHEETS;
  const here = logs.subarray(from, from + SHEETS).map((log) => log * power);
  const all = logSum(here);
  let reached = 0;
  for (let sheet = 0; sheet < SHEETS - 1; sheet += 1) {
    reached += Math.exp(here[sheet]! - all);
    if (lot < reached) return sheet;
  }
  return SHEETS - 1;
}
