/** The cuts of one sheet in an order that a person can follow at the board; parts that are alike are cut alike. */
import { inUnit, type LengthUnit } from '../base/length-text';
import type { SheetPart, SheetPlan } from './layout-types';

export interface CutLine {
  readonly x1: number;
  readonly y1: number;
  readonly x2: number;
  readonly y2: number;
}

export interface CutStep {
  /** from 1; the drawing bears it beside each line */
  readonly number: number;
  readonly text: string;
  /** in every part that this step cuts, mm */
  readonly lines: readonly CutLine[];
}

type Names = (piece: number) => string;

/** A text that parts share which are cut in the same way into the same. */
function likeness({ width, height, becomes }: SheetPart): string {
  const size = `${Math.round(width * 100)}×${Math.round(height * 100)}`;
  if (becomes.kind === 'offcut') return `-${size}`;
  if (becomes.kind === 'piece') return `p${becomes.placement.piece}${becomes.placement.turned ? 't' : ''}`;
  return `${becomes.axis}${size}(${becomes.parts.map(likeness).join()})`;
}

/** Neighbours that are alike, together: said in the order in which they lie. */
function runsOf(parts: readonly SheetPart[]): readonly (readonly SheetPart[])[] {
  const runs: SheetPart[][] = [];
  for (const part of parts) {
    const last = runs.at(-1);
    if (last && likeness(last[0]!) === likeness(part)) last.push(part);
    else runs.push([part]);
  }
  return runs;
}

/** A, B … Z, AA, AB …: the name of the n-th part to be cut further. */
export const letter = (n: number): string =>
  (n >= 26 ? letter(Math.floor(n / 26) - 1) : '') + String.fromCharCode(65 + (n % 26));

/**
 * The steps. `name` says a piece in words: "1 (front board)". Distances are from the left or the top edge of the part
 * that is cut, as drawn; with a kerf they are to its near side.
 */
export function cutOrder({ part }: SheetPlan, name: Names, unit: LengthUnit): readonly CutStep[] {
  const steps: CutStep[] = [];
  const mm = (value: number): string => inUnit(value, unit);
  let letters = 0;

  const take = (parts: readonly SheetPart[], called: string): void => {
    const [one] = parts;
    if (one?.becomes.kind !== 'cut') return;
    const { axis, at } = one.becomes;
    const runs = runsOf(one.becomes.parts);
    const named = new Map<string, string>();
    const next: [readonly SheetPart[], string][] = [];
    const yields = runs.map((group) => {
      const [first] = group;
      const { becomes, width, height } = first!;
      const size = `${mm(width)} × ${mm(height)} ${unit}`;
      const times = group.length;
      if (becomes.kind === 'piece') return `${times > 1 ? `${times} × ` : ''}piece ${name(becomes.placement.piece)}`;
      if (becomes.kind === 'offcut') return times > 1 ? `${times} offcuts of ${size}` : `an offcut of ${size}`;
      const like = likeness(first!);
      const known = named.get(like);
      const own = known ?? letter(letters++);
      if (known === undefined) {
        named.set(like, own);
        // The same parts of every part that is cut alike.
        next.push([parts.flatMap((each) => sameIn(each, like)), own]);
      }
      return times > 1 ? `${times} parts ${own}, each ${size}` : `part ${own}, ${size}`;
    });
    const edge = axis === 'x' ? 'left' : 'top';
    const way = axis === 'x' ? 'from top to bottom' : 'from side to side';
    const places = `${listed(at.map(mm))} ${unit} from ${parts.length > 1 || called === 'the sheet' ? 'the' : 'its'} ${edge} edge`;
    const what = parts.length > 1 ? `each of the ${parts.length} parts ${called}` : called;
    steps.push({
      number: steps.length + 1,
      text: `Cut ${what} ${way}, ${places}: ${listed(yields)}${parts.length > 1 ? ', from each' : ''}.`,
      lines: parts.flatMap((each) => linesOf(each)),
    });
    for (const [group, own] of next) take(group, group.length > 1 ? own : `part ${own}`);
  };
  if (part.x > 0) steps.push({ number: 1, text: `Trim ${mm(part.x)} ${unit} off each of the four edges.`, lines: [] });
  take([part], 'the sheet');
  return steps;
}

const sameIn = ({ becomes }: SheetPart, like: string): readonly SheetPart[] =>
  becomes.kind === 'cut' ? becomes.parts.filter((part) => likeness(part) === like) : [];

function linesOf({ x, y, width, height, becomes }: SheetPart): CutLine[] {
  if (becomes.kind !== 'cut') return [];
  return becomes.at.map((at) =>
    becomes.axis === 'x'
      ? { x1: x + at, y1: y, x2: x + at, y2: y + height }
      : { x1: x, y1: y + at, x2: x + width, y2: y + at },
  );
}

/** "a", "a and b", "a, b and c". */
export const listed = (words: readonly string[]): string =>
  words.length < 2 ? words.join('') : `${words.slice(0, -1).join(', ')} and ${words.at(-1)!}`;
