/**
 * All of the pieces on so many sheets, or not at all: the search for jobs that the rules leave a sheet too many for.
 *
 * Straight cuts make a tree: a rectangle is parted in two, each part again, down to the pieces. The search changes which
 * pieces are together in such trees, one for each sheet, and asks of every part of a tree all the rectangles that it
 * could be cut from: how a piece lies and which way a cut runs stay open, and are settled by the smallest of those
 * rectangles (shape curves: Otten 1982, Stockmeyer 1983; from memory). What juts out over the sheets is the cost, and is
 * brought down by annealing (Wong & Liu 1986; from memory).
 */
import type { InTurns } from '../base/turns';
import { seededUniform } from '../base/random';
import type { StepBudget } from './layout-fill';
import { within, type Pattern, type Tree } from './layout-tree';
import type { PieceKind, Cuttable } from './layout-units';

/** Rectangles kept of one part of a tree: with more of them a change costs more and finds hardly more. */
const MOST_RECTANGLES = 8;
/** A rectangle longer than this share of the sheet's side is not worth keeping, even on the way. */
const MAY_JUT = 1.08;
/** Changes tried for each piece in one run; after that the next run begins anew. */
const CHANGES = 1500;
/** What a change may cost when a run begins and when it ends, as a share of a sheet. Found by trying. */
const [HOT, COLD] = [0.005, 0.0002];
/** Changes in one turn: under a millisecond on a desk computer. */
const TURN = 200;
const NONE = -1;

/** Rectangles that a part of a tree can be cut from: narrowest first, none within another. */
class Rectangles {
  readonly w: Float64Array;
  readonly h: Float64Array;
  size = 0;
  /** of the pieces in the part */
  area = 0;

  constructor(most: number) {
    this.w = new Float64Array(most);
    this.h = new Float64Array(most);
  }

  add(w: number, h: number): void {
    this.w[this.size] = w;
    this.h[this.size] = h;
    this.size += 1;
  }

  remove(at: number): void {
    this.size -= 1;
    for (let i = at; i < this.size; i += 1) {
      this.w[i] = this.w[i + 1]!;
      this.h[i] = this.h[i + 1]!;
    }
  }

  get mostWasteful(): number {
    let worst = 0;
    for (let i = 1; i < this.size; i += 1) if (this.w[i]! * this.h[i]! > this.w[worst]! * this.h[worst]!) worst = i;
    return worst;
  }
}

/**
 * Trees of pieces, one a sheet. Nodes are numbered: a leaf for each piece, then the joints of two nodes, then the
 * sheets, each of which holds a tree as its first.
 */
class Forest {
  private readonly first: Int32Array;
  private readonly second: Int32Array;
  private readonly above: Int32Array;
  /** the number of the first sheet, and so of all leaves and joints */
  private readonly inTrees: number;
  /** of each node two sets by turns: the one that holds now, and the one before the last change, should it be undone */
  private readonly sets: readonly Rectangles[];
  private readonly now: Uint8Array;
  private readonly changed: number[] = [];
  private readonly marks: Int32Array;
  private mark = 0;
  private readonly beside = new Rectangles(2 * MOST_RECTANGLES);
  private readonly below = new Rectangles(2 * MOST_RECTANGLES);
  private readonly both = new Rectangles(4 * MOST_RECTANGLES);
  /** no part of a plan can waste more */
  private readonly mostWaste: number;
  private readonly mostWide: number;
  private readonly mostHigh: number;
  /** what juts out of each sheet, as a share of one */
  private readonly jut: Float64Array;
  cost = 0;

  constructor(
    private readonly pieces: readonly number[],
    private readonly kinds: readonly PieceKind[],
    private readonly room: Cuttable,
    sheets: number,
    private readonly steps: StepBudget,
  ) {
    this.inTrees = 2 * pieces.length - sheets;
    const nodes = this.inTrees + sheets;
    this.first = new Int32Array(nodes).fill(NONE);
    this.second = new Int32Array(nodes).fill(NONE);
    this.above = new Int32Array(nodes).fill(NONE);
    this.sets = Array.from({ length: 2 * this.inTrees }, () => new Rectangles(MOST_RECTANGLES));
    this.now = new Uint8Array(nodes);
    this.marks = new Int32Array(nodes);
    this.jut = new Float64Array(sheets);
    this.mostWaste = sheets * room.w * room.h - pieces.reduce((sum, k) => sum + kinds[k]!.area, 0);
    this.mostWide = room.w * MAY_JUT;
    this.mostHigh = room.h * MAY_JUT;
    this.plant(sheets);
  }

