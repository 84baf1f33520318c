/**
 * The mixing calculator: what goes in the pot, how much of it, in what order. The build renders it with
 * its start plan, so it reads and prints without script; a link is read after mounting.
 */
import { useStore } from '@nanostores/preact';
import { useEffect, useMemo } from 'preact/hooks';
import { mixAnswerer, mixWithoutModel } from '../../core/mix/any';
import { openMix } from '../../stores/mix/open-mix';
import { KindField, MixFields } from './MixFields';
import { MixFacts, MixPlates, MixSteps } from './MixDetails';
import { MixResult } from './MixResult';
import { Cautions, type CautionText } from '../parts/Cautions';
import { PlanBench } from '../parts/PlanBench';

interface Props {
  readonly cautions: Readonly<Record<string, CautionText>>;
  /** path of the calculator's own page */
  readonly address: string;
}

const prefix = 'mix-';

export default function Mix({ cautions, address }: Props) {
  const store = useMemo(() => openMix(mixWithoutModel), []);
  const { answer } = useStore(store.$solved);
  const { kind } = useStore(store.$texts);
  useEffect(() => {
    // The chooser's model is fetched only for those who stretch PVA.
    if (kind === 'stretch')
      void import('../../core/handover/mix-stretch-slip').then(({ mixStretchedWithSlip }) =>
        store.learn(mixAnswerer(mixStretchedWithSlip)),
      );
  }, [kind]);

  return (
    <PlanBench
      room="mix"
      store={store}
      prefix={prefix}
      address={address}
      brief={answer.brief}
      inputs={
        <>
          <KindField store={store} prefix={prefix} />
          <MixFields store={store} prefix={prefix} />
        </>
      }
      answer={
        <>
          <MixResult store={store} />
          <MixPlates store={store} />
        </>
      }
      rest={
        <>
          <Cautions ids={answer.cautions} texts={cautions} />
          <div class="compare">
            <MixSteps store={store} />
            <MixFacts store={store} />
          </div>
        </>
      }
    />
  );
}
