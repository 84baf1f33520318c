/**
 * A bench of one's own as one short text, which stands in a link: what was measured on it, each with the range that
 * the measuring leaves. "brush-full_coat_55_62_70~binders-board_drinks_2.3_2.9_3.7~pva_solids_0.52_0.53_0.54~named
 * Kitchen table". Where a bench is named, its ranges take the place of those of the records. Reading never throws (`bench-text.ts` writes it).
 */
import { memoize } from '../base/memoize';
import type { Range } from '../base/quantity';
import type { Catalogue } from '../records/records';

/**
 * What can be measured of a bench: the coat of a tool, g/m² wet; how a board drinks, g/m² per √s; the solids of what is
 * in a jar, as a share; the share of solids at which it grabs.
 */
export type BenchQuantity = 'coat' | 'drinks' | 'solids' | 'grabs';

export interface BenchMeasure {
  readonly quantity: BenchQuantity;
  /** id of the tool, the board or the ingredient it was measured of */
  readonly of: string;
  readonly range: Omit<Range, 'basis'>;
}

export interface OwnBench {
  readonly measures: readonly BenchMeasure[];
  readonly name?: string;
}

/** What a number of each kind can be: outside these a text is no bench. */
export const BENCH_LIMITS: Readonly<Record<BenchQuantity, readonly [low: number, high: number]>> = {
  coat: [1, 1000],
  drinks: [0.01, 100],
  solids: [0.001, 1],
  grabs: [0.001, 1],
};

const PART = /^([a-z0-9-]{1,60})_(coat|drinks|solids|grabs)_([\d.]{1,9})_([\d.]{1,9})_([\d.]{1,9})$/;
const NAME = /^named ([\p{L}\p{M}\p{N} .,;:()'’/°%+-]{1,40})$/u;
/** Measures in one text. Our own line: three of each kind. */
const MOST = 12;

/** The bench of a text; undefined where the text is none. What it speaks of may be in no record. */
export function readBench(text: string | undefined): OwnBench | undefined {
  const parts = (text ?? '').split('~');
  if (parts.length > MOST) return undefined;
  const measures: BenchMeasure[] = [];
  let name: string | undefined;
  for (const part of parts) {
    const [, of, kind, ...texts] = PART.exec(part) ?? [];
    if (of === undefined) {
      name = NAME.exec(part)?.[1];
      if (name === undefined) return undefined;
      continue;
    }
    const quantity = kind as BenchQuantity;
    const [low, middle, high] = texts.map(Number) as [number, number, number];
    const [least, most] = BENCH_LIMITS[quantity];
    if (!(least <= low && low <= middle && middle <= high && high <= most)) return undefined;
    measures.push({ quantity, of, range: { low, middle, high } });
  }
  return measures.length > 0 ? { measures, ...(name !== undefined && { name }) } : undefined;
}

/** In which of the records each quantity stands, and under what name. */
const PLACES = {
  coat: ['techniques', 'coat'],
  drinks: ['substrates', 'sorptivity'],
  solids: ['ingredients', 'solids'],
  grabs: ['ingredients', 'grabSolids'],
} as const;

const benchesOn = new WeakMap<Catalogue, (text: string) => Catalogue>();

/**
 * The records as they are on this bench: the same records where no bench is named or the text is none. What it speaks
 * of and no record knows is passed over. One answer for one text, so that what is kept by records is kept by bench too.
 */
export function onBench(text: string | undefined, catalogue: Catalogue): Catalogue {
  if (!text) return catalogue;
  let on = benchesOn.get(catalogue);
  if (!on) {
    on = memoize((own: string) => narrowed(readBench(own)?.measures ?? [], catalogue));
    benchesOn.set(catalogue, on);
  }
  return on(text);
}

const narrowed = (measures: readonly BenchMeasure[], catalogue: Catalogue): Catalogue =>
  measures.reduce((records, { quantity, of, range }) => {
    const [folder, field] = PLACES[quantity];
    const record: object | undefined = records[folder].get(of);
    // what never grabs (water) has no share at which it does
    if (!record || !(field in record)) return records;
    const changed = new Map<string, unknown>(records[folder]);
    changed.set(of, { ...record, [field]: { ...range, basis: 'measured' } });
    return { ...records, [folder]: changed };
  }, catalogue);
