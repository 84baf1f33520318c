/**
 * Nothing that hurts goes unsaid. Every recipe, adhesive, tool, way of gluing, project, class and lesson is walked: what its
 * words call for (support/hazard-words.ts) must stand among the cautions that are shown with it.
 */
import { parse } from 'yaml';
import { describe, expect, test } from 'vitest';
import { adhesiveCautions } from '../../src/core/adhesive/hazards';
import { choose } from '../../src/core/choose/choose';
import { DEFAULT_JOB, type Job } from '../../src/core/choose/job';
import { classAnswer } from '../../src/core/class/answer';
import { DEFAULT_CLASS } from '../../src/core/class/plan';
import { cutAnswer } from '../../src/core/cut/answer';
import type { CutPlan } from '../../src/core/cut/plan';
import { DEFAULT_MAKE, type MakePlan } from '../../src/core/make/fields';
import { PROJECT_IDS } from '../../src/core/make/projects';
import { makeAnswer } from '../../src/core/make/answer';
import { mixAnswerer } from '../../src/core/mix/any';
import { BASES, EXTENDERS, POWDERS, STARCHES } from '../../src/core/mix/jars';
import { DEFAULT_MIX, JARS, PASTE_TARGETS, VESSELS, type MixPlan } from '../../src/core/mix/plan';
import { mixStretched } from '../../src/core/mix/stretch';
import { MEASURING, TRYING } from '../../src/components/cautions-of-pages';
import { fitForChildren } from '../../src/components/shelf/fit-for-children';
import { CAUTIONS } from '../../src/core/safety/hazards';
import { catalogue } from '../../src/data/catalogue';
import { mixPresets } from '../../src/data/mix-presets';
import { cautionSchema } from '../../src/schemas/records';
import { filesIn, textOf } from './support/files';
import { IN_PROSE, IN_STEPS, unsaid } from './support/hazard-words';

const mixed = mixAnswerer((plan, records) => mixStretched(plan, records));

describe('every caution', () => {
  const texts = new Map(
    filesIn('content/cautions').map((file) => [
      file.replace(/^.*\/|\.yaml$/g, ''),
      cautionSchema.parse(parse(textOf(file))),
    ]),
  );
  test('that core can ask for has its text, and no text waits for nothing', () => {
    expect([...texts.keys()].sort()).toEqual([...CAUTIONS].sort());
  });
  test.for([...texts])('%s defers to rules, data sheet or practice', ([, { text }]) => {
    expect(text).toMatch(
      /local (?:food )?rules|rules of your (?:workshop|workplace)|workshop’s rules|data sheet|accredited|what your workplace says|local rules/i,
    );
  });
  // its text is folded below its title on a calculator's page, and a fold that hides what hurts hides it from most
  test.for([...texts])('%s says in its title what can hurt, and what to do', ([, { title }]) => {
    expect(title).toMatch(/^[A-Z][^:]{8,72}: [^:]{12,}[^.!]$/);
    expect(title).toMatch(
      /\b(?:scalds?|burns?|cuts?|pinch|breaks?|fire|harms?|hurt|irritates?|off|asthma|allergies|allergy|poisons?|arsenic|breathe|spoils|frozen|touch food|cannot be replaced)\b/,
    );
    expect(title.length).toBeLessThan(115);
  });
  test('of burns says when to get help', () => {
    for (const id of ['hot-liquid', 'hot-iron'])
      expect(texts.get(id)!.text, id).toMatch(/20 minutes.*(?:medical help|doctor)/s);
  });
});

describe('every recipe', () => {
  const plans: Partial<MixPlan>[] = [
    ...POWDERS.flatMap((powder) => [0.5, 2.5, 5].map((percent) => ({ kind: 'powder' as const, powder, percent }))),
    ...STARCHES.flatMap((starch) =>
      VESSELS.flatMap((vessel) => PASTE_TARGETS.map((use) => ({ kind: 'paste' as const, starch, vessel, use }))),
    ),
    ...BASES.flatMap((base) => EXTENDERS.map((extender) => ({ kind: 'stretch' as const, base, extender }))),
    ...JARS.flatMap((jar) => [
      { kind: 'dilute' as const, jar, stock: 4, target: 2 },
      { kind: 'correct' as const, jar, stock: 4, target: 2 },
      { kind: 'correct' as const, jar, stock: 4, target: 8 },
    ]),
  ];
  test.for(plans.map((plan) => [JSON.stringify(plan), plan] as const))('%s', ([, plan]) => {
    const answer = mixed({ ...DEFAULT_MIX, ...plan }, catalogue);
    if (!answer.ok) throw new Error(answer.errors[0]?.message);
    const { steps, cautions, portions } = answer.value;
    const said = [...steps, ...portions.map(({ name }) => name)];
    expect(said.flatMap((text) => unsaid(text, cautions, IN_STEPS))).toEqual([]);
  });
});

