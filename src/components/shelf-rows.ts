/** Turns records into the rows of the shelf: which number stands in which column, and the facts said in words. */
import { fitForChildren } from './shelf/fit-for-children';
import type { CollectionEntry } from 'astro:content';
import { lowerFirst } from '../core/base/format';
import { middleOf } from '../core/base/quantity';
import { STROKE_WORDS } from '../core/choose/technique';
import { adhesiveCautions } from '../core/adhesive/hazards';
import { catalogue } from '../data/catalogue';
import { asWritten, BASIS_WORDS } from './format';
import { href } from './href';
import type { PhotoEntry } from './photo/photos';

/** A number as a record holds it. */
export interface RecordNumber {
  low: number;
  middle?: number | undefined;
  high: number;
  unit: string;
  basis: keyof typeof BASIS_WORDS;
  source?: string | undefined;
  checks?: string[] | undefined;
  note?: string | undefined;
}
export interface Column {
  readonly name: string;
  readonly unit?: string;
  /** one of the few that are left on a phone, where the rest stands on the record's own page */
  readonly brief?: true;
}
export interface Row {
  readonly id: string;
  readonly name: string;
  /** its own page, where it has one */
  readonly page?: string;
  readonly about?: string;
  /** name of the drawing that shows it */
  readonly plate?: string;
  /** a keeper's photograph of it, which stands in place of what is drawn */
  readonly photo?: PhotoEntry | undefined;
  /** id of the paper whose swatch stands beside it */
  readonly swatch?: string;
  readonly facts?: string;
  /** how the answers in words are known, where the cells are not numbers that say so themselves */
  readonly known?: { basis: keyof typeof BASIS_WORDS; source?: string | undefined };
  readonly cautions?: readonly { id: string; title: string }[];
  readonly cells: readonly (RecordNumber | string | undefined)[];
}

/** What a cell is put in order by: the middle of a number, or yes before partly before no. */
export function sortValue(cell: RecordNumber | string | undefined): number | undefined {
  if (cell === undefined) return undefined;
  if (typeof cell !== 'string') return middleOf(cell);
  const rank = ['no', 'partly', 'yes'].indexOf(cell);
  const number = Number(cell.replaceAll('\u202f', ''));
  return rank >= 0 ? rank : Number.isFinite(number) ? number : undefined;
}

/** A share is read more easily as a percentage. */
export const asPercent = (share: RecordNumber): RecordNumber => {
  const times100 = (value: number) => Number((value * 100).toPrecision(6));
  return {
    ...share,
    low: times100(share.low),
    middle: share.middle === undefined ? undefined : times100(share.middle),
    high: times100(share.high),
    unit: '%',
  };
};
const maybePercent = (share: RecordNumber | undefined) => (share ? asPercent(share) : undefined);
const sentence = (facts: (string | false | undefined)[]) => {
  const text = facts.filter(Boolean).join('; ');
  return text && `${text[0]!.toUpperCase()}${text.slice(1)}.`;
};

const SIZING = {
  unsized: 'unsized',
  'lightly-sized': 'lightly sized',
  sized: 'sized',
  'hard-sized': 'hard sized',
  coated: 'coated',
} as const;
const GRAIN = { none: 'no grain', weak: 'a weak grain', marked: 'a marked grain' } as const;

export const PAPER_COLUMNS: readonly Column[] = [
  { name: 'Grammage', unit: 'g/m²', brief: true },
  { name: 'Apparent density', unit: 'g/cm³' },
  { name: 'Sorptivity', unit: 'g/m² per √s', brief: true },
  { name: 'Tensile index', unit: 'N·m/g' },
  { name: 'Strength kept wet', unit: '%' },
  { name: 'Contact', unit: '%' },
  { name: 'Growth when wet', unit: '%' },
];
export const paperRow = ({ id, data }: CollectionEntry<'papers'>): Row => ({
  id,
  name: data.name,
  page: href(`/shelf/papers/${id}/`),
  swatch: id,
  about: data.about,
  photo: data.photos[0],
  facts: sentence([
    data.surface,
    SIZING[data.sizing],
    GRAIN[data.grain],
    `colours that run: ${data.coloursRun}`,
    data.harmedByWater && 'marked by water',
    data.alsoCalled.length > 0 && `also called ${data.alsoCalled.join(', ')}`,
  ]),
  cells: [
    data.grammage,
    data.density,
    data.sorptivity,
    data.tensileIndex,
    asPercent(data.wetRetention),
    asPercent(data.contact),
    asPercent(data.wetExpansion),
  ],
});

export const SUBSTRATE_COLUMNS: readonly Column[] = [
  { name: 'Thickness', unit: 'mm' },
  { name: 'Sorptivity', unit: 'g/m² per √s' },
  { name: 'Strength of its face', unit: '× dense binder’s board' },
  { name: 'Stiffness', unit: 'MPa' },
];
export const substrateRow = ({ id, data }: CollectionEntry<'substrates'>): Row => ({
  id,
  name: data.name,
  page: href(`/shelf/substrates/${id}/`),
  about: data.about,
  photo: data.photos[0],
  facts: sentence([
    `${data.face} face`,
    data.takesGlue ? 'the glue can be brushed on it' : 'the glue goes on the paper, not on it',
    data.limp && 'bends with use',
  ]),
  cells: [data.thickness, data.sorptivity, data.faceStrength, data.modulus],
});

