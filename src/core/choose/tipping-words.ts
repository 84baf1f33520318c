/** What stands around the answer: the needs by name, what would change it, what it rests on. */
import type { Flip, FlipField } from './tipping-points';
import { figure, formatAmount, lowerFirst, withUnit } from '../base/format';
import { DEFAULT_JOB, type Job, type Need } from './job';
import type { Catalogue } from '../records/records';
import type { Sheet } from '../paper/sheet';

export const NEED_WORDS: Readonly<Record<Need, string>> = {
  undo: 'Can be undone with water',
  'long-lived': 'Acid-free and long-lived',
  flexes: 'Flexes in use',
  damp: 'May get damp',
  flat: 'Must stay flat',
  colours: 'Colours must not run',
  children: 'Children in the room',
  'no-heat': 'No heat',
  food: 'Food will touch it',
  valued: 'A valued original',
  slow: 'Must stay workable long',
  quick: 'Must grab quickly',
  strong: 'Must be strong',
  'no-strike-through': 'Must not strike through',
};

const FLIP_WORDS: Readonly<Record<FlipField, (value: number) => string>> = {
  grammage: (value) => `a sheet of ${withUnit(value, 'g/m²')}`,
  absorbency: (value) => `a drop that sinks in after ${withUnit(value, 's')}`,
  placeSeconds: (value) => `${withUnit(value, 's')} to place it`,
  celsius: (value) => `a room at ${withUnit(value, '°C')}`,
};

/** "With a sheet of 41 g/m² (now 70), thin wheat starch paste comes first." */
export function flipSentence(flip: Flip, catalogue: Catalogue): string {
  const short = catalogue.adhesives.get(flip.adhesiveId)?.short ?? flip.adhesiveId;
  return `With ${FLIP_WORDS[flip.field](flip.to)} (now ${figure(flip.from)}), ${short} comes first.`;
}

const BASIS_WORDS = {
  published: 'published',
  'common-practice': 'common practice',
  'from-memory': 'from memory, not looked up',
  calibrated: 'calibrated',
  estimate: 'an estimate',
  measured: 'yours',
} as const;

/** "How sure": each input that nobody measured, with what was taken for it and how that is known. */
export function assumptions(sheet: Sheet, job: Job): readonly string[] {
  const told = (
    what: string,
    range: { low: number; high: number; basis: keyof typeof BASIS_WORDS },
    unit: string,
    measure: string,
  ) =>
    `${what}: ${figure(range.low)} to ${figure(range.high)}${unit ? `\u00a0${unit}` : ''} was taken, ${BASIS_WORDS[range.basis]}. ${measure}`;
  const lines: string[] = [];
  for (const assumed of sheet.assumed) {
    if (assumed === 'grammage')
      lines.push(told('Weight', sheet.grammage, 'g/m²', 'Read it off the wrapper, or weigh a cut square.'));
    if (assumed === 'absorbency')
      lines.push(told('Absorbency', sheet.sorptivity, 'g/m² per √s', 'Time a drop of water on the back.'));
    if (assumed === 'caliper')
      lines.push(told('Density', sheet.density, 'g/cm³', 'Measure ten sheets together and divide.'));
    if (assumed === 'strength')
      lines.push(told('Strength, weaker way', sheet.tensileIndex, 'N·m/g', 'No bench can measure this: try a swatch.'));
  }
  if (job.placeSeconds === undefined)
    lines.push('Time to place it: worked out from the size of the piece, by common practice.');
  return lines;
}

/** The job in a line, for the head of a printed answer. */
export function jobInWords(job: Job, sheet: Sheet, catalogue: Catalogue): string {
  const substrate = catalogue.substrates.get(job.substrate)!.name;
  // the usual brush gives way to what suits the method, and the method names it
  const tool = job.tool === DEFAULT_JOB.tool ? '' : `, ${lowerFirst(catalogue.techniques.get(job.tool)!.name)}`;
  const weight =
    job.paper.grammage === undefined
      ? `${figure(sheet.grammage.low)} to ${figure(sheet.grammage.high)}\u00a0g/m²`
      : `${formatAmount(job.paper.grammage)}\u00a0g/m²`;
  const needs = job.needs.map((need) => NEED_WORDS[need].toLowerCase()).join(', ');
  const asked = needs && `; asked: ${needs}`;
  return `${sheet.name}, ${weight}, on ${lowerFirst(substrate)}; ${job.widthMm} × ${job.heightMm}\u00a0mm${tool}, ${job.celsius}\u00a0°C and ${job.humidity}\u00a0% RH${asked}.`;
}
