/** Needs against traits: what is ruled out, what is taken off, and that the words agree with the figures. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { coolingSeconds } from '../../../src/core/adhesive/cooling';
import { DEFAULT_JOB, NEEDS, type Job, type Need } from '../../../src/core/choose/job';
import { sheetOf } from '../../../src/core/paper/sheet';
import { carrierOf, suitability } from '../../../src/core/choose/suitability';
import { catalogue } from '../../../src/data/catalogue';
import { soundJob } from '../support/jobs';

const ALL = [...catalogue.adhesives.values()];
const fit = (id: string, change: Partial<Job> = {}) => {
  const job = { ...DEFAULT_JOB, ...change };
  return suitability(catalogue.adhesives.get(id)!, job, sheetOf(job, catalogue), catalogue);
};

/** Made for mends, or for mounts, and for nothing that is covered. Common practice, no source. */
const FOR_OTHER_WORK = ['dry-mount-tissue', 'remoistenable-tissue', 'tissue-heat-set'];

describe('what brings water', () => {
  test.for([
    ['pva', 'water'],
    ['pva-mc-1-1', 'water'],
    ['wheat-starch-paste-thick', 'water'],
    ['hpc-alcohol', 'alcohol'],
    ['glue-stick', 'a little water'],
    ['film-double-sided', 'none'],
    ['tissue-heat-set', 'none'],
  ] as const)('%s: %s', ([id, carrier]) => expect(carrierOf(catalogue.adhesives.get(id)!, catalogue)).toBe(carrier));
});

describe('what is not for children says why, and says what is so', () => {
  const why = (id: string) =>
    fit(id, { needs: ['children'] })
      .notes.map(({ text }) => text)
      .find((text) => text.startsWith('Not for children'));
  test.for([
    ['animal-glue-hot', 'Not for children: heat at the bench.'],
    ['dry-mount-tissue', 'Not for children: heat at the bench.'],
    ['spray', 'Not for children: harmful fumes.'],
    ['contact-adhesive', 'Not for children: harmful fumes.'],
    ['hpc-alcohol', 'Not for children: harmful fumes.'],
    ['cellulose-paste-ready', 'Not for children: it may hold a poison against mould.'],
  ] as const)('%s', ([id, text]) => expect(why(id)).toBe(text));
  test('of all the others that are not, it is heat: their caution is of an iron or of a hot liquid', () => {
    const named = ['spray', 'contact-adhesive', 'hpc-alcohol', 'cellulose-paste-ready'];
    const others = ALL.filter(({ childSafe, id }) => childSafe === 'no' && !named.includes(id));
    expect(others.every(({ needsHeat }) => needsHeat)).toBe(true);
    expect(new Set(others.map(({ id }) => why(id)))).toEqual(new Set(['Not for children: heat at the bench.']));
  });
});

describe('a need that the record says is not met rules it out', () => {
  const RULES: readonly (readonly [Need, (one: (typeof ALL)[number]) => boolean])[] = [
    ['undo', (one) => one.undoneWithWater === 'no'],
    ['long-lived', (one) => one.longLived === 'no'],
    ['children', (one) => one.childSafe === 'no'],
  ];
  test.for(RULES)('%s', ([need, unmet]) => {
    for (const adhesive of ALL) {
      const { verdict, share } = fit(adhesive.id, { needs: [need] });
      const isOut = unmet(adhesive) || FOR_OTHER_WORK.includes(adhesive.id);
      expect(verdict === 'ruled-out', adhesive.id).toBe(isOut);
      if (isOut) expect(share).toBe(0);
      else expect(share).toBeGreaterThan(0);
    }
  });
});

test('without needs nothing made for such work is ruled out on a porous board, and what ages badly or dries stiff loses a little', () => {
  for (const adhesive of ALL) {
    const { verdict, share } = fit(adhesive.id);
    if (FOR_OTHER_WORK.includes(adhesive.id)) {
      expect(verdict, adhesive.id).toBe('ruled-out');
      continue;
    }
    expect(verdict, adhesive.id).toBeUndefined();
    expect(share).toBeGreaterThan(0.3);
  }
  expect(fit('wheat-starch-paste-thick').share).toBeGreaterThan(fit('glue-stick').share);
});

test('for a valued original what cannot be undone falls behind what can', () => {
  expect(fit('wheat-starch-paste-thick', { needs: ['valued'] }).share).toBeGreaterThan(
    10 * fit('pva', { needs: ['valued'] }).share,
  );
});

test('gelatine is not taken for a mix because its powder has its name; what is made of two pots is', () => {
  const codes = (id: string) => fit(id).notes.map(({ code }) => code);
  expect(codes('gelatine')).not.toContain('mixed');
  expect(codes('pva-mc-1-1')).toContain('mixed');
});

