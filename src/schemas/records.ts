/** The shape of every record in content/. Strict: a field that is not named here fails the build. */
import { z } from 'astro/zod';
import { idOf } from './ids';
import { plainBasis, quantity } from './number';
import { photos } from './photos';
import { PAPER_LIMITS } from '../core/paper/limits';
import { DEEDS, NATURES } from '../core/safety/hazards';
import { TASKS } from '../core/records/task';
import { strictObject } from './strict';

/** One or two plain sentences for a reader who has never met the thing. */
const about = z.string().min(20);

/** What a sheet looks like: all that its swatch is drawn from. For drawings and pages only; no sum asks it. */
const looks = strictObject(
  {
    colour: z.enum(['white', 'cream', 'natural', 'grey', 'brown', 'dyed', 'bright', 'metal']),
    fibreLength: quantity('mm', { min: 0.2, max: 100 }),
    fibreDirection: z.enum(['every-way', 'mostly-one-way', 'swirls']),
    /** how evenly its fibres lie, against the light */
    formation: z.enum(['even', 'cloudy', 'wild', 'open']),
    inclusions: z.enum(['none', 'flecks', 'bark', 'long-fibres']),
    laidLines: quantity('lines/cm', { min: 4, max: 20 }).optional(),
    /** from one chain line to the next */
    chainLines: quantity('mm', { min: 10, max: 60 }).optional(),
    print: z.enum(['none', 'stencilled', 'marbled', 'combed', 'picture']),
    relief: z.enum(['none', 'tooth', 'pattern', 'crumpled', 'crinkled', 'weave']),
    sheen: z.enum(['matt', 'soft', 'glossy', 'metal']),
    /** share of the light that comes through */
    translucency: quantity('1', { min: 0, max: 1 }),
    /** what stands out where it is torn */
    edge: z.enum(['short', 'soft', 'feathery', 'white-core', 'film', 'frayed']),
    /** how what is said in words is known */
    basis: plainBasis,
    /** what tells it from those it is taken for */
    lookFor: z.string().min(20),
  },
  'looks: { colour: white, fibreLength: …, … }; copy it from a neighbour',
);

/** Where a paper stands on the shelf: among those that look and behave like it. */
const PAPER_FAMILIES = [
  'thin-long-fibred',
  'long-fibred',
  'tissue',
  'text',
  'drawing',
  'decorated',
  'coated',
  'cloth',
] as const;

export const paperSchema = strictObject({
  name: z.string().min(3),
  family: z.enum(PAPER_FAMILIES),
  about,
  alsoCalled: z.array(z.string()).default([]),
  grammage: quantity('g/m²', { min: PAPER_LIMITS.grammage.low, max: PAPER_LIMITS.grammage.high }),
  density: quantity('g/cm³', { min: 0.1, max: 1.5 }),
  sorptivity: quantity('g/m²/√s', { min: 0, max: 60 }),
  tensileIndex: quantity('N·m/g', { min: 3, max: 150 }),
  wetRetention: quantity('1', { min: 0.01, max: 1 }),
  contact: quantity('1', { min: 0.1, max: 1 }),
  wetExpansion: quantity('1', { min: 0, max: 0.06 }),
  surface: z.enum(['smooth', 'textured', 'embossed']),
  sizing: z.enum(['unsized', 'lightly-sized', 'sized', 'hard-sized', 'coated']),
  grain: z.enum(['none', 'weak', 'marked']),
  grainNote: z.string().optional(),
  coloursRun: z.enum(['unlikely', 'possible', 'likely']),
  harmedByWater: z.boolean().default(false),
  closed: z.boolean().default(false),
  openWeave: quantity('1', { min: 0, max: 1 }).optional(),
  plasticBack: z.boolean().default(false),
  photograph: z.boolean().default(false),
  lookAlikes: z.array(idOf('papers')).default([]),
  looks,
  photos,
});

