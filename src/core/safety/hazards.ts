/**
 * What can hurt in a piece of work, worked out from what is done, how hot, and with what. Nobody lists the cautions of a
 * recipe by hand: its steps say what they do, its ingredients say what they are, and the cautions follow.
 */
import { BURNS_FROM } from './burns-from';
import { OLD_THINGS } from './old-things';

/** What a thing is, as far as it can hurt. Stands in the records of ingredients, of adhesives that come ready, and of grounds. */
export const NATURES = [
  /** dry, fine, and tipped or weighed */
  'powder',
  /** holds wheat protein, or may */
  'wheat',
  /** gelatine, hide, bone, fish */
  'animal',
  /** a bottled glue with preservatives in it: skin, eyes, mouth */
  'bottled',
  /** plastic beads in water, which frost spoils */
  'dispersion',
  /** food for mould and bacteria */
  'perishable',
  /** gives off vapour that burns and harms */
  'solvent',
  /** a solvent-borne contact adhesive */
  'contact',
  /** leaves its can as a mist */
  'mist',
  /** mixed by its maker with a poison against mould */
  'fungicide',
  /** sheet glass or sheet metal */
  'sharp-edge',
  /** plywood, fibreboard: its dust */
  'wood',
] as const;
export type Nature = (typeof NATURES)[number];

/** What hands do. A step that heats says to how many °C instead. */
export const DEEDS = [
  /** weighs, scatters or tips a dry powder */
  'pour-powder',
  /** cuts with a knife or scissors */
  'cut',
  /** cuts boards or stacks, for which many workshops have a board shear or a guillotine */
  'shear',
  /** saws or sands wood */
  'saw',
  /** presses, or stacks weights */
  'press',
  /** sets with an iron */
  'iron',
  /** keeps a jar for another day */
  'keep',
  /** handles things that are old, or whose making is not known */
  'handle-old',
] as const;
export type Deed = (typeof DEEDS)[number];

/** Ids of the texts in content/cautions, the gravest first: the order in which they are shown. */
export const CAUTIONS = [
  'valued-original',
  'hot-liquid',
  'hot-iron',
  'contact-fumes',
  'solvent-fumes',
  'spray-fumes',
  'old-pigments',
  'mould',
  'guillotine',
  'knife',
  'wood-dust',
  'sharp-edges',
  'flour-allergen',
  'animal-allergen',
  'powder-dust',
  'fungicide',
  'ready-made-glue',
  'spoilage',
  'preservatives',
  'frost',
  'press',
  'food-contact',
] as const;
export type Caution = (typeof CAUTIONS)[number];

const BY_DEED: Readonly<Record<Deed, readonly Caution[]>> = {
  'pour-powder': ['powder-dust'],
  cut: ['knife'],
  shear: ['guillotine'],
  saw: ['wood-dust'],
  press: ['press'],
  iron: ['hot-iron'],
  keep: [],
  'handle-old': OLD_THINGS,
};

/** What follows from a nature alone. */
const BY_NATURE: Readonly<Record<Nature, readonly Caution[]>> = {
  powder: [],
  wheat: ['flour-allergen'],
  animal: ['animal-allergen'],
  bottled: ['ready-made-glue'],
  dispersion: [],
  perishable: ['spoilage', 'preservatives'],
  solvent: ['solvent-fumes'],
  contact: ['contact-fumes'],
  mist: ['spray-fumes'],
  fungicide: ['fungicide'],
  'sharp-edge': ['sharp-edges'],
  wood: [],
};

/** What needs both: the thing, and what is done with it. */
const BY_BOTH: readonly (readonly [Nature, Deed, Caution])[] = [
  ['dispersion', 'keep', 'frost'],
  ['wood', 'cut', 'wood-dust'],
  ['wood', 'shear', 'wood-dust'],
];

/** One thing to do: its words, and what it does that can hurt. */
export interface Step {
  readonly text: string;
  readonly does?: readonly Deed[];
  /** the hottest liquid in it, °C */
  readonly celsius?: number;
  /** it cuts the pieces out: in a class that is done beforehand, and the pieces lie there as kits */
  readonly cutsOut?: boolean;
}

/** Anything that is done to something: steps, and the natures of all that they use. */
export interface WorkDone {
  readonly steps: readonly Omit<Step, 'text'>[];
  readonly natures?: Iterable<Nature>;
}

/** Cautions that this work calls for, the gravest first, each once. */
export function cautionsFor(...works: readonly WorkDone[]): readonly Caution[] {
  const found = new Set<Caution>();
  const add = (cautions: readonly Caution[]) => cautions.forEach((caution) => found.add(caution));
  for (const { steps, natures = [] } of works) {
    const deeds = new Set(steps.flatMap(({ does = [] }) => does));
    const is = new Set(natures);
    for (const deed of deeds) add(BY_DEED[deed]);
    for (const nature of is) add(BY_NATURE[nature]);
    for (const [nature, deed, caution] of BY_BOTH) if (is.has(nature) && deeds.has(deed)) found.add(caution);
    if (steps.some(({ celsius = 0 }) => celsius >= BURNS_FROM)) found.add('hot-liquid');
  }
  return gravestFirst(found);
}

/** Any number of lists as one, the gravest first; what is in none of ours goes last, as it came. */
export function gravestFirst(cautions: Iterable<string>): readonly Caution[] {
  const place = (caution: string) => {
    const at = (CAUTIONS as readonly string[]).indexOf(caution);
    return at < 0 ? CAUTIONS.length : at;
  };
  return [...new Set(cautions)].sort((a, b) => place(a) - place(b)) as Caution[];
}

/** Steps as a reader sees them, beside the cautions that they and their ingredients call for. */
export const carefully = (
  steps: readonly Step[],
  natures: Iterable<Nature> = [],
): { readonly steps: readonly string[]; readonly cautions: readonly Caution[] } => ({
  steps: steps.map(({ text }) => text),
  cautions: cautionsFor({ steps, natures }),
});
