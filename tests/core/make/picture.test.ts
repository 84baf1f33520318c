/** Drawings laid out on a page: to scale, inside their frame, and no figure on another. Sketches made by hand. */
import { describe, expect, it } from 'vitest';
import { pictureOf } from '../../../src/core/make/picture';
import { chain, fold, rectangle, type Sketch } from '../../../src/core/make/sketch';

const sketch = (change: Partial<Sketch> = {}): Sketch => ({
  title: 'A board',
  shapes: [rectangle('board', 0, 0, 200, 100, 'board')],
  dimensions: [],
  ...change,
});
type Pair = readonly [number, number];
const points = (d: string): Pair[] =>
  [...d.matchAll(/(-?[\d.]+) (-?[\d.]+)/g)].map(([, x, y]) => [Number(x), Number(y)] as const);
/** Left, top, width and height of a path. */
function box(d: string) {
  const [xs, ys] = [points(d).map(([x]) => x), points(d).map(([, y]) => y)];
  const [x, y] = [Math.min(...xs), Math.min(...ys)];
  return { x, y, wide: Math.max(...xs) - x, high: Math.max(...ys) - y };
}
/** Of the dimension lines, each stroke with its two ends. */
const strokes = (lines: string) => lines.split('M').slice(1).map(points);

describe('the shapes', () => {
  it('keep their proportions and their places to each other, wherever the sketch begins', () => {
    const two = sketch({ shapes: [rectangle('cover', -50, -30, 300, 160), rectangle('board', 0, 0, 200, 100)] });
    const [cover, board] = pictureOf(two, 'mm').shapes.map(({ d }) => box(d));
    const scale = cover!.wide / 300;
    expect(cover!.high / 160).toBeCloseTo(scale, 2);
    expect(board!.wide / 200).toBeCloseTo(scale, 2);
    expect((board!.x - cover!.x) / 50).toBeCloseTo(scale, 1);
    expect((board!.y - cover!.y) / 30).toBeCloseTo(scale, 1);
  });
  it('fill the width of the frame where they are wide, and are held by its height where they are tall', () => {
    const { width, shapes, height } = pictureOf(sketch({ shapes: [rectangle('board', 0, 0, 800, 100)] }), 'mm');
    const wide = box(shapes[0]!.d);
    expect(wide.wide).toBeGreaterThan(0.9 * width);
    expect(wide.x + wide.wide).toBeLessThan(width);
    expect(height).toBeLessThan(width / 2);
    const tall = pictureOf(sketch({ shapes: [rectangle('board', 0, 0, 100, 2000)] }), 'mm');
    const { x, high, wide: narrow } = box(tall.shapes[0]!.d);
    expect(high).toBeCloseTo(300, 0);
    expect(tall.height).toBeLessThan(350);
    const moved = pictureOf(sketch({ shapes: [rectangle('board', 500, 700, 100, 2000)] }), 'mm');
    expect([moved.shapes, moved.height]).toEqual([tall.shapes, tall.height]);
    // in the middle, but for the room that figures would take at its left
    expect(Math.abs(x + narrow / 2 - tall.width / 2)).toBeLessThan(10);
  });
  it('are closed, but for a fold, which is a line', () => {
    const { shapes } = pictureOf(
      sketch({ shapes: [rectangle('sheet', 0, 0, 200, 100), fold([50, 0], [50, 100])] }),
      'mm',
    );
    expect(shapes.map(({ look, d }) => [look, d.endsWith('Z'), points(d).length])).toEqual([
      ['sheet', true, 4],
      ['fold', false, 2],
    ]);
  });
  it('end above the foot of the frame, and below the figures above them', () => {
    const { shapes, height, figures } = pictureOf(sketch({ dimensions: chain('top', 0, [200]) }), 'mm');
    const { y, high } = box(shapes[0]!.d);
    expect(y + high).toBeLessThanOrEqual(height);
    expect(y + high).toBeGreaterThan(height - 12);
    expect(figures[0]!.y).toBeLessThan(y);
    expect(figures[0]!.y).toBeGreaterThan(0);
  });
});

