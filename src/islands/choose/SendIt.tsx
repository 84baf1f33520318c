/** Sending the chooser's answer on. */
import { useStore } from '@nanostores/preact';
import type { ChooseStore } from '../../stores/choose/choose';
import { SendLink } from '../parts/SendLink';

interface Props {
  readonly store: ChooseStore;
  /** path of the chooser's page */
  readonly address: string;
}

export function SendIt({ store, address }: Props) {
  return <SendLink id="ch-link" address={address} tail={useStore(store.$tail)} />;
}
