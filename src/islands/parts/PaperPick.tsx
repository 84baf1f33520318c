/** A paper from the shelf or of one's own: what every calculator that asks for a paper shows. */
import { useStore } from '@nanostores/preact';
import { useEffect, useState } from 'preact/hooks';
import { readPaper, type OwnPaper } from '../../core/paper-text';
import type { Catalogue } from '../../core/records';
import { localStorageOrNone } from '../../stores/device-storage';
import { openOwnPapers } from '../../stores/own-papers';
import { named, SelectField, type Option } from './Field';
import { PickOf, type Fields } from './PlanField';

/** The papers kept on this device, once the page is awake. */
function useOwnPapers(): readonly string[] {
  const [papers, setPapers] = useState<readonly string[]>([]);
  useEffect(() => setPapers(openOwnPapers(localStorageOrNone()).$papers.get()), []);
  return papers;
}

const asOption = (text: string): Option => ({ value: text, text: `Yours: ${readPaper(text)?.name ?? 'not named'}` });

interface PickProps<F extends string> {
  readonly store: Fields<F> & { readonly catalogue: Catalogue };
  readonly prefix: string;
  readonly field: F;
  readonly label: string;
}

export function PaperPick<F extends string>({ store, prefix, field, label }: PickProps<F>) {
  const chosen = useStore(store.$texts)[field];
  const own = useOwnPapers();
  // A paper that came in a link is offered too, for as long as it is the chosen one.
  const guest = chosen.includes('~') && !own.includes(chosen) && readPaper(chosen) ? [chosen] : [];
  const options = [...[...guest, ...own].map(asOption), ...named(store.catalogue.papers)];
  return <PickOf store={store} prefix={prefix} field={field} label={label} options={options} />;
}

/** For forms that hold a paper field by field: takes over what was measured of an own paper. */
export function TakeOwnPaper({ id, onTake }: { readonly id: string; readonly onTake: (paper: OwnPaper) => void }) {
  const own = useOwnPapers();
  if (own.length === 0) return null;
  return (
    <SelectField
      id={id}
      label="Fill in a paper of your own"
      value=""
      options={[{ value: '', text: 'Choose' }, ...own.map(asOption)]}
      onPick={(text) => {
        const paper = readPaper(text);
        if (paper) onTake(paper);
      }}
    />
  );
}