describe('every adhesive', () => {
  test.for([...catalogue.adhesives.values()].map((one) => [one.id, one] as const))('%s', ([id, adhesive]) => {
    const { name, about, traitsNote = '' } = parse(textOf(`content/adhesives/${id}.yaml`)) as Record<string, string>;
    const shown = adhesiveCautions(adhesive, catalogue);
    expect([name!, about!, traitsNote].flatMap((text) => unsaid(text, shown, IN_STEPS))).toEqual([]);
    if (adhesive.form === 'wet' && (adhesive.usedAt ?? 0) >= 44) expect(shown).toContain('hot-liquid');
    if (adhesive.form === 'wet' && adhesive.needsHeat) expect(shown).toContain('hot-liquid');
    if (adhesive.form === 'dry' && adhesive.needsHeat) expect(shown).toContain('hot-iron');
    if (adhesive.undoneWithWater !== 'yes') expect(shown).toContain('valued-original');
    // what holds preservatives is never called fit for children without its label
    if (shown.includes('ready-made-glue') && adhesive.childSafe !== 'no')
      expect(fitForChildren(adhesive.childSafe, shown)).toMatch(/label/);
    // what is not fit for children has its reason among the cautions
    if (adhesive.childSafe === 'no') expect(shown.some((caution) => /fumes|hot-|fungicide/.test(caution))).toBe(true);
  });
});

describe('every tool', () => {
  test.for([...catalogue.techniques.keys()])('%s', (id) => {
    const { about } = parse(textOf(`content/techniques/${id}.yaml`)) as { about: string };
    expect(unsaid(about, [], IN_STEPS)).toEqual([]);
  });
});

const jobs: readonly (readonly [string, Partial<Job>])[] = [
  ['board', {}],
  ['glass', { substrate: 'glass' }],
  ['a valued original', { needs: ['valued'] }],
  ['children, no heat', { needs: ['children', 'no-heat'] }],
];
describe('every way of gluing, with every adhesive', () => {
  test.for(jobs)('%s', ([, change]) => {
    const faults = choose({ ...DEFAULT_JOB, ...change }, catalogue).flatMap(({ adhesiveId, technique, cautions }) =>
      technique.steps.flatMap((step) => unsaid(step, cautions, IN_STEPS).map((one) => `${adhesiveId}: ${one}`)),
    );
    expect(faults).toEqual([]);
  });
});

const projects: readonly Partial<MakePlan>[] = PROJECT_IDS.flatMap((project) =>
  (['yes', 'no'] as const).map((lined) => ({ project, lined })),
);
describe('every project', () => {
  test.for(projects.map((plan) => [JSON.stringify(plan), plan] as const))('%s', ([, plan]) => {
    const answer = makeAnswer({ ...DEFAULT_MAKE, ...plan });
    if (!answer.ok) throw new Error(answer.errors[0]?.message);
    const { steps, cautions } = answer.value;
    expect(steps.flatMap((step) => unsaid(step, cautions, IN_STEPS))).toEqual([]);
    expect(cautions).toEqual(expect.arrayContaining(['knife', 'guillotine', 'press']));
  });
});

