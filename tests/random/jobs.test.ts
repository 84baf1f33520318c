/**
 * What must be so for every job: asked of two thousand drawn at random, the same each time (`SEED=7` draws others).
 * Nothing called likely holds badly in what matters, the words name the face and the tool of their own method, and a
 * step of one per cent in any number moves a chance by little.
 */
import { describe, expect, test } from 'vitest';
import { seededUniform } from '../../src/core/base/random';
import { answerSentence } from '../../src/core/choose/answer-words';
import { choose, type Choice } from '../../src/core/choose/choose';
import { DEFAULT_JOB, jobProblems, NEEDS, type Job } from '../../src/core/choose/job';
import { MATTERS, rank } from '../../src/core/choose/ranking';
import { lowerFirst } from '../../src/core/base/format';
import { THINGS } from '../../src/core/joint/bench';
import type { Adhesive, Catalogue } from '../../src/core/records/records';
import { TASKS } from '../../src/core/records/task';
import { catalogue } from '../../src/data/catalogue';

const SEED = Number(process.env['SEED'] ?? 1901);
const uniform = seededUniform(SEED);
const pick = <T>(from: readonly T[]): T => from[Math.floor(uniform() * from.length)]!;
const ids = (kind: 'papers' | 'substrates' | 'techniques') => [...catalogue[kind].keys()];
const [PAPERS, GROUNDS, TOOLS] = [ids('papers'), ids('substrates'), ids('techniques')];

/** A job that somebody could ask: any task, sheet, ground, size and room, and a wish or two. */
function drawJob(): Job {
  const side = () => Math.round(5 * Math.pow(160, uniform()));
  return {
    ...DEFAULT_JOB,
    task: pick(TASKS),
    paper: { family: pick(PAPERS) },
    substrate: pick(GROUNDS),
    widthMm: side(),
    heightMm: side(),
    needs: NEEDS.filter((need) => need !== 'food' && uniform() < 0.12),
    celsius: 5 + 30 * uniform(),
    humidity: 10 + 90 * uniform(),
    tool: uniform() < 0.6 ? 'brush-full' : pick(TOOLS),
  };
}

const PER_TEST = 500;
const told = (job: Job, { adhesiveId, method }: Choice) => `${adhesiveId} ${JSON.stringify({ job, method })}`;

describe.each([1, 2, 3, 4])('five hundred jobs, %i of 4', (part) => {
  const jobs = Array.from({ length: PER_TEST }, drawJob);
  test(`part ${part}: they can be asked`, () => {
    expect(jobs.flatMap((job) => jobProblems(job, catalogue))).toEqual([]);
  });
  test(`part ${part}: what is called likely holds in all that matters, and the words are those of the method`, () => {
    const wrong: string[] = [];
    for (const job of jobs) {
      const answers = choose(job, catalogue);
      for (const answer of answers) {
        const likely = answer.verdict === 'sound' || answer.verdict === 'likely';
        const weak = THINGS.filter((thing) => answer.weights[thing] >= MATTERS && answer.chances[thing] < 0.35);
        if (likely && weak.length > 0) wrong.push(`${weak.join()}: ${told(job, answer)}`);
        // what is brushed on the ground, or pasted out on glass, is not judged as if the sheet were dragged
        if (answer.method.face === 'ground' && answer.chances.spread < 0.5 && !tooThick(answer))
          wrong.push(`drags: ${told(job, answer)}`);
      }
      // sentences and steps of the first answers: those that a page shows
      for (const answer of answers.slice(0, 3)) wrong.push(...misnamed(job, answer));
    }
    expect(wrong).toEqual([]);
  });
});

/** A liquid that the tool cannot carry does not spread on anything. */
const tooThick = ({ facts }: Choice) => facts.fit.notes.some(({ code }) => code === 'tool');

/** What stays dry when the glue goes on what lies below, as each task calls it. */
const NOT_THE_SHEET = /, not the (?:paper|mending strip|hinge|lining|label|leaf)/;

/** Faces and tools in the words that are not the method's own. */
function misnamed(job: Job, answer: Choice): string[] {
  const { method, placement, technique } = answer;
  const sentence = answerSentence(answer, catalogue);
  const words = [sentence, ...technique.steps].join('\n');
  const faults: string[] = [];
  if (technique.glueGoesOn !== placement.glueGoesOn || technique.tool !== method.tool) faults.push('placed otherwise');
  const ground = method.face === 'ground';
  if (ground !== NOT_THE_SHEET.test(words) && answer.verdict !== 'ruled-out') faults.push('the wrong face');
  if (!ground && NOT_THE_SHEET.test(words)) faults.push('the ground');
  if ((method.face === 'sheet-on-support') !== /glass or film|polyester/.test(words) && answer.verdict !== 'ruled-out')
    faults.push('the support');
  if (ground && /back of the (paper|label)/.test(words)) faults.push('the back of the sheet');
  if (answer.facts.adhesive.form === 'wet') {
    const own = lowerFirst(catalogue.techniques.get(method.tool)!.name);
    for (const { id, name } of catalogue.techniques.values())
      if (id !== method.tool && !own.includes(lowerFirst(name)) && words.includes(lowerFirst(name))) faults.push(name);
    if (!words.includes(own)) faults.push(`no ${own}`);
  }
  return faults.map((fault) => `${fault}: ${told(job, answer)}\n${words}`);
}

describe('a step of one per cent', () => {
  const STEPS = 5000;
  /** a chance, for one adhesive alone: what it is mixed from is still looked up in the whole catalogue */
  const alone = (adhesive: Adhesive): Catalogue => {
    const one = new Map([[adhesive.id, adhesive]]);
    one.get = (id: string) => catalogue.adhesives.get(id);
    return { ...catalogue, adhesives: one };
  };
  const shelves = [...catalogue.adhesives.values()].map(alone);
  const FIELDS = ['grammage', 'cobb', 'widthMm', 'heightMm', 'placeSeconds', 'celsius', 'humidity'] as const;
  test('in any number moves no chance by more than 0.03', () => {
    const jumps: string[] = [];
    let asked = 0;
    for (let step = 0; step < STEPS; step += 1) {
      const field = pick(FIELDS);
      const job = drawJob();
      const cobb = 1.5 * Math.pow(100, uniform());
      const start = {
        grammage: catalogue.papers.get(job.paper.family)!.grammage.middle,
        cobb,
        placeSeconds: 3 + 60 * uniform(),
        widthMm: job.widthMm,
        heightMm: job.heightMm,
        celsius: job.celsius,
        humidity: job.humidity,
      }[field];
      const at = (value: number): Job =>
        field === 'grammage' || field === 'cobb'
          ? { ...job, paper: { ...job.paper, [field]: value } }
          : { ...job, [field]: value };
      const [here, there] = [at(start), at(start * 1.01)];
      if (jobProblems(here, catalogue).length > 0 || jobProblems(there, catalogue).length > 0) continue;
      const shelf = pick(shelves);
      const [before, after] = [rank(here, shelf)[0]!, rank(there, shelf)[0]!];
      asked += 1;
      if (Math.abs(after.chance - before.chance) > 0.03)
        jumps.push(
          `${before.adhesiveId} ${field} ${start}: ${before.chance} to ${after.chance} ${JSON.stringify(job)}`,
        );
    }
    expect(jumps).toEqual([]);
    expect(asked).toBeGreaterThan(0.9 * STEPS);
  });
});
