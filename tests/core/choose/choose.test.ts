/** The whole answer: what practice knows must come out of it, and no job may break it. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { adhesiveName, answerSentence, VERDICT_WORDS } from '../../../src/core/choose/answer-words';
import { choose, type Choice } from '../../../src/core/choose/choose';
import { assumptions } from '../../../src/core/choose/tipping-words';
import { DEFAULT_JOB, settleJob, type Job } from '../../../src/core/choose/job';
import { sheetOf } from '../../../src/core/paper/sheet';
import { catalogue } from '../../../src/data/catalogue';
import { jobWith, oddJob, soundJob } from '../support/jobs';

const TWENTY: Partial<Job> = { placeSeconds: 20 };
const BOARDS = ['binders-board', 'millboard', 'mount-board'];
const DRY_FILM = 'film-double-sided';
const pick = (choices: readonly Choice[], id: string): Choice => {
  const found = choices.find(({ adhesiveId }) => adhesiveId === id);
  if (!found) throw new Error(`no adhesive "${id}"`);
  return found;
};
const place = (choices: readonly Choice[], id: string) => choices.findIndex(({ adhesiveId }) => adhesiveId === id);
const isWet = (id: string) => catalogue.adhesives.get(id)?.form === 'wet';
const codes = (choice: Choice) => choice.reasons.map(({ code }) => code);
const bringsWater = (id: string) => {
  const adhesive = catalogue.adhesives.get(id)!;
  return adhesive.form === 'wet' && !adhesive.parts.some(({ of }) => of === 'alcohol');
};

// The rules below are common practice, no source, unless another is named.
describe('by weight of paper', () => {
  const LIGHT = [15, 20, 25, 30].map((grammage) => ['unryu', grammage] as const);
  const TISSUE = [10, 14, 18, 22].map((grammage) => ['kozo-tissue', grammage] as const);
  test.for([...LIGHT, ...TISSUE])('%s at %i g/m²: PVA and the 1:1 mix both struggle', ([family, grammage]) => {
    const choices = choose(jobWith(family, grammage, TWENTY), catalogue);
    for (const id of ['pva', 'pva-mc-1-1']) {
      const { chances, technique } = pick(choices, id);
      expect(chances.lift, id).toBeLessThan(0.5);
      // so the advice is a fingertip or glue on the board, and everything right before it touches
      expect(technique.tool === 'fingertip' || /board/.test(technique.glueGoesOn), id).toBe(true);
      expect(technique.placeBeforeContact, id).toBe(true);
    }
  });

  const EITHER = [
    ...[70, 80, 85].map((grammage) => ['chiyogami', grammage] as const),
    ...[75, 90].map((grammage) => ['leather-like-mulberry', grammage] as const),
    // 100 to 130 g/m² and up, unless very porous
    ...([
      ['laid-text', 100],
      ['paste-paper', 110],
      ['cartridge', 120],
      ['endleaf', 130],
      ['bristol', 200],
    ] as const),
  ];
  test.for(EITHER)('%s at %i g/m² takes either', ([family, grammage]) => {
    const choices = choose(jobWith(family, grammage, TWENTY), catalogue);
    for (const id of ['pva', 'pva-mc-1-1']) {
      const { chances, verdict } = pick(choices, id);
      expect(chances.spread, id).toBeGreaterThan(0.5);
      expect(chances.lift, id).toBeGreaterThan(0.5);
      expect(['sound', 'likely'], id).toContain(verdict);
    }
  });

  // Practice has a rule that very porous sheets take thick PVA before PVA. It is not claimed here, because it goes
  // against another one that the model keeps: that thick PVA grabs soonest. On a sheet that drinks fast both have too
  // little time to be placed, thick PVA the less of it, and what speaks for it (a film that stays on the face) decides
  // nothing under a coat several times what a joint needs. What the two rules have in common is asked instead.
  test.for([
    ['embossed-mulberry', 110],
    ['embossed-mulberry', 130],
    ['handmade-cotton', 160],
    ['blotting', 250],
  ] as const)(
    '%s at %i g/m² is very porous: neither PVA leaves time, and paste or a mix stands first',
    ([family, grammage]) => {
      const choices = choose(jobWith(family, grammage, TWENTY), catalogue);
      for (const id of ['pva', 'pva-thick']) expect(['unlikely', 'touch-and-go']).toContain(pick(choices, id).verdict);
      expect(pick(choices, 'pva-thick').slipSeconds.p50).toBeLessThanOrEqual(pick(choices, 'pva').slipSeconds.p50);
      expect(choices[0]!.adhesiveId).toMatch(/paste|pva-mc/);
    },
  );
});

describe('methylcellulose in PVA', () => {
  const FAMILIES = [...catalogue.papers.keys()];
  test.for(FAMILIES)('%s: it spreads easier and gives longer to move the sheet', (family) => {
    const choices = choose(jobWith(family), catalogue);
    const series = ['pva', 'pva-mc-3-1', 'pva-mc-1-1', 'pva-mc-1-3'].map((id) => pick(choices, id));
    for (const [i, more] of series.entries()) {
      const less = series[i - 1];
      // another way of doing it has other margins; what methylcellulose does is seen by one and the same
      if (!less || more.method.face !== less.method.face || more.method.tool !== less.method.tool) continue;
      expect(more.margins.spread).toBeGreaterThanOrEqual(less.margins.spread);
      for (const share of ['p10', 'p50', 'p90'] as const)
        expect(more.slipSeconds[share]).toBeGreaterThanOrEqual(less.slipSeconds[share]);
    }
  });
});

describe('what must dry through', () => {
  test.for(['glass', 'metal', 'plastic-film'])('foil on %s: nothing with water in it', (substrate) => {
    const choices = choose(jobWith('foil-faced', undefined, { substrate }), catalogue);
    for (const choice of choices) {
      const { adhesiveId, verdict } = choice;
      if (!bringsWater(adhesiveId)) continue;
      expect(verdict === 'ruled-out' || !isWet(adhesiveId), adhesiveId).toBe(true);
      expect(codes(choice), adhesiveId).toContain('closed');
    }
    expect(isWet(choices[0]!.adhesiveId)).toBe(false);
  });
  test('a coating that takes up 2 g/m² in a Cobb test is as closed as foil', () => {
    const job = { ...jobWith('coated-art', undefined, { substrate: 'glass' }) };
    const choices = choose({ ...job, paper: { ...job.paper, cobb: 2 } }, catalogue);
    for (const { adhesiveId, verdict } of choices)
      if (bringsWater(adhesiveId)) expect(['ruled-out', 'unlikely'], adhesiveId).toContain(verdict);
  });
  test('a porous side is enough: foil on board, paper on glass', () => {
    for (const job of [jobWith('foil-faced'), jobWith('chiyogami', undefined, { substrate: 'glass' })])
      expect(choose(job, catalogue).some((choice) => codes(choice).includes('closed'))).toBe(false);
  });
});

describe('what must be undone', () => {
  test.for([...catalogue.papers.keys()])('%s: starch paste or methylcellulose before any plain PVA', (family) => {
    const choices = choose(jobWith(family, undefined, { needs: ['undo'] }), catalogue);
    const paste = choices.findIndex(({ adhesiveId }) => /^(wheat|rice)-starch|^methylcellulose/.test(adhesiveId));
    for (const id of ['pva', 'pva-thick', 'pva-thinned']) {
      expect(paste).toBeLessThan(place(choices, id));
      expect(pick(choices, id).verdict).toBe('ruled-out');
    }
  });
});

describe('dry film before any wet glue', () => {
  const before = (choices: readonly Choice[]) =>
    choices.filter(({ adhesiveId }, i) => i < place(choices, DRY_FILM) && isWet(adhesiveId));
  const FACES = [...catalogue.substrates.keys()].filter((id) => id !== 'leather');
  test.for(FACES.flatMap((substrate) => ['glassine', 'tracing'].map((family) => [family, substrate] as const)))(
    '%s on %s',
    ([family, substrate]) => {
      const choices = choose(jobWith(family, undefined, { substrate }), catalogue);
      expect(before(choices).map(({ adhesiveId }) => adhesiveId)).toEqual([]);
    },
  );
  // Sheets above 250 g/m² spring back harder than film holds by itself; what is left to choose is all poor.
  const FAMILIES = [...catalogue.papers.values()].filter(({ grammage }) => grammage.middle <= 250);
  test.for(FAMILIES.map(({ id }) => id))('%s whose colours run and must not', (family) => {
    const job = jobWith(family, undefined, { needs: ['colours'] });
    const choices = choose({ ...job, paper: { ...job.paper, coloursRun: true } }, catalogue);
    expect(before(choices).map(({ adhesiveId }) => adhesiveId)).toEqual([]);
  });
});

describe('heat and cold', () => {
  test('PVA is flagged below the temperature at which its film forms (record: about 5 °C), and not above', () => {
    const film = catalogue.ingredients.get('pva')!.filmFormsAbove!.middle;
    const at = (celsius: number) => pick(choose({ ...DEFAULT_JOB, celsius }, catalogue), 'pva');
    const cold = at(film - 2).reasons.find(({ code }) => code === 'cold');
    expect(cold?.against).toBe(true);
    expect(cold?.text).toContain(`${film} °C`);
    expect(codes(at(film + 2))).not.toContain('cold');
    expect(at(film - 2).chances.bond).toBeLessThan(at(film + 2).chances.bond);
  });
  test('paste and methylcellulose need no film, so the cold does not flag them', () => {
    const choices = choose({ ...DEFAULT_JOB, celsius: 2 }, catalogue);
    for (const id of ['wheat-starch-paste-thick', 'rice-starch-paste', 'methylcellulose-4', 'animal-glue-hot'])
      expect(codes(pick(choices, id)), id).not.toContain('cold');
  });
  test('animal glue and gelatine grab by cooling, sooner in a cooler room; nothing else does', () => {
    const at = (celsius: number) => choose({ ...DEFAULT_JOB, celsius }, catalogue);
    const cooling = at(20).filter((choice) => codes(choice).includes('cools'));
    expect(cooling.map(({ adhesiveId }) => adhesiveId).sort()).toEqual(['animal-glue-hot', 'gelatine']);
    const slip = (celsius: number) => pick(at(celsius), 'animal-glue-hot').slipSeconds.p50;
    expect(slip(10)).toBeLessThan(slip(25));
  });
});

describe('what is not for this page to decide', () => {
  test('food contact: every one is refused, with why, and the caution stands there', () => {
    for (const choice of choose({ ...DEFAULT_JOB, needs: ['food'] }, catalogue)) {
      expect(choice.verdict).toBe('refused');
      expect(choice.chance).toBe(0);
      expect(choice.reasons[0]).toMatchObject({ code: 'food', against: true });
      expect(choice.cautions).toContain('food-contact');
    }
  });
  test('a valued original: every answer defers to a conservator', () => {
    for (const choice of choose({ ...DEFAULT_JOB, needs: ['valued'] }, catalogue)) {
      expect(choice.verdict).toBe('defer');
      expect(choice.reasons[0]?.code).toBe('valued');
      expect(choice.cautions).toContain('valued-original');
      expect(answerSentence(choice, catalogue)).toMatch(/conservator/);
    }
  });
  test('food outweighs the rest', () => {
    const choices = choose({ ...DEFAULT_JOB, needs: ['food', 'valued', 'undo'] }, catalogue);
    expect(new Set(choices.map(({ verdict }) => verdict))).toEqual(new Set(['refused']));
  });
});

describe('needs', () => {
  test('children: nothing hot, fuming or solvent-borne is left standing', () => {
    const choices = choose({ ...DEFAULT_JOB, needs: ['children'] }, catalogue);
    for (const id of ['animal-glue-hot', 'spray', 'contact-adhesive', 'tissue-heat-set'])
      expect(pick(choices, id).verdict, id).toBe('ruled-out');
  });
  test('no heat: an iron and a glue pot are out, a paste that is cooked and used cold is not', () => {
    const choices = choose({ ...DEFAULT_JOB, needs: ['no-heat'] }, catalogue);
    for (const id of ['animal-glue-hot', 'tissue-heat-set', 'gelatine'])
      expect(pick(choices, id).verdict, id).toBe('ruled-out');
    expect(pick(choices, 'wheat-starch-paste-thick').verdict).not.toBe('ruled-out');
    expect(codes(pick(choices, 'wheat-starch-paste-thick'))).toContain('no-heat');
  });
  test('a need never raises what is left of an adhesive', () => {
    const plain = choose(DEFAULT_JOB, catalogue);
    for (const need of ['damp', 'children', 'no-heat', 'flat'] as const)
      for (const choice of choose({ ...DEFAULT_JOB, needs: [need] }, catalogue))
        expect(choice.chance, `${need} ${choice.adhesiveId}`).toBeLessThanOrEqual(
          pick(plain, choice.adhesiveId).chance + 1e-12,
        );
  });
});

describe('a back, glued up and dried before it is lined', () => {
  const lined = (family: string, needs: Job['needs'] = []) =>
    choose(
      {
        ...DEFAULT_JOB,
        task: 'line-spine',
        substrate: 'spine',
        needs,
        widthMm: 30,
        heightMm: 220,
        paper: { family },
      },
      catalogue,
    );
  test('cloth takes PVA, which leaves some seconds to lay it, and a loaded brush puts it on', () => {
    for (const family of ['paper-backed-cloth', 'unbacked-cloth']) {
      const { verdict, slipSeconds, technique } = pick(lined(family), 'pva');
      expect(['sound', 'likely'], family).toContain(verdict);
      expect(slipSeconds.p50, family).toBeGreaterThan(2);
      expect(technique.tool).toBe('brush-full');
    }
  });
  test('Japanese paper takes paste first, and nothing but what comes undone where that is asked', () => {
    expect(lined('kozo-medium')[0]!.adhesiveId).toMatch(/starch-paste/);
    expect(pick(lined('kozo-medium', ['undo']), 'pva').verdict).toBe('ruled-out');
  });
});

// Trade facts, common practice, no source.
describe('what no good binder would do', () => {
  const first = (over: Partial<Job>) => choose({ ...DEFAULT_JOB, ...over }, catalogue)[0]!;
  test('glue a label to plastic with a water-borne glue, which peels off it, though it holds on glass', () => {
    const label = (substrate: string) => ({ task: 'label' as const, paper: { family: 'laid-text' }, substrate });
    const small = { widthMm: 35, heightMm: 60 };
    const on = (substrate: string) => choose({ ...DEFAULT_JOB, ...label(substrate), ...small }, catalogue);
    expect(on('plastic-film')[0]!.adhesiveId).toBe('film-double-sided');
    const vinyls = ['pva', 'pva-thick', 'eva'];
    for (const id of vinyls) {
      const bond = (substrate: string) => on(substrate).find(({ adhesiveId }) => adhesiveId === id)!.chances.bond;
      expect(bond('plastic-film'), id).toBeLessThan(bond('glass') - 0.3);
    }
  });
  test('buy a glue for special cases where the white glue on the bench does as well', () => {
    for (const family of ['kraft', 'cartridge'])
      expect(
        first({ task: 'line-spine', paper: { family }, substrate: 'spine', widthMm: 30, heightMm: 220 }).adhesiveId,
      ).toBe('pva');
  });
  test('glue the face that a wall stands on: the edge of the wall gets it', () => {
    for (const substrate of ['binders-board', 'millboard', 'mount-board', 'plywood']) {
      const job = { ...DEFAULT_JOB, task: 'join-boards' as const, paper: { family: 'grey-board-as-sheet' }, substrate };
      for (const { method, facts } of choose({ ...job, widthMm: 3, heightMm: 300 }, catalogue))
        if (facts.adhesive.form === 'wet') expect(method.face).toBe('sheet');
    }
  });
  test('cover with bare cloth without a word of backing it, where paper-backed cloth needs none', () => {
    const told = (family: string) =>
      first({ paper: { family }, widthMm: 160, heightMm: 230 }).reasons.filter(({ text }) => /bare cloth/.test(text));
    expect(told('unbacked-cloth').map(({ against }) => against)).toEqual([true]);
    expect(told('paper-backed-cloth')).toEqual([]);
  });
});

describe('what is at hand', () => {
  test('it comes first, even where something better is not there; nothing is hidden', () => {
    const atHand = ['methylcellulose-4', 'glue-stick'];
    const choices = choose({ ...DEFAULT_JOB, atHand }, catalogue);
    expect(choices).toHaveLength(catalogue.adhesives.size);
    expect(
      choices
        .slice(0, 2)
        .map(({ adhesiveId }) => adhesiveId)
        .sort(),
    ).toEqual([...atHand].sort());
    expect(choices.map(({ atHand: has }) => has)).toEqual(choices.map((_, i) => i < 2));
  });
  test('it changes the order and nothing else', () => {
    const all = choose(DEFAULT_JOB, catalogue);
    for (const choice of choose({ ...DEFAULT_JOB, atHand: ['eva'] }, catalogue))
      expect(choice.chances).toEqual(pick(all, choice.adhesiveId).chances);
  });
});

describe('the order', () => {
  test('what is ruled out comes last; the rest by chance, other kinds before the next strength of the same', () => {
    fc.assert(
      fc.property(soundJob, (job) => {
        const choices = choose(job, catalogue, 16);
        const keys = choices.map(({ atHand, verdict }) => [!atHand, verdict === 'ruled-out'].map(Number));
        expect(keys).toEqual(keys.toSorted((a, b) => a[0]! - b[0]! || a[1]! - b[1]!));
        const standing = choices.filter(({ atHand, verdict }) => atHand && verdict !== 'ruled-out');
        if (standing.length > 0) expect(standing[0]!.chance).toBe(Math.max(...standing.map(({ chance }) => chance)));
        // within one kind nothing overtakes what has the better chance
        for (const kind of new Set(standing.map((one) => one.kind))) {
          const chances = standing.filter((one) => one.kind === kind).map(({ chance }) => chance);
          expect(chances).toEqual(chances.toSorted((a, b) => b - a));
        }
        expect(new Set(choices.map(({ adhesiveId }) => adhesiveId)).size).toBe(catalogue.adhesives.size);
      }),
      { numRuns: 40 },
    );
  });
});

/** Every value inside, with the way to it. */
function* everything(value: unknown, path = ''): Generator<readonly [string, unknown]> {
  yield [path, value];
  if (value instanceof Map || value === null || typeof value !== 'object') return;
  for (const [key, inner] of Object.entries(value)) yield* everything(inner, `${path}.${key}`);
}