describe('every class, with every adhesive that is spread', () => {
  const wet = [...catalogue.adhesives.values()].filter(({ form }) => form === 'wet').map(({ id }) => id);
  const choice = choose(DEFAULT_JOB, catalogue)[0]!;
  // the sheets are the same whatever the glue
  const cuts = new Map<string, ReturnType<typeof cutAnswer>>();
  const cutOnce = (plan: CutPlan) => {
    const key = JSON.stringify(plan);
    if (!cuts.has(key)) cuts.set(key, cutAnswer(plan));
    return cuts.get(key)!;
  };
  test.for(wet)('%s', (adhesive) => {
    const answer = classAnswer({ ...DEFAULT_CLASS, adhesive }, catalogue, {
      cut: cutOnce,
      choose: () => [{ ...choice, cautions: [] }],
    });
    if (!answer.ok) throw new Error(answer.errors[0]?.message);
    const { schedule, handout, batches, cautions } = answer.value;
    const said = [...schedule.map(({ what }) => what), ...handout.steps, ...batches.flatMap(({ mix }) => mix.steps)];
    expect(said.flatMap((text) => unsaid(text, cautions, IN_STEPS))).toEqual([]);
  });
});

/** What a lesson's calculators and worked numbers bring with them. */
function fromComponents(body: string): readonly string[] {
  const used = (name: string) =>
    [...body.matchAll(new RegExp(`<${name}\\b([^>]*)>`, 'g'))].map(([, props = '']) => props);
  const preset = (props: string) => /preset="([^"]+)"/.exec(props)?.[1] ?? '';
  const mixes = used('MixLab').flatMap((props) => {
    const answer = mixed(mixPresets[preset(props)]!, catalogue);
    return answer.ok ? answer.value.cautions : [];
  });
  return mixes;
}

/** Words that a lesson says without asking anybody to do what they warn of, each with why. */
const ONLY_NAMED: Readonly<Record<string, readonly string[]>> = {
  // tells what some papers were sized with when they were made
  'paper-weight': ['animal-allergen'],
  // sets the clock of hot glue apart from that of wet ones
  'open-time': ['animal-allergen'],
  // lists a blade among what undoes a joint, and advises against it
  undoing: ['knife'],
};

describe('every lesson', () => {
  const lessons = filesIn('content/lessons').filter((file) => file.endsWith('.mdx'));
  test.for(lessons)('%s', (file) => {
    const [, head = '', body = ''] = /^---\r?\n([\s\S]*?)\r?\n---([\s\S]*)$/.exec(textOf(file)) ?? [];
    const { cautions = [] } = parse(head) as { cautions?: string[] };
    const shown = [...cautions, ...(ONLY_NAMED[file.replace(/^.*\/|\.mdx$/g, '')] ?? [])];
    const prose = body.replace(/^import .*$/gm, '').replace(/<\/?[A-Z][^>]*>/g, ' ');
    const steps = [...prose.matchAll(/^\s*\d+\. (.*)$/gm)].map(([, step = '']) => step.replace(/\*\*/g, ''));
    expect([
      ...steps.flatMap((step) => unsaid(step, shown, IN_STEPS)),
      ...unsaid(prose, shown, IN_PROSE).map((one) => one.replace(/ in “[\s\S]*/, '')),
      ...fromComponents(body).filter((caution) => !cautions.includes(caution)),
    ]).toEqual([]);
    for (const caution of cautions) expect(body, caution).toContain(`<Caution id="${caution}"`);
  });
});

test('a sheet that nobody knows may be old, and swatches are cut, glued and pressed', () => {
  expect(MEASURING).toEqual(expect.arrayContaining(['valued-original', 'old-pigments', 'mould', 'knife']));
  expect(TRYING).toEqual(expect.arrayContaining(['knife', 'press', 'ready-made-glue']));
  for (const [page, list] of [
    ['paper', 'MEASURING'],
    ['trials/plan', 'TRYING'],
    ['trials/run', 'TRYING'],
  ])
    expect(textOf(`src/pages/${page}.astro`), page).toMatch(
      new RegExp(String.raw`\{${list}\.map\(\(id\) => <Caution id=\{id\} (?:folded )?/>\)\}`),
    );
});

test('the words are heard: a step that scalds, cuts or smells is not let pass', () => {
  expect(unsaid('Heat a third of the water to about 80 °C.', [], IN_STEPS)).toHaveLength(2);
  expect(unsaid('Heat a third of the water to about 80 °C.', ['hot-liquid'], IN_STEPS)).toEqual([]);
  expect(unsaid('Trim the edge with a knife.', ['hot-liquid'], IN_STEPS)).toHaveLength(1);
  expect(unsaid('Cut the paper with a sharp knife.', [], IN_PROSE)).toHaveLength(1);
  expect(unsaid('Let it cool to 20 °C.', [], IN_STEPS)).toEqual([]);
});
