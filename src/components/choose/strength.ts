/** What a sheet bears at its glued face, dry and soaked, at the middle of its record. */
import { sheetStrength } from '../../core/joint/bond-line';
import { poreVolume } from '../../core/paper/paper';
import { paperOf } from '../records';

const STANDARD_GRAVITY = 9.80665; // m/s², exact by definition

export interface Bears {
  readonly name: string;
  /** N/m */
  readonly dry: number;
  readonly soaked: number;
  /** grams that a strip of this width holds */
  grams(newtonsPerMetre: number, widthMm: number): number;
}

export function bears(id: string): Bears {
  const { name, grammage, density, sorptivity, tensileIndex, wetRetention, contact } = paperOf(id);
  const sheet = {
    grammage: grammage.middle,
    density: density.middle,
    sorptivity: sorptivity.middle,
    tensileIndex: tensileIndex.middle,
    wetRetention: wetRetention.middle,
    contact: contact.middle,
  };
  const full = poreVolume(sheet.grammage, sheet.grammage / sheet.density);
  return {
    name,
    dry: sheetStrength(sheet, 0).wetStrength,
    soaked: sheetStrength(sheet, full).wetStrength,
    grams: (newtonsPerMetre, widthMm) => ((newtonsPerMetre * widthMm) / 1000 / STANDARD_GRAVITY) * 1000,
  };
}
