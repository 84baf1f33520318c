/** From a plan as it is typed to the trial that it makes, or to what is wrong with it. */
import { parseNumber } from '../base/number-text';
import type { InputError } from '../base/result';
import { drawOrder, STANDARD_QUESTIONS, swatchCount } from './design';
import { USUAL_METHOD } from './method';
import type { PlanText } from './plan-text';
import { SWATCH_FACES } from './read-method';
import { TRIAL_LIMITS, TRIAL_VERSION, type Question, type Trial, type TrialGlue, type TrialPaper } from './record';
import { lineOf, notesOf } from './text';

/** A trial without its swatches. */
export type Planned = Omit<Trial, 'id' | 'createdAt' | 'swatches'>;

/** `seed` stands in where none was typed. */
export function planOf(
  text: PlanText,
  seed: number,
): { readonly plan?: Planned; readonly problems: readonly InputError[] } {
  const problems: InputError[] = [];
  const wrong = (field: string, message: string) => void problems.push({ field, code: 'empty', message });
  const figure = (
    field: string,
    typed: string,
    what: string,
    { low, high, unit }: { low: number; high: number; unit: string },
    whole = false,
  ): number | undefined => {
    if (typed.trim() === '') return undefined;
    const value = parseNumber(typed);
    const sound = value !== undefined && value >= low && value <= high && (!whole || Number.isInteger(value));
    if (!sound)
      wrong(field, `${what} must be a ${whole ? 'whole ' : ''}number from ${low} to ${high}${unit && ` ${unit}`}.`);
    return sound ? value : undefined;
  };
  const needed = (
    field: string,
    typed: string,
    what: string,
    limits: { low: number; high: number; unit: string },
    whole = false,
  ): number => {
    if (typed.trim() === '')
      wrong(
        field,
        `${what} is missing: a number from ${limits.low} to ${limits.high}${limits.unit && ` ${limits.unit}`}.`,
      );
    return figure(field, typed, what, limits, whole) ?? limits.low;
  };
  const papers = text.papers.map((paper, i): TrialPaper => {
    const name = lineOf(paper.name, TRIAL_LIMITS.name);
    if (name === '') wrong(`paper-${i}-name`, `Paper ${i + 1} needs a name.`);
    const grammage = figure(`paper-${i}-grammage`, paper.grammage, 'The weight', TRIAL_LIMITS.grammage);
    const dropSeconds = figure(`paper-${i}-drop`, paper.dropSeconds, 'The drop test', TRIAL_LIMITS.dropSeconds);
    return {
      id: `paper-${i + 1}`,
      name,
      ...(paper.family && { family: paper.family }),
      ...(grammage !== undefined && { grammage }),
      ...(dropSeconds !== undefined && { dropSeconds }),
    };
  });
  const glues = text.glues.map((glue, i): TrialGlue => {
    const name = lineOf(glue.name, TRIAL_LIMITS.name);
    if (name === '') wrong(`glue-${i}-name`, `Adhesive ${i + 1} needs a name.`);
    return { id: `glue-${i + 1}`, name, ...(glue.record && { record: glue.record }) };
  });
  if (papers.length === 0) wrong('papers', 'Add at least one paper.');
  if (glues.length === 0) wrong('glues', 'Add at least one adhesive.');
  const holds = [
    ...new Set(
      text.holds
        .split(/[;\s]|,(?=\s|\d+\s*(?:,|$))/)
        .filter(Boolean)
        .map((part) => needed('holds', part, 'Each hold time', TRIAL_LIMITS.hold)),
    ),
  ];
  if (holds.length === 0 || holds.length > TRIAL_LIMITS.holds)
    wrong('holds', `Give 1 to ${TRIAL_LIMITS.holds} hold times in seconds, with spaces between them.`);
  const replicates = needed(
    'replicates',
    text.replicates,
    'Swatches of each',
    { low: 1, high: TRIAL_LIMITS.replicates, unit: '' },
    true,
  );
  const questions = questionsOf(text);
  if (questions.length === 0) wrong('questions', 'Choose at least one question, or write your own.');
  const [celsius, humidity] = [
    figure('celsius', text.celsius, 'The room', TRIAL_LIMITS.celsius),
    figure('humidity', text.humidity, 'The humidity', TRIAL_LIMITS.humidity),
  ];
  const coat = figure('coat', text.coat, 'The coat', TRIAL_LIMITS.coat);
  const face = SWATCH_FACES.find((one) => one === text.face && one !== USUAL_METHOD.face);
  const batch = notesOf(text.batch, TRIAL_LIMITS.note);
  const plan: Planned = {
    version: TRIAL_VERSION,
    name:
      lineOf(text.name, TRIAL_LIMITS.name) ||
      lineOf(`${papers[0]?.name ?? ''} with ${glues.map(({ name }) => name).join(', ')}`, TRIAL_LIMITS.name),
    by: lineOf(text.by, TRIAL_LIMITS.name),
    ...(text.substrate && { substrate: text.substrate }),
    method: {
      tool: text.tool || USUAL_METHOD.tool,
      ...(face && { face }),
      ...(coat !== undefined && { coat }),
    },
    papers,
    glues,
    holds,
    replicates,
    questions,
    widthMm: needed('widthMm', text.widthMm, 'The width', TRIAL_LIMITS.side),
    heightMm: needed('heightMm', text.heightMm, 'The height', TRIAL_LIMITS.side),
    seed: figure('seed', text.seed, 'The number of the draw', { low: 0, high: 999_999, unit: '' }, true) ?? seed,
    conditions: {
      ...(celsius !== undefined && { celsius }),
      ...(humidity !== undefined && { humidity }),
      ...(batch && { batch }),
    },
  };
  const all = swatchCount(plan);
  if (all > TRIAL_LIMITS.swatches)
    wrong('replicates', `That is ${all} swatches; a trial holds at most ${TRIAL_LIMITS.swatches}.`);
  return problems.length > 0 ? { problems } : { plan, problems };
}

function questionsOf(text: PlanText): readonly Question[] {
  const standard = STANDARD_QUESTIONS.filter(({ id }) => text.questions.includes(id));
  const own = text.ownQuestions.flatMap(({ text: asked, criterion }, i): Question[] => {
    const line = lineOf(asked, TRIAL_LIMITS.text);
    return line === ''
      ? []
      : [{ id: `own-${i + 1}`, kind: 'own', text: line, criterion: lineOf(criterion, TRIAL_LIMITS.text) }];
  });
  return [...standard, ...own].slice(0, TRIAL_LIMITS.questions);
}

/** The trial that a plan becomes, its order drawn. */
export const trialOf = (plan: Planned, id: string, createdAt: string): Trial => ({
  ...plan,
  id,
  createdAt,
  swatches: drawOrder(plan, plan.seed),
});
