/** What a link carries of a plan: what is asked always, the rest where it is not as usual. */
import { expect, it } from 'vitest';
import { encodePlan } from '../../../src/core/link/plan-link';
import type { Field, PlanOf } from '../../../src/core/link/fields';

const specs = {
  sheets: { kind: 'number', key: 'n', low: 1, high: 99, unit: '', what: 'The sheets' },
  bottle: { kind: 'number', optional: true, key: 'ml', low: 1, high: 999, unit: 'ml', what: 'The bottle' },
  paper: { kind: 'text', key: 'paper', pattern: /.*/, what: 'The paper' },
} as const;
type Plan = PlanOf<typeof specs>;
const USUAL: Plan = { sheets: 4, bottle: undefined, paper: 'lokta' };

/** The table where these fields are asked for, and where this is usual. */
const tableOf = (asked: readonly (keyof Plan)[], usual: Plan): typeof specs =>
  Object.fromEntries(
    Object.entries<Field>(specs).map(([name, field]) => [
      name,
      { ...field, usual: usual[name as keyof Plan], asked: () => asked.includes(name as keyof Plan) },
    ]),
  ) as unknown as typeof specs;

const link = (plan: Partial<Plan>, asked: readonly (keyof Plan)[] = [], usual: Plan = USUAL, seen?: string) =>
  encodePlan({ ...usual, ...plan }, tableOf(asked, usual), seen);

it('begins with its version, and says no more where all is as usual and nothing is asked', () => {
  expect(link({})).toBe('v=1');
});
it('what is asked is always said, even as usual, so that another usual answer later changes no old link', () => {
  expect(link({}, ['sheets'])).toBe('v=1&n=4');
  expect(link({}, ['paper', 'sheets'])).toBe('v=1&n=4&paper=lokta');
});
it('what is not asked is said where it is not as usual', () => {
  expect(link({ sheets: 5 })).toBe('v=1&n=5');
  expect(link({ paper: 'kozo & mitsumata' })).toBe('v=1&paper=kozo%20%26%20mitsumata');
});
it('a field left empty is said as empty where something is usual there, and not at all where nothing is', () => {
  expect(link({}, ['bottle'])).toBe('v=1');
  expect(link({ bottle: 250 }, ['bottle'])).toBe('v=1&ml=250');
  const filled = { ...USUAL, bottle: 500 };
  expect(link({ bottle: undefined }, ['bottle'], filled)).toBe('v=1&ml=');
  expect(link({ bottle: undefined }, [], filled)).toBe('v=1&ml=');
  expect(link({}, [], filled)).toBe('v=1');
});
it('the sender’s answer comes last, and only where there is one', () => {
  expect(link({ sheets: 5 }, [], USUAL, '2_31.5')).toBe('v=1&n=5&seen=2_31.5');
  expect(link({}, [], USUAL, '')).toBe('v=1&seen=');
});
