/** Papers and adhesives by family, in the order in which the shelf shows them. */
import type { CollectionEntry } from 'astro:content';
import type { Adhesive, Catalogue } from '../../core/records/records';
import type { Parsed } from '../../schemas/kinds';

type PaperFamily = Parsed<'papers'>['family'];
export type AdhesiveFamily = 'starch' | 'ether' | 'vinyl' | 'protein' | 'mixed' | 'dry';

const PAPER_FAMILIES: Readonly<Record<PaperFamily, string>> = {
  'thin-long-fibred': 'Thin papers of long fibre',
  'long-fibred': 'Heavier papers of long fibre',
  tissue: 'Tissues and papers to see through',
  text: 'Papers to print and write on',
  drawing: 'Drawing papers, card and board',
  decorated: 'Decorated papers and wallpapers',
  coated: 'Coated papers and prints',
  cloth: 'Cloth',
};
const ADHESIVE_FAMILIES: Readonly<Record<AdhesiveFamily, string>> = {
  starch: 'Starch and flour pastes',
  ether: 'Cellulose pastes',
  vinyl: 'PVA and EVA',
  mixed: 'Mixes of two kinds or more',
  protein: 'Animal and fish glues',
  dry: 'Films, tissues, sticks and sprays',
};

/** What an adhesive is at bottom: the kind of all that is in its pot, or `mixed` where there is more than one. */
export function adhesiveFamilyOf(adhesive: Adhesive, catalogue: Catalogue): AdhesiveFamily {
  if (adhesive.form === 'dry') return 'dry';
  const kindsOf = ({ of }: { of: string }): AdhesiveFamily[] => {
    const kind = catalogue.ingredients.get(of)?.kind;
    if (kind) return [kind];
    const within = catalogue.adhesives.get(of);
    return within?.form === 'wet' ? within.parts.flatMap(kindsOf) : [];
  };
  const kinds = new Set(adhesive.parts.flatMap(kindsOf));
  const [only] = kinds;
  if (only === undefined) throw new Error(`shelf: nothing in "${adhesive.id}" says of what kind it is`);
  return kinds.size > 1 ? 'mixed' : only;
}

export interface Family<Entry> {
  readonly id: string;
  readonly name: string;
  readonly entries: readonly Entry[];
}
const inFamilies = <Entry>(
  names: Readonly<Record<string, string>>,
  entries: readonly Entry[],
  familyOf: (entry: Entry) => string,
): Family<Entry>[] =>
  Object.entries(names).flatMap(([id, name]) => {
    const of = entries.filter((entry) => familyOf(entry) === id);
    return of.length > 0 ? [{ id, name, entries: of }] : [];
  });

export const paperFamilies = (entries: readonly CollectionEntry<'papers'>[]): Family<CollectionEntry<'papers'>>[] =>
  inFamilies(PAPER_FAMILIES, entries, ({ data }) => data.family);

export const adhesiveFamilies = (
  entries: readonly CollectionEntry<'adhesives'>[],
  catalogue: Catalogue,
): Family<CollectionEntry<'adhesives'>>[] =>
  inFamilies(ADHESIVE_FAMILIES, entries, ({ id }) => adhesiveFamilyOf(catalogue.adhesives.get(id)!, catalogue));
