/** How much of what: the best ratio for the job, as a curve, in words, and with the way to the mixer. */
import { useStore } from '@nanostores/preact';
import { useEffect, useState } from 'preact/hooks';
import { keepUnits } from '../../core/base/format';
import type { ChooseRestStore } from '../../stores/choose/choose-rest';
import type { MakingLink, Ratios } from '../../stores/choose/ratio';
import { Fold } from '../parts/Fold';
import { SelectField } from '../parts/Field';
import { RatioPlate } from '../parts/RatioPlate';

interface Props {
  readonly store: ChooseRestStore;
  /** worked out at build for the start job */
  readonly atStart: Ratios | undefined;
  /** path of the mixing calculator */
  readonly mixAt: string;
}

/** Milliseconds without a change before it is worked out. */
const PAUSE = 400;

/** Follows the job: what was found for it, undefined where nothing can be mixed, 'looking' until it is known. */
function useRatios(store: ChooseRestStore, atStart: Ratios | undefined): Ratios | undefined | 'looking' {
  const [found, setFound] = useState<Ratios | undefined | 'looking'>(() => (store.isAtStart() ? atStart : 'looking'));
  useEffect(() => {
    let timer: ReturnType<typeof setTimeout> | undefined;
    let stop = () => {};
    const look = () => {
      clearTimeout(timer);
      stop();
      setFound('looking');
      timer = setTimeout(() => {
        const choices = store.$choices.get();
        void import('../../stores/choose/ratio').then(({ lookForRatios }) => {
          // by the time that it has come, the job may be another
          if (store.$choices.get() === choices)
            stop = lookForRatios(choices[0]!, store.$job.get(), store.catalogue, setFound, store.learned());
        });
      }, PAUSE);
    };
    if (!store.isAtStart()) look();
    const forget = store.$choices.listen(look);
    return () => {
      clearTimeout(timer);
      stop();
      forget();
    };
  }, []);
  return found;
}

export function RatioSection({ store, atStart, mixAt }: Props) {
  const found = useRatios(store, atStart);
  const { kind } = useStore(store.$choices)[0]!;
  const [picked, pick] = useState('');
  const mixed = /vinyl|ether|starch/.test(kind);
  return (
    <Fold title={mixed ? 'How much of what: the best mix' : 'If you would rather mix something'} open={mixed}>
      {found === 'looking' ? (
        <p>Trying sixty mixes for this job.</p>
      ) : !found ? (
        <p>Nothing can be mixed from what you have ticked. PVA and methylcellulose powder would make a start.</p>
      ) : (
        <RatioBody found={found} picked={picked} pick={pick} mixAt={mixAt} />
      )}
    </Fold>
  );
}

interface BodyProps {
  readonly found: Ratios;
  readonly picked: string;
  readonly pick: (pair: string) => void;
  readonly mixAt: string;
}

const ALL = 'all';

function RatioBody({ found, picked, pick, mixAt }: BodyProps) {
  const { pairs, three } = found;
  const nameOf = ({ of, with: rest }: (typeof pairs)[number]) => `${of} and ${rest}`;
  const pair = pairs.find((one) => nameOf(one) === picked) ?? pairs[0]!;
  const options = [
    ...pairs.map((one) => ({ value: nameOf(one), text: nameOf(one) })),
    ...(three ? [{ value: ALL, text: 'all three in one pot' }] : []),
  ];
  const all = picked === ALL ? three : undefined;
  return (
    <>
      {options.length > 1 && (
        <div class="no-print">
          <SelectField
            id="ch-ratio"
            label="What you would mix"
            value={all ? ALL : nameOf(pair)}
            options={options}
            onPick={pick}
          />
        </div>
      )}
      {all ? (
        <p class="ratio-advice">
          <strong>{keepUnits(all.sentence)}</strong> {all.amount}
        </p>
      ) : (
        <>
          <p class="ratio-advice">
            <strong>{keepUnits(pair.advice)}</strong> {pair.leeway} {pair.amount}
          </p>
          <figure class="plate">
            <div class="plate-body">
              <RatioPlate {...pair} rest={pair.with} />
            </div>
            <figcaption class="plate-caption">
              The chance that it works, by how much of it is {pair.of} (parts by volume). Shaded: about as good as the
              best. Each mix by the way that suits it; at the mark, glue on {pair.way}.
            </figcaption>
          </figure>
        </>
      )}
      <Makings makings={(all ?? pair).makings} mixAt={mixAt} />
    </>
  );
}

function Makings({ makings, mixAt }: { readonly makings: readonly MakingLink[]; readonly mixAt: string }) {
  if (makings.length === 0) return null;
  return (
    <p class="next-steps no-print">
      {makings.map(({ text, tail }) => (
        <a key={tail} class="button-quiet" href={`${mixAt}?${tail}`}>
          {text}
        </a>
      ))}
    </p>
  );
}
