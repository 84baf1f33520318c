/** What to do at the bench, and in which order, for placements made by hand. Common practice throughout, no source. */
import type { Placement } from '../../../src/core/choose/finding';
import { describe, expect, it } from 'vitest';
import type { Task } from '../../../src/core/records/task';
import type { Catalogue, Stroke } from '../../../src/core/records/records';
import { stepsFor } from '../../../src/core/choose/technique';
import { factsOf, SIZE_GLUE, TACK_FILM, type Found } from '../support/facts';

const catalogue = {
  techniques: new Map([['squeegee', { id: 'squeegee', name: 'Squeegee of Rubber', stroke: 'outwards' }]]),
} as unknown as Catalogue;
const coat = { low: 30, middle: 45, high: 60, basis: 'from-memory' } as const;

const wet = (change: Partial<Placement> = {}, found: Found = {}) =>
  stepsFor(
    factsOf(found),
    ...([
      {
        glueGoesOn: 'the back of the paper',
        tool: 'squeegee',
        coat,
        relaxMinutes: 0,
        placeBeforeContact: false,
        ...change,
      },
      catalogue,
    ] as const),
  );
const dry = (change: Partial<Placement> = {}, needsHeat = false) =>
  stepsFor(
    factsOf({ adhesive: { ...TACK_FILM, needsHeat } }),
    { glueGoesOn: 'both faces', tool: 'a soft roller', relaxMinutes: 0, placeBeforeContact: false, ...change },
    catalogue,
  );
/** The steps name these, one each, in this order, and there are no others. */
function inOrder(steps: readonly string[], words: readonly RegExp[]) {
  expect(steps, steps.join('\n')).toHaveLength(words.length);
  words.forEach((word, i) => expect(steps[i]).toMatch(word));
}

describe('a glue that is spread', () => {
  it('is put on, laid, rubbed down and pressed', () => {
    inOrder(wet(), [/^Put the glue on/, /^Lay it/, /^Rub down/, /under a board and weight/]);
  });
  it('goes over a face the way its tool goes, and each way is said in other words', () => {
    const put = (stroke: Stroke) => {
      const tool = { id: 'squeegee', name: 'Squeegee', stroke };
      const held = { techniques: new Map([['squeegee', tool]]) } as unknown as Catalogue;
      const placement = { glueGoesOn: 'it', tool: 'squeegee', relaxMinutes: 0, placeBeforeContact: false };
      return stepsFor(factsOf(), placement, held)[0]!;
    };
    expect(put('outwards')).toMatch(/squeegee, from the middle out/);
    expect(put('bands')).toMatch(/squeegee, in bands/);
    expect(put('pull')).toMatch(/squeegee, in one pull/);
  });
  it('goes where the placement says, with its tool in lower case and its coat as a span', () => {
    const [put] = wet({ glueGoesOn: 'the board, not the paper' });
    expect(put).toMatch(/on the board, not the paper: squeegee of Rubber, /);
    expect(put).toMatch(/30 to 60\sg\/m² wet/);
  });
  it('without a coat none is named', () => {
    const { coat: _, ...rest } = { glueGoesOn: 'it', tool: 'squeegee', coat, relaxMinutes: 0 };
    const [put] = stepsFor(factsOf(), { ...rest, placeBeforeContact: false }, catalogue);
    expect(put).not.toMatch(/wet|g\/m²/);
  });
  it('is kept at its heat before anything else, where it is used hot', () => {
    const hot = wet({}, { adhesive: { ...SIZE_GLUE, usedAt: 60 } });
    inOrder(hot, [/about 60 °C, no hotter/, /^Put the glue on/, /^Lay it/, /^Rub down/, /weight/]);
  });
  it('relaxes after it is pasted and before it is laid', () => {
    inOrder(wet({ relaxMinutes: 3 }), [/^Put/, /relax for about 3 min/, /^Lay it/, /^Rub/, /weight/]);
    expect(wet({ relaxMinutes: 0 }).join()).not.toMatch(/relax/);
  });
  it('is got right over its place first, where it cannot be moved', () => {
    inOrder(wet({ placeBeforeContact: true }), [/^Put/, /right before it touches.*do not lift/, /^Rub/, /weight/]);
    expect(wet({ placeBeforeContact: true }).join()).not.toMatch(/still slides/);
    expect(wet({ placeBeforeContact: false }).join()).toMatch(/move it while it still slides/);
  });
  it('is not rubbed with bone where the paper is embossed', () => {
    inOrder(wet({}, { surface: 'embossed' }), [/^Put/, /^Lay it/, /soft brush.*would crush the pattern/, /weight/]);
    for (const surface of ['smooth', 'textured'] as const)
      expect(wet({}, { surface }).join()).toMatch(/Rub down through a clean sheet/);
  });
  it('dries between blotters where it slides for more than two minutes, for then it still holds its water', () => {
    const last = (seconds: number) => wet({}, { slip: [seconds / 2, seconds, seconds * 2] }).at(-1);
    expect(last(60)).toMatch(/half an hour/);
    expect(last(120)).toMatch(/half an hour/);
    expect(last(121)).toMatch(/blotters, changed after an hour/);
    for (const seconds of [60, 121]) expect(last(seconds)).toMatch(/until the next day/);
  });
});

