/** Below the answer: why, how, what would change it, how sure, the map, the whole ranking, two side by side. */
import { useStore } from '@nanostores/preact';
import { useMemo } from 'preact/hooks';
import { assumptions, flipSentence } from '../../core/choose/tipping-words';
import type { Flip } from '../../core/choose/tipping-points';
import { sheetOf } from '../../core/paper/sheet';
import type { ChoosePageStore } from '../../stores/choose/choose-page';
import { WeightMapPlate } from '../parts/WeightMapPlate';
import { Compare } from './Compare';
import { Ranking } from './Ranking';
import { SendIt } from './SendIt';

export interface CautionText {
  readonly title: string;
  readonly text: string;
}

interface Props {
  readonly store: ChoosePageStore;
  readonly flipsAtStart: readonly Flip[];
  readonly cautions: Readonly<Record<string, CautionText>>;
  readonly prefix: string;
  /** path of the page, for the link */
  readonly address: string;
  /** path of the page that shows the checks */
  readonly checks: string;
}

export function Rest({ store, flipsAtStart, cautions, prefix, address, checks }: Props) {
  const choices = useStore(store.$choices);
  const job = useStore(store.$job);
  const best = choices[0]!;
  const refused = best.verdict === 'refused';
  const sheet = useMemo(() => sheetOf(job, store.catalogue), [job]);
  const shown = best.cautions.flatMap((id) => cautions[id] ?? []);
  // Each of these listens to the store by itself; made once, they are drawn once a change, each in its own turn.
  const part = useMemo(
    () => ({
      send: <SendIt store={store} address={address} />,
      map: <MapSection store={store} />,
      flips: <FlipSection store={store} flipsAtStart={flipsAtStart} />,
      ranking: <Ranking store={store} />,
      compare: <Compare store={store} prefix={prefix} />,
    }),
    [],
  );
  return (
    <>
      {part.send}
      {!refused && (
        <div class="compare">
          <section>
            <h2>How to do it</h2>
            <ol class="steps">
              {best.technique.steps.map((step) => (
                <li key={step}>{step}</li>
              ))}
            </ol>
          </section>
          <section>
            <h2>Why</h2>
            <ul class="reasons">
              {best.reasons.map((reason) => (
                <li key={reason.code}>
                  {reason.against && <strong>Drawback: </strong>}
                  {reason.text}
                </li>
              ))}
            </ul>
          </section>
        </div>
      )}
      {shown.map((caution) => (
        <div class="caution" role="note" aria-label={`Caution: ${caution.title}`} key={caution.title}>
          <p class="caution-title">Take care: {caution.title}</p>
          <p>{caution.text}</p>
        </div>
      ))}
      {!refused && part.map}
      <div class="compare">
        {!refused && part.flips}
        <section>
          <h2>How sure</h2>
          <p>
            A chance here is the share of many possible versions of your job that hold, softened by the doubt in the
            model itself. What nobody measured was taken from what such papers are like:
          </p>
          <ul>
            {assumptions(sheet, job).map((line) => (
              <li key={line}>{line}</li>
            ))}
          </ul>
          <p>
            <a href={checks}>How the model was fitted, and what it was held against</a>.
          </p>
        </section>
      </div>
      {part.ranking}
      {!refused && part.compare}
    </>
  );
}

function MapSection({ store }: Pick<Props, 'store'>) {
  const map = useStore(store.$map);
  const best = useStore(store.$choices)[0]!.adhesiveId;
  const job = useStore(store.$job);
  const sheet = useMemo(() => sheetOf(job, store.catalogue), [job]);
  const { short } = store.catalogue.adhesives.get(best)!;
  return <WeightMapPlate map={map} grammage={sheet.grammage} sorptivity={sheet.sorptivity} adhesive={short} />;
}

function FlipSection({ store, flipsAtStart }: Pick<Props, 'store' | 'flipsAtStart'>) {
  const found = useStore(store.$flips);
  const job = useStore(store.$job);
  const start = useMemo(() => job, []);
  const flips = found ?? (job === start ? flipsAtStart : undefined);
  return (
    <section>
      <h2>What would change the answer</h2>
      {flips === undefined ? (
        <p>Looking for the nearest change that would put another adhesive first.</p>
      ) : flips.length === 0 ? (
        <p>Nothing within reach: weight, absorbency and time up to threefold, and the room up to 18 °C either way.</p>
      ) : (
        <ul>
          {flips.map((flip) => (
            <li key={flip.field}>{flipSentence(flip, store.catalogue)}</li>
          ))}
        </ul>
      )}
    </section>
  );
}
