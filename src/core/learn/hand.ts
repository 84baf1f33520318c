/**
 * What the model leaves out of a bench for good: a light or a heavy hand, a glue that is not quite like its record. It
 * is a lasting factor on two margins, of spreading and of lifting, one for the whole bench and one for each kind of
 * film. Each version of the bench has its own; what swatches say of it is the mean over the versions, so that a bench
 * of which nothing is known keeps the model's own margins and its own doubt.
 */
import { seededUniform } from '../base/random';
import type { FilmKind } from '../records/records';

/**
 * How far benches differ for good from what the model says, in natural logs of a margin (one standard width).
 * Estimates, chosen among a few on invented benches (tests/simulate) other than those of which the figures are shown.
 */
export const HAND = { bench: 0.25, film: 0.15 } as const;

const FILMS: readonly FilmKind[] = ['vinyl', 'starch', 'ether', 'protein'];
/** For the bench, and for each film: of spreading, of lifting. */
const EACH = 2 * (1 + FILMS.length);

/** Logs of the factors of one version. */
interface Logs {
  readonly spread: number;
  readonly lift: number;
}

/** A hand for each of so many versions, drawn by a seeded lot; over all of them the mean of each is 0. */
export function handsOf(versions: number): (version: number, kind: string) => Logs {
  const uniform = seededUniform(99);
  const normal = () => Math.sqrt(-2 * Math.log(1 - uniform())) * Math.cos(2 * Math.PI * uniform());
  const table = Float64Array.from({ length: versions * EACH }, normal);
  for (let d = 0; d < EACH; d += 1) {
    let sum = 0;
    for (let version = 0; version < versions; version += 1) sum += table[version * EACH + d]!;
    for (let version = 0; version < versions; version += 1) table[version * EACH + d]! -= sum / versions;
  }
  const films = new Map<string, readonly number[]>();
  return (version, kind) => {
    let places = films.get(kind);
    if (!places) films.set(kind, (places = placesOf(kind)));
    const at = version * EACH;
    let [spread, lift] = [HAND.bench * table[at]!, HAND.bench * table[at + 1]!];
    for (const place of places) {
      spread += (HAND.film / places.length) * table[at + place]!;
      lift += (HAND.film / places.length) * table[at + place + 1]!;
    }
    return { spread, lift };
  };
}

/** Where in a row the films of a mix stand: "ether+vinyl" shares in both. */
const placesOf = (kind: string): readonly number[] =>
  FILMS.flatMap((film, i) => (kind.split('+').includes(film) ? [2 + 2 * i] : []));
