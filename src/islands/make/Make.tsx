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
  /** paths of this calculator's own page and of the coverage calculator's */
  readonly address: string;
  readonly coverAddress: string;
  readonly cutAddress: string;
  readonly classAddress: string;
}

const prefix = 'make-';

export default function Make({ cautions, address, coverAddress, cutAddress, classAddress }: Props) {
  const store = useMemo(() => createMake(), []);
  const { answer } = useStore(store.$solved);
  const coverTail = useStore(store.$coverTail);
  const cutTail = useStore(store.$cutTail);
  const classTail = useStore(store.$classTail);

  return (
    <PlanBench
      store={store}
      prefix={prefix}
      address={address}
      brief={answer.brief}
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
          <p class="button-row no-print">
            <a class="button" href={`${coverAddress}?${coverTail}`}>
              How much adhesive this takes
            </a>
            <a class="button-quiet" href={`${cutAddress}?${cutTail}`}>
              Cut it from sheets
            </a>
            <a class="button-quiet" href={`${classAddress}?${classTail}`}>
              Plan a class with it
            </a>
          </p>
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
