/** Plates fit their boxes, say what they teach, and stand ready for every step that an answer can hold. */
import { readFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, test } from 'vitest';
import { ASKED_GROUNDS, answerFor } from '../../../src/components/choose/answer-pairs';
import { drawnSteps } from '../../../src/core/choose/step-plates';
import { FILED, plateFile } from '../../../src/components/draw/plate-file';
import { PLATES, STROKE_OF, framesOf, stillOf } from '../../../src/components/draw/plates';
import { bent, curledStrip } from '../../../src/components/draw/sheets';
import { common, flat, hull, nearness, turning, type P2 } from '../../../src/components/draw/space';
import { choose } from '../../../src/core/choose/choose';
import { DEFAULT_JOB } from '../../../src/core/choose/job';
import { PROJECT_IDS } from '../../../src/core/make/projects';
import { TASKS } from '../../../src/core/records/task';
import { catalogue } from '../../../src/data/catalogue';

const IDS = Object.keys(PLATES);

test.for(IDS)('%s is drawn with numbers, inside its box', (id) => {
  for (const { body } of framesOf(id)) {
    expect(body).not.toMatch(/NaN|Infinity|undefined|null/);
    expect(body).not.toMatch(/\sstyle=/);
    expect(body).toContain('<path');
    expect(Buffer.byteLength(body)).toBeLessThan(8000);
  }
});

test('each plate says what it teaches, in a sentence of its own', () => {
  const said = IDS.map((id) => PLATES[id]!.teaches);
  expect(said.filter((text) => !/^[A-Z].{15,}\.$/s.test(text))).toEqual([]);
  expect(new Set(said).size).toBe(said.length);
  expect(new Set(IDS.map((id) => PLATES[id]!.name)).size).toBe(IDS.length);
});

test('a movement has eight frames that differ, and rests on one of them', () => {
  const moving = IDS.filter((id) => framesOf(id).length > 1);
  expect(moving).toEqual(expect.arrayContaining(['brush-from-the-middle', 'let-down', 'rub-down']));
  for (const id of moving) {
    const bodies = framesOf(id).map(({ body }) => body);
    expect(bodies).toHaveLength(8);
    expect(new Set(bodies).size).toBe(8);
    expect(bodies).toContain(stillOf(id).body);
  }
});

test('every face has a drawing with every tool of the shelf', () => {
  const wanted = [...catalogue.techniques.keys()].flatMap((tool) =>
    ['sheet', 'support', 'board'].map((face) => `on-${face}-${tool}`),
  );
  expect(wanted.length).toBe(21);
  expect(wanted.filter((id) => !IDS.includes(id))).toEqual([]);
});

test('each tool goes over a face in its drawing as its record says, and the words of the drawing say so', () => {
  expect(STROKE_OF).toEqual(Object.fromEntries([...catalogue.techniques].map(([id, { stroke }]) => [id, stroke])));
  const says = { outwards: /from the middle out/, bands: /bands side by side/, pull: /in one pull/ };
  for (const [id, { stroke }] of catalogue.techniques)
    for (const face of ['sheet', 'support', 'board'])
      for (const [way, words] of Object.entries(says))
        expect(words.test(PLATES[`on-${face}-${id}`]!.teaches), `${id}: ${way}`).toBe(way === stroke);
});

test('a fault has a cross and what is right has a tick, and both are said', () => {
  const signs = (id: string) => [...stillOf(id).body.matchAll(/class="x ?"/g)].length;
  for (const id of IDS) {
    const said = PLATES[id]!.teaches;
    expect(signs(id), id).toBe((/\bcross marks|With a cross/.test(said) ? 1 : 0) + (/\btick\b/.test(said) ? 1 : 0));
  }
  expect(IDS.filter((id) => PLATES[id]!.set === 'failure' && signs(id) === 0)).toEqual([]);
});

test('every step of every adhesive has a plate, for every task', () => {
  for (const task of TASKS)
    for (const family of ['lokta-light', 'kozo-tissue', 'embossed-mulberry', 'card']) {
      const choices = choose({ ...DEFAULT_JOB, task, paper: { family } }, catalogue, 8);
      for (const choice of choices) {
        const steps = drawnSteps(choice);
        expect(steps.map(({ text }) => text)).toEqual(choice.technique.steps);
        expect(steps.filter(({ plate }) => !IDS.includes(plate ?? ''))).toEqual([]);
      }
    }
});

