/** What a teacher is told before a class, with the choices of adhesive made by hand. */
import { describe, expect, it } from 'vitest';
import type { Choice } from '../../../src/core/choose/choose';
import { cutAnswer, type CutAnswer } from '../../../src/core/cut/answer';
import type { CutPlan } from '../../../src/core/cut/plan';
import type { Job } from '../../../src/core/choose/job';
import type { Result } from '../../../src/core/base/result';
import { classAnswer, type SlowParts } from '../../../src/core/class/answer';
import { classToCut } from '../../../src/core/class/sheet';
import { DEFAULT_CLASS, type ClassPlan, CLASS_FIELDS } from '../../../src/core/class/plan';
import { catalogue } from '../../../src/data/catalogue';
import { factsOf } from '../support/facts';
import fc from 'fast-check';
import { decodePlan } from '../../../src/core/link/read-plan-link';
import { decodeJob } from '../../../src/core/choose/read-link';
import { CUT_FIELDS } from '../../../src/core/cut/plan';
import { PROJECT_IDS } from '../../../src/core/make/projects';
/** Three people and one spare kit, and glue as it comes out of the pot. */
const plan = (change: Partial<ClassPlan> = {}): ClassPlan => ({
  ...DEFAULT_CLASS,
  people: 3,
  spare: 1,
  adhesive: 'pva',
  day: '2026-12-04',
  time: '14:00',
  ...change,
});

const choice = (adhesiveId: string, p10: number, change: Partial<Choice> = {}): Choice => ({
  adhesiveId,
  verdict: 'sound',
  chance: 0.9,
  gives: 'neither',
  atHand: true,
  reasons: [],
  cautions: [],
  method: factsOf().method,
  weights: factsOf().weights,
  openSeconds: factsOf().openSeconds,
  kind: 'vinyl',
  chances: factsOf().chances,
  margins: factsOf().margins,
  facts: factsOf(),
  slipSeconds: { p10, p50: 2 * p10, p90: 3 * p10 },
  placement: { glueGoesOn: 'the board', tool: 'brush-full', relaxMinutes: 0, placeBeforeContact: false },
  technique: { glueGoesOn: 'the board', tool: 'brush-full', relaxMinutes: 0, placeBeforeContact: false, steps: [] },
  ...change,
});

const remembered = new Map<string, Result<CutAnswer>>();

/** One class after another cuts the same sheets. */
function cutOnce(asked: CutPlan): Result<CutAnswer> {
  const key = Object.entries(asked).join();
  const found = remembered.get(key) ?? cutAnswer(asked);
  remembered.set(key, found);
  return found;
}

function told(change: Partial<ClassPlan> = {}, choices: readonly Choice[] = [choice('pva', 5)], slow?: SlowParts) {
  const found = classAnswer(plan(change), catalogue, slow ?? { cut: cutOnce, choose: () => choices });
  if (!found.ok) throw new Error(found.errors.map(({ field }) => field).join());
  return found.value;
}

const problems = (change: Partial<ClassPlan>, cut: SlowParts['cut'] = cutOnce) => {
  const found = classAnswer(plan(change), catalogue, { cut, choose: () => [choice('pva', 5)] });
  return found.ok ? [] : found.errors.map(({ field }) => field);
};

const plainly = (text: string) => text.replace(/[\u00a0\u202f]/g, ' ');

function answered(change: Partial<ClassPlan> = {}) {
  const found = classAnswer({ ...DEFAULT_CLASS, ...change }, catalogue);
  if (!found.ok) throw new Error(found.errors.map(({ field, message }) => `${field}: ${message}`).join('\n'));
  return found.value;
}

const refusals = (change: Partial<ClassPlan>) => {
  const found = classAnswer({ ...DEFAULT_CLASS, ...change }, catalogue);
  return found.ok ? [] : found.errors;
};

describe('what to buy in a sentence', () => {
  it('for how many kits, how many sheets of what, and how much glue by its short name', () => {
    const { sentence, brief, figures, coverage, cut } = told();
    const millilitres = coverage.buyMillilitres;
    expect(plainly(sentence)).toMatch(/^For 4 kits of the case-bound notebook: sheets, \d+ of board, \d+ of /);
    expect(plainly(sentence)).toContain(`adhesive, ${millilitres} ml of PVA.`);
    expect(told().asked).toBe('3 people: case-bound notebook, with PVA');
    expect(brief.map(plainly)).toEqual(['4 kits', `${millilitres} ml`]);
    const sheets = cut.stocks.map(({ name, layout }) => `${layout.sheets} of ${name}`);
    expect(sheets.length).toBeGreaterThan(1);
    expect(sentence).toContain(sheets.join(', '));
    const all = cut.stocks.reduce((sum, { layout }) => sum + layout.sheets, 0);
    expect(figures).toEqual([all, millilitres, 4]);
  });
});

