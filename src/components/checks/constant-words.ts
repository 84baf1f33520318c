/** The model's constants as a reader meets them. */
import type { BondConstants } from '../../core/joint/constants';

export const CONSTANT_WORDS: Readonly<Record<keyof BondConstants, { name: string; unit: string }>> = {
  mobilityAtOnePascalSecond: { name: 'How well a liquid of 1 Pa·s follows water into pores', unit: '×' },
  mobilityExponent: { name: 'How fast that falls as the liquid thickens (power)', unit: '' },
  tearShare: { name: 'Share of a sheet’s strength that resists a lifting hand', unit: '' },
  freshPull: { name: 'Pull of a coat that has not begun to set', unit: 'N/m' },
  setPull: { name: 'Further pull of a set coat, per unit of solids', unit: 'N/m' },
  setExponent: { name: 'How late that pull comes in (power)', unit: '' },
  boardFace: { name: 'Force at which the face of dense board comes away', unit: 'N/m' },
  soakedWater: { name: 'Water per gram of fibre at which a sheet is soaked', unit: 'g/g' },
  holdingLayer: { name: 'Depth of paper next to the glue that resists together', unit: 'µm' },
  drainableShare: { name: 'Share of a coat’s water that suction can take', unit: '' },
  bearingExponent: { name: 'How fast what a sheet bears grows with its weight (power)', unit: '' },
  brushedGrammage: { name: 'Sheet that just bears a full brush of 1 Pa·s', unit: 'g/m²' },
};