  /** Largest pieces first, each joined to the sheet that holds least. */
  private plant(sheets: number): void {
    const { pieces, kinds, inTrees } = this;
    pieces.forEach((k, leaf) => {
      for (const set of [this.sets[2 * leaf]!, this.sets[2 * leaf + 1]!]) {
        for (const { w, h } of [...kinds[k]!.ways].sort((a, b) => a.w - b.w)) set.add(w, h);
        set.area = kinds[k]!.area;
      }
    });
    const filled = new Float64Array(sheets);
    const areaOf = (leaf: number): number => kinds[pieces[leaf]!]!.area;
    let joint = pieces.length;
    for (const leaf of pieces.map((_, i) => i).sort((a, b) => areaOf(b) - areaOf(a) || a - b)) {
      const s = filled.indexOf(Math.min(...filled));
      filled[s]! += areaOf(leaf);
      const root = this.first[inTrees + s]!;
      if (root === NONE) this.hang(leaf, inTrees + s, 'first');
      else {
        this.hang(root, joint, 'first');
        this.hang(leaf, joint, 'second');
        this.hang(joint, inTrees + s, 'first');
        this.grow(joint);
        joint += 1;
      }
    }
    for (let s = 0; s < sheets; s += 1) this.cost += this.jut[s] = this.jutOf(s);
  }

  private set(node: number): Rectangles {
    return this.sets[2 * node + this.now[node]!]!;
  }

  private hang(node: number, above: number, as: 'first' | 'second'): void {
    this[as][above] = node;
    this.above[node] = above;
  }

  private placeOf(node: number): 'first' | 'second' {
    return this.first[this.above[node]!] === node ? 'first' : 'second';
  }

  /** The rectangles of a joint: its two parts side by side, and one below the other. */
  private grow(joint: number): void {
    const { beside, below } = this;
    const [a, b] = [this.set(this.first[joint]!), this.set(this.second[joint]!)];
    beside.size = below.size = 0;
    // Of two side by side the higher gives way, by its next rectangle, which is lower and wider.
    for (let i = 0, j = 0; i < a.size && j < b.size;) {
      const [ah, bh] = [a.h[i]!, b.h[j]!];
      beside.add(a.w[i]! + b.w[j]!, ah > bh ? ah : bh);
      if (ah >= bh) i += 1;
      if (bh >= ah) j += 1;
    }
    for (let i = a.size - 1, j = b.size - 1; i >= 0 && j >= 0;) {
      const [aw, bw] = [a.w[i]!, b.w[j]!];
      below.add(aw > bw ? aw : bw, a.h[i]! + b.h[j]!);
      if (aw >= bw) i -= 1;
      if (bw >= aw) j -= 1;
    }
    this.steps.left -= beside.size + below.size + 4;
    this.now[joint]! ^= 1;
    this.changed.push(joint);
    const set = this.set(joint);
    set.area = a.area + b.area;
    this.keepBest(set);
  }

  /** Of `beside` and `below` what is not within another, nor too wasteful or too long to be of use; one at least. */
  private keepBest(set: Rectangles): void {
    const { beside, below, both, mostWide, mostHigh } = this;
    const most = set.area + this.mostWaste;
    both.size = 0;
    let lowest = Infinity;
    let least = Infinity;
    let [leastW, leastH] = [0, 0];
    for (let i = 0, j = below.size - 1; i < beside.size || j >= 0;) {
      const takesBeside = j < 0 || (i < beside.size && beside.w[i]! <= below.w[j]!);
      const w = takesBeside ? beside.w[i]! : below.w[j]!;
      const h = takesBeside ? beside.h[i]! : below.h[j]!;
      if (takesBeside) i += 1;
      else j -= 1;
      if (h >= lowest) continue;
      if (w * h < least) [least, leastW, leastH] = [w * h, w, h];
      if (w * h > most || w > mostWide || h > mostHigh) continue;
      if (both.size > 0 && both.w[both.size - 1] === w) both.size -= 1;
      both.add(w, h);
      lowest = h;
    }
    if (both.size === 0) both.add(leastW, leastH);
    while (both.size > MOST_RECTANGLES) both.remove(both.mostWasteful);
    set.size = 0;
    for (let i = 0; i < both.size; i += 1) set.add(both.w[i]!, both.h[i]!);
  }

