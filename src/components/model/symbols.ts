/** Every symbol of the relations: what it means and where its value comes from. */
import { BRUSH_SHEAR, RANDOM_PACKING, THINNING_EXPONENT, THINNING_STRESS } from '../../core/adhesive/viscosity';
import { figure, withUnit } from '../../core/base/format';
import { BOW_ALLOWED, LEFT_AFTER_PRESSING } from '../../core/joint/flatness';
import { GRAB_LEVEL, SHEET_BREATHES, type BondConstants } from '../../core/joint/constants';
import { FIBRE_DENSITY } from '../../core/paper/paper';
import { DAMP_DEMAND, FLEX_DEMAND } from '../../core/joint/margins';

export interface Sign {
  readonly tex: string;
  readonly means: string;
  readonly unit: string;
  readonly from: string;
}

const PAPER = 'the paper’s record, or your own measurement';
const GROUND = 'the record of the board or ground';
const POT = 'computed from the recipe';
const TOOL = 'the record of the tool';
const JOB = 'what you say of the job';
const HERE = 'computed here';

export const SYMBOLS: readonly Sign[] = [
  { tex: 't', means: 'time since laying', unit: 's', from: JOB },
  { tex: 't_d', means: 'moment at which the coat has given all that suction can draw', unit: 's', from: 'relation 4' },
  { tex: 'W', means: 'grammage of the paper', unit: 'g/m²', from: PAPER },
  { tex: '\\rho', means: 'apparent density', unit: 'g/cm³', from: PAPER },
  { tex: 'S_p,\\ S_b', means: 'sorptivity of paper and of ground', unit: 'g/m² per √s', from: `${PAPER}; ${GROUND}` },
  { tex: 'T', means: 'tensile index, weaker direction', unit: 'N·m/g', from: 'the paper’s record' },
  { tex: 'r', means: 'share of the strength kept when soaked', unit: '', from: 'the paper’s record' },
  { tex: 'c', means: 'share of the face that touches', unit: '', from: 'the paper’s record, or the surface you name' },
  { tex: '\\varepsilon_0', means: 'growth across the grain, dry to soaked', unit: '', from: 'the paper’s record' },
  { tex: 'b', means: 'strength of the ground’s face', unit: '× dense board', from: GROUND },
  { tex: 'G', means: 'wet coat', unit: 'g/m²', from: TOOL },
  { tex: 'd', means: 'drag of the tool', unit: '× a bristle brush', from: TOOL },
  { tex: 's', means: 'share of the liquid that stays when dry', unit: '', from: POT },
  { tex: 's_c', means: 'solids at which the film grabs', unit: '', from: 'what is in the pot, weighed by its solids' },
  {
    tex: 'L',
    means: 'least dry coat for a sound joint',
    unit: 'g/m²',
    from: 'what is in the pot, weighed by its solids',
  },
  { tex: '\\eta,\\ \\eta_b', means: 'viscosity at rest and under the brush', unit: 'Pa·s', from: POT },
  { tex: '\\eta_0', means: 'viscosity of the liquid between the particles', unit: 'mPa·s', from: POT },
  { tex: '\\theta_i,\\ z_i', means: 'power of a thickener, and its per cent by mass', unit: '', from: POT },
  { tex: '\\varphi', means: 'share of the volume that is particles', unit: '', from: POT },
  {
    tex: 'k_t,\\ q',
    means: 'what the task asks of the joint, and how far that grows with the sheet’s weight',
    unit: '×',
    from: 'the task',
  },
  { tex: 'k_h', means: 'hold on a face of this kind', unit: '× porous', from: 'the adhesive’s record' },
  { tex: 'z', means: 'pull of the film as it dries, by what it is made of', unit: 'N/m per g/m²', from: POT },
  { tex: 'Z', means: 'stiffness of the sheet: modulus times thickness', unit: 'N/m', from: PAPER },
  { tex: 't_g', means: 'time until a hot coat gels', unit: 's', from: 'Newton’s law of cooling; endless for others' },
  {
    tex: 'v,\\ x,\\ x_s',
    means: 'air speed; water in the air, and in air that is full',
    unit: 'm/s; kg/kg',
    from: JOB,
  },
  {
    tex: 'C,\\ u_p,\\ u_b,\\ N,\\ W_h',
    means: 'capacity, uptakes, water to lose, paper in the layer that holds',
    unit: 'g/m²',
    from: HERE,
  },
  { tex: 'e', means: 'evaporation through the sheet', unit: 'g/m² per s', from: HERE },
  { tex: 't_s', means: 'slip time', unit: 's', from: HERE },
  { tex: 'q,\\ p,\\ w', means: 'share that can be had, progress, wetness', unit: '', from: HERE },
  { tex: 'R_p,\\ R_b,\\ F', means: 'what each side bears, and the pull', unit: 'N/m', from: HERE },
  { tex: 'f', means: 'mobility of the liquid in pores', unit: '', from: HERE },
  { tex: '\\varepsilon,\\ \\kappa', means: 'growth left over, curvature', unit: '1/mm', from: HERE },
  {
    tex: 'P,\\ m_j,\\ J,\\ u',
    means: 'chance, margin of one draw, how many draws, how far through a range',
    unit: '',
    from: HERE,
  },
  {
    tex: 'm,\\ n,\\ h',
    means: 'in (19), as published: thickness and stiffness of paper over board, thickness of both',
    unit: 'mm',
    from: 'the records',
  },
  { tex: '\\ell', means: 'longer side of the piece', unit: 'mm', from: JOB },
];