describe('the figures', () => {
  const laid = () => {
    const picture = pictureOf(
      sketch({
        shapes: [rectangle('board', -20, -10, 200, 100)],
        dimensions: [
          ...[...chain('top', -20, [50, 150]), ...chain('top', -20, [200], 1)],
          ...[...chain('left', -10, [40, 60]), ...chain('left', -10, [100], 1)],
        ],
      }),
      'mm',
    );
    const of = (text: string) => picture.figures.find((one) => one.text === text)!;
    return { ...picture, shape: box(picture.shapes[0]!.d), of };
  };
  it('stand in the middle of what they measure, those of the left turned', () => {
    const { figures, shape, of } = laid();
    const at = (part: number) => shape.x + part * shape.wide;
    expect(of('50').x).toBeCloseTo(at(25 / 200), 0);
    expect(of('150').x).toBeCloseTo(at(125 / 200), 0);
    expect(of('200').x).toBeCloseTo(at(0.5), 0);
    expect(of('40').y).toBeCloseTo(shape.y + 0.2 * shape.high, 0);
    expect(of('60').y).toBeCloseTo(shape.y + 0.7 * shape.high, 0);
    expect(figures.map(({ text, turned }) => [text, turned])).toEqual([
      ...[...['50', '150', '200'].map((text) => [text, false]), ...['40', '60', '100'].map((text) => [text, true])],
    ]);
  });
  it('the whole outside its parts, and all of them outside the shape and inside the frame', () => {
    const { figures, shape, width, height, of } = laid();
    expect(of('200').y).toBeLessThan(of('50').y - 10);
    expect(of('50').y).toBe(of('150').y);
    expect(of('50').y).toBeLessThan(shape.y);
    expect(of('100').x).toBeLessThan(of('40').x - 10);
    expect(of('40').x).toBeLessThan(shape.x);
    for (const { x, y } of figures) {
      expect(x).toBeGreaterThan(8);
      expect(y).toBeGreaterThan(8);
      expect(x).toBeLessThan(width);
      expect(y).toBeLessThan(height);
    }
  });
  it('each has a line as long as what it measures, with a tick at each end', () => {
    const { lines, shape } = laid();
    const all = strokes(lines);
    expect(all).toHaveLength(6 * 3);
    const [from, to, line] = all;
    expect(line![1]![0] - line![0]![0]).toBeCloseTo(shape.wide / 4, 0);
    expect(line![0]![0]).toBeCloseTo(shape.x, 0);
    expect(line![0]![1]).toBe(line![1]![1]);
    // ticks cross the line at its ends
    for (const [tick, end] of [
      [from, line![0]],
      [to, line![1]],
    ] as const) {
      expect(tick![0]![0]).toBe(end![0]);
      expect(tick![1]![0]).toBe(end![0]);
      expect((tick![0]![1] + tick![1]![1]) / 2).toBeCloseTo(end![1], 1);
      expect(tick![0]![1]).not.toBe(tick![1]![1]);
    }
    expect(Math.abs(from![0]![1] - from![1]![1])).toBeCloseTo(8, 1);
    // and those of the left run down
    const beside = all.slice(9, 12)[2]!;
    expect(beside[0]![0]).toBe(beside[1]![0]);
    expect(beside[0]![0]).toBeLessThan(shape.x);
    expect(beside[0]![1]).toBeCloseTo(shape.y, 0);
    expect(beside[1]![1] - beside[0]![1]).toBeCloseTo(0.4 * shape.high, 0);
  });
  it('stand between their line and the one outside it', () => {
    const { lines, shape, of } = laid();
    const [parts, whole] = [strokes(lines)[2]!, strokes(lines)[8]!];
    expect(of('50').y).toBeLessThan(parts[0]![1]);
    expect(of('50').y).toBeGreaterThan(whole[0]![1] + 4);
    expect(of('200').y).toBeLessThan(whole[0]![1]);
    // the outer line is clear of the row of figures below it, and the inner one of the shape
    expect(whole[0]![1]).toBeLessThan(of('50').y - 10);
    expect(parts[0]![1]).toBeLessThan(shape.y - 4);
  });
  it('move outwards where they would lie on each other, on a thread to their line', () => {
    const narrow = pictureOf(sketch({ dimensions: chain('top', 0, [100.5, 2.5, 3.5, 2.5, 91]) }), 'mm');
    expect(narrow.figures.map(({ text }) => text)).toEqual(['100.5', '2.5', '3.5', '2.5', '91']);
    narrow.figures.forEach((a, i) =>
      narrow.figures.slice(i + 1).forEach((b) => {
        const apart = Math.abs(a.x - b.x) >= (7 * (a.text.length + b.text.length)) / 2;
        expect(apart || Math.abs(a.y - b.y) >= 12, `${a.text} and ${b.text}`).toBe(true);
      }),
    );
    const rows = new Set(narrow.figures.map(({ y }) => y));
    expect(rows.size).toBe(3);
    const moved = narrow.figures.filter(({ y }) => y < Math.max(...rows));
    expect(strokes(narrow.lines)).toHaveLength(5 * 3 + moved.length);
    // the last has room beside the first again, and stands by its line
    expect(narrow.figures[4]!.y).toBe(narrow.figures[0]!.y);
    for (const one of moved)
      expect(
        strokes(narrow.lines).some(
          ([a, b]) => Math.abs(a![0] - one.x) < 0.1 && a![0] === b![0] && b![1] > one.y && b![1] < one.y + 2,
        ),
      ).toBe(true);
  });
  it('what lies aslant has a line of its own, and its figure at the end of it', () => {
    const slant = { from: [0, 0], to: [30, 40], mm: 50 } as const;
    const found = pictureOf(sketch({ aslant: slant }), 'mm');
    const { x, y, wide } = box(found.shapes[0]!.d);
    const scale = wide / 200;
    const [line] = strokes(found.lines);
    expect(line!.flat().map(Math.round)).toEqual([x, y, x + 30 * scale, y + 40 * scale].map(Math.round));
    expect(found.figures.map(({ text, turned }) => [text, turned])).toEqual([['50', false]]);
    // up and to the left of it, where there is nothing of the board
    expect(line![1]![0] - found.figures[0]!.x).toBeGreaterThan(5);
    expect(line![1]![1] - found.figures[0]!.y).toBeGreaterThan(2);
    expect(Math.hypot(found.figures[0]!.x - line![1]![0], found.figures[0]!.y - line![1]![1])).toBeLessThan(15);
    expect(pictureOf(sketch(), 'mm').lines).toBe('');
  });
});

