/** What sort of adhesive it is, so that a list can name one of each before it names the next strength of the same. */
import type { Adhesive, Catalogue, FilmKind } from '../records/records';

/** "starch", "ether+vinyl", "film": what the dry film is made of; mixes name each of their kinds. */
export function kindOf(adhesive: Adhesive, catalogue: Catalogue): string {
  if (adhesive.form === 'dry') return adhesive.film ?? adhesive.id;
  const kinds = new Set<FilmKind>();
  gather(adhesive.parts, catalogue, kinds);
  return [...kinds].sort().join('+') || adhesive.id;
}

function gather(parts: readonly { readonly of: string }[], catalogue: Catalogue, kinds: Set<FilmKind>): void {
  for (const { of } of parts) {
    const ingredient = catalogue.ingredients.get(of);
    if (ingredient?.kind) kinds.add(ingredient.kind);
    const inner = ingredient ? undefined : catalogue.adhesives.get(of);
    if (inner?.form === 'wet') gather(inner.parts, catalogue, kinds);
  }
}