describe('the slow parts', () => {
  it('can be asked ahead: what is to be cut is the very question that the answer then asks', () => {
    const asked: { cut?: CutPlan; job?: Job } = {};
    told({ celsius: 24 }, undefined, {
      cut: (one) => cutOnce((asked.cut = one)),
      choose: (job) => [choice('pva', ((asked.job = job), 5))],
    });
    expect(classToCut(plan({ celsius: 24 }))).toEqual(asked.cut);
    expect(asked.job).toMatchObject({ celsius: 24, atHand: ['pva'] });
  });
  it('nothing is asked where the project cannot be made', () => {
    expect(classToCut(plan({ joint: 1 }))).toBeUndefined();
    expect(problems({ joint: 1 })).toEqual(['joint']);
  });
  it('the link to the chooser carries the first of the choices as what was seen', () => {
    const seen = (...choices: Choice[]) =>
      new URLSearchParams(told({}, choices).chooserTail.replace(/^[?#]/, '')).get('seen');
    expect(seen(choice('pva', 5), choice('gelatine', 50))).toMatch(/pva\.sound\.5\.15/);
  });
});

describe('warnings', () => {
  const said = (change: Partial<ClassPlan>, ...choices: Choice[]) => told(change, choices).warnings;
  it('the adhesives that give a beginner time, but never the one that was chosen', () => {
    // the cover is placed in less than a minute, and a beginner takes half as long again
    const long = ['pva', 'gelatine', 'fish-glue'].map((id) => choice(id, 600));
    const slower = said({ celsius: 30, humidity: 20 }, ...long).find((one) => one.startsWith('Slower than'));
    expect(slower).toMatch(/^Slower than PVA in this room: /);
    expect(slower!.split(':')[1]).not.toMatch(/PVA/);
    expect(slower!.split(':')[1]).toMatch(/\w/);
    const quick = ['pva', 'gelatine', 'fish-glue'].map((id) => choice(id, 1));
    expect(said({ celsius: 30, humidity: 20 }, ...quick).join()).not.toMatch(/Slower than/);
  });
  it('two slower ones at most, sound or likely, and spread like the one that was chosen', () => {
    const short = (id: string) => catalogue.adhesives.get(id)!.short;
    const slower = (...others: Choice[]) =>
      said({ celsius: 30, humidity: 20 }, choice('pva', 1), ...others)
        .find((one) => one.startsWith('Slower than'))
        ?.split(': ')[1];
    const [film, fish, gelatine] = ['film-double-sided', 'fish-glue', 'gelatine'].map((id) => choice(id, 600));
    const likely = choice('eva', 600, { verdict: 'likely' });
    expect(slower(film!, likely)).toBe(`${short('eva')}.`);
    expect(slower(fish!, gelatine!, likely)).toBe(`${short('fish-glue')}, ${short('gelatine')}.`);
    expect(slower(film!, choice('eva', 600, { verdict: 'touch-and-go' }))).toBeUndefined();
  });
  it('of time first, then of the adhesive and the room, then of the project, the cutting and the covering', () => {
    const all = said(
      { celsius: 30, humidity: 20, square: 9, onBoard: undefined },
      choice('pva', 1, { verdict: 'unlikely' }),
    );
    const at = (word: RegExp) => all.findIndex((one) => word.test(one));
    const order = [
      /takes a beginner/,
      /adhesive you chose is unlikely/,
      /warm room/i,
      /squares.*wider than the joints/,
    ];
    const places = order.map(at);
    expect(places).not.toContain(-1);
    expect([...places].sort((a, b) => a - b)).toEqual(places);
  });
  it('an adhesive in doubt with the first thing that speaks against it, not with what speaks for it', () => {
    const reason = (code: string, against: boolean) => ({ code, weight: 1, against, text: `${code}.` });
    const reasons = [reason('Clean', false), reason('Stiff', true), reason('Slow', true)];
    const doubt = (change: Partial<Choice>) =>
      said({}, choice('pva', 600, change)).find((one) => one.startsWith('The adhesive you chose'));
    expect(doubt({ verdict: 'touch-and-go', reasons })).toMatch(/is touch and go on this paper\. Stiff\.$/);
    expect(doubt({ verdict: 'unlikely', reasons: [reasons[0]!] })).toMatch(/on this paper\.$/);
    for (const verdict of ['sound', 'likely'] as const) expect(doubt({ verdict, reasons })).toBeUndefined();
  });
  it('what the cutting and the covering warn of is said too', () => {
    const { warnings, cut, coverage, project } = told({ paperGrain: 'none', loss: 60 });
    for (const one of [...cut.warnings, ...coverage.warnings, ...project.warnings]) expect(warnings).toContain(one);
  });
});

describe('cautions', () => {
  it('of cutting always; what the adhesive, its batches and its keeping ask for, each once, the gravest first', () => {
    const asks = choice('pva', 5, { cautions: ['hot-iron', 'knife', 'hot-iron'] });
    expect(told({}, [asks]).cautions).toEqual([
      ...['valued-original', 'hot-iron', 'guillotine', 'knife', 'ready-made-glue', 'frost', 'press'],
    ]);
    const mixed = told({ adhesive: 'methylcellulose-2-5' }, [choice('methylcellulose-2-5', 60)]);
    const powder = mixed.batches.flatMap(({ mix }) => mix.cautions);
    expect(powder.length).toBeGreaterThan(0);
    expect(mixed.cautions).toEqual(['hot-liquid', 'guillotine', 'knife', 'powder-dust', 'press']);
    expect(mixed.cautions).toEqual(expect.arrayContaining([...powder]));
    expect(told({ on: 'plywood' }, [asks]).cautions).toContain('wood-dust');
  });
});

describe('the day', () => {
  const day = (change: Partial<ClassPlan>) => told(change).schedule;
  it('begins when the class does, and ends after its hours', () => {
    const at = (hours: number, word: RegExp) => day({ hours }).find(({ what }) => word.test(what))?.when;
    expect(at(3, /class begins/)).toMatch(/4 December, 14:00/);
    expect(at(3, /class ends/)).toMatch(/17:00/);
    expect(at(1.5, /class ends/)).toMatch(/15:30/);
  });
});

describe('what cannot be', () => {
  it('is said all at once, each beside its field', () => {
    const wrong = {
      paper: 'nowhere',
      on: 'nowhere',
      adhesive: 'nowhere',
      tool: 'nowhere',
      day: '2026-02-30',
      joint: 1,
    };
    expect(problems(wrong).sort()).toEqual(['adhesive', 'day', 'joint', 'on', 'paper', 'tool']);
    expect(problems({})).toEqual([]);
  });
  it('a film is no adhesive that a class spreads', () => {
    expect(problems({ adhesive: 'film-double-sided' })).toEqual(['adhesive']);
  });
  it('what no sheet holds is said beside the sheet of its stock', () => {
    const cut = () =>
      ({ ok: false, errors: [{ field: 'piece-0-wide', code: 'too-large', message: 'It is larger.' }] }) as const;
    expect(problems({}, cut)).toEqual(['boardWide']);
  });
});

it('the handout says the word for this adhesive on this paper, and the making in the project’s steps for a kit that is cut', () => {
  const { handout, project, title } = told({}, [choice('pva', 60, { verdict: 'likely' })]);
  expect(handout.verdict).toMatch(/^Likely to work on .*marbled/i);
  expect(handout.steps).toEqual(project.steps);
  expect(handout.steps[0]).toMatch(/^Lay out the pieces of the kit/);
  expect(title).toBe('Case-bound notebook');
});

it('the handout has the time for a clock, where there is time to look at one', () => {
  expect(told({}, [choice('pva', 60)]).handout.slip).toEqual({ low: 60, high: 180 });
  expect(told({}, [choice('pva', 1)]).handout.slip).toBeUndefined();
  expect(told({}, [choice('pva', 60, { verdict: 'ruled-out' })]).handout.slip).toBeUndefined();
});

describe('a class', () => {
  it.each(PROJECT_IDS)('of %s is answered whole', (project) => {
    const answer = answered({ project });
    expect(answer.materials.length).toBeGreaterThan(2);
    expect(answer.schedule.length).toBeGreaterThan(8);
    expect(answer.handout.steps.length).toBeGreaterThan(4);
    // what was cut the day before is not cut again in the class
    expect([...answer.handout.steps, ...answer.schedule.map(({ what }) => what)].join()).not.toMatch(
      /cut (?:the (?:boards|strips)|back, top)/i,
    );
    expect(answer.handout.steps.filter((step) => step.startsWith('Lay out the pieces'))).toHaveLength(1);
    expect(answer.cautions).toContain('knife');
    expect(JSON.stringify(answer)).not.toMatch(/NaN|Infinity|undefined/);
  });

  it('asks for the sheets that the cutting plan asks for, and its link opens that plan', () => {
    const { cutTail, cut } = answered();
    const { plan, dropped } = decodePlan(cutTail, CUT_FIELDS);
    expect(dropped).toEqual([]);
    const alone = cutAnswer(plan);
    expect(alone.ok && alone.value.figures).toEqual(cut.figures);
  });

  it('twice the kits take twice the glue, before rounding', () => {
    const one = answered({ people: 7, spare: 0 }).coverage.onTheWork;
    const two = answered({ people: 14, spare: 0 }).coverage.onTheWork;
    expect(two / one).toBeCloseTo(2, 9);
  });

  it('hands the student the chooser’s answer for the adhesive of the class', () => {
    const { job, seen, dropped } = decodeJob(answered({ celsius: 24 }).chooserTail);
    expect(dropped).toEqual([]);
    expect(job).toMatchObject({ celsius: 24, atHand: ['pva-mc-1-1'], paper: { family: 'marbled' } });
    expect(seen?.adhesiveId).toBe('pva-mc-1-1');
  });

  it('makes the jelly the day before, and buys no water and no jelly', () => {
    const { schedule, materials } = answered({ day: '2026-12-04' });
    const jelly = schedule.find(({ what }) => what.startsWith('Make the jelly'));
    expect(jelly?.when).toMatch(/^Thursday 3 December/);
    expect(materials.map(({ what }) => what).join()).not.toMatch(/water|at 1\.5 %/);
    expect(materials.map(({ what }) => what).join()).toMatch(/methylcellulose powder/);
  });

  it('keeps the schedule in order, cooks paste on the day, and warms nothing for PVA', () => {
    const { schedule } = answered({ adhesive: 'wheat-starch-paste-thick', day: '2026-12-04' });
    const cook = schedule.findIndex(({ what }) => /cook the paste/.test(what));
    const begin = schedule.findIndex(({ what }) => /class begins/.test(what));
    expect(cook).toBeGreaterThan(-1);
    expect(cook).toBeLessThan(begin);
    expect(answered({ adhesive: 'pva' }).batches).toEqual([]);
  });

  it('warns where beginners run out of time, and names what is slower', () => {
    const hurried = answered({ adhesive: 'pva', paper: 'lokta-heavy', celsius: 28, humidity: 25 });
    expect(hurried.warnings.join(' ')).toMatch(/takes a beginner about .* to place and can be moved for/);
    expect(hurried.warnings.join(' ')).toMatch(/warm room/i);
    expect(answered({ adhesive: 'wheat-starch-paste-thin', width: 60, height: 80 }).warnings.join(' ')).not.toMatch(
      /takes a beginner/,
    );
  });

  it('joins the strips of an accordion from the sheets there are', () => {
    const { cut } = answered({ project: 'accordion' });
    expect(cut.stocks.some(({ name }) => name === 'lining paper')).toBe(true);
  });
});

describe('what cannot be', () => {
  it('is said beside the sheet that is too small, once', () => {
    const found = refusals({ paperWide: 200, paperHigh: 200 });
    expect(found).toHaveLength(1);
    expect(found[0]?.field).toMatch(/^paper(Wide|High)$/);
    expect(found[0]?.message).toMatch(/larger than the sheet/);
  });
  it('is said beside the grain that makes it so', () => {
    const found = refusals({ boardWide: 200, boardHigh: 300, boardGrain: 'short', width: 190, height: 250 });
    expect(found.map(({ field }) => field)).toContain('boardGrain');
  });
  it.each([
    ['paper', { paper: 'no-such' }],
    ['adhesive', { adhesive: 'film-double-sided' }],
    ['on', { on: 'no-such' }],
    ['tool', { tool: 'no-such' }],
    ['day', { day: '2026-02-31' }],
  ])('%s that the records do not know', (field, change) => {
    expect(refusals(change).map((one) => one.field)).toContain(field);
  });
  it('survives any link', () => {
    const keys = Object.values(CLASS_FIELDS).map(({ key }) => key);
    expect(new Set(keys).size).toBe(keys.length);
    fc.assert(
      fc.property(fc.string(), fc.constantFrom(...keys), (text, key) => {
        const { plan } = decodePlan(`v=1&people=2&${key}=${encodeURIComponent(text)}`, CLASS_FIELDS);
        const found = classAnswer(plan, catalogue);
        expect(JSON.stringify(found)).not.toMatch(/NaN|Infinity/);
      }),
      { numRuns: 60 },
    );
  });
});
