/**
 * Planning begins with what one wants to know: a choice between adhesives on a paper. What is shown is the swatches most
 * worth making for it, and when there is nothing left to settle. Each can be run at once.
 */
import { useEffect, useMemo, useRef, useState } from 'preact/hooks';
import { chanceInTen } from '../../core/base/format';
import type { Told } from '../../stores/trial/next-swatches';
import { planTextOf } from '../../core/trial/plan-link';
import { FIRST_WISH, wantedOf, wishOf, type Wanted, type Wish } from '../../stores/trial/wish';
import { keptBenchText } from '../../stores/shared/device-storage';
import { openShelf } from '../../stores/trial/shelf';
import { NumberField, SelectField, type Option } from '../parts/Field';

interface Props {
  readonly families: readonly Option[];
  readonly adhesives: readonly Option[];
  readonly substrates: readonly Option[];
  readonly tools: readonly Option[];
  /** where a trial is run, and where a bench is measured */
  readonly runAt: string;
  readonly benchAt: string;
  /** id of the full design on this page */
  readonly full: string;
}

const PREFIX = 'want-';

/** The model is fetched when it is asked. */
const later = () => import('../../stores/trial/next-swatches');
type Later = Awaited<ReturnType<typeof later>>;

export default function NextSwatches({ families, adhesives, substrates, tools, runAt, benchAt, full }: Props) {
  const shelf = useMemo(openShelf, []);
  const [told, setTold] = useState<Told>();
  const [busy, setBusy] = useState(false);
  const store = useRef<Promise<ReturnType<Later['createNextSwatches']>>>();
  const ask = async (wanted: Wanted) => {
    setBusy(true);
    store.current ??= later().then(({ createNextSwatches }) => {
      const made = createNextSwatches(() => shelf.$trials.get());
      made.$told.listen((next) => setTold(next));
      made.$busy.listen((now) => setBusy(now));
      return made;
    });
    try {
      (await store.current).ask((await later()).askingOf(wanted));
    } catch {
      store.current = undefined;
      setBusy(false);
      setMissed(true);
    }
  };
  const [missed, setMissed] = useState(false);
  const [wish, setWish] = useState<Wish>(FIRST_WISH);
  const [failed, setFailed] = useState(false);
  const [kept, setKept] = useState('');
  useEffect(() => {
    setKept(keptBenchText());
    const known = (records: readonly Option[]) => (id: string) => (records.some(({ value }) => value === id) ? id : '');
    const names = {
      paper: known(families),
      adhesive: known(adhesives),
      substrate: known(substrates),
      tool: known(tools),
    };
    const sent = planTextOf(window.location.search, names);
    if (sent) setWish((before) => wishOf(sent, before));
  }, []);
  const { wanted, problems } = wantedOf(wish);
  const set = (part: Partial<Wish>) => setWish({ ...wish, ...part });
  const problemOf = (field: keyof Wish) => problems.find((one) => one.field === field)?.message;
  const begin = async (i: number) => {
    const [{ newId }, { trialOfSuggestion }] = await Promise.all([import('../../stores/trial/files'), later()]);
    const one = told?.next.swatches[i];
    if (!told || !one) return;
    const trial = trialOfSuggestion(one, told.asking, newId(), new Date().toISOString());
    if (!shelf.put(trial)) return setFailed(true);
    window.location.assign(`${runAt}?trial=${trial.id}`);
  };
  return (
    <section class={`next-swatches${told ? '' : ' no-print'}`} aria-labelledby={`${PREFIX}title`}>
      <h2 id={`${PREFIX}title`}>What do you want to know?</h2>
      <div class="bench">
        <div class="bench-inputs">
          <fieldset class="choice-set">
            <legend>Which of these is right for my paper? (2 to 4)</legend>
            {adhesives
              .filter(({ value }) => SHOWN.has(value) || wish.among.includes(value))
              .map(({ value, text }) => (
                <label class="choice" key={value}>
                  <input
                    type="checkbox"
                    checked={wish.among.includes(value)}
                    onChange={(event) =>
                      set({
                        among: event.currentTarget.checked
                          ? [...wish.among, value]
                          : wish.among.filter((one) => one !== value),
                      })
                    }
                  />
                  <span>{text}</span>
                </label>
              ))}
            {problemOf('among') && <p class="field-error">{problemOf('among')}</p>}
          </fieldset>
          <SelectField
            id={`${PREFIX}family`}
            label="My paper is most like"
            options={families}
            value={wish.family}
            onPick={(family) => set({ family })}
          />
          <NumberField
            id={`${PREFIX}grammage`}
            label="Its weight"
            unit="g/m²"
            hint="If you know it."
            value={wish.grammage}
            error={problemOf('grammage')}
            onText={(grammage) => set({ grammage })}
          />
          <SelectField
            id={`${PREFIX}substrate`}
            label="It goes on"
            options={substrates}
            value={wish.substrate}
            onPick={(substrate) => set({ substrate })}
          />
          <SelectField
            id={`${PREFIX}tool`}
            label="Spread with"
            options={tools}
            value={wish.tool}
            onPick={(tool) => set({ tool })}
          />
          <NumberField
            id={`${PREFIX}seconds`}
            label="Time you need to place it"
            unit="s"
            value={wish.seconds}
            error={problemOf('seconds')}
            onText={(seconds) => set({ seconds })}
          />
          <SelectField
            id={`${PREFIX}other`}
            label="Another paper you could cut swatches from"
            options={[{ value: '', text: 'none' }, ...families]}
            value={wish.other}
            onPick={(other) => set({ other })}
          />
          {kept !== '' && (
            <label class="choice">
              <input
                type="checkbox"
                checked={wish.bench !== ''}
                onChange={(event) => set({ bench: event.currentTarget.checked ? kept : '' })}
              />
              <span>
                Reckon with <a href={benchAt}>my bench</a> as I measured it
              </span>
            </label>
          )}
          <div class="button-row">
            <button type="button" class="button" disabled={!wanted} onClick={() => wanted && void ask(wanted)}>
              Which swatches tell me most?
            </button>
          </div>
          <p>
            <a href={`#${full}`}>Or plan a full design</a>, if you want to publish what you find.
          </p>
        </div>
        <div class="bench-answer" aria-live="polite">
          {busy && <p>Working it out…</p>}
          {!busy && told && <Suggestions told={told} onBegin={(i) => void begin(i)} />}
          {missed && !told && (
            <p class="field-error">This part could not be fetched. Press the button to try once more.</p>
          )}
          {failed && <p class="field-error">This browser did not keep the trial, so it cannot be run from here.</p>}
          {!told && !busy && (
            <p>Choose, and press the button: what is shown here is which swatches would tell you most.</p>
          )}
        </div>
      </div>
    </section>
  );
}

