/**
 * The first minutes of a joint: water leaves the coat, the film begins to grab, the wet sheet weakens,
 * and a lifted corner comes away clean or does not. A load-and-resistance model, one screen long;
 * symbols and what is left out are on the page "How the model works".
 */
import { BOND_CONSTANTS, GRAB_LEVEL, LONGEST_SLIP_SECONDS, SHEET_BREATHES, type BondConstants } from './constants';
import { poreVolume } from '../paper/paper';
import { clamp } from '../base/quantity';
import { mustBePositive, mustBeWithin } from '../base/result';
import { takenUp, timeToLose, type Flow } from './water-loss';

export interface JointPaper {
  /** g/m² */
  readonly grammage: number;
  /** apparent density, g/cm³ */
  readonly density: number;
  /** g/m² per √s */
  readonly sorptivity: number;
  /** dry, weaker direction, N·m/g */
  readonly tensileIndex: number;
  /** share of dry strength kept when soaked */
  readonly wetRetention: number;
  /** share of the face that touches */
  readonly contact: number;
}

export interface JointSubstrate {
  /** g/m² per √s; 0 for glass, metal, plastic */
  readonly sorptivity: number;
  /** × that of smooth dense binder's board */
  readonly faceStrength: number;
}

export interface JointAdhesive {
  /** share by mass */
  readonly solids: number;
  /** share by mass at which the film grabs */
  readonly grabSolids: number;
  /** mPa·s at rest */
  readonly viscosity: number;
  /** wet coat, g/m² */
  readonly coat: number;
  /** seconds until it gels by cooling; absent where it does not */
  readonly gelsIn?: number;
  /** how much its liquid swells and weakens fibre, relative to water; 1 when left out */
  readonly swelling?: number;
  /** how fast pores draw it in, relative to water of the same viscosity; 1 when left out */
  readonly suction?: number;
}

export interface Joint {
  readonly paper: JointPaper;
  readonly substrate: JointSubstrate;
  readonly adhesive: JointAdhesive;
  /** since laying, s */
  readonly seconds: number;
  /** from an open wet face, g/m² per second; 0 when left out */
  readonly evaporation?: number;
  readonly constants?: BondConstants;
}

export interface BondLine {
  /** water taken up, g/m² */
  readonly uptake: { readonly paper: number; readonly substrate: number };
  /** 0 wet … 1 set */
  readonly settingProgress: number;
  /** seconds during which the sheet can be moved, at most `LONGEST_SLIP_SECONDS` */
  readonly slipSeconds: number;
  /** 0 dry … 1 soaked, in the layer of paper that must hold */
  readonly wetness: number;
  /** N/m that the wet sheet bears */
  readonly wetStrength: number;
  /** N/m that the substrate's face bears */
  readonly faceStrength: number;
  /** N/m needed to lift the sheet */
  readonly pull: number;
  /** weaker side ÷ pull: above 1 it lifts clean */
  readonly liftMargin: number;
  readonly gives: 'paper' | 'substrate' | 'neither';
}

/** How easily a liquid follows water into pores, 0–1, from its viscosity at rest in mPa·s. */
export function mobility(viscosity: number, constants: BondConstants = BOND_CONSTANTS): number {
  mustBePositive('viscosity', viscosity);
  const { mobilityAtOnePascalSecond, mobilityExponent } = constants;
  return Math.min(1, mobilityAtOnePascalSecond * Math.pow(viscosity / 1000, -mobilityExponent));
}

/**
 * What the sheet bears at the glued face, N/m, once it has taken in `water` g/m². Only the layer next to
 * the glue resists: a thick, loosely felted sheet splits behind it.
 */
export function sheetStrength(
  paper: JointPaper,
  water: number,
  constants: BondConstants = BOND_CONSTANTS,
): { wetness: number; wetStrength: number } {
  const layer = holdingLayer(paper, constants);
  const wetness = clamp(water / layer / constants.soakedWater, 0, 1);
  return { wetness, wetStrength: wetStrengthOf(paper, layer, wetness, constants) };
}

/** Paper that resists together, g/m². */
const holdingLayer = (paper: JointPaper, constants: BondConstants): number =>
  Math.min(paper.grammage, paper.density * constants.holdingLayer);

const wetStrengthOf = (paper: JointPaper, layer: number, wetness: number, constants: BondConstants): number =>
  constants.tearShare * layer * paper.tensileIndex * (1 - wetness * (1 - paper.wetRetention));

/** The strength alone. */
export function wetStrength(paper: JointPaper, water: number, constants: BondConstants): number {
  const layer = holdingLayer(paper, constants);
  return wetStrengthOf(paper, layer, clamp(water / layer / constants.soakedWater, 0, 1), constants);
}

/** How far the film has set once `lost` g/m² of what it must lose have gone, and `seconds` of the time it takes to gel. */
export const setting = (lost: number, toLose: number, seconds: number, gelsIn: number): number =>
  Math.min(1, Math.max(toLose > 0 ? lost / toLose : 1, GRAB_LEVEL * (seconds / gelsIn)));

/** Pull on a lifted corner, N/m, where `touching` of the face touches, of a film of these solids, set so far. */
export const pullOf = (touching: number, solids: number, progress: number, constants: BondConstants): number =>
  touching *
  (constants.freshPull + constants.setPull * solids * (progress >= 1 ? 1 : Math.pow(progress, constants.setExponent)));

/** What the joint is like `seconds` after laying. Throws RangeError on values no joint can have. */
export function bondLine(joint: Joint): BondLine {
  const { paper, substrate, adhesive, seconds, evaporation = 0, constants = BOND_CONSTANTS } = joint;
  mustBeWithin('seconds', seconds, 0, 1e6);
  mustBeWithin('solids', adhesive.solids, 0, 1);
  mustBePositive('grabSolids', adhesive.grabSolids);
  mustBePositive('coat', adhesive.coat);
  const { gelsIn = Infinity, swelling = 1, suction = 1 } = adhesive;
  const follows = mobility(adhesive.viscosity, constants);
  const flow: Flow = {
    paper: paper.sorptivity * follows * suction,
    substrate: substrate.sorptivity * follows * suction,
    air: paper.sorptivity > 0 ? evaporation * SHEET_BREATHES : 0,
    capacity: poreVolume(paper.grammage, paper.grammage / paper.density),
    drainable: constants.drainableShare * adhesive.coat * (1 - adhesive.solids),
  };
  const toLose = adhesive.coat * Math.max(0, 1 - adhesive.solids / adhesive.grabSolids);
  const taken = takenUp(flow, Math.sqrt(seconds));
  const lost = taken.paper + taken.substrate + flow.air * seconds;
  const settingProgress = setting(lost, toLose, seconds, gelsIn);

  const { wetness, wetStrength } = sheetStrength(paper, taken.paper * swelling, constants);
  const faceStrength = constants.boardFace * substrate.faceStrength;
  // Thin liquid fills some of the hollows that a thick one bridges.
  const touching = paper.contact + (1 - paper.contact) * follows;
  const pull = pullOf(touching, adhesive.solids, settingProgress, constants);
  const liftMargin = Math.min(wetStrength, faceStrength) / pull;
  return {
    uptake: taken,
    settingProgress,
    slipSeconds: Math.min(gelsIn, LONGEST_SLIP_SECONDS, timeToLose(flow, toLose * GRAB_LEVEL)),
    wetness,
    wetStrength,
    faceStrength,
    pull,
    liftMargin,
    gives: liftMargin >= 1 ? 'neither' : wetStrength < faceStrength ? 'paper' : 'substrate',
  };
}
