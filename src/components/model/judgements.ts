/**
 * What the chooser takes off for what a person needs, found by asking the code itself: one made-up adhesive
 * with one weakness at a time. So the page cannot say what the code does not do.
 */
import { figure } from '../../core/base/format';
import { NEED_WORDS } from '../../core/choose/tipping-words';
import { DEFAULT_JOB, type Need } from '../../core/choose/job';
import type { Adhesive, DryAdhesive, WetAdhesive, YesNo } from '../../core/records/records';
import type { Task } from '../../core/records/task';
import { sheetOf, type Sheet } from '../../core/paper/sheet';
import { suitability } from '../../core/choose/suitability';
import { catalogue } from '../../data/catalogue';

const at = (middle: number) => ({ low: middle, middle, high: middle, basis: 'estimate' as const });

/** Wants for nothing, and brings no water. */
const PERFECT: DryAdhesive = {
  id: 'none',
  name: 'none',
  short: 'none',
  form: 'dry',
  hold: { porous: 1, leather: 1, nonPorous: 1 },
  undoneWithWater: 'yes',
  longLived: 'yes',
  flexes: 'yes',
  bearsDamp: 'yes',
  childSafe: 'yes',
  needsHeat: false,
  hazards: [],
  slip: at(60),
  pull: at(1),
  waterLoad: at(0),
  drag: at(1),
  strength: at(1),
  appliedWith: 'hand',
};
const {
  slip: _s,
  pull: _p,
  waterLoad: _w,
  drag: _d,
  strength: _t,
  appliedWith: _a,
  hazards: _h,
  form: _f,
  ...TRAITS
} = PERFECT;
const wet = (of: string): WetAdhesive => ({ ...TRAITS, form: 'wet', by: 'mass', parts: [{ of, parts: 1 }] });

const PLAIN: Sheet = {
  ...sheetOf({ ...DEFAULT_JOB, paper: { family: 'wove-text' } }, catalogue),
  coloursRun: 'unlikely',
};

export interface Judgement {
  readonly when: string;
  /** "× 0.5", "ruled out", "nothing" */
  readonly takes: string;
}

function taken(adhesive: Adhesive, needs: readonly Need[] = [], sheet: Sheet = PLAIN): string {
  const { share, verdict } = suitability(adhesive, { ...DEFAULT_JOB, needs }, sheet, catalogue);
  if (verdict === 'ruled-out') return 'ruled out';
  if (verdict === 'refused') return 'refused';
  const left = share / suitability(PERFECT, DEFAULT_JOB, PLAIN, catalogue).share;
  return left === 1 ? 'nothing' : `× ${figure(left)}`;
}

/** What a task takes from a film, beyond what another task takes. */
function takenFromFilm(task: Task, beside: Task): string {
  const share = (of: Task) => suitability(PERFECT, { ...DEFAULT_JOB, task: of }, PLAIN, catalogue).share;
  return `× ${figure(share(task) / share(beside))}`;
}

/** What damp hands take, where a thing is decorated and handled. */
function takenByDamp(bearsDamp: YesNo): string {
  const share = (one: Adhesive) => suitability(one, { ...DEFAULT_JOB, task: 'decorate' }, PLAIN, catalogue).share;
  return `× ${figure(share({ ...PERFECT, bearsDamp }) / share(PERFECT))}`;
}

/** What the paper and the needs take from a wet glue, beyond what the glue itself has against it. */
function takenBy(adhesive: Adhesive, needs: readonly Need[], sheet: Sheet): string {
  const share = (asked: readonly Need[], on: Sheet) =>
    suitability(adhesive, { ...DEFAULT_JOB, needs: asked }, on, catalogue).share;
  const left = share(needs, sheet) / share([], PLAIN);
  return left === 1 ? 'nothing' : `× ${figure(left)}`;
}

const TRAIT_NEEDS = [
  ['undo', 'undoneWithWater', 'comes undone with water'],
  ['long-lived', 'longLived', 'is long-lived'],
  ['flexes', 'flexes', 'flexes'],
  ['damp', 'bearsDamp', 'bears damp'],
  ['children', 'childSafe', 'is fit for children'],
] as const;

