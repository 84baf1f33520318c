/** A calculator's page is sent the text of every caution that an answer of it calls for. */
import { expect, test } from 'vitest';
import { cautionsOfAnswers, cautionsOfFlatness } from '../../src/components/choose/cautions-of-answers';
import { CUTTING, MAKING } from '../../src/components/cautions-of-pages';
import { choose } from '../../src/core/choose/choose';
import { DEFAULT_JOB, NEEDS } from '../../src/core/choose/job';
import { cutAnswer } from '../../src/core/cut/answer';
import { DEFAULT_CUT } from '../../src/core/cut/plan';
import { flatAnswer } from '../../src/core/flat/answer';
import { DEFAULT_FLAT } from '../../src/core/flat/plan';
import { makeAnswer } from '../../src/core/make/answer';
import { DEFAULT_MAKE, type MakePlan } from '../../src/core/make/fields';
import { PROJECT_IDS } from '../../src/core/make/projects';
import { TASKS } from '../../src/core/records/task';
import { catalogue } from '../../src/data/catalogue';

const sent = cautionsOfAnswers(catalogue);
const unsent = (job: Partial<typeof DEFAULT_JOB>) =>
  choose({ ...DEFAULT_JOB, ...job }, catalogue, 1)
    .flatMap(({ cautions }) => cautions)
    .filter((id) => !sent.has(id));

test.for([...catalogue.substrates.keys()])('on %s, every adhesive', (substrate) => {
  expect(unsent({ substrate })).toEqual([]);
});
test.for([...NEEDS])('for what needs to be %s', (need) => {
  expect(unsent({ needs: [need] })).toEqual([]);
});
test.for([...TASKS])('for the task %s', (task) => {
  expect(unsent({ task })).toEqual([]);
});
test('and not those that no answer can call for', () => {
  expect(sent.has('guillotine')).toBe(false);
});

test('a project of any kind calls for none that its page is not sent', () => {
  const plans: readonly Partial<MakePlan>[] = [
    { lined: 'yes', ties: '3', stock: 'cloth', cover: 'quarter', back: 'hollow' },
    { lined: 'no', ties: '0', stock: 'paper', cover: 'full', back: 'none' },
  ];
  const asked = PROJECT_IDS.flatMap((project) =>
    plans.flatMap((plan) => {
      const answer = makeAnswer({ ...DEFAULT_MAKE, ...plan, project });
      if (!answer.ok) throw new Error(`${project}: ${answer.errors[0]?.message}`);
      return answer.value.cautions;
    }),
  );
  expect(new Set(asked)).toEqual(new Set(MAKING));
});
test.for([0, 1, 3])('nor do plans of sheets, with a kerf of %d mm', (kerf) => {
  const answer = cutAnswer({ ...DEFAULT_CUT, kerf });
  if (!answer.ok) throw new Error(answer.errors[0]?.message);
  expect(answer.value.cautions).not.toEqual([]);
  expect(answer.value.cautions.filter((id) => !CUTTING.includes(id))).toEqual([]);
});
test.for([...catalogue.adhesives.keys()])('nor does a board covered with %s', (adhesive) => {
  const laid = cautionsOfFlatness(catalogue);
  for (const board of catalogue.substrates.keys()) {
    const answer = flatAnswer({ ...DEFAULT_FLAT, adhesive, board }, catalogue);
    if (answer.ok) expect(answer.value.cautions.filter((id) => !laid.has(id))).toEqual([]);
  }
});