/** The adhesives that stand in most workshops: a list of all would be read by nobody. */
const SHOWN = new Set([
  'pva',
  'pva-thick',
  'eva',
  'pva-mc-1-1',
  'methylcellulose-2-5',
  'methylcellulose-4',
  'wheat-starch-paste-thin',
  'wheat-starch-paste-12',
  'pva-paste',
  'paste-mc',
]);

function Suggestions({ told, onBegin }: { readonly told: Told; readonly onBegin: (i: number) => void }) {
  const { wrong, swatches, settled } = told.next;
  return (
    <div class="plate">
      <p>
        As things stand: <strong>{told.firstName}</strong>. On {chanceInTen(wrong).replace('about ', '')} benches like
        yours another of these would do better
        {told.swatches > 0
          ? `; ${told.swatches} ${told.swatches === 1 ? 'swatch on this device is' : 'swatches on this device are'} counted in`
          : ''}
        .
      </p>
      {settled ? (
        <p>
          Stop here: none of the swatches that you could make would be likely to change that. Take {told.firstName}.
        </p>
      ) : (
        <>
          <p>Most worth making, the best first. Four swatches alike take some ten minutes.</p>
          <ol>
            {swatches.map((one, i) => (
              <li key={told.says[i]}>
                {told.says[i]}. It comes up clean {chanceInTen(one.clean)}; four of them lower the chance of a wrong
                choice from {percentOf(wrong)} to {percentOf(Math.max(0, wrong - one.settles))}.{' '}
                <button type="button" class="button" onClick={() => onBegin(i)}>
                  Make it now
                </button>
              </li>
            ))}
          </ol>
        </>
      )}
    </div>
  );
}

const percentOf = (share: number) => `${Math.round(share * 100)}\u00a0%`;
