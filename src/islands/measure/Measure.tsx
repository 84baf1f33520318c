/** The paper calculator: weight, thickness, absorbency and grain of one's own sheet, kept for the other calculators. */
import { useStore } from '@nanostores/preact';
import { useMemo } from 'preact/hooks';
import { openMeasure } from '../../stores/measure/open-measure';
import { AbsorbencyFields, ExampleButton, KindFields, ThicknessFields, WeightFields } from './MeasureFields';
import { GrainFields } from './GrainFields';
import { KeepIt, type UseAddresses } from './KeepIt';
import { MeasureResult, PoundsTable } from './MeasureResult';
import { PlanBench } from '../parts/PlanBench';

interface Props {
  /** path of this page */
  readonly address: string;
  /** pages that a paper can be taken to */
  readonly uses: UseAddresses;
}

const prefix = 'know-';

export default function Paper({ address, uses }: Props) {
  const store = useMemo(openMeasure, []);
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
          <ExampleButton {...fields} />
          <WeightFields {...fields} />
          <ThicknessFields {...fields} />
          <AbsorbencyFields {...fields} />
          <GrainFields {...fields} />
        </>
      }
      answer={<MeasureResult answer={answer} />}
      rest={
        <>
          <KeepIt store={store} uses={uses} />
          <PoundsTable answer={answer} />
        </>
      }
    />
  );
}
