/** From a plan as typed to a trial; and a ranking with swatches in it. */
import { describe, expect, test } from 'vitest';
import { choose } from '../../../src/core/choose/choose';
import { DEFAULT_JOB } from '../../../src/core/choose/job';
import { adjustRanking, decodeEvidence, encodeEvidence, evidenceFor } from '../../../src/core/handover/trial-to-choose';
import { planOf, trialOf } from '../../../src/core/trial/plan';
import { DEFAULT_PLAN, draftOf, NO_GLUE, NO_PAPER } from '../../../src/core/trial/plan-text';
import { readCatalogue } from '../../tools/read-content';
import { trialWith } from '../support/trial';

describe('a plan', () => {
  test('the plan to start from is sound and becomes a trial', () => {
    const { plan, problems } = planOf(DEFAULT_PLAN, 7);
    expect(problems).toEqual([]);
    const trial = plan && trialOf(plan, 'x', '2026-03-01');
    expect(trial).toMatchObject({ seed: 7, replicates: 4, holds: [20] });
    expect(trial?.swatches).toHaveLength(8);
  });
  test('holds are a list, in any of the ways people write one', () => {
    for (const holds of ['20 60', '20, 60', '20;60', '20,60', ' 60  20 60 ']) {
      expect([...(planOf({ ...DEFAULT_PLAN, holds }, 1).plan?.holds ?? [])].sort(), holds).toEqual([20, 60]);
    }
  });
  test('what is wrong is said beside its field, with what is allowed', () => {
    const text = {
      ...DEFAULT_PLAN,
      papers: [{ ...NO_PAPER, grammage: '5000' }],
      holds: 'soon',
      replicates: '2.5',
      questions: [],
      widthMm: '',
    };
    const problems = new Map(planOf(text, 1).problems.map(({ field, message }) => [field, message]));
    expect([...problems.keys()].sort()).toEqual([
      ...['holds', 'paper-0-grammage', 'paper-0-name', 'questions', 'replicates', 'widthMm'],
    ]);
    expect(problems.get('paper-0-grammage')).toContain('5 to 600 g/m²');
    expect(problems.get('replicates')).toContain('whole number from 1 to 12');
  });
  test('limits count in, noughts do not, and blanks around a figure are no figure', () => {
    const planned = (change: Partial<typeof DEFAULT_PLAN>) => planOf({ ...DEFAULT_PLAN, ...change }, 1);
    const fields = (change: Partial<typeof DEFAULT_PLAN>) => planned(change).problems.map(({ field }) => field);
    // a room from −10 to 50 °C, a swatch from 10 to 300 mm, up to twelve of each: what a trial holds
    for (const celsius of ['-10', '50', ' 20 ', '', '  ']) expect(fields({ celsius }), celsius).toEqual([]);
    for (const celsius of ['-10.1', '51', 'warm']) expect(fields({ celsius }), celsius).toEqual(['celsius']);
    for (const widthMm of ['10', '300']) expect(fields({ widthMm })).toEqual([]);
    for (const widthMm of ['9', '301', '', ' ']) expect(fields({ widthMm }), widthMm).toEqual(['widthMm']);
    expect(fields({ replicates: '12' })).toEqual([]);
    expect(fields({ replicates: '13' })).toEqual(['replicates']);
    expect(fields({ widthMm: '55.5', celsius: '20.5' })).toEqual([]);
    const said = (change: Partial<typeof DEFAULT_PLAN>) => planned(change).problems[0]!.message;
    expect(said({ widthMm: ' ' })).toMatch(/missing: a number from 10 to 300 mm\.$/);
    expect(said({ replicates: '' })).toMatch(/missing: a number from 1 to 12\.$/);
    expect(said({ replicates: '2.5' })).toMatch(/whole number from 1 to 12\.$/);
    expect(said({ celsius: 'warm' })).toMatch(/must be a number from -10 to 50 °C\.$/);
  });
  test('a plan that is wrong is no plan', () => {
    expect(planOf({ ...DEFAULT_PLAN, celsius: 'warm' }, 1)).not.toHaveProperty('plan');
  });
  test('says of papers, adhesives and room what was typed, and nothing of what was not', () => {
    const text = {
      ...DEFAULT_PLAN,
      papers: [
        { ...NO_PAPER, name: 'A' },
        { name: 'B', family: 'lokta', grammage: '25,5', dropSeconds: '4' },
      ],
      glues: [
        { ...NO_GLUE, name: 'P' },
        { name: 'Q', record: 'pva', named: 'yes' },
      ],
      substrate: '',
      celsius: '',
      humidity: '',
      batch: '',
    };
    expect(planOf(text, 1).plan).toMatchObject({
      papers: [
        { id: 'paper-1', name: 'A' },
        { id: 'paper-2', name: 'B', family: 'lokta', grammage: 25.5, dropSeconds: 4 },
      ],
      glues: [
        { id: 'glue-1', name: 'P' },
        { id: 'glue-2', name: 'Q', record: 'pva' },
      ],
    });
    const bare = planOf(text, 1).plan!;
    expect(bare.papers[0]).toStrictEqual({ id: 'paper-1', name: 'A' });
    expect(bare.glues[0]).toStrictEqual({ id: 'glue-1', name: 'P' });
    expect(bare.conditions).toStrictEqual({});
    expect(bare).not.toHaveProperty('substrate');
    const room = { substrate: 'binders-board', celsius: '20', humidity: '50', batch: 'May' };
    const full = planOf({ ...text, ...room }, 1).plan!;
    expect([full.substrate, full.conditions]).toEqual(['binders-board', { celsius: 20, humidity: 50, batch: 'May' }]);
  });
  test('names the paper or adhesive that has no name, as a reader counts', () => {
    const papers = [{ ...NO_PAPER, name: 'A' }, NO_PAPER];
    const glues = [{ ...NO_GLUE, name: 'P' }, NO_GLUE];
    expect(
      planOf({ ...DEFAULT_PLAN, papers, glues }, 1).problems.map(({ field, message }) => [field, message]),
    ).toEqual([
      ['paper-1-name', expect.stringMatching(/^Paper 2 /)],
      ['glue-1-name', expect.stringMatching(/^Adhesive 2 /)],
    ]);
  });
  test('without a name is called by its first paper and its adhesives, and no longer than a name', () => {
    const called = (paper: string, ...glues: readonly string[]) =>
      planOf(
        {
          ...DEFAULT_PLAN,
          name: ' ',
          papers: [{ ...NO_PAPER, name: paper }],
          glues: glues.map((name) => ({ ...NO_GLUE, name })),
        },
        1,
      ).plan!.name;
    expect(called('Lokta', 'Paste', 'Film')).toBe('Lokta with Paste, Film');
    expect(called('L'.repeat(70), 'Paste', 'Film')).toHaveLength(80);
    // a sign of two halves is not cut in half: such a name could not be sent
    expect(called('L'.repeat(72), 'P😀😀')).toBe(`${'L'.repeat(72)} with P😀`);
  });
  test('six hundred swatches are not too many, nor ten questions', () => {
    const papers = Array.from({ length: 24 }, (_, i) => ({ ...NO_PAPER, name: `P${i}` }));
    const glues = Array.from({ length: 5 }, (_, i) => ({ ...NO_GLUE, name: `G${i}` }));
    // 24 × 5 × 5 are 600
    expect(planOf({ ...DEFAULT_PLAN, papers, glues, replicates: '5', holds: '20' }, 1).problems).toEqual([]);
    const ownQuestions = Array.from({ length: 12 }, (_, i) => ({ text: `Own ${i}`, criterion: '' }));
    expect(planOf({ ...DEFAULT_PLAN, ownQuestions }, 1).plan!.questions).toHaveLength(10);
  });
  test('a decimal comma among holds is one, where another hold follows', () => {
    expect(planOf({ ...DEFAULT_PLAN, holds: '0,5 20' }, 1).plan!.holds).toEqual([0.5, 20]);
    expect(planOf({ ...DEFAULT_PLAN, holds: '5,  20 ,60' }, 1).plan!.holds).toEqual([5, 20, 60]);
  });
  test('more swatches than a trial holds are refused before they are drawn', () => {
    const papers = Array.from({ length: 24 }, (_, i) => ({ ...NO_PAPER, name: `P${i}` }));
    const { problems } = planOf({ ...DEFAULT_PLAN, papers, replicates: '12', holds: '1 2 3' }, 1);
    expect(problems.map(({ message }) => message).join()).toContain('1728 swatches');
  });
  test('a stored draft comes back; a damaged one field by field', () => {
    const draft = { ...DEFAULT_PLAN, name: 'Mine', papers: [{ ...NO_PAPER, name: 'A' }] };
    expect(draftOf(JSON.parse(JSON.stringify(draft)))).toEqual(draft);
    const bent = draftOf({ name: 3, papers: [{ name: 'A', family: [] }, null], glues: 'x', holds: '5' });
    expect(bent).toMatchObject({ name: '', holds: '5', glues: DEFAULT_PLAN.glues });
    expect(bent.papers).toEqual([{ ...NO_PAPER, name: 'A' }, NO_PAPER]);
    for (const value of [null, 7, [], 'x']) expect(draftOf(value)).toEqual(DEFAULT_PLAN);
  });
});

