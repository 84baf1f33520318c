/** Where one's own trials get their say; absent where there are none. */
import { useStore } from '@nanostores/preact';
import type { ComponentChildren } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import type { ChoosePageStore } from '../../stores/choose/choose-page';

const TRIAL_KEY = 'open-time:trial:';

/** Whether there are swatch trials on this device. */
export function hasTrials(): boolean {
  try {
    return Object.keys(window.localStorage).some((key) => key.startsWith(TRIAL_KEY));
  } catch {
    return false;
  }
}

interface Props {
  readonly store: ChoosePageStore;
  /** path of the trial pages */
  readonly trialsAt: string;
}

/** Everything that weighs swatches is fetched here, and only where there are some. */
export function OwnTrials({ store, trialsAt }: Props) {
  const [panel, setPanel] = useState<ComponentChildren>(null);
  // what the link brought, read before the address was first written
  const sent = useStore(store.$sentEvidence);
  useEffect(() => {
    if (sent === null || (sent === undefined && !hasTrials())) return;
    void import('./OwnTrialsPanel').then(({ openPanel }) => setPanel(openPanel(store, sent, trialsAt)));
  }, [sent]);
  return <>{panel}</>;
}

/** Beside the answer: that swatches have a say in it, and where that is laid out. */
export function OwnTrialsNote({ store }: Pick<Props, 'store'>) {
  return useStore(store.$adjust) ? (
    <p>
      Swatch trials have a say in this answer: <a href="#own-trials">see the model alone beside it</a>.
    </p>
  ) : null;
}