export const ADHESIVE_COLUMNS: readonly Column[] = [
  { name: 'Undone with water', brief: true },
  { name: 'Long-lived', brief: true },
  { name: 'Flexes' },
  { name: 'Bears damp' },
  { name: 'Fit for children', brief: true },
  { name: 'Hold, porous' },
  { name: 'Hold, leather' },
  { name: 'Hold, non-porous' },
];
/** "1 part white PVA dispersion" */
const partOf = (parts: number, name: string) =>
  `${asWritten(parts)} ${parts === 1 ? 'part' : 'parts'} ${lowerFirst(name)}`;

/** Looks up what an adhesive names: its ingredients and its cautions. */
export interface LookUp {
  nameOf(ingredient: string): string;
  titleOf(caution: string): string;
}
export function adhesiveRow({ id, data }: CollectionEntry<'adhesives'>, { nameOf, titleOf }: LookUp): Row {
  const made =
    data.form === 'dry'
      ? `applied with ${data.appliedWith}`
      : data.parts.length === 1
        ? `${nameOf(data.parts[0]!.of)}, as it comes`
        : `${data.parts.map(({ of, parts }) => partOf(parts, nameOf(of))).join(' to ')}, by ${data.by}`;
  const cautions = adhesiveCautions(catalogue.adhesives.get(id)!, catalogue);
  return {
    id,
    name: data.name,
    page: href(`/shelf/adhesives/${id}/`),
    about: data.about,
    photo: data.photos[0],
    cautions: cautions.map((caution) => ({ id: caution, title: titleOf(caution) })),
    facts: [sentence([made, data.needsHeat && 'needs heat']), data.traitsNote?.trim()].filter(Boolean).join(' '),
    known: { basis: data.traitsBasis, source: data.traitsSource },
    cells: [
      data.undoneWithWater,
      data.longLived,
      data.flexes,
      data.bearsDamp,
      fitForChildren(data.childSafe, cautions),
      asWritten(data.hold.porous),
      asWritten(data.hold.leather),
      asWritten(data.hold.nonPorous),
    ],
  };
}

export const DRY_COLUMNS: readonly Column[] = [
  { name: 'Can be moved for', unit: 's' },
  { name: 'Pull when lifted', unit: 'N/m' },
  { name: 'Liquid brought', unit: 'g/m²' },
  { name: 'Drag', unit: '×' },
  { name: 'Strength', unit: '×' },
];
export const dryRows = (adhesives: readonly CollectionEntry<'adhesives'>[]): Row[] =>
  adhesives.flatMap(({ id, data }) =>
    data.form === 'dry'
      ? [{ id, name: data.name, cells: [data.slip, data.pull, data.waterLoad, data.drag, data.strength] }]
      : [],
  );

export const INGREDIENT_COLUMNS: readonly Column[] = [
  { name: 'Stays when dry', unit: '%' },
  { name: 'Density', unit: 'g/ml' },
  { name: 'Viscosity', unit: 'mPa·s' },
  { name: 'Grabs at solids of', unit: '%' },
  { name: 'Least dry coat', unit: 'g/m²' },
  { name: 'Film forms above', unit: '°C' },
  { name: 'Gels at', unit: '°C' },
];
export function ingredientRow({ id, data }: CollectionEntry<'ingredients'>): Row {
  const { thickening } = data;
  const viscosity =
    thickening.law === 'none'
      ? undefined
      : thickening.law === 'cellulose-ether'
        ? thickening.grade
        : thickening.viscosity;
  const of =
    thickening.law === 'cellulose-ether'
      ? 'viscosity is that of a 2 % solution'
      : thickening.law === 'solution'
        ? `viscosity is that of a ${asWritten(thickening.percent)} % solution (${BASIS_WORDS[thickening.percentBasis]})`
        : thickening.law === 'dispersion' && 'viscosity as supplied';
  return {
    id,
    name: data.name,
    about: data.about,
    photo: data.photos[0],
    facts: sentence([
      of,
      `what stays has a density of ${asWritten(data.solidDensity)} g/cm³ (${BASIS_WORDS[data.solidDensityBasis]})`,
    ]),
    cells: [
      asPercent(data.solids),
      data.density,
      viscosity,
      maybePercent(data.grabSolids),
      data.leastDryCoat,
      data.filmFormsAbove,
      data.gelsAt,
    ],
  };
}

export const TECHNIQUE_COLUMNS: readonly Column[] = [
  { name: 'Wet coat', unit: 'g/m²' },
  { name: 'Drag on the sheet', unit: '× a bristle brush' },
  { name: 'Thickest it spreads', unit: 'mPa·s' },
];
export const techniqueRow = ({ id, data }: CollectionEntry<'techniques'>): Row => ({
  id,
  name: data.name,
  about: data.about,
  photo: data.photos[0],
  plate: `on-sheet-${id}`,
  facts: `${data.thickestNote.trim()} How it goes over a face: ${STROKE_WORDS[data.stroke]} (${BASIS_WORDS[data.strokeBasis]}). ${data.strokeNote.trim()}`,
  cells: [data.coat, data.drag, { low: data.thickest, high: data.thickest, unit: 'mPa·s', basis: data.thickestBasis }],
});
