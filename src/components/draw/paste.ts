/** What is done in the pot: the steps of every recipe, and what paste looks like at each stage of cooking. */
import { grip } from './hands';
import { all, dots, line2, path, put, putAt, shape2, sign, strokes2, way2, word, leader, type Mark } from './ink';
import { block, pot } from './sheets';
import { spoonIn, timeGoesBy, whiskIn } from './tools';
import { between, common, flat, hull, liesInShape, ring, type P2, type P3 } from './space';

const POT: P3 = [30, 10, 0];
const steam = (at: P3): Mark =>
  putAt(
    path('M0 0C-5-6 5-10 0-16S5-26 0-32', 'none', 'thin', [
      [-4, 0],
      [4, -32],
    ]),
    at,
  );
/** A hotplate with a knob, turned low. */
export const hob = (): Mark =>
  all(
    block([-24, -36, -14], 108, 88, 14, { top: 'paper', sides: 'paper' }),
    shape2(ring([30, 10, 0], 44).map(flat), 'edge'),
    shape2(ring([-2, -36, -7], 4.5, 'across-y', 14).map(flat), 'board'),
    shape2(ring([16, -36, -7], 4.5, 'across-y', 14).map(flat), 'board'),
    line2([flat([-2, -36, -7]), flat([0, -36, -4])]),
    line2([flat([16, -36, -7]), flat([14, -36, -4])]),
  );
const pan = (full = 0.55): Mark => all(pot(POT, 38, 36, { full, wall: 'edge' }), pan2());
const pan2 = (): Mark =>
  putAt(
    path('M0 0L34-6Q40-7 40-2Q40 2 35 3L0 9Z', 'board', 'line', [
      [0, -8],
      [40, 9],
    ]),
    [68, 10, 30],
  );
/** A tool held upright in the pot; what is under the surface is not seen. */
const stirring = (tool: Mark, surface: number): Mark =>
  putAt(all(put(tool, [0, 0], 12), put(grip, [16, -66], 8)), [30, 18, surface]);

/** A kitchen scale without its display; its plate is 19 high. */
export const kitchenScale = (): Mark =>
  all(
    block([0, 0, 0], 92, 62, 16, { top: 'paper', sides: 'board' }),
    block([10, 8, 16], 72, 48, 3, { top: 'edge', sides: 'edge' }),
  );
/** What is weighed on a scale. */
export const weigh = (): Mark =>
  all(
    kitchenScale(),
    pot([46, 32, 19], 26, 20, { liquid: 'paper', full: 0.62, wall: 'glass' }),
    heap([46, 32, 32], 15),
    display('20 g'),
  );
const heap = (at: P3, r: number): Mark =>
  putAt(
    all(
      path(
        `M${-r} 2C${-r * 0.6} ${-r * 0.5} ${-r * 0.2} ${-r} 0 ${-r}C${r * 0.3} ${-r} ${r * 0.6} ${-r * 0.4} ${r} 3Q0 9 ${-r} 2Z`,
        'paper',
        'line',
        [],
      ),
      { svg: `<path class="d v" d="M-5-4h0M2-7h0M6-1h0M-1 1h0M-8 1h0"/>`, reach: [] },
    ),
    at,
  );
/** What a kitchen scale shows at its front. */
export const display = (shows: string): Mark => {
  const at = (x: number, z: number): P2 => flat([x, 0, z]);
  return all(
    shape2([at(22, 1.5), at(70, 1.5), at(70, 14.5), at(22, 14.5)], 'paper'),
    putAt(word([0, 0], shows, 'middle'), [46, 0, 3.8], 8.3),
  );
};