// published: US National Archives, family archives; State Library and Archives of Florida, scrapbooks
test('behind a photograph rubber cement, spray and glue stick lose more than behind a picture that is printed', () => {
  const left = (id: string, family: string) => fit(id, { task: 'mount', paper: { family } }).share;
  for (const id of ['contact-adhesive', 'spray', 'glue-stick'])
    expect(left(id, 'photo-print-fibre'), id).toBeCloseTo(left(id, 'bristol') / 2, 12);
  for (const id of ['wheat-starch-paste-thick', 'dry-mount-tissue', 'pva'])
    expect(left(id, 'photo-print-fibre'), id).toBeCloseTo(left(id, 'bristol'), 12);
});

describe('colours that must not run', () => {
  const asked = { needs: ['colours'] } as const;
  const mend = { ...asked, task: 'mend', substrate: 'text-block' } as const;
  test('a mending tissue has none: those of the leaf are meant, and water counts against a glue', () => {
    expect(fit('wheat-starch-paste-thin', { ...mend, paper: { family: 'kozo-tissue' } }).notes).toContainEqual(
      expect.objectContaining({ code: 'colours', against: true }),
    );
    const dry = fit('tissue-heat-set', { ...mend, paper: { family: 'kozo-tissue' } }).notes;
    expect(dry.filter(({ code, against }) => code === 'colours' && against)).toEqual([]);
  });
  test('the less water, the less it takes: half the water takes the square root of the share', () => {
    const running = { ...mend, paper: { family: 'kozo-tissue', coloursRun: true } } as const;
    const takenBy = (grams: number) => {
      const adhesive = catalogue.adhesives.get('remoistenable-tissue')!;
      if (adhesive.form !== 'dry') throw new Error('it is wet');
      const waterLoad = { ...adhesive.waterLoad, middle: grams };
      const job = { ...DEFAULT_JOB, ...running };
      return (
        suitability({ ...adhesive, waterLoad }, job, sheetOf(job, catalogue), catalogue).share /
        fit(adhesive.id, { ...running, needs: [], paper: { family: 'kozo-tissue' } }).share
      );
    };
    expect(takenBy(8)).toBeCloseTo(Math.sqrt(takenBy(16)), 12);
    expect(takenBy(8)).toBeGreaterThan(takenBy(16));
  });
  test('not where somebody says that they are fast, nor where nobody asks, nor for a cover', () => {
    const noted = (change: Partial<Job>) =>
      fit('wheat-starch-paste-thin', { ...mend, paper: { family: 'kozo-tissue' }, ...change }).notes.some(
        ({ code }) => code === 'colours',
      );
    expect(noted({ paper: { family: 'kozo-tissue', coloursRun: false } })).toBe(false);
    expect(noted({ needs: [] })).toBe(false);
    expect(noted({ task: 'cover', substrate: 'binders-board' })).toBe(false);
  });
});

describe('cooling (Newton)', () => {
  test('halfway from pot to room takes ln 2 time constants: 60 °C to 40 °C in a room of 20 °C', () => {
    // the time constant is ours: common practice, no source; the shape is the law's
    const half = coolingSeconds(60, 40, 20);
    expect(coolingSeconds(60, 30, 20) / half).toBeCloseTo(2, 12); // a quarter left is twice as long
  });
  test('what is cold, or never gels in this room, does not grab by cooling', () => {
    expect(coolingSeconds(undefined, 30, 20)).toBe(Infinity);
    expect(coolingSeconds(60, undefined, 20)).toBe(Infinity);
    expect(coolingSeconds(60, 30, 30)).toBe(Infinity);
    expect(coolingSeconds(60, 30, 35)).toBe(Infinity);
    expect(coolingSeconds(25, 30, 20)).toBe(Infinity);
  });
});

test('over any job: a share between 0 and 1, every note with words, what is against it weightier than what is for it', () => {
  fc.assert(
    fc.property(soundJob, fc.constantFrom(...ALL), (job, adhesive) => {
      const { share, notes, verdict } = suitability(adhesive, job, sheetOf(job, catalogue), catalogue);
      expect(share).toBeGreaterThanOrEqual(0);
      expect(share).toBeLessThanOrEqual(1);
      if (share < 1) expect(notes.some(({ against }) => against)).toBe(true);
      for (const { text, weight } of notes) {
        expect(text).toMatch(/[.]$/);
        expect(weight).toBeGreaterThan(0);
      }
      const codes = notes.map(({ code }) => code);
      expect(new Set(codes).size).toBe(codes.length);
      if (job.needs.includes('food')) expect(verdict).toBe('refused');
      else if (job.needs.includes('valued')) expect(verdict).toBe('defer');
    }),
    { numRuns: 300 },
  );
});

test('asking for more never leaves more', () => {
  fc.assert(
    fc.property(soundJob, fc.constantFrom(...ALL), fc.constantFrom(...NEEDS), (job, adhesive, need) => {
      const fewer = { ...job, needs: job.needs.filter((one) => one !== need) };
      const more = { ...fewer, needs: [...fewer.needs, need] };
      const of = (asked: Job) => suitability(adhesive, asked, sheetOf(asked, catalogue), catalogue).share;
      expect(of(more)).toBeLessThanOrEqual(of(fewer) + 1e-12);
    }),
    { numRuns: 300 },
  );
});
