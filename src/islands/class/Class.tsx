/**
 * The workshop sheet: a class of one project, from the shopping list to the handout, all of it in one link. What to
 * buy, cut and mix is answered first; the model, which says how it is glued, is fetched after that.
 */
import { useStore } from '@nanostores/preact';
import { useEffect, useMemo, useRef, useState } from 'preact/hooks';
import type { ClassLaying } from '../../core/class/laying';
import { DEFAULT_CLASS } from '../../core/class/plan';
import { gravestFirst } from '../../core/safety/hazards';
import { openClass, prepareClass } from '../../stores/class/open-class';
import { isTyped, type Typed } from '../../stores/shared/typed';
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
  /** how the class is glued that the page is built with */
  readonly laying: ClassLaying;
  readonly typed?: Typed;
}

const prefix = 'class-';
const NOT_FETCHED = 'How long the glue waits could not be fetched. Load the page again for it.';

export default function Workshop({ address, choose, cut, lessons, cautions, laying: built }: Props) {
  const store = useMemo(openClass, []);
  const { answer, plan } = useStore(store.$solved);
  const laid = useStore(store.$laid);
  const [failed, setFailed] = useState(false);
  const before = useRef<ClassLaying>(built);
  // none while it is worked out; no caution goes before it is known that it is not called for
  const laying = laid?.sheet === answer ? laid.laying : plan === DEFAULT_CLASS ? built : undefined;
  if (laying) before.current = laying;
  const toCome = failed ? NOT_FETCHED : 'How long the glue waits is being worked out.';
  const meanwhile = failed ? [NOT_FETCHED, ...answer.warnings] : answer.warnings;
  useEffect(() => {
    let isHere = true;
    let stop = () => {};
    import('../../stores/class/class-laying').then(
      ({ layingInTurns }) => {
        if (isHere) stop = store.layWith(layingInTurns());
      },
      () => setFailed(true),
    );
    return () => {
      isHere = false;
      stop();
    };
  }, []);
  const tail = useStore(store.$tail);
  const fields = { store, prefix };
  const dangers = laying?.cautions ?? gravestFirst([...answer.cautions, ...before.current.cautions]);

  return (
    <PlanBench
      room="class"
      store={store}
      prefix={prefix}
      address={address}
      brief={answer.brief}
      asked={answer.asked}
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
          <ClassResult answer={answer} slip={laying?.handout.slip} warnings={laying?.warnings ?? meanwhile} />
          <Shopping answer={answer} />
        </>
      }
      rest={
        <>
          <Schedule answer={answer} slip={laying?.handout.slip} />
          <Batches answer={answer} />
          <Fold title="How the sheets are cut">
            <SheetPlans stocks={answer.cut.stocks} unit={plan.unit} />
            <p class="no-print">
              <a href={`${cut}?${answer.cutTail}`}>Change the cutting plan by itself</a>
            </p>
          </Fold>
          <Cautions ids={dangers} texts={cautions} />
        </>
      }
      last={
        <Fold title="The student’s sheet">
          <HandoutSheet
            answer={answer}
            laying={laying}
            toCome={toCome}
            plan={plan}
            choose={choose}
            lessons={lessons}
            dangers={dangers.flatMap((id) => cautions[id]?.title ?? [])}
          />
        </Fold>
      }
    />
  );
}

/** Before it wakes. */
Workshop.prepare = ({ typed }: Props) => prepareClass({ typed, prefix });

/** What was typed by then is another class than that of the built page. */
Workshop.isOther = ({ typed }: Props) => isTyped(typed);
