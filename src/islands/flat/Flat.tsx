/** The calculator of warp: how far a covered board bows, which way, and what would help. */
import { useStore } from '@nanostores/preact';
import { useMemo } from 'preact/hooks';
import { openFlat, prepareFlat } from '../../stores/flat/open-flat';
import { Cautions, type CautionText } from '../parts/Cautions';
import { PlanBench } from '../parts/PlanBench';
import { AirFields, GlueFields, SheetFields } from './FlatFields';
import { FlatFactRows, FlatRemedies } from './FlatDetails';
import { FlatResult } from './FlatResult';

interface Props {
  readonly cautions: Readonly<Record<string, CautionText>>;
  /** path of this calculator's page */
  readonly address: string;
}

const prefix = 'warp-';

export default function Flat({ cautions, address }: Props) {
  const store = useMemo(openFlat, []);
  const { answer } = useStore(store.$solved);

  return (
    <PlanBench
      room="flat"
      store={store}
      prefix={prefix}
      address={address}
      brief={answer.brief}
      asked={answer.asked}
      inputs={
        <>
          <SheetFields store={store} prefix={prefix} />
          <GlueFields store={store} prefix={prefix} />
          <AirFields store={store} prefix={prefix} />
        </>
      }
      answer={<FlatResult store={store} />}
      rest={
        <>
          <div class="compare">
            <FlatRemedies store={store} answerId={`${prefix}answer`} />
            <FlatFactRows store={store} />
          </div>
          <Cautions ids={answer.cautions} texts={cautions} />
        </>
      }
    />
  );
}

/** Before it wakes. */
Flat.prepare = prepareFlat;
