/** The paper calculator: weight, thickness, absorbency and grain of one's own sheet, kept for the other calculators. */
import { useStore } from '@nanostores/preact';
import { useMemo } from 'preact/hooks';
import { openMeasure } from '../../stores/measure/open-measure';
import { AbsorbencyFields, ExampleButton, KindFields, ThicknessFields, WeightFields } from './MeasureFields';
import { GrainFields } from './GrainFields';
import { KeepIt } from './KeepIt';
import { MeasureResult, PoundsTable } from './MeasureResult';
import { PlanBench } from '../parts/PlanBench';

interface Props {
  /** path of this page */
  readonly address: string;
}

const prefix = 'know-';

export default function Paper({ address }: Props) {
  const store = useMemo(openMeasure, []);
  const { answer } = useStore(store.$solved);
  const fields = { store, prefix };
  return (
    <PlanBench
      room="measure"
      $tells={store.$tells}
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
          <KeepIt store={store} />
          <PoundsTable answer={answer} />
        </>
      }
    />
  );
}