describe('the labels', () => {
  const label = (wide: number, high: number, text = 'board') =>
    pictureOf(
      sketch({ shapes: [rectangle('cover', 0, 0, 320, 300), rectangle('board', 10, 20, wide, high, text)] }),
      'mm',
    );
  it('stand in the middle of their shape, turned where it is narrow', () => {
    const { labels, shapes } = label(200, 100);
    const { x, y, wide, high } = box(shapes[1]!.d);
    expect(labels).toHaveLength(1);
    expect(labels[0]).toMatchObject({ text: 'board', turned: false });
    expect(labels[0]!.x).toBeCloseTo(x + wide / 2, 0);
    // a letter stands on its foot: that lies a little below the middle, or right of it when it is turned
    expect(labels[0]!.y - (y + high / 2)).toBeGreaterThan(2);
    expect(labels[0]!.y - (y + high / 2)).toBeLessThan(6);
    const narrow = label(20, 100);
    const tall = box(narrow.shapes[1]!.d);
    expect(narrow.labels[0]).toMatchObject({ text: 'board', turned: true });
    expect(narrow.labels[0]!.y).toBeCloseTo(tall.y + tall.high / 2, 0);
    expect(narrow.labels[0]!.x - (tall.x + tall.wide / 2)).toBeGreaterThan(2);
    expect(narrow.labels[0]!.x - (tall.x + tall.wide / 2)).toBeLessThan(6);
  });
  it('are left to the table where they fit neither way', () => {
    // five letters are some 35 wide and 14 high
    expect(label(20, 20).labels).toEqual([]);
    expect(label(8, 200).labels).toEqual([]);
    expect(label(200, 8).labels).toEqual([]);
    expect(label(60, 20).labels).toHaveLength(1);
    expect(label(200, 100, undefined).labels).toHaveLength(1);
    expect(pictureOf(sketch({ shapes: [rectangle('board', 0, 0, 200, 100)] }), 'mm').labels).toEqual([]);
  });
});

describe('the same in words', () => {
  const words = (dimensions: Sketch['dimensions'], rest: Partial<Sketch> = {}, unit: 'mm' | 'cm' = 'mm') =>
    pictureOf(sketch({ dimensions, ...rest }), unit).words;
  it('parts from left to right and from top to bottom, the whole after them', () => {
    const all = [...chain('top', 0, [50, 150]), ...chain('top', 0, [200], 1), ...chain('left', 0, [100])];
    expect(words(all)).toBe(
      'A board, to scale. From left to right: 50, 150; outside that 200 mm. From top to bottom: 100 mm.',
    );
    expect(words(all, {}, 'cm')).toMatch(/5, 15; outside that 20 cm\..*10 cm\./);
  });
  it('nothing of a side that has no measures, and no "outside that" where there are no parts', () => {
    expect(words(chain('left', 0, [100]))).not.toMatch(/left to right/);
    expect(words(chain('top', 0, [200], 1))).toMatch(/From left to right: 200 mm\./);
  });
  it('what lies aslant last', () => {
    expect(words([], { aslant: { from: [0, 0], to: [3, 4], mm: 5 } })).toMatch(/Between board and cut: 5 mm\.$/);
    expect(words([])).not.toMatch(/cut/);
  });
});