test('a plate in a file of its own has all it needs: its materials, in light and in dark, and no word of script', () => {
  const file = plateFile('rub-down');
  for (const name of ['paper', 'ink', 'accent', 'board'])
    expect(file.match(new RegExp(`--${name}:`, 'g'))).toHaveLength(2);
  for (const [, used] of file.matchAll(/var\(--([\w-]+)\)/g)) expect(file).toContain(`--${used}:`);
  expect(file).toContain('xmlns="http://www.w3.org/2000/svg"');
  expect(file).not.toMatch(/<script|href=/);
  // every file that an answer can ask for is light enough to be fetched on the way
  expect(Math.max(...FILED.map((id) => Buffer.byteLength(plateFile(id))))).toBeLessThan(9000);
});

const styles = (name: string) => readFileSync(path.resolve('src/styles', `${name}.css`), 'utf8');
const values = (css: string) =>
  [...css.matchAll(/--([\w-]+):\s*([^;]+);/g)].map(([, name = '', value = '']) => [name, value] as const);
/** What each token is worth on the screen by day and by night, and on paper. */
function tokens(where: 'light' | 'dark' | 'print'): Map<string, string> {
  const [day = '', night = ''] = styles('tokens').split('@media (prefers-color-scheme: dark)');
  const [drawn = '', after = ''] = styles('draw').split('@media screen and (prefers-color-scheme: dark)');
  const ofPlates = values(/\.draw \{[^}]*\}/.exec(drawn)![0]);
  const inTheDark = values(/\.draw \{[^}]*\}/.exec(after)![0]);
  return new Map([
    ...values(day),
    ...(where === 'dark' ? values(night) : []),
    ...(where === 'print' ? values(/:root \{[^}]*\}/.exec(styles('print'))![0]) : []),
    ...ofPlates,
    ...(where === 'dark' ? inTheDark : []),
  ]);
}
type Colour = readonly [red: number, green: number, blue: number, opaque: number];
/** A colour as a style sheet writes it: `#abc`, `var(--name)`, or two mixed in sRGB. */
function colourOf(css: string, known: Map<string, string>): Colour {
  const value = css.trim();
  const named = /^var\(--([\w-]+)\)$/.exec(value)?.[1];
  if (named) return colourOf(known.get(named)!, known);
  const mixed = /^color-mix\(in srgb, (.+), (.+) (\d+)%\)$/.exec(value);
  if (mixed) {
    const [from, share] = [colourOf(mixed[1]!, known), Number(mixed[3]) / 100];
    if (mixed[2] === 'transparent') return [from[0], from[1], from[2], 1 - share];
    const to = colourOf(mixed[2]!, known);
    const at = (i: 0 | 1 | 2) => from[i] * (1 - share) + to[i] * share;
    return [at(0), at(1), at(2), 1];
  }
  if (!/^#([\da-f]{3}|[\da-f]{6})$/i.test(value)) throw new Error(`no colour: ${value}`);
  const full = value.length === 4 ? value.replace(/[\da-f]/gi, '$&$&') : value;
  const part = (at: number) => parseInt(full.slice(at, at + 2), 16);
  return [part(1), part(3), part(5), 1];
}
/** What is seen where one colour lies over another. */
const over = (top: Colour, below: Colour): Colour => {
  const at = (i: 0 | 1 | 2) => top[i] * top[3] + below[i] * (1 - top[3]);
  return [at(0), at(1), at(2), 1];
};
/** Relative luminance of a colour and the contrast of two, as WCAG 2.1 defines them. */
const luminance = ([red, green, blue]: Colour): number => {
  const [r = 0, g = 0, b = 0] = [red, green, blue].map((value) => {
    const share = value / 255;
    return share <= 0.03928 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
  });
  return 0.2126 * r + 0.7152 * g + 0.0722 * b;
};
const contrast = (a: Colour, b: Colour): number => {
  const [dark, light] = [luminance(a), luminance(b)].sort((x, y) => x - y) as [number, number];
  return (light + 0.05) / (dark + 0.05);
};
/** What a rule of draw.css fills with or draws with: `painted('b', 'fill')` is the colour of board. */
const painted = (name: string, how: 'fill' | 'stroke', known: Map<string, string>): Colour =>
  colourOf(new RegExp(`\\.draw \\.${name} \\{[^}]*?${how}: ([^;]+);`).exec(styles('draw'))![1]!, known);

test('the contrasts here are those of the definition', () => {
  const [black, white] = ['#000', '#ffffff'].map((hex) => colourOf(hex, new Map())) as [Colour, Colour];
  expect(contrast(black, white)).toBeCloseTo(21, 9);
  // the lightest grey that WCAG's own note lets through on white for text
  expect(contrast(colourOf('#767676', new Map()), white)).toBeCloseTo(4.54, 2);
});

describe.for(['light', 'dark', 'print'] as const)('in %s', (where) => {
  const known = tokens(where);
  const fill = (name: string) => painted(name, 'fill', known);
  const opaque: readonly Colour[] = [
    colourOf('var(--paper)', known),
    colourOf('var(--board)', known),
    ...['p', 'o', 'b', 'e', 'w', 'u', 'a'].map(fill),
  ];
  // a thin coat and a film let through what they lie on
  const materials = [...opaque, ...['y', 'g'].flatMap((name) => opaque.map((below) => over(fill(name), below)))];

  test('every line stands off from every material that it can lie on', () => {
    for (const line of ['l', 't', 'm', 'd', 'i', 'x'])
      for (const material of materials)
        expect(contrast(painted(line, 'stroke', known), material), `.${line}`).toBeGreaterThanOrEqual(3);
  });

  test('what shines stands off from glue and water', () => {
    for (const wet of ['w', 'u'])
      expect(contrast(painted('s', 'stroke', known), fill(wet)), wet).toBeGreaterThanOrEqual(3);
  });

  test('words can be read on what they stand on', () => {
    for (const material of ['o', 'p', 'b'].map(fill))
      expect(contrast(colourOf('var(--ink)', known), material)).toBeGreaterThanOrEqual(4.5);
  });

  test('hands and iron stand off from all they touch, by their outline or by their own tone', () => {
    const contour = colourOf('var(--contour)', known);
    for (const thing of ['skin', 'iron'])
      for (const material of materials) {
        const own = colourOf(`var(--${thing})`, known);
        expect(Math.max(contrast(contour, material), contrast(own, material)), thing).toBeGreaterThanOrEqual(3);
      }
    expect(contrast(contour, colourOf('var(--skin)', known))).toBeGreaterThanOrEqual(3);
    // an edge between two faces of iron is drawn as a shine
    expect(contrast(colourOf('var(--paper)', known), colourOf('var(--iron)', known))).toBeGreaterThanOrEqual(3);
  });
});

test('every plate that a step can ask for is among the files', () => {
  expect(FILED).toEqual(expect.arrayContaining(IDS.filter((id) => ['spread', 'lay'].includes(PLATES[id]!.set))));
});

test('an answer shows the face and the tool that its words name', () => {
  for (const ground of ASKED_GROUNDS) {
    const best = answerFor('lokta-light', ground).choices[0]!;
    const put = drawnSteps(best).find(({ text }) => text.startsWith('Put the glue on'))!;
    expect(put.plate).toContain(best.method.tool);
    expect(put.plate).toContain(/, not the /.test(put.text) ? 'on-board' : 'on-s');
  }
});

test('each project is drawn finished and in its parts', () => {
  expect(PROJECT_IDS.flatMap((id) => [`${id}-finished`, `${id}-apart`]).filter((id) => !IDS.includes(id))).toEqual([]);
});

test('what is level is seen from above, and what is nearer hides what is behind', () => {
  const square = (
    [
      [0, 0, 0],
      [10, 0, 0],
      [10, 10, 0],
      [0, 10, 0],
    ] as const
  ).map(flat);
  expect(turning(square)).toBeLessThan(0);
  // the reader stands in front, above and to the right
  expect(nearness([0, -1, 0])).toBeGreaterThan(nearness([0, 0, 0]));
  expect(nearness([0, 0, 1])).toBeGreaterThan(nearness([0, 0, 0]));
  expect(nearness([1, 0, 0])).toBeGreaterThan(nearness([0, 0, 0]));
});

test('a curl keeps its length, and turns over its other side when it has bent far enough', () => {
  const curve = curledStrip([0, 0, 0], 20, 100, 170, 60);
  const long = curve
    .slice(1)
    .reduce((sum, [x, y, z], i) => sum + Math.hypot(x - curve[i]![0], y - curve[i]![1], z - curve[i]![2]), 0);
  expect(long).toBeCloseTo(100, 6);
  const paths = (degrees: number) =>
    bent(curledStrip([0, 0, 0], 20, 100, degrees), [0, 50, 0]).svg.split('<path').length - 1;
  expect(paths(10)).toBe(1);
  expect(paths(120)).toBe(2);
});

test('hull and common area of squares are the squares that anybody would draw', () => {
  const square = (x: number, y: number, side: number): P2[] => [
    [x, y],
    [x + side, y],
    [x + side, y + side],
    [x, y + side],
  ];
  const area = (points: readonly P2[]) => Math.abs(turning(points)) / 2;
  expect(area(hull([...square(0, 0, 4), [1, 1], [2, 3]]))).toBe(16);
  expect(area(common(square(0, 0, 4), square(2, 2, 4)))).toBe(4);
  expect(common(square(0, 0, 1), square(5, 5, 1))).toEqual([]);
});
