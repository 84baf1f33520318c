/**
 * The planner: papers × adhesives × hold times × repeats, the questions, and what all that takes and can
 * show. The plan is kept as a draft until its order is drawn; then it is a trial on this device's shelf.
 */
import { useStore } from '@nanostores/preact';
import type { ComponentChildren } from 'preact';
import { useEffect, useMemo, useState } from 'preact/hooks';
import { around, type Range } from '../../core/base/quantity';
import { USUAL_METHOD } from '../../core/trial/method';
import { planTextOf } from '../../core/trial/plan-link';
import type { SwatchMethod } from '../../core/trial/record';
import { DEFAULT_PLAN } from '../../core/trial/plan-text';
import { createTrialPlan } from '../../stores/trial/plan';
import { preparePower } from '../../stores/trial/plan-power';
import { localStorageOrNone, sessionStorageOrNone } from '../../stores/shared/device-storage';
import { openShelf } from '../../stores/trial/shelf';
import { ProblemList } from '../parts/ProblemList';
import { Spoken } from '../parts/Spoken';
import type { Option } from '../parts/Field';
import { GlueRows, PaperRows } from './PlanLists';
import { designLine, PlanAnswer, planLine } from './PlanAnswer';
import { PlanNext, type RoomAfterPlan } from './PlanNext';
import { TrialBenchFields, QuestionFields, SizeFields } from './PlanFields';
import { StorageNotice } from './StorageNotice';

interface Props {
  readonly families: readonly Option[];
  readonly adhesives: readonly Option[];
  readonly substrates: readonly Option[];
  readonly tools: readonly Option[];
  /** wet coat of each tool, g/m² */
  readonly coats: Readonly<Record<string, Range>>;
  /** where a trial is run */
  readonly runAt: string;
  /** where else one goes from a plan */
  readonly next: readonly RoomAfterPlan[];
}

/** On a phone; as the page has it before it wakes (components/trial/TrialPlanLab.astro). */
const isFolded = () => typeof document !== 'undefined' && document.querySelector('.form-fold:not([open])') !== null;

/** The page was gone back to or loaded again, and not asked for anew. */
const isReturn = () => {
  const [asked] = performance.getEntriesByType('navigation') as PerformanceNavigationTiming[];
  return asked?.type === 'back_forward' || asked?.type === 'reload';
};

/** The coat that was weighed, that of the tool, or of a tool that nobody knows that of a full brush. */
const coatOf = (method: SwatchMethod = {}, coats: Readonly<Record<string, Range>>): Range =>
  method.coat === undefined
    ? (coats[method.tool ?? ''] ?? coats[USUAL_METHOD.tool]!)
    : around(method.coat, 0, 'measured');

const nameIn = (records: readonly Option[]) => (record: string) =>
  records.find(({ value }) => value === record)?.text ?? '';

export default function TrialPlan({ families, adhesives, substrates, tools, coats, runAt, next }: Props) {
  const store = useMemo(() => createTrialPlan(DEFAULT_PLAN, nameIn(adhesives)), []);
  const shelf = useMemo(openShelf, []);
  const problems = useStore(store.$problems);
  const plan = useStore(store.$plan);
  const [failed, setFailed] = useState(false);
  const [folded] = useState(isFolded);
  const [linkSaid, sayOfLink] = useState<ComponentChildren>();

  useEffect(() => {
    const names = {
      paper: nameIn(families),
      adhesive: nameIn(adhesives),
      substrate: nameIn(substrates),
      tool: nameIn(tools),
    };
    const { search } = window.location;
    const asked = planTextOf(search, names);
    const sent = asked && { link: search, text: asked, isReturn: isReturn() };
    if (search) void import('./LeftOut').then(({ LeftOut }) => sayOfLink(<LeftOut tail={search} names={names} />));
    store.wake(localStorageOrNone(), 1 + Math.floor(Math.random() * 999_999), sent, sessionStorageOrNone());
  }, []);

  const draw = async () => {
    const { newId } = await import('../../stores/trial/files');
    const trial = store.draw(newId(), new Date().toISOString());
    if (!trial) return document.querySelector<HTMLElement>('.bench-inputs [aria-invalid="true"]')?.focus();
    // A trial that is not stored would be gone on the next page.
    if (!shelf.put(trial)) return setFailed(true);
    store.forget();
    void navigator.storage?.persist?.().catch(() => false);
    window.location.assign(`${runAt}?trial=${trial.id}`);
  };

  return (
    <div class="bench">
      <a class="bench-strip no-print" href="#plan-answer">
        <span>{planLine(plan)}</span>
      </a>
      <div class="bench-inputs" role="group" aria-label="The plan">
        <ProblemList problems={problems} idOf={(field) => `plan-${field}`} />
        {/* what is wrong is never folded away */}
        <details class="form-fold" open={!folded || problems.length > 0}>
          <summary>
            <span class="form-line">{designLine(plan)}</span> <span class="form-change">change</span>
          </summary>
          <PaperRows store={store} families={families} />
          <GlueRows store={store} adhesives={adhesives} />
          <TrialBenchFields store={store} substrates={substrates} tools={tools} />
          <QuestionFields store={store} />
          <SizeFields store={store} />
        </details>
      </div>
      <section
        class={`bench-answer${problems.length > 0 ? ' stale' : ''}`}
        id="plan-answer"
        aria-label="What the trial takes and can show"
        tabIndex={-1}
      >
        {linkSaid}
        <PlanAnswer plan={plan} coat={coatOf(plan.method, coats)} />
        <div class="button-row">
          <button type="button" class="button" onClick={() => void draw()}>
            Draw the order and begin
          </button>
        </div>
        {problems.length > 0 && (
          <p class="field-error">Mend what is marked first; the figures above are for the last plan that made sense.</p>
        )}
        {failed && (
          <p class="field-error">
            This browser did not keep the trial. Save it to a file below, then read it in on the trials page of a
            browser that does.
          </p>
        )}
        <StorageNotice shelf={shelf} />
        <PlanNext plan={plan} rooms={next} />
        <Spoken text={planLine(plan)} />
      </section>
    </div>
  );
}

TrialPlan.prepare = () => preparePower(DEFAULT_PLAN);
