/**
 * Below the answer: how to do it, the best mix, why, what would change it, how sure, the order, two side by side, the
 * link. An island of its own, fetched when the answer has changed or when somebody reaches for it.
 */
import { useStore } from '@nanostores/preact';
import { useEffect, useMemo } from 'preact/hooks';
import { lowerFirst } from '../../core/base/format';
import { assumptions, flipSentence } from '../../core/choose/tipping-words';
import type { Flip } from '../../core/choose/tipping-points';
import { sheetOf } from '../../core/paper/sheet';
import { createChooseRest, type ChooseRestStore } from '../../stores/choose/choose-rest';
import { openChoosePage } from '../../stores/choose/open-choose-page';
import type { Ratios } from '../../stores/choose/ratio';
import type { CautionText } from '../parts/Cautions';
import { FetchedFold, Fold } from '../parts/Fold';
import { OwnTrials } from './OwnTrials';
import { Ranking } from './Ranking';
import { RatioSection } from './RatioSection';
import { SendIt } from './SendIt';

interface Props {
  /** worked out at build for the start job, so that the first paint is whole */
  readonly flips: readonly Flip[];
  readonly ratios?: Ratios | undefined;
  readonly cautions: Readonly<Record<string, CautionText>>;
  /** path of this page, for the link */
  readonly address: string;
  /** paths of the page that shows the checks, the trial pages, the mixer */
  readonly checks: string;
  readonly trialsAt: string;
  readonly mixAt: string;
  /** path of the site's first page, below which the pictures stand */
  readonly base: string;
}

const prefix = 'ch-';

export default function ChooseRest({ flips, ratios, cautions, address, checks, trialsAt, mixAt, base }: Props) {
  const page = useMemo(() => openChoosePage(), []);
  const store = useMemo(() => createChooseRest(page), []);
  const problems = useStore(page.$problems);
  const best = useStore(store.$told)[0]!;
  const refused = best.verdict === 'refused';
  const shown = best.cautions.flatMap((id) => cautions[id] ?? []);
  useEffect(() => lookAfterPauses(store), []);
  // Each of these listens to the store by itself; made once, they are drawn once a change, each in its own turn.
  const part = useMemo(
    () => ({
      ratio: <RatioSection store={store} atStart={ratios} mixAt={mixAt} />,
      flips: <FlipSection store={store} flipsAtStart={flips} />,
      sure: <SureSection store={store} checks={checks} />,
      ranking: <Ranking store={store} />,
      pictures: async () => {
        const { InPictures } = await import('./InPictures');
        return <InPictures store={store} base={base} />;
      },
      slip: async () => {
        const { SlipFigure } = await import('./SlipFigure');
        return <SlipFigure store={store} />;
      },
      compare: async () => {
        const { Compare } = await import('./Compare');
        return <Compare store={store} prefix={prefix} />;
      },
      papers: async () => {
        const { OnOtherPapers } = await import('./OnOtherPapers');
        return <OnOtherPapers store={store} />;
      },
      trials: <OwnTrials store={page} trialsAt={trialsAt} />,
      send: <SendIt store={store} address={address} />,
    }),
    [],
  );
  return (
    <div class={`bench-rest${problems.length > 0 ? ' stale' : ''}`}>
      {!refused && (
        <section>
          <h2>How to do it</h2>
          <ol class="steps">
            {best.technique.steps.map((step) => (
              <li key={step}>{step}</li>
            ))}
          </ol>
        </section>
      )}
      {!refused && <FetchedFold title="In pictures: the paper and the steps" fetch={part.pictures} />}
      {shown.length > 0 && (
        <div class="take-care">
          {shown.map((caution) => (
            <div class="caution" role="note" aria-label={`Caution: ${caution.title}`} key={caution.title}>
              <details>
                <summary>Take care: {lowerFirst(caution.title)}</summary>
                <p>{caution.text}</p>
              </details>
            </div>
          ))}
        </div>
      )}
      {part.trials}
      {!refused && part.ratio}
      {!refused && (
        <>
          <Fold title="Why">
            <ul class="reasons">
              {best.reasons.map((reason) => (
                <li key={reason.code}>
                  {reason.against && <strong>Drawback: </strong>}
                  {reason.text}
                </li>
              ))}
            </ul>
          </Fold>
          <Fold title="What would change the answer">{part.flips}</Fold>
        </>
      )}
      <Fold title="How sure" print={false}>
        {part.sure}
      </Fold>
      {part.ranking}
      {!refused && (
        <>
          <FetchedFold title="How long the sheet can be moved" fetch={part.slip} />
          <FetchedFold title="Two side by side" fetch={part.compare} />
          <FetchedFold title="On other papers" fetch={part.papers} />
        </>
      )}
      {part.send}
      <p class="no-print">
        <a href={`${base}embed/`}>Embed this</a>: put it in a page of your own.
      </p>
    </div>
  );
}

/** Its built page speaks of the start job, and the job may be another by now: it is drawn anew. */
ChooseRest.isOther = () => true;

function SureSection({ store, checks }: { readonly store: ChooseRestStore; readonly checks: string }) {
  const job = useStore(store.$job);
  const sheet = useMemo(() => sheetOf(job, store.catalogue), [job]);
  return (
    <>
      <p>
        We try many possible versions of your job, each with another set of constants that fits what is known from the
        bench. The chance is how many of them hold. What nobody measured was taken from papers of this kind:
      </p>
      <ul>
        {assumptions(sheet, job).map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
      <p>
        <a href={checks}>How the model was fitted, and what it was held against</a>.
      </p>
    </>
  );
}

function FlipSection({
  store,
  flipsAtStart,
}: {
  readonly store: ChooseRestStore;
  readonly flipsAtStart: readonly Flip[];
}) {
  const found = useStore(store.$flips) ?? flipsAtStart;
  return found === 'looking' ? (
    <p>Looking for the nearest change that would put another adhesive first.</p>
  ) : found.length === 0 ? (
    <p>Nothing within reach: weight, absorbency and time up to threefold, and the room up to 18 °C either way.</p>
  ) : (
    <ul>
      {found.map((flip) => (
        <li key={flip.field}>{flipSentence(flip, store.catalogue)}</li>
      ))}
    </ul>
  );
}

/** The search for flips asks the model a hundred times, so it waits for a pause and works in small turns. */
function lookAfterPauses(store: ChooseRestStore): () => void {
  let timer: ReturnType<typeof setTimeout> | undefined;
  const later = (work: () => void) => {
    timer = setTimeout(work, 8);
  };
  const look = () => {
    clearTimeout(timer);
    store.$flips.set('looking');
    timer = setTimeout(() => store.lookForFlips(later), 500);
  };
  if (!store.isAtStart()) look();
  const stop = store.$job.listen(look);
  return () => {
    clearTimeout(timer);
    stop();
  };
}
