/** What a joint is tried on, and what is found of it. */
import type { Task } from '../records/task';
import type { JointPaper } from './bond-line';
import type { Way } from './way';

/** One draw of everything uncertain about the job. */
export interface Bench {
  readonly paper: JointPaper & {
    readonly wetExpansion: number;
    /** share of its face that is holes */
    readonly openWeave: number;
  };
  readonly substrate: {
    readonly sorptivity: number;
    readonly faceStrength: number;
    readonly thickness: number;
    readonly modulus: number;
    readonly openWeave: number;
  };
  readonly face: 'porous' | 'leather' | 'non-porous';
  /** the sheet's own back, or what it goes on, is plastic */
  readonly plastic: boolean;
  readonly limp: boolean;
  readonly spanMm: number;
  /** of the piece, m² */
  readonly squareMetres: number;
  /** seconds the person needs to place it */
  readonly seconds: number;
  readonly celsius: number;
  /** g/m² per second from an open wet face in this room: of water, and of alcohol */
  readonly evaporation: number;
  readonly alcoholEvaporation: number;
  /** a foil on the sheet lets none of it out */
  readonly closed: boolean;
  readonly task: Task;
  readonly lined: boolean;
  readonly wants: {
    readonly flexes: boolean;
    readonly damp: boolean;
    readonly flat: boolean;
    readonly strong: boolean;
    readonly slow: boolean;
  };
  /** drag, coat (g/m²) and the thickest liquid (mPa·s at rest) of the tool */
  readonly tool: { readonly drag: number; readonly coat: number; readonly thickest: number };
  readonly way: Way;
}

/** What must hold, in the order of the work. */
export const THINGS = ['spread', 'reach', 'place', 'lift', 'grab', 'strike', 'bond', 'flat'] as const;
export type Thing = (typeof THINGS)[number];

export interface Margins extends Readonly<Record<Thing, number>> {
  /** from the first stroke until what was glued first no longer sticks, s */
  readonly openSeconds: number;
  /** from laying until it no longer slides, s */
  readonly slipSeconds: number;
  readonly gives: 'paper' | 'substrate' | 'neither';
  /** what the sheet bears when it is lifted ÷ what the face below bears: below 1 the paper is the weaker */
  readonly sheetToFace: number;
  /** how far the sheet still grows after it is laid, mm */
  readonly growsMm: number;
  /** how much the film shows where it comes through, 0–1 */
  readonly shows: number;
}
