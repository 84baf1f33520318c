/** Trust where it is needed: whether the model was wrong about this very pair when it was asked blind. */
import { useStore } from '@nanostores/preact';
import { blindFor, blindSentence, type Blind } from '../../core/choose/blind';
import type { ChooseStore } from '../../stores/choose/choose';

export type { Blind };

interface Props {
  readonly store: ChooseStore;
  readonly blind: readonly Blind[];
  /** path of the page that shows the checks */
  readonly checks: string;
}

export function BlindNote({ store, blind, checks }: Props) {
  const best = useStore(store.$choices)[0]!;
  const job = useStore(store.$job);
  const found = blindFor(blind, best, job, store.catalogue);
  if (!found) return null;
  return (
    <p class="blind-note">
      <strong>Swatch this one.</strong> {blindSentence(found)} <a href={checks}>How we check</a>.
    </p>
  );
}
