/** One part of a trial at a time: from any value whatever to the part, or to undefined. Never throws. */
import {
  OUTCOMES,
  QUESTION_KINDS,
  TRIAL_LIMITS,
  type Conditions,
  type Outcome,
  type Question,
  type Swatch,
  type TrialGlue,
  type TrialPaper,
} from './record';
import { readMethod } from './read-method';
import { dateIn, idIn, isObject, numberIn, own, type Loose } from './read-value';
import { lineOf, notesOf } from './text';

/** A paper of a trial from a file, or undefined where it is none. */
export function readTrialPaper(one: Loose): TrialPaper | undefined {
  const [id, name, family] = [
    idIn(own(one, 'id')),
    lineOf(own(one, 'name'), TRIAL_LIMITS.name),
    idIn(own(one, 'family')),
  ];
  const [grammage, dropSeconds] = [
    numberIn(own(one, 'grammage'), TRIAL_LIMITS.grammage),
    numberIn(own(one, 'dropSeconds'), TRIAL_LIMITS.dropSeconds),
  ];
  if (id === undefined || name === '') return undefined;
  return {
    id,
    name,
    ...(family && { family }),
    ...(grammage !== undefined && { grammage }),
    ...(dropSeconds !== undefined && { dropSeconds }),
  };
}

/** An adhesive of a trial from a file, or undefined where it is none. */
export function readGlue(one: Loose): TrialGlue | undefined {
  const [id, name, record] = [
    idIn(own(one, 'id')),
    lineOf(own(one, 'name'), TRIAL_LIMITS.name),
    idIn(own(one, 'record')),
  ];
  const doubtful = record !== undefined && own(one, 'doubtful') === true;
  return id === undefined || name === ''
    ? undefined
    : { id, name, ...(record && { record }), ...(doubtful && { doubtful }) };
}

/** A question of a trial from a file, or undefined where it is none. */
export function readQuestion(one: Loose): Question | undefined {
  const [id, text] = [idIn(own(one, 'id')), lineOf(own(one, 'text'), TRIAL_LIMITS.text)];
  const kind = QUESTION_KINDS.find((known) => known === own(one, 'kind')) ?? 'own';
  return id === undefined || text === ''
    ? undefined
    : { id, kind, text, criterion: lineOf(own(one, 'criterion'), TRIAL_LIMITS.text) };
}

/** The room and its people in a trial from a file; what cannot be read is left out. */
export function readConditions(value: unknown): Conditions {
  if (!isObject(value)) return {};
  const [celsius, humidity] = [
    numberIn(own(value, 'celsius'), TRIAL_LIMITS.celsius),
    numberIn(own(value, 'humidity'), TRIAL_LIMITS.humidity),
  ];
  const batch = notesOf(own(value, 'batch'), TRIAL_LIMITS.note);
  return {
    ...(celsius !== undefined && { celsius }),
    ...(humidity !== undefined && { humidity }),
    ...(batch && { batch }),
  };
}

export interface Known {
  readonly papers: ReadonlySet<string>;
  readonly glues: ReadonlySet<string>;
  readonly questions: ReadonlySet<string>;
}

/** A swatch of a trial from a file, or undefined where it is none. */
export function readSwatch(one: Loose, place: number, known: Known): Swatch | undefined {
  const [paper, glue, hold] = [
    own(one, 'paper'),
    own(one, 'glue') ?? own(one, 'adhesive'),
    numberIn(own(one, 'hold'), TRIAL_LIMITS.hold),
  ];
  if (
    typeof paper !== 'string' ||
    typeof glue !== 'string' ||
    hold === undefined ||
    !known.papers.has(paper) ||
    !known.glues.has(glue)
  )
    return undefined;
  const given = own(one, 'outcomes');
  const outcomes = Object.fromEntries(
    [...known.questions].flatMap((question): [string, Outcome][] => {
      const outcome = isObject(given) ? OUTCOMES.find((one) => one === own(given, question)) : undefined;
      return outcome ? [[question, outcome]] : [];
    }),
  );
  const whole = (value: unknown, otherwise: number) =>
    typeof value === 'number' && Number.isInteger(value) && value >= 1 && value <= 9999 ? value : otherwise;
  const [laidAt, judgedAt] = [numberIn(own(one, 'laidAt'), { low: 0, high: 8e15 }), dateIn(own(one, 'judgedAt'))];
  const [by, note] = [lineOf(own(one, 'by'), TRIAL_LIMITS.name), notesOf(own(one, 'note'), TRIAL_LIMITS.note)];
  const { method } = readMethod(own(one, 'method'));
  const origin = own(one, 'from');
  const trial = isObject(origin) ? idIn(own(origin, 'trial')) : undefined;
  return {
    number: whole(own(one, 'number'), place + 1),
    paper,
    glue,
    hold,
    block: whole(own(one, 'block'), 1),
    outcomes,
    ...(method && { method }),
    ...(laidAt !== undefined && { laidAt }),
    ...(judgedAt && { judgedAt }),
    ...(by && { by }),
    ...(note && { note }),
    ...(own(one, 'spoiled') === true && { spoiled: true }),
    ...(isObject(origin) &&
      trial && {
        from: { trial, name: lineOf(own(origin, 'name'), TRIAL_LIMITS.name), number: whole(own(origin, 'number'), 1) },
      }),
  };
}
