/** A job is the same in every room's link: each link is read by the fields of its own calculator. */
import { describe, expect, it } from 'vitest';
import { CLASS_FIELDS } from '../../../src/core/class/plan';
import { COVER_FIELDS } from '../../../src/core/cover/plan';
import { CUT_FIELDS } from '../../../src/core/cut/plan';
import { FLAT_FIELDS } from '../../../src/core/flat/plan';
import { factsIn, PROJECT_KEYS, tailWith } from '../../../src/core/handover/job-facts';
import { jobInLine } from '../../../src/core/handover/job-line';
import { DEFAULT_JOB, type Job } from '../../../src/core/choose/job';
import { decodeJob } from '../../../src/core/choose/read-link';
import { encodeJob } from '../../../src/core/choose/write-link';
import { decodePlan } from '../../../src/core/link/read-plan-link';
import { encodePlan } from '../../../src/core/link/plan-link';
import { DEFAULT_MAKE, MAKE_FIELDS } from '../../../src/core/make/fields';
import { MIX_FIELDS } from '../../../src/core/mix/plan';
import { catalogue } from '../../../src/data/catalogue';

const job: Job = {
  ...DEFAULT_JOB,
  paper: { family: 'lokta-light', grammage: 55 },
  substrate: 'grey-board',
  widthMm: 300,
  heightMm: 240,
  celsius: 17,
  humidity: 60,
  tool: 'roller',
};
const seen = { modelVersion: 9, adhesiveId: 'pva-mc-1-1', verdict: 'sound', slipLow: 20, slipHigh: 60 } as const;
const facts = factsIn('choose', encodeJob(job, seen));

describe('what is said where an adhesive is chosen', () => {
  it('is read from its link', () => {
    expect(facts).toEqual({
      paper: 'lokta-light~55gsm',
      on: 'grey-board',
      wide: '300',
      high: '240',
      glue: 'pva-mc-1-1',
      tool: 'roller',
      celsius: '17',
      humidity: '60',
    });
  });
  it.for([
    ['mix', MIX_FIELDS, { paper: 'lokta-light~55gsm', tool: 'roller' }],
    ['cover', COVER_FIELDS, { paper: 'lokta-light~55gsm', tool: 'roller', adhesive: 'pva-mc-1-1', thing: 'own' }],
    [
      'flat',
      FLAT_FIELDS,
      {
        paper: 'lokta-light~55gsm',
        board: 'grey-board',
        width: 300,
        height: 240,
        adhesive: 'pva-mc-1-1',
        tool: 'roller',
        celsius: 17,
        humidity: 60,
      },
    ],
    [
      'class',
      CLASS_FIELDS,
      {
        paper: 'lokta-light~55gsm',
        on: 'grey-board',
        adhesive: 'pva-mc-1-1',
        tool: 'roller',
        celsius: 17,
        humidity: 60,
      },
    ],
  ] as const)('is known to %s, in its own fields', ([room, fields, known]) => {
    const { plan, dropped } = decodePlan(tailWith(room, facts), fields);
    expect(dropped).toEqual([]);
    expect(plan).toMatchObject(known);
  });
  it('covers the one piece of its size', () => {
    const { plan } = decodePlan(tailWith('cover', facts), COVER_FIELDS);
    expect(plan.pieces).toMatchObject([{ widthMm: 300, heightMm: 240, count: 1 }]);
  });
  it('comes back to the chooser whole', () => {
    expect(decodeJob(tailWith('choose', facts)).job).toMatchObject(job);
  });
  it('leaves nothing of the sheet before it', () => {
    const before = encodeJob({ ...job, paper: { family: 'chiyogami', grammage: 70, caliper: 120, surface: 'smooth' } });
    expect(decodeJob(tailWith('choose', facts, before)).job.paper).toEqual({ family: 'lokta-light', grammage: 55 });
  });
});

describe('what else is known', () => {
  it('names every key of a project, and no other', () => {
    expect([...PROJECT_KEYS].sort()).toEqual(
      Object.values(MAKE_FIELDS)
        .map(({ key }) => key)
        .sort(),
    );
  });
  it('takes a project into a class and back, and leaves the class its people', () => {
    const project = {
      ...DEFAULT_MAKE,
      project: 'lidded-box',
      width: 120,
      height: 80,
      thickness: 40,
      lidDepth: 25,
    } as const;
    const known = factsIn('make', encodePlan(project, MAKE_FIELDS));
    const before = encodePlan({ ...decodePlan('', CLASS_FIELDS).plan, people: 12 }, CLASS_FIELDS);
    const { plan } = decodePlan(tailWith('class', known, before), CLASS_FIELDS);
    expect(plan).toMatchObject({ project: 'lidded-box', width: 120, thickness: 40, lidDepth: 25, people: 12 });
    expect(decodePlan(tailWith('make', known), MAKE_FIELDS).plan).toEqual(project);
  });
  it('takes a paper of one’s own by its name', () => {
    const own = 'wove-text~92gsm~120um~30.9s~up~named Grey with cranes';
    for (const [room, fields] of [
      ['mix', MIX_FIELDS],
      ['cover', COVER_FIELDS],
      ['flat', FLAT_FIELDS],
      ['class', CLASS_FIELDS],
    ] as const)
      expect(decodePlan(tailWith(room, { paper: own }), fields).plan.paper).toBe(own);
    expect(decodeJob(tailWith('choose', { paper: own })).job.paper).toMatchObject({
      family: 'wove-text',
      caliper: 120,
    });
    expect(jobInLine({ paper: own, on: 'binders-board' }, catalogue)).toBe(
      "Grey with cranes 92\u00a0g/m² on binder's board",
    );
    // brackets are cut from the shelf's names, not from a reader's own
    const second = own.replace('cranes', 'cranes (2nd sheet)');
    expect(jobInLine({ paper: second }, catalogue)).toBe('Grey with cranes (2nd sheet) 92\u00a0g/m²');
  });
  it('brings its pieces to the sheets that they are cut from', () => {
    const pieces = encodePlan({ ...decodePlan('', CUT_FIELDS).plan, kits: 3 }, CUT_FIELDS);
    expect(decodePlan(tailWith('cut', { 'cut pieces': pieces }), CUT_FIELDS).plan.kits).toBe(3);
  });
  it('holds a board’s size to what can be asked whether it warps', () => {
    expect(decodePlan(tailWith('flat', { wide: '2999', high: '5' }), FLAT_FIELDS)).toMatchObject({
      plan: { width: 2000, height: 10 },
      dropped: [],
    });
  });
  it('says nothing where nothing was said', () => {
    expect(jobInLine({}, catalogue)).toBe('');
    expect(tailWith('mix', {})).toBe('v=1');
    expect(factsIn('choose', '%%%&=&paper')).toEqual({});
  });
});
