/** Sending the chooser's answer on. */
import { useStore } from '@nanostores/preact';
import type { ChooseRestStore } from '../../stores/choose/choose-rest';
import { SendLink } from '../parts/SendLink';

interface Props {
  readonly store: ChooseRestStore;
  /** path of the chooser's page */
  readonly address: string;
}

export function SendIt({ store, address }: Props) {
  return <SendLink id="ch-link" address={address} tail={useStore(store.$tail)} />;
}
