/** Whether an answer is for a pair that the model got wrong when it was asked blind. */
import { describe, expect, it } from 'vitest';
import { blindFor, blindSentence, type Blind } from '../../../src/core/choose/blind';
import type { Ranked } from '../../../src/core/choose/finding';
import type { Job } from '../../../src/core/choose/job';
import { catalogue } from '../../../src/data/catalogue';
import { jobWith } from '../support/jobs';

const lift: Blind = {
  paper: 'lokta-light',
  grammage: 55,
  adhesive: 'pva',
  substrate: 'binders-board',
  thing: 'lift',
  said: 0.98,
  happened: false,
};
const spread: Blind = { ...lift, thing: 'spread', said: 0.4, happened: true };
const best = (face: 'sheet' | 'ground' = 'sheet', adhesiveId = 'pva') => ({ adhesiveId, method: { face } }) as Ranked;
const asked = (job: Job, answer: Ranked = best(), blind: readonly Blind[] = [spread, lift]) =>
  blindFor(blind, answer, job, catalogue);

describe('the same pair', () => {
  it('is found, and the worse of two misses is told', () => {
    expect(asked(jobWith('lokta-light', 55))).toBe(lift);
    expect(asked(jobWith('lokta-light', 55), best(), [spread])).toBe(spread);
  });
  it('is the same while its weight is within a fifth', () => {
    expect(asked(jobWith('lokta-light', 66))).toBe(lift);
    expect(asked(jobWith('lokta-light', 67))).toBeUndefined();
  });
});
describe('nothing is said', () => {
  const job = jobWith('lokta-light', 55);
  it('of another paper, adhesive, ground, task or face', () => {
    expect(asked(jobWith('unryu', 55))).toBeUndefined();
    expect(asked(job, best('sheet', 'eva'))).toBeUndefined();
    expect(asked({ ...job, substrate: 'mount-board' })).toBeUndefined();
    expect(asked({ ...job, task: 'mount' })).toBeUndefined();
    expect(asked(job, best('ground'))).toBeUndefined();
  });
});
it('says what was said and what came of it', () => {
  expect(blindSentence(lift)).toBe(
    'Before the model had seen this pair, it gave a chance of more than 9 in 10 that the sheet would come up clean after 20\u00a0s. On the bench it did not.',
  );
  expect(blindSentence(spread)).toMatch(/about 4 in 10 that it would spread without dragging\. On the bench it did\.$/);
});