export function judgements(): readonly Judgement[] {
  const needs = TRAIT_NEEDS.flatMap(([need, trait, words]) =>
    (['partly', 'no'] as const).map((value) => ({
      when: `“${NEED_WORDS[need]}” is asked, and it ${words} only ${value === 'partly' ? 'in part' : 'not at all'}`.replace(
        'only not at all',
        'not at all',
      ),
      takes: taken({ ...PERFECT, [trait]: value }, [need]),
    })),
  );
  const running = (coloursRun: Sheet['coloursRun']): Sheet => ({ ...PLAIN, coloursRun });
  const carriers: readonly (readonly [string, Adhesive])[] = [
    ['a water-borne glue', wet('pva')],
    ['one in alcohol', wet('alcohol')],
    ['one that brings a little water', { ...PERFECT, waterLoad: at(10) }],
  ];
  const colours = carriers.flatMap(([words, adhesive]) => [
    {
      when: `Colours may run, under ${words}, and it matters`,
      takes: takenBy(adhesive, ['colours'], running('possible')),
    },
    { when: `Colours are likely to run, under ${words}`, takes: takenBy(adhesive, [], running('likely')) },
    {
      when: `Colours are likely to run, under ${words}, and it matters`,
      takes: takenBy(adhesive, ['colours'], running('likely')),
    },
  ]);
  const harmed: Sheet = { ...PLAIN, harmedByWater: true };
  return [
    ...needs,
    { when: 'Nothing asked: it ages less than well', takes: taken({ ...PERFECT, longLived: 'partly' }) },
    { when: 'Nothing asked: it does not last', takes: taken({ ...PERFECT, longLived: 'no' }) },
    { when: 'Nothing asked: it flexes only in part', takes: taken({ ...PERFECT, flexes: 'partly' }) },
    { when: 'Nothing asked: it does not flex', takes: taken({ ...PERFECT, flexes: 'no' }) },
    { when: 'It needs heat at the bench', takes: taken({ ...PERFECT, needsHeat: true }) },
    {
      when: '“No heat” is asked, and it needs heat at the bench',
      takes: taken({ ...PERFECT, needsHeat: true }, ['no-heat']),
    },
    {
      when: '“No heat” is asked, and it is cooked first but used cold',
      takes: takenBy({ ...wet('pva'), needsHeat: true }, ['no-heat'], PLAIN),
    },
    {
      when: '“No heat” is asked, and its powder is wetted with hot water',
      takes: takenBy(wet('methylcellulose'), ['no-heat'], PLAIN),
    },
    {
      when: '“Children in the room” is asked, and its powder is wetted with hot water',
      takes: takenBy(wet('methylcellulose'), ['children'], PLAIN),
    },
    {
      when: '“Children in the room” is asked, and it is cooked first but used cold',
      takes: takenBy({ ...wet('wheat-starch'), needsHeat: true }, ['children'], PLAIN),
    },
    { when: 'A film, where something is decorated', takes: takenFromFilm('decorate', 'mend') },
    { when: 'A film, where a board is covered', takes: takenFromFilm('cover', 'mend') },
    { when: 'A film, where a leaf is tipped in', takes: takenFromFilm('tip-in', 'mend') },
    { when: 'Damp lets it go, where something is decorated', takes: takenByDamp('no') },
    { when: 'Damp softens it, where something is decorated', takes: takenByDamp('partly') },
    {
      when: 'It does not last, and the sheet is a photograph',
      takes: taken({ ...PERFECT, longLived: 'no' }, [], { ...PLAIN, photograph: true }),
    },
    { when: 'It gives off fumes', takes: taken({ ...PERFECT, hazards: ['mist'] }) },
    ...colours,
    { when: 'Water marks the paper, and the glue is water-borne', takes: takenBy(wet('pva'), [], harmed) },
    { when: 'Water marks the paper, and the glue is in alcohol', takes: takenBy(wet('alcohol'), [], harmed) },
    { when: 'Food will touch it, whatever the glue', takes: taken(PERFECT, ['food']) },
  ];
}
