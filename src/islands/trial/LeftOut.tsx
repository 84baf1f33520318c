/** What a link to a swatch trial asks for in vain; fetched where a plan was opened by a link. */
import { leftOutOf } from '../../core/trial/left-out';
import type { ShelfNames } from '../../core/trial/plan-link';
import { LinkSaid } from '../parts/LinkSaid';

export const LeftOut = ({ tail, names }: { readonly tail: string; readonly names: ShelfNames }) => (
  <LinkSaid dropped={leftOutOf(tail, names)} />
);
