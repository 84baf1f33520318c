/** A bench of one's own: coat, solids, board and grab, each of which can be left out, and kept for the other calculators. */
import { useStore } from '@nanostores/preact';
import { useMemo } from 'preact/hooks';
import { openBench } from '../../stores/bench/open-bench';
import { PlanBench } from '../parts/PlanBench';
import { BenchResult } from './BenchResult';
import {
  OwnBoardFields,
  OwnCoatFields,
  ExampleBenchButton,
  OwnGrabFields,
  BenchNameField,
  OwnSolidsFields,
} from './MeasureBenchFields';
import { KeepBench } from './KeepBench';

interface Props {
  /** path of this page */
  readonly address: string;
  /** path of the page that the cards stand on, where it is another */
  readonly cardsAt?: string;
}

const prefix = 'my-';

export default function MyBench({ address, cardsAt = '' }: Props) {
  const store = useMemo(openBench, []);
  const { answer } = useStore(store.$solved);
  const fields = { store, prefix, cardsAt };
  return (
    <PlanBench
      room="bench"
      $tells={store.$tells}
      store={store}
      prefix={prefix}
      address={address}
      brief={['My bench', answer.brief]}
      asks="What you measured"
      inputs={
        <>
          <ExampleBenchButton {...fields} />
          <OwnCoatFields {...fields} />
          <OwnSolidsFields {...fields} />
          <OwnBoardFields {...fields} />
          <OwnGrabFields {...fields} />
          <BenchNameField {...fields} />
        </>
      }
      answer={<BenchResult answer={answer} />}
      rest={<KeepBench store={store} />}
      sends={answer.text !== ''}
    />
  );
}
