/** What the core knows of what goes in the pot, and of the adhesives that are made of it or come ready. */
import type { Range } from '../base/quantity';
import type { Deed, Nature } from '../safety/hazards';
import type { Task } from './task';

/** What the dry film is: vinyl (PVA, EVA), cooked starch, a cellulose ether, or a protein (gelatine, animal and fish glue). */
export type FilmKind = 'vinyl' | 'starch' | 'ether' | 'protein';

export type YesNo = 'yes' | 'partly' | 'no';

/** What the user can rely on once it has dried or been laid; common to every adhesive. */
export interface AdhesiveTraits {
  readonly undoneWithWater: YesNo;
  readonly longLived: YesNo;
  readonly flexes: YesNo;
  readonly bearsDamp: YesNo;
  readonly childSafe: YesNo;
  readonly needsHeat: boolean;
}

/** How a liquid's viscosity follows from what is dissolved or dispersed in it. */
export type Thickening =
  | { readonly law: 'none' }
  /** a cellulose ether named by the viscosity of its 2 % solution, mPa·s */
  | { readonly law: 'cellulose-ether'; readonly grade: Range }
  /** particles in water; viscosity as supplied, mPa·s */
  | { readonly law: 'dispersion'; readonly viscosity: Range }
  /** a cooked or dissolved thickener: viscosity, mPa·s, of a solution of `percent` by mass */
  | {
      readonly law: 'solution';
      readonly viscosity: Range;
      readonly percent: number;
      /** power-law index under the brush: 1 does not thin; absent where the Cross law holds */
      readonly flowIndex?: Range;
    };

/** One thing that goes in the pot: a powder, water, or a liquid as supplied. */
export interface Ingredient {
  readonly id: string;
  readonly name: string;
  /** share of its mass that stays when dry, 0–1 */
  readonly solids: Range;
  /** g/ml as supplied (powders: of the powder's own substance) */
  readonly density: Range;
  /** g/cm³ of what stays when dry */
  readonly solidDensity: number;
  readonly thickening: Thickening;
  /** solids share at which the joint grabs; absent for water and alcohol */
  readonly grabSolids?: Range;
  /** dry g/m² that a sound joint between porous faces needs */
  readonly leastDryCoat?: Range;
  /** °C above which it forms a film, where it needs one */
  readonly filmFormsAbove?: Range;
  /** °C at which it gels as it cools, where it does */
  readonly gelsAt?: Range;
  readonly liquid: 'water' | 'alcohol';
  /** what it is, as far as it can hurt */
  readonly hazards: readonly Nature[];
  /** °C that some of the liquid reaches when it is made up; absent where all of it stays cold */
  readonly madeAt?: number;
  /** absent for water and alcohol */
  readonly kind?: FilmKind;
  /** whether it stains, shines or stiffens where it comes through */
  readonly shows?: YesNo;
}

interface AdhesiveBase extends AdhesiveTraits {
  readonly id: string;
  readonly name: string;
  readonly short: string;
  /** how well it holds on each kind of face, as a multiple of its hold on porous faces */
  readonly hold: { readonly porous: number; readonly leather: number; readonly nonPorous: number };
}

/** An adhesive made from ingredients; a liquid as supplied is a recipe with one part. */
export interface WetAdhesive extends AdhesiveBase {
  readonly form: 'wet';
  readonly by: 'mass' | 'volume';
  readonly parts: readonly { readonly of: string; readonly parts: number }[];
  /** a ratio or strength made up for special cases, not the one that stands in the jar */
  readonly special?: boolean;
  /** °C in the pot, where it is used hot */
  readonly usedAt?: number;
}

/** Film, tissue, stick, spray, contact: what happens at the joint is stated, not computed from water. */
export interface DryAdhesive extends AdhesiveBase {
  readonly form: 'dry';
  /** seconds during which the sheet can still be moved */
  readonly slip: Range;
  /** pull when the sheet is lifted soon after laying, N/m */
  readonly pull: Range;
  /** water or solvent brought to the sheet, g/m² */
  readonly waterLoad: Range;
  /** drag on the sheet while it is applied, as a multiple of what a 45 g/m² sheet bears */
  readonly drag: Range;
  /** strength of the joint once made, as a multiple of what is needed between porous faces */
  readonly strength: Range;
  readonly appliedWith: string;
  /** what it is, as far as it can hurt, and what using it does that can */
  readonly hazards: readonly Nature[];
  readonly does?: readonly Deed[];
  /** tasks it can do; all when absent */
  readonly tasks?: readonly Task[];
  /** what sort of thing it is, so that a list can name one of each */
  readonly film?: string;
  /** has to be made the day before */
  readonly madeAhead?: boolean;
  /** put on both faces and let go dry before they meet */
  readonly bothFaces?: boolean;
}

export type Adhesive = WetAdhesive | DryAdhesive;
