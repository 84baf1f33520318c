/** Which plate a step is shown with: by the method's face and tool, by the task where less than a face is glued. */
import { describe, expect, test } from 'vitest';
import { choose } from '../../../src/core/choose/choose';
import { DEFAULT_JOB, type Job } from '../../../src/core/choose/job';
import { drawnSteps } from '../../../src/core/choose/step-plates';
import { readCatalogue } from '../../tools/read-content';

const catalogue = readCatalogue();
const choicesFor = (over: Partial<Job>) => choose({ ...DEFAULT_JOB, ...over }, catalogue, 8);
const putOn = (choice: ReturnType<typeof choicesFor>[number]) =>
  drawnSteps(choice).find(({ text }) => /^(?:Put the glue on|Apply it to) /.test(text))?.plate;

describe('the step that puts the glue on', () => {
  test.for([
    ['line-spine', 'on-spine'],
    ['tip-in', 'on-strip'],
    ['join-boards', 'on-edge'],
  ] as const)('of the task %s is shown on %s, unless the sheet lies on a support', ([task, plate]) => {
    const wet = choicesFor({ task }).filter(({ facts }) => facts.adhesive.form === 'wet');
    expect(wet.length).toBeGreaterThan(0);
    for (const choice of wet)
      expect(putOn(choice)).toBe(
        choice.method.face === 'sheet-on-support' ? `on-support-${choice.method.tool}` : plate,
      );
  });
  test('of what comes dry is shown with what it is applied with, and as a film where that has no plate of its own', () => {
    const every = (['cover', 'mend', 'mount'] as const).flatMap((task) => choicesFor({ task }));
    const dry = every.filter(({ facts }) => facts.adhesive.form === 'dry');
    const plates = new Map(dry.map((choice) => [choice.adhesiveId, putOn(choice)]));
    expect(plates.get('spray')).toBe('spray');
    expect(plates.get('glue-stick')).toBe('stick');
    expect(plates.get('contact-adhesive')).toBe('both-faces');
    expect(plates.get('dry-mount-tissue')).toBe('tacked');
    expect(plates.get('tissue-heat-set')).toBe('iron');
    expect(plates.get('remoistenable-tissue')).toBe('remoistened');
    expect(plates.get('film-double-sided')).toBe('film');
  });
  test('of a whole face is shown with its face and its tool', () => {
    for (const choice of choicesFor({}).filter(({ facts }) => facts.adhesive.form === 'wet')) {
      const onto = { sheet: 'sheet', 'sheet-on-support': 'support', ground: 'board', both: 'sheet' }[
        choice.method.face
      ];
      expect(putOn(choice)).toBe(`on-${onto}-${choice.method.tool}`);
    }
  });
});

test('the words of each step are those of the method, in its order', () => {
  for (const choice of choicesFor({}))
    expect(drawnSteps(choice).map(({ text }) => text)).toEqual(choice.technique.steps);
});