  private jutOf(s: number): number {
    const { w, h } = this.room;
    const root = this.first[this.inTrees + s]!;
    if (root === NONE) return 0;
    const set = this.set(root);
    let least = Infinity;
    for (let i = 0; i < set.size; i += 1) {
      const jut = Math.max(0, set.w[i]! - w) / w + Math.max(0, set.h[i]! - h) / h;
      if (jut < least) least = jut;
    }
    return least;
  }

  /** Grows a node and all above it. */
  private growFrom(node: number): void {
    for (let at = node; at < this.inTrees; at = this.above[at]!) this.grow(at);
  }

  /** The same for two, and for what is above both but once. */
  private growFromBoth(one: number, other: number): void {
    this.mark += 1;
    for (let at = one; at < this.inTrees; at = this.above[at]!) this.marks[at] = this.mark;
    for (let at = other; at < this.inTrees && this.marks[at] !== this.mark; at = this.above[at]!) this.grow(at);
    this.growFrom(one);
  }

  private isWithin(node: number, whole: number): boolean {
    for (let at = node; at < this.inTrees; at = this.above[at]!) if (at === whole) return true;
    return false;
  }

  private sheetOf(node: number): number {
    let at = node;
    while (at < this.inTrees) at = this.above[at]!;
    return at - this.inTrees;
  }

  private exchange(a: number, b: number): void {
    const [aboveA, asA, aboveB, asB] = [this.above[a]!, this.placeOf(a), this.above[b]!, this.placeOf(b)];
    this.hang(b, aboveA, asA);
    this.hang(a, aboveB, asB);
  }

  /** Two parts change places, unless a chance that falls with `warmth` speaks against the cost. */
  tryExchange(a: number, b: number, warmth: number, chance: number): void {
    const [aboveA, aboveB] = [this.above[a]!, this.above[b]!];
    if (aboveA === aboveB || this.isWithin(a, b) || this.isWithin(b, a) || this.areAlike(a, b)) return;
    this.changed.length = 0;
    this.exchange(a, b);
    this.growFromBoth(aboveA, aboveB);
    if (!this.settle(this.sheetOf(a), this.sheetOf(b), warmth, chance)) this.exchange(a, b);
  }

  /** A part leaves its place and is joined to another. */
  tryMove(a: number, b: number, warmth: number, chance: number): void {
    const joint = this.above[a]!;
    if (joint >= this.inTrees || joint === b || this.above[b] === joint || this.isWithin(b, a)) return;
    this.changed.length = 0;
    const left = this.first[joint] === a ? this.second[joint]! : this.first[joint]!;
    const [asA, asLeft] = [this.placeOf(a), this.placeOf(left)];
    const [above, asJoint] = [this.above[joint]!, this.placeOf(joint)];
    this.hang(left, above, asJoint);
    const [aboveB, asB] = [this.above[b]!, this.placeOf(b)];
    this.hang(joint, aboveB, asB);
    this.hang(b, joint, asLeft);
    this.growFromBoth(joint, above);
    if (this.settle(this.sheetOf(a), this.sheetOf(left), warmth, chance)) return;
    this.hang(b, aboveB, asB);
    this.hang(joint, above, asJoint);
    this.hang(a, joint, asA);
    this.hang(left, joint, asLeft);
  }

  private areAlike(a: number, b: number): boolean {
    return a < this.pieces.length && b < this.pieces.length && this.pieces[a] === this.pieces[b];
  }

  /** Takes the change on two sheets, or gives every node back what it was. */
  private settle(s: number, t: number, warmth: number, chance: number): boolean {
    const [jutS, jutT] = [this.jutOf(s), s === t ? 0 : this.jutOf(t)];
    const cost = this.cost - this.jut[s]! - (s === t ? 0 : this.jut[t]!) + jutS + jutT;
    if (cost > this.cost && chance >= Math.exp((this.cost - cost) / warmth)) {
      for (const node of this.changed) this.now[node]! ^= 1;
      return false;
    }
    this.cost = cost;
    this.jut[s] = jutS;
    if (s !== t) this.jut[t] = jutT;
    return true;
  }

