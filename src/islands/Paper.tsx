/** The paper calculator: weight, thickness, absorbency and grain of one's own sheet, kept for the other calculators. */
import { useStore } from '@nanostores/preact';
import { useMemo } from 'preact/hooks';
import { openKnowing } from '../stores/open-knowing';
import { AbsorbencyFields, KindFields, ThicknessFields, WeightFields } from './paper/MeasureFields';
import { GrainFields } from './paper/GrainFields';
import { KeepIt, type UseAddresses } from './paper/KeepIt';
import { KnowResult, PoundsTable } from './paper/KnowResult';
import { PlanBench } from './parts/PlanBench';

interface Props {
  /** path of this page */
  readonly address: string;
  /** pages that a paper can be taken to */
  readonly uses: UseAddresses;
}

const prefix = 'know-';

export default function Paper({ address, uses }: Props) {
  const store = useMemo(openKnowing, []);
  const { answer } = useStore(store.$solved);
  const fields = { store, prefix };
  return (
    <PlanBench
      store={store}
      prefix={prefix}
      address={address}
      brief={[answer.paper.name ?? 'your paper', answer.brief]}
      inputs={
        <>
          <KindFields {...fields} />
          <WeightFields {...fields} />
          <ThicknessFields {...fields} />
          <AbsorbencyFields {...fields} />
          <GrainFields {...fields} />
        </>
      }
      answer={<KnowResult answer={answer} />}
      rest={
        <>
          <KeepIt store={store} uses={uses} />
          <PoundsTable answer={answer} />
        </>
      }
    />
  );
}
