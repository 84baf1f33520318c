/** What a beginner asks a sheet: which way its grain runs, how fast it drinks. */
import { wetSponge } from './apply';
import { pointing } from './hands';
import { all, line2, path, put, putAt, shape, standsOff, strokes, way, word, type Mark } from './ink';
import { bent, block, curledStrip, sheet } from './sheets';
import { drop } from './tools';
import { between, flat, plus, ring, type P2, type P3 } from './space';

/** Two cases side by side, each with its words under it. */
const beside = (first: Mark, second: Mark, words: readonly [string, string]): Mark =>
  all(
    put(first, [0, 0]),
    put(second, [172, 0]),
    word([62, 74], words[0], 'middle'),
    word([234, 74], words[1], 'middle'),
  );

/** Fibres on a sheet: fine lines that run along x, or away from the reader. */
const grain = ([x, y, z]: P3, w: number, d: number, along: 'x' | 'y'): Mark =>
  strokes(
    along === 'y'
      ? between(0.1, 0.9, 7).map((t, i): P3[] => [
          [x + w * t, y + d * (i % 2 ? 0.08 : 0.2), z],
          [x + w * t, y + d * (i % 2 ? 0.8 : 0.92), z],
        ])
      : between(0.12, 0.88, 6).map((t, i): P3[] => [
          [x + w * (i % 2 ? 0.08 : 0.2), y + d * t, z],
          [x + w * (i % 2 ? 0.8 : 0.92), y + d * t, z],
        ]),
  );
/** Fibres on a curved sheet, along its sweep or along its curve. */
const grainOn = (curve: readonly P3[], sweep: P3, along: 'curve' | 'sweep', from = 0): Mark =>
  strokes(
    along === 'sweep'
      ? curve
          .slice(from)
          .flatMap((p, i): P3[][] =>
            i % 2 ? [[plus(p, [0, sweep[1] * 0.08, 0]), plus(p, [0, sweep[1] * 0.92, 0])]] : [],
          )
      : between(0.12, 0.88, 5).map((t): P3[] =>
          curve.slice(from).map((p) => plus(p, [sweep[0] * t, sweep[1] * t, sweep[2] * t])),
        ),
  );

/** Bent over without a crease: with the grain it lies low, across it stands up. */
export function bendTest(): Mark {
  const over = (radius: number, along: 'x' | 'y'): Mark => {
    const flatPart: P3[] = [
      [0, 0, 0],
      [74, 0, 0],
    ];
    const turn = between(-90, 90, 15).map((a): P3 => [
      74 + radius * Math.cos((a * Math.PI) / 180),
      0,
      radius + radius * Math.sin((a * Math.PI) / 180),
    ]);
    const back: P3[] = [[44, 0, 2 * radius + radius * 0.3]];
    const curve = [...flatPart, ...turn.slice(1), ...back];
    const upper = curve.slice(9);
    return all(
      bent(curve, [0, 64, 0]),
      grain([0, 0, 0], 44, 64, along),
      strokes(
        along === 'y'
          ? upper.filter((_, i) => i % 2 === 0).map((p): P3[] => [plus(p, [0, 5, 0]), plus(p, [0, 59, 0])])
          : between(0.14, 0.86, 5).map((t): P3[] => upper.map((p) => plus(p, [0, 64 * t, 0]))),
      ),
      putAt(put(pointing, [0, 0], -8), [50, 30, 2.3 * radius]),
      // pressed, it gives; or it springs back
      along === 'y' ? way([18, 60, 40], [18, 60, 12]) : way([12, 60, 26], [12, 60, 58]),
    );
  };
  return beside(over(8, 'y'), over(21, 'x'), ['bent with the grain', 'bent across it']);
}

/** Torn: with the grain the tear runs straight, across it wanders. */
export function tearTest(): Mark {
  const torn = (edge: readonly (readonly [number, number])[], along: 'x' | 'y'): Mark => {
    const side = (shift: number): P3[] => edge.map(([x, y]) => [x + shift, y, 0]);
    const right = side(5).map(([x, y]): P3 => [x, y, 0]);
    return all(
      shape([[0, 0, 0], ...side(-5), [0, 78, 0]], 'paper'),
      shape([[100, 0, 0], ...right, [100, 78, 0]], 'paper'),
      strokes(
        edge.flatMap(([x, y], i): P3[][] =>
          i % 2
            ? [
                [
                  [x - 5, y, 0],
                  [x - 1, y + 2, 0],
                ],
                [
                  [x + 5, y, 0],
                  [x + 1, y - 2, 0],
                ],
              ]
            : [],
        ),
      ),
      along === 'y'
        ? strokes(
            [10, 20, 30, 70, 80, 90].map((x, i): P3[] => [
              [x, 6 + (i % 2) * 6, 0],
              [x, 66 + (i % 2) * 6, 0],
            ]),
          )
        : strokes(
            [8, 20, 32, 44, 56, 68].flatMap((y): P3[][] => [
              [
                [6, y, 0],
                [32, y, 0],
              ],
              [
                [72, y, 0],
                [94, y, 0],
              ],
            ]),
          ),
      way([30, -8, 0], [8, -8, 0]),
      way([70, -8, 0], [92, -8, 0]),
    );
  };
  const straight = between(0, 78, 9).map((y, i) => [50 + (i % 2 ? 0.8 : -0.8), y] as const);
  const crooked = [
    [50, 0],
    [60, 9],
    [54, 18],
    [43, 25],
    [40, 34],
    [52, 42],
    [60, 50],
    [57, 60],
    [45, 67],
    [47, 78],
  ] as const;
  return beside(torn(straight, 'y'), torn(crooked, 'x'), ['torn with the grain', 'torn across it']);
}

