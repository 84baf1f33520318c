/** The workshop sheet: every project, its sums against the calculators it stands on, its days, and its bad input. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cutAnswer } from '../../../src/core/cut/answer';
import { decodePlan } from '../../../src/core/link/read-plan-link';
import { decodeJob } from '../../../src/core/choose/read-link';
import { CUT_FIELDS } from '../../../src/core/cut/plan';
import { PROJECT_IDS } from '../../../src/core/make/projects';
import { classAnswer } from '../../../src/core/class/answer';
import { lasting, momentText, startOf } from '../../../src/core/class/clock';
import { DEFAULT_CLASS, CLASS_FIELDS, type ClassPlan } from '../../../src/core/class/plan';
import { catalogue } from '../../../src/data/catalogue';

function answered(change: Partial<ClassPlan> = {}) {
  const found = classAnswer({ ...DEFAULT_CLASS, ...change }, catalogue);
  if (!found.ok) throw new Error(found.errors.map(({ field, message }) => `${field}: ${message}`).join('\n'));
  return found.value;
}
const problems = (change: Partial<ClassPlan>) => {
  const found = classAnswer({ ...DEFAULT_CLASS, ...change }, catalogue);
  return found.ok ? [] : found.errors;
};

describe('days and hours', () => {
  it('knows the calendar', () => {
    const start = startOf('2026-12-04', '14:00');
    if (!start.ok) throw new Error('no start');
    // 4 December 2026 is a Friday; the years 2024 and 2028 leap (any calendar)
    expect(momentText(start.value, 0)).toBe('Friday 4 December, 14:00');
    expect(momentText(start.value, -26 * 60)).toBe('Thursday 3 December, 12:00');
    const leap = startOf('2028-03-01', '9:30');
    if (!leap.ok) throw new Error('no start');
    expect(momentText(leap.value, -24 * 60)).toBe('Tuesday 29 February, 09:30');
  });
  it('keeps the calendar that the platform keeps', () => {
    fc.assert(
      fc.property(fc.integer({ min: 10957, max: 60000 }), (days) => {
        const at = new Date(days * 86_400_000);
        const start = startOf(at.toISOString().slice(0, 10), '12:00');
        const words = at.toLocaleDateString('en-GB', {
          weekday: 'long',
          day: 'numeric',
          month: 'long',
          timeZone: 'UTC',
        });
        expect(start.ok && start.value.dayNumber).toBe(days);
        expect(start.ok && momentText(start.value, 0).replaceAll(',', '')).toBe(`${words.replaceAll(',', '')} 12:00`);
      }),
    );
  });
  it('speaks of days before and after where none was given', () => {
    expect(momentText({ minute: 14 * 60 }, -60)).toBe('13:00');
    expect(momentText({ minute: 14 * 60 }, -20 * 60)).toBe('the day before, 18:00');
    expect(momentText({ minute: 14 * 60 }, 16 * 60)).toBe('the next day, 06:00');
    expect(momentText({ minute: 14 * 60 }, -7 * 1440)).toBe('7 days before');
  });
  it.each([
    ['2026-02-30', '14:00', 'day'],
    ['2026-13-01', '14:00', 'day'],
    ['soon', '14:00', 'day'],
    ['', '25:00', 'time'],
    ['', 'noon', 'time'],
  ])('refuses %j at %j beside its field', (day, time, field) => {
    const found = startOf(day, time);
    expect(found.ok).toBe(false);
    if (!found.ok) expect(found.errors[0]?.field).toBe(field);
  });
  it('says durations in steps of five minutes', () => {
    expect(lasting(98)).toBe('1\u00a0h 40\u00a0min');
    expect(lasting(1)).toBe('5\u00a0min');
    expect(lasting(120)).toBe('2\u00a0h');
  });
});

describe('a class', () => {
  it.each(PROJECT_IDS)('of %s is answered whole', (project) => {
    const answer = answered({ project });
    expect(answer.materials.length).toBeGreaterThan(2);
    expect(answer.schedule.length).toBeGreaterThan(8);
    expect(answer.handout.steps.length).toBeGreaterThan(4);
    expect(answer.cautions).toContain('knife');
    expect(JSON.stringify(answer)).not.toMatch(/NaN|Infinity|undefined/);
  });

  it('asks for the sheets that the cutting plan asks for, and its link opens that plan', () => {
    const { tails, cut } = answered();
    const { plan, dropped } = decodePlan(tails.cut, CUT_FIELDS);
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
    const { job, seen, dropped } = decodeJob(answered({ celsius: 24 }).tails.choose);
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
    const found = problems({ paperWide: 200, paperHigh: 200 });
    expect(found).toHaveLength(1);
    expect(found[0]?.field).toMatch(/^paper(Wide|High)$/);
    expect(found[0]?.message).toMatch(/larger than the sheet/);
  });
  it('is said beside the grain that makes it so', () => {
    const found = problems({ boardWide: 200, boardHigh: 300, boardGrain: 'short', width: 190, height: 250 });
    expect(found.map(({ field }) => field)).toContain('boardGrain');
  });
  it.each([
    ['paper', { paper: 'no-such' }],
    ['adhesive', { adhesive: 'film-double-sided' }],
    ['on', { on: 'no-such' }],
    ['tool', { tool: 'no-such' }],
    ['day', { day: '2026-02-31' }],
  ])('%s that the records do not know', (field, change) => {
    expect(problems(change).map((one) => one.field)).toContain(field);
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
