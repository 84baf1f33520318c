/** A paper from the shelf or of one's own: what every calculator that asks for a paper shows. */
import { useStore } from '@nanostores/preact';
import { readPaper } from '../../core/paper/own-paper';
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
  const guest = chosen.includes('~') && !own.includes(chosen) && readPaper(chosen) ? [chosen] : [];
  const options = [...[...guest, ...own].map(ownOption), ...named(store.catalogue.papers)];
  return <PickOf store={store} prefix={prefix} field={field} options={options} />;
}
