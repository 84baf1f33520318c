/** The answer in sentences: what to do, how it stands, what it rests on, what would change it. */
import type { Choice, Verdict } from './chooser';
import { durationSpan, figure, withUnit } from './format';
import type { Flip, FlipField } from './flips';
import type { Job, Need } from './job';
import type { Catalogue } from './records';
import type { Sheet } from './sheet';

export const VERDICT_WORDS: Readonly<Record<Verdict, string>> = {
  sound: 'Sound',
  likely: 'Likely to work',
  'touch-and-go': 'Touch and go',
  unlikely: 'Unlikely to work',
  'ruled-out': 'Ruled out',
  refused: 'Not where food touches',
  defer: 'Ask a conservator first',
};

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
};

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** What a student can act on, in one or two sentences. */
export function answerSentence(choice: Choice, catalogue: Catalogue): string {
  const adhesive = catalogue.adhesives.get(choice.adhesiveId)!;
  const { glueGoesOn, placeBeforeContact, coat } = choice.technique;
  const { p10, p90 } = choice.slipSeconds;
  if (choice.verdict === 'refused') return 'No answer: none of these is known to be safe where food touches it.';
  const where =
    glueGoesOn === 'the board'
      ? 'on the board, not the paper'
      : glueGoesOn === 'both'
        ? 'on both faces'
        : 'on the back of the paper';
  const verb = coat === undefined ? 'Use' : choice.technique.tool === 'fingertip' ? 'With a fingertip, put' : 'Put';
  const first = `${verb} ${adhesive.short} ${where}`;
  const time = p10 >= 3600 ? 'an hour or more' : `about ${durationSpan(p10, p90)}`;
  const then = placeBeforeContact
    ? `place it before it touches, for it grabs in ${time}`
    : `you have ${time} to move it`;
  const sentence = `${first}; ${then}.`;
  if (choice.verdict === 'defer')
    return `Ask a conservator before you touch a valued original. For a copy, or for practice: ${sentence.charAt(0).toLowerCase()}${sentence.slice(1)}`;
  if (choice.verdict === 'unlikely')
    return `Nothing here is likely to work as it stands. The least bad: ${sentence.charAt(0).toLowerCase()}${sentence.slice(1)}`;
  if (choice.verdict === 'ruled-out')
    return 'Everything here is ruled out by what you need. Take away a need, or read why below.';
  return sentence;
}

/** Name of an adhesive as a sentence starts with it. */
export const adhesiveName = (id: string, catalogue: Catalogue): string => catalogue.adhesives.get(id)?.name ?? id;

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
    lines.push('Time to place it: worked out from the size of the piece, as common practice has it.');
  return lines.map(capital);
}