export const substrateSchema = strictObject({
  name: z.string().min(3),
  about,
  sorptivity: quantity('g/m²/√s', { min: 0, max: 60 }),
  faceStrength: quantity('×', { min: 0.05, max: 20 }),
  thickness: quantity('mm', { min: 0.01, max: 50 }),
  modulus: quantity('MPa', { min: 1, max: 250000 }),
  face: z.enum(['porous', 'leather', 'non-porous']),
  takesGlue: z.boolean(),
  limp: z.boolean(),
  /** of plastic: wet glue dries on it to a skin that peels off */
  plastic: z.boolean().default(false),
  openWeave: quantity('1', { min: 0, max: 1 }).optional(),
  hazards: z.array(z.enum(NATURES)).default([]),
  photos,
});

/** Asked for even where it is empty, so that nobody forgets to think of it; the cautions follow from it (src/core/safety). */
const hazards = z.array(z.enum(NATURES), {
  required_error: 'is missing; say what it is, as far as it can hurt, as in [powder, wheat], or write [] if it cannot',
});

const thickening = z.discriminatedUnion('law', [
  strictObject({ law: z.literal('none') }),
  strictObject({ law: z.literal('cellulose-ether'), grade: quantity('mPa·s', { min: 3, max: 200000 }) }),
  strictObject({ law: z.literal('dispersion'), viscosity: quantity('mPa·s', { min: 10, max: 200000 }) }),
  strictObject({
    law: z.literal('solution'),
    viscosity: quantity('mPa·s', { min: 1, max: 500000 }),
    /** the strength at which that viscosity holds */
    percent: z.number().positive().max(70),
    percentBasis: plainBasis,
    flowIndex: quantity('1', { min: 0.1, max: 1 }).optional(),
  }),
]);

const yesNo = z.enum(['yes', 'partly', 'no']);

export const ingredientSchema = strictObject({
  name: z.string().min(3),
  about,
  solids: quantity('1', { min: 0, max: 1 }),
  density: quantity('g/ml', { min: 0.5, max: 2 }),
  solidDensity: z.number().min(0.5).max(2.5),
  solidDensityBasis: plainBasis,
  thickening,
  grabSolids: quantity('1', { min: 0.01, max: 0.95 }).optional(),
  leastDryCoat: quantity('g/m²', { min: 0.2, max: 60 }).optional(),
  filmFormsAbove: quantity('°C', { min: -10, max: 60 }).optional(),
  gelsAt: quantity('°C', { min: 0, max: 80 }).optional(),
  liquid: z.enum(['water', 'alcohol']).default('water'),
  hazards,
  /** °C that some of the liquid reaches when it is made up: the water that wets a powder, the pan */
  madeAt: z.number().min(20).max(100).optional(),
  madeAtBasis: plainBasis.optional(),
  kind: z.enum(['vinyl', 'starch', 'ether', 'protein']).optional(),
  shows: yesNo.optional(),
  photos,
});

const traits = {
  name: z.string().min(3),
  /** how a sentence names it: "a 1:1 mix", "wheat starch paste" */
  short: z.string().min(3),
  about,
  undoneWithWater: yesNo,
  longLived: yesNo,
  flexes: yesNo,
  bearsDamp: yesNo,
  childSafe: yesNo,
  needsHeat: z.boolean().default(false),
  hold: strictObject({
    porous: z.number().min(0).max(2),
    leather: z.number().min(0).max(2),
    nonPorous: z.number().min(0).max(2),
  }),
  /** basis of the yes/partly/no answers and of `hold` */
  traitsBasis: z.enum(['published', 'common-practice', 'from-memory', 'estimate']),
  traitsSource: idOf('sources').optional(),
  traitsNote: z.string().optional(),
  photos,
};

