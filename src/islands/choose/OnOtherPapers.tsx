/** The first place's adhesive on papers of other weights and thirsts. */
import { useStore } from '@nanostores/preact';
import { useMemo } from 'preact/hooks';
import { sheetOf } from '../../core/paper/sheet';
import { mapOf } from '../../stores/choose/choose-map';
import type { ChooseRestStore } from '../../stores/choose/choose-rest';
import { WeightMapPlate } from '../parts/WeightMapPlate';

export function OnOtherPapers({ store }: { readonly store: ChooseRestStore }) {
  const map = useStore(useMemo(() => mapOf(store), []));
  const best = useStore(store.$choices)[0]!.adhesiveId;
  const job = useStore(store.$job);
  const sheet = useMemo(() => sheetOf(job, store.catalogue), [job]);
  const { short } = store.catalogue.adhesives.get(best)!;
  return <WeightMapPlate map={map} grammage={sheet.grammage} sorptivity={sheet.sorptivity} adhesive={short} />;
}
