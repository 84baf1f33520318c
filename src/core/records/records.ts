/**
 * What the core knows of each paper, substrate, adhesive and technique: the shapes of the records,
 * in SI or in the trade's metric units. The records themselves live in content/ and arrive as arguments.
 */
import type { Adhesive, Ingredient } from './adhesives';
import type { Range } from '../base/quantity';
import type { Nature } from '../safety/hazards';

export type { Adhesive, DryAdhesive, FilmKind, Ingredient, WetAdhesive, YesNo } from './adhesives';

export type Surface = 'smooth' | 'textured' | 'embossed';
export type Sizing = 'unsized' | 'lightly-sized' | 'sized' | 'hard-sized' | 'coated';

export interface Paper {
  readonly id: string;
  readonly name: string;
  /** g/m² */
  readonly grammage: Range;
  /** apparent density, g/cm³ */
  readonly density: Range;
  /** water sorptivity of the face that takes the glue, g/m² per √s */
  readonly sorptivity: Range;
  /** dry tensile index in the weaker direction, N·m/g */
  readonly tensileIndex: Range;
  /** share of the dry strength kept when soaked, 0–1 */
  readonly wetRetention: Range;
  /** share of the face that touches a flat board when laid, 0–1 */
  readonly contact: Range;
  /** expansion across the grain from dry to soaked, as a share (0.02 is 2 %) */
  readonly wetExpansion: Range;
  readonly surface: Surface;
  readonly sizing: Sizing;
  readonly grain: 'none' | 'weak' | 'marked';
  readonly coloursRun: 'unlikely' | 'possible' | 'likely';
  /** water marks, cockles or turns opaque where wetted: glassine, tracing paper */
  readonly harmedByWater?: boolean;
  /** share of its face that is holes, through which a liquid runs as a whole; absent for paper */
  readonly openWeave?: Range;
  /** its back is plastic: glue has to stick to that */
  readonly plasticBack?: boolean;
  /** a photographic image, which what is impure behind it stains or fades */
  readonly photograph?: boolean;
  /** a foil or film on its face lets no water out */
  readonly closed?: boolean;
}

export interface Substrate {
  readonly id: string;
  readonly name: string;
  /** water sorptivity of its face, g/m² per √s; 0 for non-porous faces */
  readonly sorptivity: Range;
  /** force at which its face comes away, as a multiple of that of smooth dense binder's board */
  readonly faceStrength: Range;
  /** mm */
  readonly thickness: Range;
  /** Young's modulus in bending, MPa */
  readonly modulus: Range;
  readonly face: 'porous' | 'leather' | 'non-porous';
  /** can glue be brushed on it and the paper laid down */
  readonly takesGlue: boolean;
  /** share of its face that is holes between threads; absent where it has none */
  readonly openWeave?: Range;
  /** does it bend with use, so that flatness is not asked of it */
  readonly limp: boolean;
  /** of plastic, from which what water carried peels as a skin */
  readonly plastic?: boolean;
  /** what it is, as far as it can hurt */
  readonly hazards?: readonly Nature[];
}

/** Which way a tool goes over a face: from its middle over all edges, in bands from edge to edge, or in one pull over the whole. */
export type Stroke = 'outwards' | 'bands' | 'pull';

/** A way to apply adhesive: tool and hand. */
export interface Technique {
  readonly id: string;
  readonly name: string;
  /** wet coat, g/m² */
  readonly coat: Range;
  /** drag on the sheet as a multiple of a bristle brush's */
  readonly drag: Range;
  /** the thickest liquid it can spread, mPa·s at rest */
  readonly thickest: number;
  readonly stroke: Stroke;
}

/** Everything `choose` looks things up in. */
export interface Catalogue {
  readonly papers: ReadonlyMap<string, Paper>;
  readonly substrates: ReadonlyMap<string, Substrate>;
  readonly ingredients: ReadonlyMap<string, Ingredient>;
  readonly adhesives: ReadonlyMap<string, Adhesive>;
  readonly techniques: ReadonlyMap<string, Technique>;
}
