/** A paper from the shelf or of one's own: what every calculator that asks for a paper shows. */
import { useStore } from '@nanostores/preact';
import { isPaper, paperName, readPaper } from '../../core/paper/own-paper';
import type { Catalogue } from '../../core/records/records';
import { named } from './Field';
import { PickOf, type FieldStore } from './PlanField';
import { ownOption, useOwnPapers } from './use-own-papers';

interface PickProps<F extends string> {
  readonly store: FieldStore<F> & { readonly catalogue: Catalogue };
  readonly prefix: string;
  readonly field: F;
}

export function PaperPick<F extends string>({ store, prefix, field }: PickProps<F>) {
  const chosen = useStore(store.$texts)[field];
  const own = useOwnPapers();
  // A paper that came in a link is offered too, for as long as it is the chosen one.
  const guest = chosen.includes('~') && !own.includes(chosen) && isPaper(chosen, store.catalogue) ? [chosen] : [];
  // Of a sheet that only its weight tells from its kind, the weight is its name.
  const said = (text: string) => {
    const { name, grammage } = readPaper(text)!;
    if (name !== undefined) return ownOption(text);
    const weight = grammage === undefined ? 'as measured' : `${Math.round(grammage)} g/m²`;
    return { value: text, text: `${paperName(text, store.catalogue)}, ${weight}` };
  };
  const options = [...guest.map(said), ...own.map(ownOption), ...named(store.catalogue.papers)];
  return <PickOf store={store} prefix={prefix} field={field} options={options} />;
}
