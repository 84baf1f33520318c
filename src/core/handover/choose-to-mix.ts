/** From what is to be mixed for a job to the mixing calculator: the tails of its links, written pair by pair. */
import type { Job } from '../choose/job';
import { FORMAT } from '../link/plan-link';
import { writePairs } from '../link/pairs';
import { BASES, EXTENDERS, POWDERS, STARCHES } from '../mix/jars';
import { writePaper, type OwnPaper } from '../paper/own-paper';
import type { Catalogue } from '../records/records';

/** An adhesive or an ingredient, and how many parts of it. */
interface Part {
  readonly of: string;
  readonly parts: number;
}

export interface Making {
  /** what is done with it: a powder is stirred into water, a starch is cooked, PVA is stretched with something */
  readonly does: 'stir' | 'cook' | 'stretch';
  /** id of what is made: an adhesive of the shelf; absent for a mix that is on none */
  readonly of?: string;
  /** of the link to the mixing calculator */
  readonly tail: string;
}

type Pair = readonly [key: string, text: string];

/** The sheet as links carry it, its figures to three decimals. */
export function paperText({ paper }: Pick<Job, 'paper'>): string {
  const rounded = Object.entries(paper).map(([key, value]) => [
    key,
    typeof value === 'number' ? Number(value.toFixed(3)) : value,
  ]);
  return writePaper(Object.fromEntries(rounded) as OwnPaper);
}

const among = (list: readonly string[], id: string) => list.includes(id);
const shown = (value: number, digits: number) => String(Number(value.toPrecision(digits)));
/** What the mixing calculator takes: 1 to 50 000 ml. */
const needText = (millilitres: number) => shown(Math.min(50000, Math.max(1, millilitres)), 3);

/**
 * What has to be made for these parts by volume, in the order of the work, with `millilitres` of the whole in hand:
 * what stays in the pot is already in it. Empty where everything is used as it comes. Ids that the mixing calculator does not know are passed over.
 */
export function makingsOf(
  parts: readonly Part[],
  millilitres: number,
  job: Job,
  catalogue: Catalogue,
): readonly Making[] {
  const [first, second, ...rest] = parts;
  if (first && second && rest.length === 0 && among(BASES, first.of) && among(EXTENDERS, second.of)) {
    const pairs: Pair[] = [
      ['do', 'stretch'],
      ['base', first.of],
      ['with', second.of],
      ['aim', 'parts'],
      ['base-parts', shown(first.parts, 4)],
      ['with-parts', shown(second.parts, 4)],
      ['from', 'need'],
      ['paper', paperText(job)],
      ['tool', job.tool],
      ['room', String(job.celsius)],
    ];
    return [{ does: 'stretch', tail: tailOf(pairs, millilitres) }];
  }
  const whole = parts.reduce((sum, part) => sum + part.parts, 0);
  return parts.flatMap(({ of, parts: share }) => makingOf(of, (millilitres * share) / whole, catalogue) ?? []);
}

/** How one adhesive of the shelf is made from its powder; undefined where it comes ready, or is a mix of others. */
function makingOf(of: string, millilitres: number, catalogue: Catalogue): Making | undefined {
  const adhesive = catalogue.adhesives.get(of);
  if (adhesive?.form !== 'wet' || adhesive.parts.length !== 2) return undefined;
  const [solid, water] = [adhesive.parts[0]!, adhesive.parts[1]!];
  if (water.of !== 'water') return undefined;
  if (among(POWDERS, solid.of)) {
    const percent = (100 * solid.parts) / (solid.parts + water.parts);
    const pairs: Pair[] = [
      ['do', 'powder'],
      ['powder', solid.of],
      ['percent', shown(percent, 4)],
      ['per', 'w/w'],
    ];
    return { does: 'stir', of, tail: tailOf(pairs, millilitres) };
  }
  const ratio = water.parts / solid.parts;
  // thinner than one in ten it is cooked thicker and let down
  if (!among(STARCHES, solid.of) || ratio < 3 || ratio > 10) return undefined;
  const pairs: Pair[] = [
    ['do', 'paste'],
    ['starch', solid.of],
    ['water', shown(ratio, 4)],
    ['by', adhesive.by],
    ['for', 'as-cooked'],
  ];
  return { does: 'cook', of, tail: tailOf(pairs, millilitres) };
}

const tailOf = (pairs: readonly Pair[], millilitres: number): string =>
  writePairs([['v', FORMAT], ...pairs, ['need', needText(millilitres)], ['loss', '0']]);
