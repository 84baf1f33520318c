/** One sheet fewer: the pieces of a plan's poorest sheets packed anew into one sheet less, as often as it can be done. */
import type { InTurns } from '../base/turns';
import { seededUniform } from '../base/random';
import { grouped, type Best } from './layout-best';
import { piecesHeld } from './layout-bound';
import type { StepBudget } from './layout-fill';
import { packInto } from './layout-forest';
import type { Pattern } from './layout-tree';
import type { PieceKind, Cuttable } from './layout-units';

/** More pieces than these at once are too many to find a place for each in the steps there are. */
export const MOST_REPACKED = 60;
/** Choices of sheets tried in one plan before it is left as it is. */
const MOST_TRIES = 8;

/** Offers plans to `best` until one reaches `bound`, nothing is left to try, or the steps run out. */
export function* repack(
  kinds: readonly PieceKind[],
  room: Cuttable,
  bound: number,
  best: Best,
  steps: StepBudget,
  seed = 1,
): InTurns<undefined> {
  const draw = seededUniform(seed);
  const whole = room.w * room.h;
  let tried = 0;
  while (best.sheets > bound && steps.left > 0 && tried < MOST_TRIES) {
    const sheets = sheetsOf(best, kinds);
    const order = tried === 0 ? sheets : [sheets[0]!, ...shuffled(sheets.slice(1), draw)];
    const some = atMost(order, MOST_REPACKED);
    const all = some.length === sheets.length;
    tried = all ? MOST_TRIES : tried + 1;
    if (some.length < 2 || some.reduce((sum, { area }) => sum + area, 0) > (some.length - 1) * whole) continue;
    const pieces = some.flatMap(({ counts }) => counts.flatMap((n, k) => Array.from({ length: n }, () => k)));
    const own: StepBudget = { left: all ? steps.left : Math.min(steps.left, OWN_SHARE * steps.left) };
    const given = own.left;
    const packed = yield* packInto(some.length - 1, pieces, kinds, room, own, seed);
    steps.left -= given - own.left;
    if (!packed) continue;
    best.offer(grouped([...sheets.filter((sheet) => !some.includes(sheet)), ...packed]));
    tried = 0;
  }
  return undefined;
}

/** Of the steps left, what one choice of sheets may take. */
const OWN_SHARE = 0.3;

/** Every sheet of the plan by itself, the poorest first. */
const sheetsOf = (best: Best, kinds: readonly PieceKind[]): readonly Pattern[] =>
  best.plan
    .flatMap(({ tree, times }) => {
      const counts = piecesHeld(tree, kinds);
      const area = counts.reduce((sum, n, k) => sum + n * kinds[k]!.area, 0);
      return Array.from({ length: times }, (): Pattern => ({ tree, counts, area }));
    })
    .sort((a, b) => a.area - b.area);

/** The first so many whose pieces are no more than `most`; what has too many by itself is passed over. */
function atMost(sheets: readonly Pattern[], most: number): readonly Pattern[] {
  let pieces = 0;
  return sheets.filter(({ counts }) => {
    const more = counts.reduce((sum, n) => sum + n, 0);
    if (pieces + more > most) return false;
    pieces += more;
    return true;
  });
}

function shuffled<T>(all: readonly T[], draw: () => number): readonly T[] {
  const next = [...all];
  for (let i = next.length - 1; i > 0; i -= 1) {
    const j = Math.floor(draw() * (i + 1));
    [next[i], next[j]] = [next[j]!, next[i]!];
  }
  return next;
}