describe('a ranking with swatches in it', () => {
  const catalogue = readCatalogue();
  const job = { ...DEFAULT_JOB, paper: { family: 'unryu', grammage: 25 }, placeSeconds: 20 };
  const model = choose(job, catalogue);
  const chanceOf = (choices: typeof model, id: string) =>
    choices.find(({ adhesiveId }) => adhesiveId === id)?.chance ?? NaN;
  const vinylFails = evidenceFor([trialWith(({ glue }) => (glue === 'glue-2' ? 'fail' : 'pass'))], job, catalogue);

  test('fails lower and passes raise what they speak of, and nothing else', () => {
    const { choices, told } = adjustRanking(model, vinylFails, catalogue);
    expect([...told.keys()].sort()).toEqual(['pva', 'wheat-starch-paste-thin']);
    expect(chanceOf(choices, 'pva')).toBeLessThan(chanceOf(model, 'pva'));
    expect(chanceOf(choices, 'wheat-starch-paste-thin')).toBeGreaterThan(chanceOf(model, 'wheat-starch-paste-thin'));
    for (const { adhesiveId, chance } of model.filter((one) => !told.has(one.adhesiveId)))
      expect(chanceOf(choices, adhesiveId)).toBe(chance);
    expect(told.get('pva')).toMatchObject({ modelChance: chanceOf(model, 'pva'), things: { lift: { swatches: 3 } } });
    expect(told.get('pva')?.things.spread).toBeUndefined();
  });
  test('what is refused or left to a conservator stays so', () => {
    const valued = { ...job, needs: ['valued'] as const };
    const { choices } = adjustRanking(choose(valued, catalogue), vinylFails, catalogue);
    expect(new Set(choices.map(({ verdict }) => verdict))).toEqual(
      new Set(choose(valued, catalogue).map(({ verdict }) => verdict)),
    );
  });
  test('a link carries the evidence, and the reader’s ranking is the sender’s', () => {
    const word = encodeEvidence(vinylFails);
    expect(word).toMatch(/^[a-z0-9.~-]+$/);
    const [sent, read] = [vinylFails, decodeEvidence(word)].map(
      (evidence) => adjustRanking(model, evidence, catalogue).choices,
    );
    expect(read?.map(({ adhesiveId, chance, verdict }) => [adhesiveId, chance.toFixed(3), verdict])).toEqual(
      sent?.map(({ adhesiveId, chance, verdict }) => [adhesiveId, chance.toFixed(3), verdict]),
    );
  });
  test('a word that is no evidence brings none, and more passes than swatches are not believed', () => {
    for (const word of [
      undefined,
      7,
      '',
      'x',
      'pva.l.900.300.3',
      'pva.l.100.900.3',
      'pva.q.1.1.1',
      '<b>.l.1.1.1',
      'pva.l.0.0.0',
    ]) {
      expect(decodeEvidence(word).size).toBe(0);
    }
  });
});

describe('the names of a draft from before it was kept whether one was typed', () => {
  const named = (name: string) => draftOf({ glues: [{ name, record: 'eva' }] }).glues[0]!.named;
  test('follow the shelf where the planner gave them, and stay where a person did', () => {
    expect(['PVA', 'Wheat starch paste', 'Adhesive 3', ''].map(named)).toEqual(['', '', '', '']);
    expect(['Old pot', 'PVA from the tub', 'Adhesive'].map(named)).toEqual(['yes', 'yes', 'yes']);
  });
  test('are left as they are in a newer draft', () =>
    expect(draftOf({ glues: [{ name: 'Mine', record: '', named: '' }] }).glues[0]!.named).toBe(''));
});
