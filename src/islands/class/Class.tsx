/** The workshop sheet: a class of one project, from the shopping list to the handout, all of it in one link. */
import { useStore } from '@nanostores/preact';
import { useMemo } from 'preact/hooks';
import { openClass, prepareClass } from '../../stores/class/open-class';
import { MakeFields } from '../make/MakeFields';
import { Cautions, type CautionText } from '../parts/Cautions';
import { Fold } from '../parts/Fold';
import { PlanBench } from '../parts/PlanBench';
import { SheetPlans } from '../cut/SheetPlans';
import { Batches } from './Batches';
import { ClassFields, MaterialFields, SheetSizeFields } from './ClassFields';
import { ForStudents } from './ForStudents';
import { HandoutSheet } from './HandoutSheet';
import { Schedule, Shopping, ClassResult } from './Lists';

interface Props {
  /** paths of this page, the chooser, the cutting plan and the lessons */
  readonly address: string;
  readonly choose: string;
  readonly cut: string;
  readonly lessons: readonly { readonly title: string; readonly path: string }[];
  readonly cautions: Readonly<Record<string, CautionText>>;
}

const prefix = 'class-';

export default function Workshop({ address, choose, cut, lessons, cautions }: Props) {
  const store = useMemo(openClass, []);
  const { answer, plan } = useStore(store.$solved);
  const tail = useStore(store.$tail);
  const fields = { store, prefix };

  return (
    <PlanBench
      room="class"
      store={store}
      prefix={prefix}
      address={address}
      brief={answer.brief}
      asks="Your class"
      inputs={
        <>
          <ClassFields {...fields} />
          <details open>
            <summary>What everybody makes</summary>
            <MakeFields {...fields} />
          </details>
          <MaterialFields {...fields} />
          <SheetSizeFields {...fields} />
        </>
      }
      answer={
        <>
          <ForStudents address={address} tail={tail} />
          <ClassResult answer={answer} />
          <Shopping answer={answer} />
        </>
      }
      rest={
        <>
          <Schedule answer={answer} />
          <Batches answer={answer} />
          <Fold title="How the sheets are cut">
            <SheetPlans stocks={answer.cut.stocks} unit={plan.unit} />
            <p class="no-print">
              <a href={`${cut}?${answer.tails.cut}`}>Change the cutting plan by itself</a>
            </p>
          </Fold>
          <Cautions ids={answer.cautions} texts={cautions} />
        </>
      }
      last={
        <Fold title="The student’s sheet">
          <HandoutSheet answer={answer} plan={plan} choose={choose} lessons={lessons} />
        </Fold>
      }
    />
  );
}

/** Before it wakes. */
Workshop.prepare = prepareClass;
