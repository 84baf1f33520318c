/** How much adhesive a job takes: area, coat, film and what is left to buy. One coat of uncertain weight gives answers as ranges. */
import { areaOf, type Piece } from '../base/piece';
import type { Range } from '../base/quantity';
import { mustBePositive, mustBeWithin } from '../base/result';
import { roundUpForJug } from '../base/rounding';

/** One litre spread over one square metre stands a millimetre high: film in µm from millilitres per square metre. */
export function wetFilmMicrometres(millilitresPerSquareMetre: number): number {
  mustBeWithin('millilitresPerSquareMetre', millilitresPerSquareMetre, 0, 1e6);
  return millilitresPerSquareMetre;
}

/** Dry film, µm: the wet film times the share of its volume that stays (ISO 2808; ASTM D4414). */
export function dryFilmMicrometres(wet: number, volumeSolids: number): number {
  mustBeWithin('wet', wet, 0, 1e6);
  mustBeWithin('volumeSolids', volumeSolids, 0, 1);
  return wet * volumeSolids;
}

/** How far a litre goes at this wet film: 1000 ÷ µm (ASTM D4414). */
export function squareMetresPerLitre(wetMicrometres: number): number {
  mustBePositive('wetMicrometres', wetMicrometres);
  return 1000 / wetMicrometres;
}

/** What stays in pot and brush, per cent of what is mixed, where nobody says otherwise. Common practice, no source. */
export const LEFT_IN_POT_PERCENT = 15;

/** What is spread; without it a millilitre is taken to weigh a gram and nothing is said of the dry film. */
export interface Spread {
  /** g/ml */
  readonly density: number;
  /** share by mass and by volume that stays when dry, 0–1 */
  readonly solids: number;
  readonly volumeSolids: number;
}

export interface CoatingJob {
  readonly pieces: readonly Piece[];
  /** wet g/m² for one pass */
  readonly coat: number | Range;
  /** coats on each face; 1 when left out */
  readonly passes?: number;
  /** faces glued: 1 or 2; 1 when left out */
  readonly faces?: number;
  /** left in the pot and on the brush, as a share of what is mixed; 0–90; 0 when left out */
  readonly lossPercent?: number;
  readonly liquid?: Spread;
  /** makers of the same thing; 1 when left out */
  readonly times?: number;
  /** added for practice and mishaps; 0 when left out */
  readonly sparePercent?: number;
  /** what it is sold in; price in any currency */
  readonly container?: { readonly millilitres: number; readonly price?: number };
}

export interface Coverage {
  /** m² that get a coat, spare included */
  readonly squareMetres: number;
  /** on the work; per-area figures are for all passes together */
  readonly wetGrams: Range;
  readonly wetMillilitres: Range;
  readonly wetMicrometres: Range;
  /** to mix: what is on the work and what is lost */
  readonly mixGrams: Range;
  readonly mixMillilitres: Range;
  /** the figure to have in hand: the heavy end, rounded up to a round number of ml */
  readonly buyMillilitres: number;
  readonly dryGrams?: Range;
  readonly dryMicrometres?: Range;
  /** g/m² of water that the sheet and the board must take up or give off */
  readonly waterPerSquareMetre?: Range;
  readonly containers?: number;
  readonly cost?: number;
}

const scaled = ({ low, middle, high, basis }: Range, by: number): Range => ({
  low: low * by,
  middle: middle * by,
  high: high * by,
  basis,
});

/** What the whole job takes. Throws RangeError on an area, coat or share that cannot be. */
export function cover(job: CoatingJob): Coverage {
  const { pieces, passes = 1, faces = 1, lossPercent = 0, times = 1, sparePercent = 0, liquid, container } = job;
  mustBeWithin('passes', passes, 1, 20);
  mustBeWithin('faces', faces, 1, 2);
  mustBeWithin('lossPercent', lossPercent, 0, 90);
  mustBeWithin('times', times, 1, 10000);
  mustBeWithin('sparePercent', sparePercent, 0, 500);
  const coat: Range =
    typeof job.coat === 'number' ? { low: job.coat, middle: job.coat, high: job.coat, basis: 'measured' } : job.coat;
  mustBePositive('coat', coat.low);
  mustBeWithin('coat', coat.high, coat.low, 5000);
  const density = liquid?.density ?? 1;
  mustBePositive('density', density);
  const squareMetres = pieces.reduce((sum, piece) => sum + areaOf(piece), 0) * faces * times * (1 + sparePercent / 100);
  const perSquareMetre = scaled(coat, passes);
  const wetGrams = scaled(perSquareMetre, squareMetres);
  const mixGrams = scaled(wetGrams, 1 / (1 - lossPercent / 100));
  const mixMillilitres = scaled(mixGrams, 1 / density);
  const perMillilitre = scaled(perSquareMetre, 1 / density);
  const film = (of: (millilitres: number) => number): Range => ({
    ...perMillilitre,
    low: of(perMillilitre.low),
    middle: of(perMillilitre.middle),
    high: of(perMillilitre.high),
  });
  const containers = container && Math.max(1, Math.ceil(mixMillilitres.high / container.millilitres - 1e-9));
  if (container) mustBePositive('container', container.millilitres);
  return {
    squareMetres,
    wetGrams,
    wetMillilitres: scaled(wetGrams, 1 / density),
    wetMicrometres: film(wetFilmMicrometres),
    mixGrams,
    mixMillilitres,
    buyMillilitres: roundUpForJug(mixMillilitres.high),
    ...(liquid && {
      dryGrams: scaled(wetGrams, liquid.solids),
      dryMicrometres: film((millilitres) => dryFilmMicrometres(wetFilmMicrometres(millilitres), liquid.volumeSolids)),
      waterPerSquareMetre: scaled(perSquareMetre, 1 - liquid.solids),
    }),
    ...(containers !== undefined && { containers }),
    ...(containers !== undefined && container?.price !== undefined && { cost: containers * container.price }),
  };
}
