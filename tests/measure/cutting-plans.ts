/**
 * `npm run measure:cut`: how often a cutting plan takes no more sheets than the layout its pieces were cut from, and
 * what it costs. Asserts nothing: the counts are the same on every machine, the times are this one's.
 * `npm run measure:cut -- 10` takes ten jobs of each kind in place of fifty.
 */
import { layOutInTurns } from '../../src/core/cut/layout';
import type { SheetLayout } from '../../src/core/cut/layout-types';
import { KINDS, knownJob, type KnownJob, type KnownKind } from './known-layouts';

const jobs = Number(process.argv[2] ?? 50);

interface Planned {
  readonly layout: SheetLayout;
  readonly milliseconds: number;
  /** the longest of the turns it was worked out in */
  readonly longestTurn: number;
}

function planned({ stock, pieces }: KnownJob): Planned {
  const work = layOutInTurns(stock, pieces);
  let [milliseconds, longestTurn] = [0, 0];
  for (;;) {
    // time on the processor: what else the machine does is not counted
    const start = process.cpuUsage();
    const { done, value } = work.next();
    const took = process.cpuUsage(start).user / 1000;
    milliseconds += took;
    longestTurn = Math.max(longestTurn, took);
    if (!done) continue;
    if (!value.ok) throw new Error(value.errors.map(({ message }) => message).join(' '));
    return { layout: value.value, milliseconds, longestTurn };
  }
}

function measured(kind: KnownKind): { readonly met: number; readonly cells: readonly (number | string)[] } {
  const all = Array.from({ length: jobs }, (_, number) => planned(knownJob(kind, number)));
  const met = all.filter(({ layout }) => layout.sheets <= kind.sheets).length;
  const times = all.map(({ milliseconds }) => milliseconds).sort((a, b) => a - b);
  const at = (share: number): string => times[Math.min(jobs - 1, Math.floor(share * jobs))]!.toFixed(0);
  const longest = Math.max(...all.map(({ longestTurn }) => longestTurn)).toFixed(0);
  return { met, cells: [kind.wastePercent, kind.pieces, kind.sheets, met, at(0.5), at(0.9), at(1), longest] };
}

const line = (cells: readonly (number | string)[]): string => `| ${cells.join(' | ')} |`;
const head = ['waste, %', 'pieces', 'sheets', `met of ${jobs}`, 'middle ms', '90 in 100', 'worst', 'longest turn'];
console.log(`${line(head)}\n${line(head.map(() => '---'))}`);
const byWaste = new Map<number, number[]>();
for (const kind of KINDS) {
  const { met, cells } = measured(kind);
  console.log(line(cells));
  byWaste.set(kind.wastePercent, [...(byWaste.get(kind.wastePercent) ?? []), met]);
}
for (const [waste, met] of byWaste)
  console.log(`${waste} %: ${met.reduce((sum, one) => sum + one, 0)} of ${met.length * jobs} met`);
