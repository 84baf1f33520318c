/** The calculator of warp: how far a covered board bows, which way, and what would help. */
import { useStore } from '@nanostores/preact';
import { useMemo } from 'preact/hooks';
import { openWarping, prepareWarping } from '../stores/open-warping';
import { Cautions, type CautionText } from './parts/Cautions';
import { PlanBench } from './parts/PlanBench';
import { AirFields, GlueFields, SheetFields } from './warp/WarpFields';
import { WarpFacts, WarpRemedies } from './warp/WarpRest';
import { WarpResult } from './warp/WarpResult';

interface Props {
  readonly cautions: Readonly<Record<string, CautionText>>;
  /** path of this calculator's page */
  readonly address: string;
}

const prefix = 'warp-';

export default function Warp({ cautions, address }: Props) {
  const store = useMemo(openWarping, []);
  const { answer } = useStore(store.$solved);

  return (
    <PlanBench
      store={store}
      prefix={prefix}
      address={address}
      brief={answer.brief}
      inputs={
        <>
          <SheetFields store={store} prefix={prefix} />
          <GlueFields store={store} prefix={prefix} />
          <AirFields store={store} prefix={prefix} />
        </>
      }
      answer={<WarpResult store={store} />}
      rest={
        <>
          <div class="compare">
            <WarpRemedies store={store} answerId={`${prefix}answer`} />
            <WarpFacts store={store} />
          </div>
          <Cautions ids={answer.cautions} texts={cautions} />
        </>
      }
    />
  );
}

/** Before it wakes. */
Warp.prepare = prepareWarping;