  get parts(): number {
    return this.inTrees;
  }

  /** Whether nothing juts out. Asked of the sheets themselves: the cost is a sum of many small changes. */
  get fits(): boolean {
    return this.cost < 1e-9 && this.jut.every((_, s) => this.jutOf(s) === 0);
  }

  /** The sheets as they are cut, once all fits. */
  patterns(): Pattern[] {
    return Array.from(this.jut, (_, s) => this.first[this.inTrees + s]!)
      .filter((root) => root !== NONE)
      .map((root) => {
        const counts = this.kinds.map(() => 0);
        const tree = this.cutOut(root, counts);
        return { tree, counts, area: this.set(root).area };
      });
  }

  /** A whole tree out of the sheet: of the rectangles that fit, the one that leaves the biggest offcut. */
  private cutOut(root: number, counts: number[]): Tree {
    const { room } = this;
    const set = this.set(root);
    let [best, most] = [0, -1];
    for (let i = 0; i < set.size; i += 1) {
      const [w, h] = [set.w[i]!, set.h[i]!];
      const left = Math.max((room.w - w) * room.h, (room.h - h) * room.w);
      if (w <= room.w && h <= room.h && left > most) [best, most] = [i, left];
    }
    const [w, h] = [set.w[best]!, set.h[best]!];
    return within(this.cut(root, w, h, counts), w, h, room.w, room.h);
  }

  /** A part of a tree out of a rectangle that one of its own fits in. */
  private cut(node: number, w: number, h: number, counts: number[]): Tree {
    if (node < this.pieces.length) {
      const { row, ways } = this.kinds[this.pieces[node]!]!;
      counts[this.pieces[node]!]! += 1;
      const way = ways.find((one) => one.w <= w && one.h <= h)!;
      return within({ kind: 'piece', piece: row, way }, way.w, way.h, w, h);
    }
    const [one, other] = [this.first[node]!, this.second[node]!];
    const [a, b] = [this.set(one), this.set(other)];
    for (let i = 0; i < a.size; i += 1)
      for (let j = 0; j < b.size; j += 1) {
        const [aw, ah, bw, bh] = [a.w[i]!, a.h[i]!, b.w[j]!, b.h[j]!];
        if (aw + bw <= w && ah <= h && bh <= h)
          return this.cutAt('x', aw, this.cut(one, aw, h, counts), this.cut(other, w - aw, h, counts));
        if (ah + bh <= h && aw <= w && bw <= w)
          return this.cutAt('y', ah, this.cut(one, w, ah, counts), this.cut(other, w, h - ah, counts));
      }
    throw new RangeError('a part is cut from a rectangle that it fits in');
  }

  private cutAt(axis: 'x' | 'y', at: number, first: Tree, second: Tree): Tree {
    return { kind: 'cut', axis, at, first, second };
  }
}

/**
 * One pattern for each sheet, or undefined when none was found in the steps allowed. `pieces` are kinds, one for each
 * piece, at least as many as sheets. The same `seed` makes the same changes.
 */
export function* packInto(
  sheets: number,
  pieces: readonly number[],
  kinds: readonly PieceKind[],
  room: Cuttable,
  steps: StepBudget,
  seed = 1,
): InTurns<readonly Pattern[] | undefined> {
  for (let run = seed; steps.left > 0; run += 1) {
    const draw = seededUniform(run);
    const forest = new Forest(pieces, kinds, room, sheets, steps);
    const changes = pieces.length * CHANGES;
    for (let change = 0; change < changes && steps.left > 0 && !forest.fits; change += 1) {
      const warmth = HOT * (COLD / HOT) ** (change / changes);
      const [a, b] = [Math.floor(draw() * forest.parts), Math.floor(draw() * forest.parts)];
      if (draw() < 0.5) forest.tryExchange(a, b, warmth, draw());
      else forest.tryMove(a, b, warmth, draw());
      if (change % TURN === TURN - 1) yield;
    }
    if (forest.fits) return forest.patterns();
  }
  return undefined;
}