/** How far a vessel is tipped to the left, degrees. */
const TIPPED = 62;
/** Points of a vessel that stands upright, its lip at the origin, as they lie when it is tipped over its lip. */
const tipped = (points: readonly P2[]): P2[] => {
  const [c, s] = [Math.cos((-TIPPED * Math.PI) / 180), Math.sin((-TIPPED * Math.PI) / 180)];
  return points.map(([x, y]): P2 => [x * c - y * s, x * s + y * c]);
};
/** A jug with a lip or a mug without one, tipped over its lip, which is at the origin; what is in it stands level, as high as its way over the lip. */
const tippedVessel = (holds: 'water' | 'powder'): Mark => {
  const lip: P2[] =
    holds === 'water'
      ? [
          [0, 0],
          [10, 9],
        ]
      : [[0, 0]];
  const body: P2[] = [...lip, [holds === 'water' ? 7 : 1, 60], [48, 60], [46, 2]];
  // as high as the way over the lip, or nothing could run
  const level = -5.5;
  const below: P2[] = [
    [-20, level],
    [120, level],
    [120, 90],
    [-20, 90],
  ];
  const handle = (inner: number): P2[] =>
    between(-1, 1, 13).map((t): P2 => [46 + (22 - inner) * Math.sqrt(1 - t * t), 31 + t * (26 - inner)]);
  const [cx, cy] = tipped([[61, 31]])[0]!;
  return all(
    shape2(tipped([...handle(0), ...handle(8).reverse()]), 'board'),
    shape2(tipped(body), holds === 'water' ? 'glass' : 'paper'),
    holds === 'water' && shape2(common(tipped(body), below), 'water', 'thin'),
    holds === 'powder' && mouth(),
    put(put(grip, [0, 0], -TIPPED), [cx, cy]),
  );
};

/** The mouth of a tipped mug, and the powder that has slid to its lip. */
const mouth = (): Mark => {
  const round = between(0, 1.93 * Math.PI, 24).map((a): P2 => [23 - 23 * Math.cos(a), 1 + 8 * Math.sin(a)]);
  const grains: P2[] = [
    [6, 0],
    [10, 4],
    [12, -2],
    [16, 2],
    [18, 6],
    [21, -2],
  ];
  return all(
    shape2(tipped(round), 'ground'),
    shape2(tipped(round.filter(([x]) => x < 26)), 'paper', 'thin'),
    dots(tipped(grains)),
  );
};

/** One thing poured into another from a tipped vessel, a little at a time. */
export const pourIn = (powder = false): Mark => {
  const [x, y] = flat([POT[0], POT[1], 34 * 0.62]);
  const lip: P2 = [x + 9, y - 60];
  const falling = between(0, 1, 17).map((t, i): P2 => [
    lip[0] - 3 - 6 * Math.min(1, 3 * t) + ((i * 5) % 7) - 3,
    lip[1] + 5 + t * 54,
  ]);
  const stream = powder
    ? dots(falling)
    : path(`M${lip[0]} ${lip[1]}c-8 1-12 10-12 24V${y}q4 3 7 0V${lip[1] + 26}c0-12 2-16 7-17z`, 'water', 'line', []);
  return all(
    pot(POT, 38, 34, { liquid: 'water', full: 0.62 }),
    strokes2([ring([POT[0] - 2, POT[1] + 4, 21], 11).map(flat)], 'shine'),
    stream,
    put(tippedVessel(powder ? 'powder' : 'water'), lip, 0, { scale: 0.86 }),
  );
};

/** Round and round, on what is seen of the liquid inside the rim. */
const roundInPot = (): Mark => {
  const [x, y] = flat([POT[0], POT[1], 34]);
  return way2([x - 27, y + 2], [x + 29, y + 3], -11);
};

/** Stirred with a spoon; `fast` with a whisk. */
export const stir = (fast = false): Mark =>
  all(
    pot(POT, 38, 34, { full: 0.74, wall: 'paper' }),
    swirl(0.74 * 34),
    stirring(fast ? whiskIn : spoonIn, 0.74 * 34),
    roundInPot(),
  );
/** The track of a spoon on the liquid, as much as is seen inside the rim. */
const swirl = (z: number): Mark => {
  const rim = ring([POT[0], POT[1], 34], 36).map(flat);
  const turn = (radius: number, from: number, to: number) =>
    ring([POT[0], POT[1] + 4, z], radius, 'level', 40)
      .slice(from, to)
      .map(flat)
      .filter((p) => liesInShape(p, rim));
  return strokes2([turn(27, 2, 19), turn(17, 0, 16)], 'shine');
};

/** Cooked on a low heat, stirred all the while. */
export const heat = (): Mark =>
  all(hob(), pan(), swirl(20), stirring(spoonIn, 20), roundInPot(), steam([0, 24, 40]), steam([18, 34, 40]));