/** Two strips of one size, held out by one end. */
export function stripTest(): Mark {
  const held = (degrees: number, along: 'curve' | 'sweep'): Mark => {
    const curve = curledStrip([0, 0, 40], 22, 108, degrees);
    return all(
      block([-26, -6, 0], 36, 40, 40, { top: 'board', sides: 'board' }),
      bent([[-20, 2, 40], ...curve.map((p) => plus(p, [0, 2, 0]))], [0, 24, 0]),
      grainOn(
        curve.map((p) => plus(p, [0, 2, 0])),
        [0, 24, 0],
        along,
        1,
      ),
      standsOff(block([-22, -2, 40.5], 26, 32, 10, { top: 'ink', sides: 'ink' })),
    );
  };
  return all(
    put(held(-12, 'curve'), [0, 0]),
    put(held(-84, 'sweep'), [176, 0]),
    word([52, 66], 'cut along the grain', 'middle'),
    word([212, 66], 'cut across it', 'middle'),
  );
}

/** Damped on one face, a sheet rolls up from both sides into a trough; the grain runs the length of the trough. */
export function dampTest(): Mark {
  const curl = between(0, 250, 20).map((a): P3 => [
    16 * Math.sin((a * Math.PI) / 180),
    0,
    16 - 16 * Math.cos((a * Math.PI) / 180),
  ]);
  const curve: P3[] = [
    ...[...curl].reverse().map(([x, y, z]): P3 => [24 - x, y, z]),
    ...curl.map(([x, y, z]): P3 => [66 + x, y, z]),
  ];
  const wetSheet = all(
    sheet([-6, -4, 0], 108, 82, 'plain'),
    shape(
      [
        [30, -4, 0],
        [102, -4, 0],
        [102, 78, 0],
        [34, 78, 0],
        [28, 56, 0],
        [33, 30, 0],
      ],
      'glue',
      'thin',
    ),
    grain([-6, -4, 0], 108, 82, 'y'),
    way([40, 44, 0], [4, 44, 0]),
    putAt(wetSponge, [50, 24, 0]),
  );
  return beside(
    put(wetSheet, [0, 0], 0, { scale: 1.06 }),
    all(bent(curve, [0, 82, 0], { top: 'glued', under: 'plain' }), grainOn(curve.slice(32), [0, 82, 0], 'sweep')),
    ['one face damped', 'it rolls along the grain'],
  );
}
/** A drop let fall on a sheet: it stands, it sinks in, it is gone. */
export function dropTest(): Mark {
  const spots: readonly (readonly [x: number, seen: 0 | 1 | 2])[] = [
    [48, 0],
    [140, 1],
    [232, 2],
  ];
  const marks = spots.map(([x, seen]): Mark => {
    const at: P3 = [x, 36, 0];
    const foot = ring(at, [13, 17, 22][seen]!).map(flat);
    const [cx, cy] = flat(at);
    if (seen === 0)
      return all(
        path(
          `M${cx - 13} ${cy}C${cx - 14} ${cy - 17} ${cx + 14} ${cy - 17} ${cx + 13} ${cy}C${cx + 8} ${cy + 7} ${cx - 8} ${cy + 7} ${cx - 13} ${cy}Z`,
          'water',
          'line',
          [
            [cx - 13, cy - 13],
            [cx + 13, cy + 6],
          ],
        ),
        line2(
          [
            [cx - 6, cy - 5],
            [cx - 3, cy - 9],
          ],
          'shine',
        ),
      );
    if (seen === 1)
      return all(
        putRing(foot, 'glue', 'thin'),
        path(
          `M${cx - 12} ${cy}C${cx - 12} ${cy - 8} ${cx + 12} ${cy - 8} ${cx + 12} ${cy}C${cx + 8} ${cy + 5} ${cx - 8} ${cy + 5} ${cx - 12} ${cy}Z`,
          'water',
          'line',
          [],
        ),
        line2(
          [
            [cx - 6, cy - 2],
            [cx - 2, cy - 4.5],
          ],
          'shine',
        ),
      );
    return putRing(foot, 'glue', 'hid');
  });
  const [dx, dy] = flat([48, 36, 0]);
  const dropper = all(
    path('M-3 0L-6-16V-58H6V-16L3 0Z', 'glass', 'line', [
      [-8, -92],
      [8, 0],
    ]),
    path('M-7-58H7V-64H-7ZM-5-64C-14-74-12-92 0-92C12-92 14-74 5-64Z', 'board', 'line', []),
    path('M-5-16V-36H5V-16L2.500-2H-2.500Z', 'water', 'bare', []),
  );
  const label = (x: number, text: string) => word([flat([x, 0, 0])[0] - 8, flat([x, 0, 0])[1] + 20], text, 'middle');
  return all(
    sheet([0, 0, 0], 284, 74, 'plain'),
    ...marks,
    put(drop, [dx, dy - 26]),
    put(dropper, [dx, dy - 40], 0, { scale: 0.74 }),
    label(48, 'it stands'),
    label(140, 'the shine goes'),
    label(236, 'gone: stop the clock'),
  );
}
const putRing = (points: readonly P2[], fill: 'glue', kind: 'thin' | 'hid'): Mark => {
  const d = points.map(([x, y], i) => `${i ? 'L' : 'M'}${x.toFixed(1)} ${y.toFixed(1)}`).join('') + 'z';
  return path(d, fill, kind, points);
};
