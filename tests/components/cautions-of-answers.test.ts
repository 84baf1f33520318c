/** The chooser's page is sent the text of every caution that an answer calls for. */
import { expect, test } from 'vitest';
import { cautionsOfAnswers } from '../../src/components/choose/cautions-of-answers';
import { choose } from '../../src/core/choose/choose';
import { DEFAULT_JOB, NEEDS } from '../../src/core/choose/job';
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
