/** The sheets calculator: how many sheets the pieces take, and how to cut each of them. */
import { useStore } from '@nanostores/preact';
import { useMemo } from 'preact/hooks';
import { openSheets, prepareSheets } from '../stores/open-sheets';
import { Cautions, type CautionText } from './parts/Cautions';
import { Facts } from './parts/Facts';
import { PlanBench } from './parts/PlanBench';
import { SheetPlans } from './sheets/SheetPlans';
import { SheetsFields } from './sheets/SheetsFields';
import { SheetsResult } from './sheets/SheetsResult';

interface Props {
  /** path of this calculator's own page */
  readonly address: string;
  readonly cautions: Readonly<Record<string, CautionText>>;
}

const prefix = 'cut-';

export default function Sheets({ address, cautions }: Props) {
  const store = useMemo(openSheets, []);
  const { answer, plan } = useStore(store.$solved);

  return (
    <PlanBench
      store={store}
      prefix={prefix}
      address={address}
      brief={answer.brief}
      inputs={<SheetsFields store={store} prefix={prefix} />}
      answer={
        <>
          <SheetsResult store={store} />
          <Facts caption="Behind the number of sheets" facts={answer.facts} />
          <Cautions ids={['knife']} texts={cautions} />
        </>
      }
      rest={<SheetPlans stocks={answer.stocks} unit={plan.unit} />}
    />
  );
}

/** Before it wakes. */
Sheets.prepare = prepareSheets;
