/** The sheets calculator: how many sheets the pieces take, and how to cut each of them. */
import { useStore } from '@nanostores/preact';
import { useMemo } from 'preact/hooks';
import { openCut, prepareCut } from '../../stores/cut/open-cut';
import { Cautions, type CautionText } from '../parts/Cautions';
import { Facts } from '../parts/Facts';
import { PlanBench } from '../parts/PlanBench';
import { SheetPlans } from './SheetPlans';
import { CutFields } from './CutFields';
import { CutResult } from './CutResult';

interface Props {
  /** path of this calculator's own page */
  readonly address: string;
  readonly cautions: Readonly<Record<string, CautionText>>;
}

const prefix = 'cut-';

export default function Sheets({ address, cautions }: Props) {
  const store = useMemo(openCut, []);
  const { answer, plan } = useStore(store.$solved);

  return (
    <PlanBench
      room="cut"
      store={store}
      prefix={prefix}
      address={address}
      brief={answer.brief}
      asked={answer.asked}
      inputs={<CutFields store={store} prefix={prefix} />}
      answer={
        <>
          <CutResult store={store} />
          <Facts caption="Behind the number of sheets" facts={answer.facts} />
          <Cautions ids={answer.cautions} texts={cautions} />
        </>
      }
      rest={<SheetPlans stocks={answer.stocks} unit={plan.unit} />}
    />
  );
}

/** Before it wakes. */
Sheets.prepare = prepareCut;