/** Left to itself under a lid, while time passes. */
export const stand = (): Mark =>
  all(
    pot(POT, 38, 34, { full: 0, wall: 'glass' }),
    shape2(hull([...ring([POT[0], POT[1], 2], 35), ...ring([POT[0], POT[1], 21], 37)].map(flat)), 'glue', 'thin'),
    lid(),
    putAt(timeGoesBy('leave it alone'), [124, 40, 34]),
  );
const lid = (): Mark => {
  const rim = ring([POT[0], POT[1], 34], 40).map(flat);
  return all(
    shape2(hull([...rim, ...ring([POT[0], POT[1], 29], 40).map(flat)]), 'paper'),
    shape2(rim, 'paper'),
    shape2(hull([...ring([30, 10, 34], 5), ...ring([30, 10, 41], 6)].map(flat)), 'board'),
  );
};

/** Cooled in a bath of cold water and ice, stirred now and then. */
export const cool = (): Mark => {
  const bath = ring([30, 10, 26], 60).map(flat);
  const ice = (
    [
      [-16, 0],
      [70, 20],
      [-4, -25],
      [74, -6],
    ] as const
  ).map(([x, y]) => block([x, y, 18], 12, 11, 9, { top: 'paper', sides: 'glass' }));
  return all(
    pot([30, 10, 0], 60, 26, { liquid: 'water', full: 0.86, wall: 'paper' }),
    ...ice.slice(0, 2),
    { svg: '', reach: bath },
    pot([30, 10, 14], 30, 34, { full: 0.6 }),
    ...ice.slice(2),
    putAt(all(put(spoonIn, [0, 0], 12), put(grip, [16, -66], 8)), [30, 20, 34]),
  );
};

/** Pushed through a sieve, so that no lump is left. */
export const strain = (): Mark => {
  const rim = ring([30, 10, 52], 38).map(flat);
  const bowl = between(0, Math.PI, 14).map((a): P2 => {
    const [cx, cy] = flat([30, 10, 52]);
    return [cx - Math.cos(a) * 39, cy + 4 + Math.sin(a) * 30];
  });
  const mesh = common(ring([30, 10, 48], 36).map(flat), rim);
  const drips = (
    [
      [14, 12],
      [26, 2],
      [34, 14],
      [45, 6],
    ] as const
  ).map(([x, down]) => {
    const [px, py] = flat([x, 8, 26]);
    return path(
      `M${px} ${py + down - 5}c2 4 3 5 3 7a3 3 0 0 1-6 0c0-2 1-3 3-7z`.replace(/(\.\d)\d+/g, '$1'),
      'glue',
      'line',
      [],
    );
  });
  return all(
    pot(POT, 36, 20, { full: 0.55 }),
    ...drips,
    shape2(hull([...bowl, ...rim]), 'glass'),
    meshOf(bowl),
    shape2(rim, 'ground'),
    shape2(mesh, 'glue', 'thin'),
    putAt(
      path('M0 0L44-4Q48-2 44 2L0 7Z', 'board', 'line', [
        [0, -4],
        [48, 7],
      ]),
      [68, 8, 52],
    ),
    putAt(all(put(spoonIn, [0, 0], 12), put(grip, [16, -66], 8)), [26, 6, 50]),
  );
};
const meshOf = (bowl: readonly P2[]): Mark => {
  const [x0, x1] = [bowl[0]![0], bowl.at(-1)![0]];
  const [top, deep] = [bowl[0]![1], Math.max(...bowl.map(([, y]) => y))];
  const half = (x1 - x0) / 2;
  const inside = (t: number) => Math.sqrt(Math.max(0, 1 - (2 * t - 1) ** 2));
  return strokes2([
    ...between(0.12, 0.88, 9).map((t): P2[] => [
      [x0 + (x1 - x0) * t, top + 5],
      [x0 + (x1 - x0) * t, top + (deep - top) * inside(t) * 0.96],
    ]),
    ...between(0.3, 0.85, 4).map((v): P2[] => [
      [x0 + half - half * Math.sqrt(1 - v * v) * 0.95, top + (deep - top) * v],
      [x0 + half + half * Math.sqrt(1 - v * v) * 0.95, top + (deep - top) * v],
    ]),
  ]);
};

