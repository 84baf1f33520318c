/** What a joint is tried on, and what is found of it. */
import type { JointPaper } from './bond-line';

/** One draw of everything uncertain about the job. */
export interface Bench {
  readonly paper: JointPaper & { readonly wetExpansion: number };
  readonly substrate: {
    readonly sorptivity: number;
    readonly faceStrength: number;
    readonly thickness: number;
    readonly modulus: number;
  };
  readonly face: 'porous' | 'leather' | 'non-porous';
  readonly limp: boolean;
  readonly spanMm: number;
  readonly seconds: number;
  readonly celsius: number;
  /** g/m² per second from an open wet face in this room */
  readonly evaporation: number;
  readonly wants: { readonly flexes: boolean; readonly damp: boolean; readonly flat: boolean };
  /** drag, coat (g/m²) and the thickest liquid (mPa·s at rest) of the tool */
  readonly tool: { readonly drag: number; readonly coat: number; readonly thickest: number };
}

export interface Margins {
  readonly spread: number;
  readonly lift: number;
  readonly bond: number;
  readonly flat: number;
  readonly slipSeconds: number;
  readonly gives: 'paper' | 'substrate' | 'neither';
}