export const adhesiveSchema = z.discriminatedUnion('form', [
  strictObject({
    ...traits,
    form: z.literal('wet'),
    by: z.enum(['mass', 'volume']),
    parts: z.array(strictObject({ of: idOf('ingredients', 'adhesives'), parts: z.number().positive() })).min(1),
    special: z.boolean().default(false),
    usedAt: z.number().min(30).max(90).optional(),
    usedAtBasis: plainBasis.optional(),
  }),
  strictObject({
    ...traits,
    form: z.literal('dry'),
    slip: quantity('s', { min: 0, max: 7200 }),
    pull: quantity('N/m', { min: 0, max: 2000 }),
    waterLoad: quantity('g/m²', { min: 0, max: 60 }),
    drag: quantity('×', { min: 0, max: 5 }),
    strength: quantity('×', { min: 0.1, max: 10 }),
    appliedWith: z.string().min(3),
    hazards,
    does: z.array(z.enum(DEEDS)).default([]),
    bothFaces: z.boolean().default(false),
    madeAhead: z.boolean().default(false),
    tasks: z.array(z.enum(TASKS)).min(1).optional(),
    film: z.string().min(3).optional(),
  }),
]);

export const techniqueSchema = strictObject({
  name: z.string().min(3),
  about,
  coat: quantity('g/m²', { min: 1, max: 300 }),
  drag: quantity('×', { min: 0.05, max: 5 }),
  thickest: z.number().min(100).max(1_000_000),
  thickestBasis: plainBasis,
  thickestNote: z.string(),
  /** which way it goes over a face; how that is said stands in `core/choose/technique.ts` */
  stroke: z.enum(['outwards', 'bands', 'pull']),
  strokeBasis: plainBasis,
  strokeNote: z.string(),
  photos,
});

export const cautionSchema = strictObject({
  title: z.string().min(3),
  text: z.string().min(20),
  source: idOf('sources').optional(),
});

/**
 * A text that this site leans on, so that a stranger finds it and knows how far it was seen.
 * Only what was read, or quoted by a text that was read, can carry a number called published
 * (tests/house/sources.test.ts walks them all).
 */
export const sourceSchema = strictObject({
  /** as it is named in a sentence: "Roberts & Etherington 1982" */
  short: z.string().min(3),
  title: z.string().min(3),
  /** author or institution; what a page that names nobody is, where there is neither */
  by: z.string().min(3),
  year: z.union([z.number().int().min(1500).max(2100), z.literal('undated')]),
  publisher: z.string().min(3).optional(),
  identifier: z.string().min(3).optional(),
  url: z.string().url().optional(),
  /** the place in it: "table 4-2", "chapter “Slipcases”" */
  at: z.string().min(3).optional(),
  /** `read`: the place that is cited. `excerpt`: its abstract, scope or opening, and not that place. */
  seen: z.enum(['read', 'excerpt', 'quoted-by', 'not-read']),
  /** the text that quotes it, and was read */
  quotedBy: z.string().min(5).optional(),
  note: z.string().optional(),
}).superRefine((source, context) => {
  const say = (path: string, message: string) =>
    context.addIssue({ code: z.ZodIssueCode.custom, path: [path], message });
  if (!source.publisher && !source.identifier && !source.url)
    say('publisher', 'a stranger could not find this: give a publisher, an identifier or an address (url)');
  if (source.seen === 'quoted-by' && !source.quotedBy) say('quotedBy', 'say which text quotes it');
  if (source.seen !== 'quoted-by' && source.quotedBy) say('quotedBy', 'only a source that is "quoted-by" names this');
  if (source.seen === 'not-read' && !source.note)
    say('note', 'say why a text that was not read is named here all the same');
});

/** Fields that only pages show: they are not handed to the calculators in the browser. */
export const ON_PAGES_ONLY = [
  'about',
  'family',
  'alsoCalled',
  'note',
  'grainNote',
  'thickestNote',
  'strokeNote',
  'traitsNote',
  'traitsBasis',
  'traitsSource',
  'solidDensityBasis',
  'percentBasis',
  'thickestBasis',
  'strokeBasis',
  'usedAtBasis',
  'madeAtBasis',
  'lookAlikes',
  'looks',
  'photos',
] as const;