/** In a jar with a lid, its name, its strength and the day on it. */
export const jar = (): Mark => {
  const at: P3 = [30, 10, 0];
  const label = between(-0.62, 0.62, 9).map((a) => a);
  const band = (z: number) =>
    label.map((a): P2 => flat([30 + 31 * Math.sin(a + 0.35), 10 - 31 * Math.cos(a + 0.35), z]));
  return all(
    pot(at, 32, 62, { full: 0.72, wall: 'glass' }),
    shape2(hull([...ring([30, 10, 3], 30), ...ring([30, 10, 44], 31.4)].map(flat)), 'glue', 'thin'),
    shape2(hull([...ring([30, 10, 60], 29), ...ring([30, 10, 74], 29)].map(flat)), 'board'),
    shape2(ring([30, 10, 74], 29).map(flat), 'board'),
    shape2([...band(16), ...band(42).reverse()], 'paper'),
    strokes2([band(35).slice(1, 8), band(29).slice(1, 6), band(23).slice(1, 7)], 'line'),
  );
};

const STAGES = ['slurry', 'thin', 'thick', 'done', 'set'] as const;
export type Stage = (typeof STAGES)[number];
/** Which of five moments it is: five beads in a row, as many filled as have come. */
const ofFive = (count: number, [x, y]: P2): Mark =>
  all(
    ...between(0, 4, 5).map((i) =>
      put(
        path('M-3.500 0A3.500 3.500 0 1 1 3.500 0A3.500 3.500 0 1 1-3.500 0Z', i < count ? 'ink' : 'none', 'line', [
          [-4, -4],
          [4, 4],
        ]),
        [x + 12 * i, y],
      ),
    ),
  );
/** Paste at one stage, and what of it runs off the spoon. */
export function stage(at: Stage): Mark {
  const [x, y] = flat([30, 10, 34]);
  const lifted = put(spoonSide(at), [x + 4, y - 46]);
  const surface: Readonly<Record<Stage, Mark>> = {
    slurry: all(),
    thin: steam([52, 24, 40]),
    thick: all(swirl(20), steam([56, 24, 40])),
    done: all(swirl(20), bubbles(), steam([58, 24, 40])),
    set: lumpTop(),
  };
  const heated = at !== 'slurry' && at !== 'set';
  return all(
    heated && hob(),
    heated ? pan() : at === 'slurry' ? milk() : pot(POT, 38, 34, { full: SET_AT / 34 }),
    surface[at],
    lifted,
    // the spoon was lifted out
    way2([x - 26, y - 30], [x - 26, y - 58]),
    ofFive(STAGES.indexOf(at) + 1, [x - 24, y + (heated ? 78 : 66)]),
    at === 'slurry' && called([62, 0, 16], 'cold water', 6),
    at === 'slurry' && called([60, 0, 4], 'starch', 12),
    at === 'done' && sign([x - 52, y - 44], 'good'),
  );
}
/** A word to the right of a pot, a thin line from it to what it names. */
const called = (at: P3, text: string, down: number): Mark => {
  const [px, py] = flat(at);
  const end = flat([72, 10, 0])[0] + 10;
  return all(leader([px, py], [end - 4, py + down]), word([end, py + down + 4], text));
};
/** Starch and water in a glass bowl: white, and what has settled lies on the bottom. */
const milk = (): Mark => {
  const level = (z: number, radius: number) => ring([POT[0], POT[1], z], radius).map(flat);
  return all(
    pot(POT, 38, 34, { full: 0, wall: 'glass' }),
    shape2(hull([...level(2, 35), ...level(22, 37)]), 'paper', 'thin'),
    shape2([...frontOf(2, 35.5), ...frontOf(8, 36).reverse()], 'board', 'thin'),
    settled(),
    shape2(common(level(22, 37), level(34, 38)), 'paper', 'line'),
    shape2(level(34, 38), 'none'),
  );
};
/** The half of a level circle that faces the reader, from its leftmost point to its rightmost as it is seen. */
const frontOf = (z: number, radius: number, count = 16): P2[] =>
  between(1, 2, count).map((half) => {
    const angle = Math.PI * half + Math.atan2(0.46, 0.96);
    return flat([POT[0] + radius * Math.cos(angle), POT[1] + radius * Math.sin(angle), z]);
  });