/** The fitted constants by the symbols that the relations use. */
export const CONSTANT_SYMBOLS: Readonly<Record<keyof BondConstants, string>> = {
  mobilityAtOnePascalSecond: 'f_1',
  mobilityExponent: 'a',
  tearShare: 'K',
  freshPull: 'F_0',
  setPull: 'F_1',
  setExponent: 'n',
  boardFace: 'B',
  soakedWater: 'u_s',
  holdingLayer: 'H',
  drainableShare: '\\alpha',
  brushedGrammage: 'W_1',
  bearingExponent: 'b',
};

export interface FixedConstant {
  readonly tex: string;
  readonly means: string;
  readonly value: string;
  readonly basis: string;
  readonly source?: string;
}

const times = (values: Readonly<Record<'yes' | 'partly' | 'no', number>>) =>
  `${figure(values.yes)}, ${figure(values.partly)} or ${figure(values.no)}`;

/** Constants that no fit has touched. */
export const FIXED: readonly FixedConstant[] = [
  {
    tex: '\\rho_f',
    means: 'density of the fibre itself',
    value: withUnit(FIBRE_DENSITY, 'g/cm³'),
    basis: 'from memory',
  },
  {
    tex: 'g',
    means: 'setting at which it can no longer be slid',
    value: figure(GRAB_LEVEL),
    basis: 'common practice, no source',
  },
  {
    tex: '\\beta',
    means: 'share of open-face drying that gets out through a sheet',
    value: figure(SHEET_BREATHES),
    basis: 'from memory',
  },
  {
    tex: '\\varphi_m',
    means: 'share of volume at which particles jam',
    value: figure(RANDOM_PACKING),
    basis: 'published',
    source: 'berryman-1983',
  },
  {
    tex: '\\dot\\gamma',
    means: 'shear rate under a brush',
    value: withUnit(BRUSH_SHEAR, '1/s'),
    basis: 'published',
    source: 'brush-shear-example',
  },
  {
    tex: '\\tau',
    means: 'stress at which these liquids begin to thin',
    value: withUnit(THINNING_STRESS, 'Pa'),
    basis: 'from memory',
  },
  { tex: 'k', means: 'how strongly they thin', value: figure(THINNING_EXPONENT), basis: 'from memory' },
  {
    tex: 'k_f',
    means: 'asked for when it must bend, by how it flexes (yes, partly, no)',
    value: times(FLEX_DEMAND),
    basis: 'estimate',
  },
  {
    tex: 'k_d',
    means: 'asked for when it may get damp, by how it bears damp',
    value: times(DAMP_DEMAND),
    basis: 'estimate',
  },
  {
    tex: '\\lambda',
    means: 'share of the growth left after drying under weight',
    value: figure(LEFT_AFTER_PRESSING),
    basis: 'estimate',
  },
  {
    tex: 'y',
    means: 'bow that is let pass for its length; when it must lie flat',
    value: `${figure(BOW_ALLOWED.usual)}; ${figure(BOW_ALLOWED.flat)}`,
    basis: 'common practice, no source',
  },
];