function expectSound(choices: readonly Choice[], job: Job): void {
  expect(choices).toHaveLength(catalogue.adhesives.size);
  for (const choice of choices) {
    for (const [path, value] of everything(choice)) {
      if (typeof value === 'number' && !Number.isFinite(value))
        throw new Error(`${choice.adhesiveId}${path} is ${value}`);
      if (value === undefined) throw new Error(`${choice.adhesiveId}${path} is undefined`);
    }
    for (const chance of [choice.chance, ...Object.values(choice.chances)]) {
      expect(chance).toBeGreaterThanOrEqual(0);
      expect(chance).toBeLessThanOrEqual(1);
    }
    const { p10, p50, p90 } = choice.slipSeconds;
    expect(0 <= p10 && p10 <= p50 && p50 <= p90).toBe(true);
    expect(choice.reasons.length).toBeGreaterThan(0);
    const weights = choice.reasons.map(({ weight }) => weight);
    expect(weights).toEqual(weights.toSorted((a, b) => b - a));
    expect(choice.technique.steps.length).toBeGreaterThan(0);
    const texts = [
      ...choice.reasons.map(({ text }) => text),
      ...choice.technique.steps,
      choice.technique.glueGoesOn,
      answerSentence(choice, catalogue),
      adhesiveName(choice.adhesiveId, catalogue),
      VERDICT_WORDS[choice.verdict],
      ...assumptions(sheetOf(job, catalogue), job),
    ];
    for (const text of texts) {
      expect(text.trim()).not.toBe('');
      expect(text).not.toMatch(/NaN|Infinity|undefined|null|not known|\[object/);
    }
  }
}

describe('no job breaks it', () => {
  test('sound jobs', () => {
    fc.assert(
      fc.property(soundJob, (job) => expectSound(choose(job, catalogue, 24), job)),
      { numRuns: 50 },
    );
  });
  test('jobs whose numbers and names are nonsense are answered as if those parts had been left out', () => {
    fc.assert(
      fc.property(oddJob, (job) => {
        const settled = settleJob(job, catalogue).job;
        const choices = choose(job, catalogue, 24);
        expectSound(choices, settled);
        expect(choices).toEqual(choose(settled, catalogue, 24));
      }),
      { numRuns: 40 },
    );
  });
  test.for([{ surface: 'furry' }, { sizing: 'soaked' }, { surface: '__proto__' }])('a paper with %o', (odd) => {
    const paper = { ...DEFAULT_JOB.paper, ...odd } as Job['paper'];
    expectSound(choose({ ...DEFAULT_JOB, paper }, catalogue, 8), DEFAULT_JOB);
  });
});

describe('everyone gets the same answer', () => {
  test('the same job gives the same answer, to the last digit, whatever was asked between', () => {
    fc.assert(
      fc.property(soundJob, soundJob, (job, other) => {
        const first = choose(job, catalogue, 24);
        choose(other, catalogue, 24);
        expect(choose(structuredClone(job), catalogue, 24)).toEqual(first);
      }),
      { numRuns: 25 },
    );
  });
  test('a catalogue read again gives it too', () => {
    const again = { ...catalogue, adhesives: new Map(catalogue.adhesives) };
    expect(choose(DEFAULT_JOB, again)).toEqual(choose(DEFAULT_JOB, catalogue));
  });
});

describe('the draws are enough', () => {
  /** How far each chance moves when the draws are doubled, over every paper on every board. */
  const moved = [...catalogue.papers.keys()]
    .flatMap((family) =>
      BOARDS.flatMap((substrate) => {
        const job = jobWith(family, undefined, { substrate });
        const twice = choose(job, catalogue, 192);
        return choose(job, catalogue).flatMap(({ adhesiveId, chances, method }) => {
          const again = pick(twice, adhesiveId);
          // two ways that do alike may change places; then the chances are of another way
          if (again.method.face !== method.face || again.method.tool !== method.tool) return [];
          return (['spread', 'lift', 'bond', 'flat'] as const).map((thing) =>
            Math.abs(chances[thing] - again.chances[thing]),
          );
        });
      }),
    )
    .sort((a, b) => a - b);

  test('twice as many move 99 chances in 100 by less than 0.03, and none by more than 0.05', () => {
    console.log(
      `doubling the draws moves a chance by ${moved.at(-1)!.toFixed(3)} at most, 99 in 100 by less than ${moved[Math.floor(moved.length * 0.99)]!.toFixed(3)} (${moved.length} chances)`,
    );
    expect(moved[Math.floor(moved.length * 0.99)]).toBeLessThan(0.03);
    expect(moved.at(-1)).toBeLessThan(0.05);
    expect(moved.length).toBeGreaterThan(10_000);
  });
});