/** Grains on the bottom, and a few still sinking. */
const settled = (): Mark => {
  const lying = frontOf(5, 34, 12).slice(1, -1);
  const sinking = frontOf(13, 33, 7).slice(1, -1);
  const at = ([x, y]: P2, up: number) => `M${x.toFixed(1)} ${(y - up).toFixed(1)}h0`;
  return {
    svg: `<path class="d v" d="${[...lying.map((p, i) => at(p, i % 2)), ...sinking.map((p, i) => at(p, (i % 3) * 2))].join('')}"/>`,
    reach: [],
  };
};
/** What lies in the pan is seen only inside its rim. */
const PAN_RIM = ring([POT[0], POT[1], 35], 37).map(flat);
const bubbles = (): Mark =>
  all(
    ...(
      [
        [6, 24, 6],
        [20, 15, 4],
        [40, 32, 6],
        [47, 14, 5],
        [56, 26, 3.5],
      ] as const
    ).map(([x, y, r]) => {
      const [cx, cy] = flat([x, y, 21]);
      const dome: P2[] = between(0, Math.PI, 9).map((a) => [cx - r * Math.cos(a), cy - 1.2 * r * Math.sin(a)]);
      // clear, with a light on it: what is under it shows through
      return all(
        shape2(common([...dome, [cx + r * 0.6, cy + 2], [cx - r * 0.6, cy + 2]], PAN_RIM), 'none', 'line'),
        strokes2(
          [
            [
              [cx - r * 0.5, cy - r * 0.4],
              [cx - r * 0.1, cy - r * 0.8],
            ],
          ],
          'shine',
        ),
      );
    }),
  );
/** A hole with steep sides where the spoon went in: nothing flows together. */
const lumpTop = (): Mark => {
  const rim = ring([POT[0], POT[1], 34], 37).map(flat);
  const hole = ring([34, 14, SET_AT], 17, 'level', 22);
  const deep = hole.map(([x, y, z]): P3 => [x + 1, y + 2, z - 9]);
  const seen = common(hole.map(flat), rim);
  return all(shape2(seen, 'water'), shape2(common(deep.map(flat), seen), 'glue', 'thin'));
};
/** How high set paste stands in its pot. */
const SET_AT = 29;

/** A spoon seen from the side, and how what was in it leaves it. */
function spoonSide(at: Stage): Mark {
  const bowl = all(
    path('M-14-4C-14 8 14 8 15-3L84-24Q89-28 83-30L14-8Z', 'board', 'line', [
      [-14, -30],
      [88, 8],
    ]),
  );
  const runs: Readonly<Record<Stage, Mark>> = {
    slurry: all(
      ...[10, 24, 38].map((d) =>
        path(`M-9 ${d - 4}c3 5 4 7 4 9a4 4 0 0 1-8 0c0-2 1-4 4-9z`, 'paper', 'line', [
          [-13, d - 4],
          [-5, d + 9],
        ]),
      ),
    ),
    thin: path('M-11 3C-9 14-10 30-9.500 56H-7.500C-7 30-6 14-4 5Z', 'glue', 'line', [
      [-11, 3],
      [-4, 56],
    ]),
    thick: path('M-13 2C-10 20-14 36-15 54Q-8 60-2 54C-3 36-2 20 1 6Z', 'glue', 'line', [
      [-15, 2],
      [1, 58],
    ]),
    // a curtain, thinner than the spoon is wide, that ends in a hem
    done: all(
      path(
        'M-15-3C-17 10-17 22-20 36Q-14 42-8 37Q-2 44 4 38Q10 43 14 36C11 22 13 10 15-1L14-2C10 9-10 9-14-4Z',
        'glue',
        'line',
        [
          [-20, -3],
          [15, 42],
        ],
      ),
      path('M-10 9C-11 18-12 24-12 30M-1 11V34M8 9C8 18 9 22 9 30', 'none', 'shine', []),
    ),
    set: all(
      path('M-13-5C-19-14-16-27-6-27C-2-33 8-32 11-25C18-21 18-10 14-5C8-1-6-1-13-5Z', 'glue', 'line', [
        [-22, -33],
        [24, 0],
      ]),
      path('M-9-20C-7-24-3-25 0-24M7-21C10-19 11-16 11-13', 'none', 'shine', []),
      // it quivers
      path('M-21-25Q-25-18-22-11M22-25Q26-18 23-11', 'none', 'way', []),
    ),
  };
  return all(bowl, runs[at], put(grip, [62, -21], -107, { mirrored: true, scale: 0.86 }));
}
