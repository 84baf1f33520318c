/** A clock for the first place, where it leaves time to look at one. */
import { useStore } from '@nanostores/preact';
import { isWorthAClock } from '../../core/base/clock-text';
import type { ChooseStore } from '../../stores/choose/choose';
import { SlipTimer } from '../parts/SlipTimer';

export function SlipOfBest({ store }: { readonly store: Pick<ChooseStore, '$choices'> }) {
  const { verdict, slipSeconds } = useStore(store.$choices)[0]!;
  const { p10, p90 } = slipSeconds;
  if (verdict === 'ruled-out' || !isWorthAClock(p10)) return null;
  return <SlipTimer low={p10} high={p90} />;
}