describe('a dry adhesive', () => {
  it('is put on where and with what the placement says, laid, and rubbed down: nothing to relax or to press', () => {
    inOrder(dry(), [/to both faces with a soft roller/, /^Lay it/, /^Rub down/]);
    expect(dry({ relaxMinutes: 3 }).join()).not.toMatch(/relax|blotters/);
  });
  it('is laid from one edge at a marked place where it grabs early', () => {
    inOrder(dry({ placeBeforeContact: true }), [/to both faces/, /Mark the place first.*one edge/, /^Rub down/]);
    expect(dry().join()).not.toMatch(/Mark/);
  });
  it('is set with the iron through a clean sheet where it needs heat', () => {
    inOrder(dry({}, true), [/to both faces/, /^Lay it/, /clean sheet.*iron.*cool under weight/]);
    expect(dry().join()).not.toMatch(/iron/);
  });
});

describe('a task that is no sheet on a board', () => {
  const steps = (task: Task) => wet({}, { task }).join('\n');
  it('edges and strips are brushed along, not from the middle out', () => {
    for (const task of ['join-boards', 'tip-in', 'mend', 'hinge'] as const)
      expect(steps(task)).not.toMatch(/from the middle out over/);
    expect(steps('cover')).toMatch(/from the middle out over/);
  });
  it('walls of a box are stood up square, and not rubbed down through a sheet', () => {
    expect(steps('join-boards')).toMatch(/Square it up on its mark while it still slides/);
    const grabs = wet({ placeBeforeContact: true }, { task: 'join-boards' }).join();
    expect(grabs).toMatch(/Square it up on its mark at once, for it grabs/);
    for (const said of [steps('join-boards'), grabs]) expect(said).not.toMatch(/clean sheet|corners|let it down/);
  });
  it('a pasted-down leaf dries with the book shut, behind something that lets no damp through', () => {
    expect(steps('paste-down')).toMatch(/the book shut on waxed paper or plastic film, which keeps the damp/);
  });
  it('a mend and a hinge dry between what does not stick to them', () => {
    for (const task of ['mend', 'hinge'] as const) expect(steps(task)).toMatch(/non-stick paper and blotters/);
    for (const task of ['cover', 'tip-in'] as const) expect(steps(task)).not.toMatch(/non-stick/);
  });
  it('what is decorated is gone over the top at last, after a test, and nothing else is', () => {
    expect(wet({}, { task: 'decorate' }).at(-1)).toMatch(/over paper and edges, after a test/);
    for (const task of ['cover', 'line-spine', 'mount'] as const) expect(steps(task)).not.toMatch(/over paper/);
  });
  it('no board and weight is laid on a spine, nor on a thing that is decorated', () => {
    for (const task of ['line-spine', 'decorate'] as const) expect(steps(task)).not.toMatch(/under a board/);
  });
  it('a label is pressed under a board on a book, and rubbed down again on a jar', () => {
    const label = (face: 'porous' | 'non-porous') => {
      const substrates = new Map([['binders-board', { face }]]);
      const placement = { glueGoesOn: 'it', tool: 'squeegee', relaxMinutes: 0, placeBeforeContact: false };
      const held = { ...catalogue, substrates } as unknown as Catalogue;
      return stepsFor(factsOf({ task: 'label' }), placement, held).at(-1)!;
    };
    expect(label('porous')).toMatch(/under a board and weight/);
    expect(label('non-porous')).toMatch(/^Rub down its edges again.*where it stands\.$/);
  });
});
