/** The project calculator: from a book's or a box's size to the pieces to cut, drawn with their measures. */
import { useStore } from '@nanostores/preact';
import { useMemo } from 'preact/hooks';
import { createMake } from '../../stores/make/make';
import { MakeFields } from './MakeFields';
import { MeasureFields } from './MeasureFields';
import { MakeResult, MorePictures, PieceTable, Steps } from './MakeResult';
import { Cautions, type CautionText } from '../parts/Cautions';
import { PlanBench } from '../parts/PlanBench';

interface Props {
  readonly cautions: Readonly<Record<string, CautionText>>;
  /** path of this calculator's own page */
  readonly address: string;
}

const prefix = 'make-';

export default function Make({ cautions, address }: Props) {
  const store = useMemo(() => createMake(), []);
  const { answer } = useStore(store.$solved);

  return (
    <PlanBench
      room="make"
      $tells={store.$tells}
      store={store}
      prefix={prefix}
      address={address}
      brief={answer.brief}
      asked={answer.asked}
      asks="What you make"
      inputs={
        <>
          <MakeFields store={store} prefix={prefix} />
          <MeasureFields store={store} prefix={prefix} />
        </>
      }
      answer={
        <>
          <MakeResult store={store} />
          <PieceTable store={store} />
        </>
      }
      rest={
        <>
          <MorePictures store={store} />
          <Steps store={store} />
          <Cautions ids={answer.cautions} texts={cautions} />
        </>
      }
    />
  );
}
