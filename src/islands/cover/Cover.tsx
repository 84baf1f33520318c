/** The coverage calculator: how much adhesive the pieces take, as a range with a figure to have in hand. */
import { useStore } from '@nanostores/preact';
import { useLayoutEffect, useMemo } from 'preact/hooks';
import type { FlatFacts } from '../../core/cover/answer';
import { DEFAULT_COVER } from '../../core/cover/plan';
import { openCover } from '../../stores/cover/open-cover';
import { mixTold } from '../../stores/mix/mix-tail';
import { CopiesFields } from './ClassFields';
import { CoverDetails, CoverPieces } from './CoverDetails';
import { CoatFields, ThingFields } from './CoverFields';
import { CoverResult } from './CoverResult';
import { Cautions, type CautionText } from '../parts/Cautions';
import { PlanBench } from '../parts/PlanBench';

interface Props {
  /** path of this calculator's own page */
  readonly address: string;
  /** worked out at build for the first answer; the model that reckons the others follows after */
  readonly flat: FlatFacts;
  readonly cautions: Readonly<Record<string, CautionText>>;
  /** which of them making, using and keeping each adhesive calls for, by its id */
  readonly hurts: Readonly<Record<string, readonly string[]>>;
}

const prefix = 'cover-';

export default function Cover({ address, flat, cautions, hurts }: Props) {
  const store = useMemo(() => openCover((plan) => (plan === DEFAULT_COVER ? flat : undefined)), []);
  const $tells = useMemo(() => mixTold(store), []);
  const { answer, plan } = useStore(store.$solved);
  // Before the frame reads the link, which is in an effect of its own.
  useLayoutEffect(() => {
    // The model is fetched when something else is asked than what the build has answered: by a link, or by hand.
    const stop = store.$texts.listen(() => {
      stop();
      void import('../../core/handover/cover-flat').then(({ flatFacts }) => store.learn(flatFacts));
    });
    return stop;
  }, []);

  return (
    <PlanBench
      room="cover"
      $tells={$tells}
      store={store}
      prefix={prefix}
      address={address}
      brief={answer.brief}
      asked={answer.asked}
      inputs={
        <>
          <ThingFields store={store} prefix={prefix} />
          <CoatFields store={store} prefix={prefix} />
          <CopiesFields store={store} prefix={prefix} />
        </>
      }
      answer={
        <>
          <CoverResult store={store} />
          <CoverPieces store={store} />
        </>
      }
      rest={
        <>
          <Cautions ids={hurts[plan.adhesive] ?? []} texts={cautions} />
          <CoverDetails store={store} />
        </>
      }
    />
  );
}
