/** How far the work bows: just glued, dry, and later in the air that it will live in. */
import { LEFT_AFTER_PRESSING } from '../joint/flatness';
import { curl, type Direction, type GrainedPly } from '../joint/curl';
import { equilibriumMoisture } from '../joint/equilibrium-moisture';
import { around, clamp, type Range } from '../base/quantity';
import { draws, drawWork, MIDDLE, type PlyDraw, type DrawnSheet, type FlatWork } from './plies';

/** What pressing leaves is itself an estimate, and this is how far it may be out, as a share. Estimate. */
const LEFT_WITHIN = 1 / 3;
/** Hours under weight after which more of it changes nothing: "until the next day". Common practice, no source. */
export const PRESSED_THROUGH_HOURS = 24;
/** Moisture of paper and board as a share of wood's in the same air: the low end is the binder's tenth of the humidity (common practice), the rest from memory. */
export const PAPER_OF_WOOD: Range = { low: 0.5, middle: 0.65, high: 0.85, basis: 'from-memory' };
/** Moisture, % of dry weight, past which fibre swells no further: about 30 for wood. From memory. */
export const FIBRE_SATURATION = 30;
/** Past this share of the span a shallow arc is no longer the shape: the work rolls up. Our own line. */
const ROLLS_UP = 0.25;

export interface RoomAir {
  readonly celsius: number;
  /** % relative humidity now, and where the work will live */
  readonly humidity: number;
  readonly later: number;
}

export interface FlatMaking {
  readonly work: FlatWork;
  /** what it is glued with, in words */
  readonly glue: string;
  readonly room: RoomAir;
  readonly pressHours: number;
  readonly widthMm: number;
  readonly heightMm: number;
}

/** mm; above 0 the covered face goes hollow, below 0 it stands out. Eight times in ten it lies from low to high. */
export interface Bow {
  readonly low: number;
  readonly middle: number;
  readonly high: number;
  /** mm of the work that bows */
  readonly span: number;
}

export const STAGES = ['wet', 'dry', 'later'] as const;
export type StageId = (typeof STAGES)[number];
export type Bows = Readonly<Record<StageId, Readonly<Record<Direction, Bow>>>>;

/** Share of its growth that still pulls after these hours under weight: all of it with none, the rest in proportion. */
export function leftPulling(hours: number, leftInTheEnd = LEFT_AFTER_PRESSING): number {
  return 1 - (1 - leftInTheEnd) * clamp(hours / PRESSED_THROUGH_HOURS, 0, 1);
}

/** Growth, as a share of that from dry to soaked, that the change of air brings. */
const airChange = ({ celsius, humidity, later }: RoomAir, ofWood: number): number =>
  ((equilibriumMoisture(celsius, later) - equilibriumMoisture(celsius, humidity)) * ofWood) / FIBRE_SATURATION;

type Heights = Readonly<Record<Direction, number>>;

/** Signed heights of the bow at one stage on one draw, mm. */
function bowsOn({ work, room, pressHours, widthMm, heightMm }: FlatMaking, stage: StageId, draw: PlyDraw): Heights {
  const { cover, lining, board } = drawWork(work, draw);
  const air = stage === 'later' ? airChange(room, draw.of(PAPER_OF_WOOD, 17)) : 0;
  const left = leftPulling(pressHours, draw.of(around(LEFT_AFTER_PRESSING, LEFT_WITHIN, 'estimate'), 18));
  const ply = ({ ply, wetted, stiffWhenWet }: DrawnSheet): GrainedPly => {
    if (stage !== 'wet') return { ...ply, moisture: air - wetted * left };
    const { along, across } = ply.modulus;
    return { ...ply, modulus: { along: along * stiffWhenWet, across: across * stiffWhenWet }, moisture: wetted };
  };
  const plies = [ply(cover), { ...board, moisture: air }, ...(lining ? [ply(lining)] : [])];
  const height = (direction: Direction, span: number): number => {
    const { bowMm, towards } = curl({ plies, widthMm: span, direction });
    const shallow = Math.min(bowMm, ROLLS_UP * span);
    return towards === 'last' ? -shallow : shallow;
  };
  return { width: height('width', widthMm), height: height('height', heightMm) };
}

/** One stage in both directions, as ranges. */
export function bowsAt(making: FlatMaking, id: StageId): Readonly<Record<Direction, Bow>> {
  const found = draws().map((draw) => bowsOn(making, id, draw));
  const along = (direction: Direction, span: number): Bow => {
    const sorted = found.map((one) => one[direction]).sort((a, b) => a - b);
    const share = (of: number) => sorted[Math.round(of * (sorted.length - 1))]!;
    return { low: share(0.1), middle: share(0.5), high: share(0.9), span };
  };
  return { width: along('width', making.widthMm), height: along('height', making.heightMm) };
}

/** How far the work bows when the glue is wet, after pressing, and when it has dried. */
export const bowsOf = (making: FlatMaking): Bows => ({
  wet: bowsAt(making, 'wet'),
  dry: bowsAt(making, 'dry'),
  later: bowsAt(making, 'later'),
});

/** The larger of the two bows at the middle of every range, later, mm: what a search can compare quickly. */
export function middlingBow(making: FlatMaking): number {
  const { width, height } = bowsOn(making, 'later', MIDDLE);
  return Math.max(Math.abs(width), Math.abs(height));
}

/** Whether a bow is more than half a circle, so that the sheet rolls up. */
export const rollsUp = ({ middle, span }: Bow): boolean => Math.abs(middle) >= ROLLS_UP * span - 1e-9;
/** The end of the range that bows the more, either way, mm. */
export const farEnd = ({ low, high }: Bow): number => Math.max(Math.abs(low), Math.abs(high));
/** Which of two directions bows the more, at the far end of its range. */
export const worseOf = ({ width, height }: Readonly<Record<Direction, Bow>>): Direction =>
  farEnd(height) > farEnd(width) ? 'height' : 'width';
