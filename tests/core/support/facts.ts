/** What a judgement has found, made by hand: round numbers, and whatever a test wants otherwise. */
import type { Task } from '../../../src/core/records/task';
import type { Finding, Reason } from '../../../src/core/choose/finding';
import type { Need } from '../../../src/core/choose/job';
import { DEFAULT_JOB } from '../../../src/core/choose/job';
import type { Adhesive, DryAdhesive, WetAdhesive } from '../../../src/core/records/records';
import type { Sheet } from '../../../src/core/paper/sheet';
import type { Chances } from '../../../src/core/choose/tally';

const TRAITS = {
  ...({ undoneWithWater: 'yes', longLived: 'yes', flexes: 'yes', bearsDamp: 'yes', childSafe: 'yes' } as const),
  needsHeat: false,
  hold: { porous: 1, leather: 1, nonPorous: 1 },
};
const exactly = (value: number) => ({ low: value, middle: value, high: value, basis: 'from-memory' }) as const;

export const SIZE_GLUE: WetAdhesive = {
  ...TRAITS,
  id: 'size-glue',
  name: 'Size glue',
  short: 'size glue',
  form: 'wet',
  by: 'mass',
  parts: [],
};
export const TACK_FILM: DryAdhesive = {
  ...TRAITS,
  id: 'tack-film',
  name: 'Tack film',
  short: 'tack film',
  form: 'dry',
  appliedWith: 'a soft roller',
  hazards: [],
  slip: exactly(5),
  pull: exactly(10),
  waterLoad: exactly(0),
  drag: exactly(1),
  strength: exactly(2),
};

/** Things of which nothing is said while they hold. */
export const EVERY_ONE: Chances = { spread: 1, reach: 1, place: 1, lift: 1, grab: 1, strike: 1, bond: 1, flat: 1 };

export interface Found {
  readonly method?: Partial<Finding['method']>;
  readonly weights?: Partial<Chances>;
  readonly open?: Finding['openSeconds'];
  readonly adhesive?: Adhesive;
  readonly chances?: Partial<Chances>;
  readonly margins?: Partial<Chances>;
  /** seconds: one in ten below the first, the middle, one in ten above the last */
  readonly slip?: readonly [p10: number, p50: number, p90: number];
  readonly needed?: number;
  readonly gives?: Finding['gives'];
  readonly needs?: readonly Need[];
  readonly notes?: readonly Reason[];
  readonly surface?: Sheet['surface'];
  readonly task?: Task;
  /** g/m² */
  readonly grammage?: number;
}

/** A sheet of 100 g/m² on a wet glue; everything holds three times in four at twice what is asked, and half a minute is needed of a whole one. */
export function factsOf(found: Found = {}): Finding {
  const [p10, p50, p90] = found.slip ?? [40, 60, 90];
  return {
    adhesive: found.adhesive ?? SIZE_GLUE,
    job: { ...DEFAULT_JOB, ...(found.task && { task: found.task }), needs: found.needs ?? [] },
    sheet: { grammage: exactly(found.grammage ?? 100), surface: found.surface ?? 'smooth' } as unknown as Sheet,
    method: { face: 'sheet', tool: 'brush-full', wait: 'none', minutes: 0, press: 'weight', ...found.method },
    weights: { ...EVERY_ONE, ...found.weights },
    chances: { ...EVERY_ONE, spread: 0.75, lift: 0.75, bond: 0.75, flat: 0.75, ...found.chances },
    margins: { ...EVERY_ONE, spread: 2, lift: 2, bond: 2, flat: 2, ...found.margins },
    slipSeconds: { p10, p50, p90 },
    openSeconds: found.open ?? { p10: 60, p50: 120, p90: 240 },
    needed: found.needed ?? 30,
    gives: found.gives ?? 'neither',
    fit: { share: 1, notes: found.notes ?? [], cautions: [] },
  };
}
