/** What a person asks for, held against an adhesive's traits. Traits are common practice from the records; the shares are judgements of ours. */
import type { Need } from './job';
import { heatAtBench } from '../adhesive/natures';
import type { Adhesive } from '../records/records';
import type { Nature } from '../safety/hazards';

/** How a need speaks: takes a share off, rules out, or counts in favour. */
export interface Verdicts {
  readonly off: (left: number, code: string, text: string) => void;
  readonly out: (code: string, text: string) => void;
  readonly pro: (code: string, text: string) => void;
}

/** What makes an adhesive unfit for children: the first of what it has. */
const notForChildren = (adhesive: Adhesive, natures: readonly Nature[]): string =>
  heatAtBench(adhesive)
    ? 'heat at the bench'
    : natures.includes('fungicide')
      ? 'it may hold a poison against mould'
      : 'harmful fumes';

/** `scalds`: somebody has to handle a hot liquid, even if only to make it up. `natures`: of all that is in it. */
export function askedFor(
  adhesive: Adhesive,
  needs: ReadonlySet<Need>,
  { off, out, pro }: Verdicts,
  { scalds, natures }: { readonly scalds: boolean; readonly natures: readonly Nature[] },
): void {
  if (needs.has('undo')) {
    if (adhesive.undoneWithWater === 'no') out('undo', 'It cannot be undone with water, and you need that.');
    else if (adhesive.undoneWithWater === 'partly') off(0.5, 'undo', 'It comes undone with water only in part.');
    else pro('undo', 'Water undoes it.');
  }
  if (needs.has('long-lived')) {
    if (adhesive.longLived === 'no') out('long-lived', 'It does not last: it yellows, stains or lets go with age.');
    else if (adhesive.longLived === 'partly')
      off(0.9, 'long-lived', 'How well it ages depends on the make: look for one that is acid-free.');
    else pro('long-lived', 'It is acid-free and ages well.');
  }
  if (needs.has('flexes') && adhesive.flexes !== 'yes') {
    off(
      adhesive.flexes === 'partly' ? 0.85 : 0.6,
      'flexes',
      adhesive.flexes === 'partly'
        ? 'It flexes less well than a vinyl film.'
        : 'It dries stiff and may crack where it bends.',
    );
  }
  if (needs.has('damp') && adhesive.bearsDamp !== 'yes') {
    off(
      adhesive.bearsDamp === 'partly' ? 0.85 : 0.5,
      'damp',
      adhesive.bearsDamp === 'partly' ? 'Damp softens it.' : 'Damp lets it go, or grows mould on it.',
    );
  }
  if (needs.has('strong') && adhesive.hold.porous < 0.8) off(0.7, 'strong', 'It is a weak adhesive by itself.');
  if (needs.has('children')) {
    if (adhesive.childSafe === 'no') out('children', `Not for children: ${notForChildren(adhesive, natures)}.`);
    else if (adhesive.childSafe === 'partly') off(0.8, 'children', 'An adult prepares it; children can use it.');
    else if (adhesive.needsHeat) off(0.9, 'children', 'An adult cooks it, away from the children; they use it cold.');
    else if (scalds)
      off(0.95, 'children', 'An adult makes the jelly with hot water, away from the children; they use it cold.');
  }
  if (needs.has('no-heat')) {
    if (heatAtBench(adhesive)) out('no-heat', 'It needs heat at the bench.');
    else if (adhesive.needsHeat) off(0.6, 'no-heat', 'It has to be cooked first, though it is used cold.');
    else if (scalds)
      off(
        0.9,
        'no-heat',
        'Its powder is wetted with hot water. Without any, sift it on cold water, leave it for two days and sieve it.',
      );
  }
}
