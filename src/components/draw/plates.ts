/** Every plate by its name: what it is called, what it teaches, and how it is drawn. */
import { cardOnBoard, fromTheMiddle, putOn, putOnNarrow, squeegeeOnScreen, type Tool } from './apply';
import * as fails from './failures';
import { pinch } from './hands';
import { all, framed, put, putAt, shape, strokes, way, way2, type Drawing, type Mark } from './ink';
import * as lay from './lay';
import * as bench from './measuring';
import * as pots from './paste';
import * as repair from './repair';
import { PROJECT_PLATES } from './projects';
import { bent, block, curledStrip, pane, pot, sheet, weight } from './sheets';
import { between, flat, plus, type P3 } from './space';
import * as tests from './tests';
import * as tools from './tools';
import * as corner from './turn-in';
import { PROJECTS, type ProjectId } from '../../core/make/projects';
import { memoize } from '../../core/base/memoize';
import type { Stroke } from '../../core/records/records';

export const PLATE_SETS = [
  'spread',
  'lay',
  'corner',
  'pot',
  'cooking',
  'test',
  'repair',
  'failure',
  'tool',
  'project',
] as const;
export type PlateSet = (typeof PLATE_SETS)[number];

export interface Plate {
  readonly set: PlateSet;
  readonly name: string;
  /** said to those who cannot see it: what it shows, so that somebody could do the same */
  readonly teaches: string;
  readonly size: readonly [wide: number, high: number];
  /** one drawing, or the eight frames of a movement */
  readonly draw: () => readonly Mark[];
}

const STEP = [236, 176] as const;
const PAIR = [344, 178] as const;
const one =
  (set: PlateSet, size: readonly [number, number]) =>
  (name: string, teaches: string, draw: () => Mark): Plate => ({ set, name, teaches, size, draw: () => [draw()] });
const spread = one('spread', STEP);
const laid = one('lay', STEP);
/** with words in it, which want room */
const laidWithWords = one('lay', [264, 176]);
const turned = one('corner', STEP);
const potted = one('pot', STEP);
const stage = one('cooking', STEP);
const test = one('test', PAIR);
const repaired = one('repair', STEP);
const failed = (name: string, teaches: string, draw: () => Mark): Plate =>
  one('failure', STEP)(name, `${teaches} A cross marks it as a fault.`, draw);
const tool = one('tool', [140, 120]);

/** Frames of a movement: what the drawing is at 0, at 1, and between. */
const FRAMES = 8;
const moving = (plate: Plate, at: (share: number) => Mark): Plate => ({
  ...plate,
  draw: () => Array.from({ length: FRAMES }, (_, i) => at(i / (FRAMES - 1))),
});

const WITH: Readonly<Record<Tool, string>> = {
  'brush-full': 'a wide, loaded brush',
  'brush-thin': 'a brush that carries little',
  'brush-small': 'a small round brush',
  card: 'the edge of a card',
  fingertip: 'a fingertip',
  roller: 'a hand roller',
  screen: 'a squeegee through a screen',
};
const TOOLS = Object.keys(WITH) as Tool[];
const ONTO = {
  sheet: ['the sheet', 'The sheet lies face down on old newsprint, which stands out all round it.'],
  support: ['the sheet, on glass', 'The sheet lies face down on a pane of glass.'],
  board: ['the board', 'The board lies bare on the bench, and the paper stays dry.'],
} as const;

/** The way each tool goes over a face, as its record says: a test holds the two together. */
export const STROKE_OF: Readonly<Record<Tool, Stroke>> = {
  'brush-full': 'outwards',
  'brush-thin': 'outwards',
  'brush-small': 'outwards',
  card: 'bands',
  fingertip: 'outwards',
  roller: 'outwards',
  screen: 'pull',
};
/** How it goes over the face in the drawing, for those who cannot see it. */
const goesOver = (held: Tool): string => {
  const what = `${WITH[held][0]!.toUpperCase()}${WITH[held].slice(1)}`;
  return {
    outwards: `${what} takes ${held === 'brush-thin' ? 'a thin coat, through which the work is still seen,' : 'the glue'} from the middle out over all four edges, as the arrows show.`,
    bands: `${what} pulls the glue over it in straight bands side by side, each from the left edge out over the right: the far one is done, the near one under way.`,
    pull: `A screen lies on it. A squeegee, its rubber down, draws the glue across the mesh in one pull from the left side to the right; behind it the mesh is wet, before it dry, and the end of what lies below is seen through it.`,
  }[STROKE_OF[held]];
};

/** Where round the middle the tool is, as the coat grows. */
const roundAndOut = (share: number) => ({ reached: 0.25 + 0.6 * share, turn: 0.85 + 0.5 * Math.sin(share * 9) });

const spreading = Object.fromEntries(
  (Object.keys(ONTO) as (keyof typeof ONTO)[]).flatMap((onto) =>
    TOOLS.map((held): [string, Plate] => {
      const [what, lies] = ONTO[onto];
      // with a word in it, which wants room
      const drawn = held === 'brush-thin' || held === 'screen' ? one('spread', [264, 176]) : spread;
      return [
        `on-${onto}-${held}`,
        drawn(`Glue on ${what}, with ${WITH[held]}`, `${lies} ${goesOver(held)}`, () => putOn(onto, held)),
      ];
    }),
  ),
);

const MADE: Readonly<Record<ProjectId, readonly [finished: string, apart: string]>> = {
  notebook: [
    'A case-bound notebook: a cloth spine, paper sides, boards that stand a little over the leaves.',
    'From the bottom: a board, an endpaper, the text block, an endpaper, a board, and over it the spine cloth and the covering of the side.',
  ],
  accordion: [
    'A strip folded in zigzag stands between two covered boards.',
    'The folded strip in the middle; its first leaf and its last are glued to one board each.',
  ],
  'slip-case': [
    'A case covered in paper, open at one end; a book slides into it spine outwards.',
    'Five boards: two sides, and between them the back, the top and the bottom. The end where the book goes in has none.',
  ],
  'lidded-box': [
    'A tray, and over it a lid that slips down outside its walls.',
    'A base and four walls. Two walls run the whole width; the other two stand between them.',
  ],
  portfolio: [
    'Two covered boards joined by a cloth spine, tied at the fore-edge.',
    'Laid open: on the lower board three flaps of paper, at head, tail and fore-edge, fold over what is kept; ties on both boards.',
  ],
};
const projects = Object.fromEntries(
  (Object.keys(MADE) as ProjectId[]).flatMap((id): [string, Plate][] => [
    [
      `${id}-finished`,
      one('project', STEP)(`${PROJECTS[id].title}, finished`, MADE[id][0], () => PROJECT_PLATES[id]().finished),
    ],
    [
      `${id}-apart`,
      one('project', [264, id === 'notebook' ? 258 : 196])(
        `${PROJECTS[id].title}, in its parts`,
        MADE[id][1],
        () => PROJECT_PLATES[id]().apart,
      ),
    ],
  ]),
);

const onFoot = (mark: Mark, degrees = 24): Mark => put(mark, [0, 0], degrees);

/** How many strokes of rubbing down are done at each of the eight frames: it begins in the middle, and ends over the near edge. */
const RUBBED = [0, 0.5, 1, 1.6, 2, 2.6, 3, 4];

export const PLATES = {
  ...spreading,
  'brush-from-the-middle': moving(
    spread(
      'Brushing from the middle out',
      'The coat begins as a pool in the middle of the sheet. Stroke by stroke the brush draws it outwards, over the edges and on to the newsprint under it, and never from an edge inwards.',
      () => fromTheMiddle('sheet', 'brush-full'),
    ),
    (share) => {
      const { reached, turn } = roundAndOut(share);
      return fromTheMiddle('sheet', 'brush-full', reached, turn);
    },
  ),
  'on-spine': spread(
    'Glue on the spine',
    'The book is held between boards, spine up. A small brush takes the glue from the middle of the spine towards both ends.',
    () => putOnNarrow('spine', 'brush-small'),
  ),
  'on-strip': spread(
    'Glue on a narrow strip',
    'The leaf lies on newsprint, and another sheet of newsprint covers all of it but a narrow strip at its edge. The glue is brushed along the strip.',
    () => putOnNarrow('strip', 'brush-small'),
  ),
  'on-tear': spread(
    'Glue on a tear',
    'A small brush touches paste to the slanted edges of a tear, and to nothing else.',
    () => putOnNarrow('tear', 'brush-small'),
  ),
  'on-edge': spread(
    'Glue on the edge of a board',
    'A board is held up on end between finger and thumb, and its upper edge is glued with a small brush before it goes against the other board.',
    () => putOnNarrow('edge', 'brush-small'),
  ),

  'keep-warm': laid(
    'Kept warm',
    'The glue pot stands in a larger pan of hot water on a hotplate, with a thermometer in the water.',
    lay.keepWarm,
  ),
  'face-down-on-glass': laidWithWords(
    'Face down on glass',
    'The sheet is let down on a pane of glass from one side, its printed face underneath.',
    lay.faceDownOnGlass,
  ),
  'lift-by-film': laidWithWords(
    'Lifted by the film',
    'The pasted sheet lies on a film; the film is taken by its edge and lifted, and carries the wet sheet.',
    lay.liftByFilm,
  ),
  relax: laidWithWords(
    'Left to relax',
    'The pasted sheet lies on its newsprint and waves a little; a clock shows a few minutes.',
    () => lay.relax(),
  ),
  'hold-over': laid(
    'Held over its place',
    'Two hands hold the pasted sheet over the board, the left edge low, the right edge high. It does not touch yet. Broken lines fall from its corners to where each of them will lie, and an arrow says that the low edge goes down first.',
    lay.holdOver,
  ),
  'let-down': moving(
    laid(
      'Let down from one edge',
      'One edge of the sheet lies on the board. The other is held up, its glue to be seen underneath, and is let down after it, so that the air goes out before it.',
      () => lay.letDown(),
    ),
    (share) => lay.letDown(0.12 + 0.62 * share),
  ),
  joint: one('lay', [300, 150])(
    'The joint',
    'A sheet lies on a board with a coat of wet glue between them; at one corner it is lifted, so that all three can be seen.',
    lay.joint,
  ),
  slide: laid(
    'Moved while it slides',
    'The sheet lies on the board; a flat hand pushes it to the right, towards the corners that are drawn on the board. At its left the wet track shows where it lay.',
    lay.slideAlong,
  ),
  'rub-down': moving(
    laid(
      'Rubbed down',
      'A thin, clean sheet lies over the work, its left edge turned up. Under it stand blisters of air. A folder rubs through the clean sheet from the middle out over each edge in turn, as the arrows show, and after each stroke the blisters in its way are gone.',
      () => lay.rub(),
    ),
    (share) => lay.rub(RUBBED[Math.round(share * (FRAMES - 1))]!),
  ),
  pat: laid(
    'Pressed with a soft brush',
    'A wide, soft brush presses the sheet down from the middle outwards; a hard tool would flatten its pattern.',
    lay.pat,
  ),
  press: laidWithWords(
    'Under a board and weight',
    'The work lies between two boards under an iron weight; a clock shows half an hour.',
    () => lay.press(),
  ),
  'press-blotters': laidWithWords(
    'Pressed between blotters',
    'The work lies between two blotters, these between two boards, and an iron weight on top. A moon says that it stays so until the next day.',
    lay.pressBlotters,
  ),
  clamp: laid(
    'Held square',
    'A wall of a box is pushed against the base and the next wall, with a square set in the corner, and held until the glue has set.',
    lay.clampSquare,
  ),
  film: laidWithWords(
    'A film, its backing drawn off',
    'A sticky film lies on the back of the sheet; its backing is drawn off low, from the right side to the left.',
    lay.film,
  ),
  stick: laid(
    'A stick of glue',
    'A stick of glue is rubbed over the back of a sheet that lies on newsprint, stroke beside stroke, from the middle out over the edges.',
    lay.stick,
  ),
  spray: laid(
    'Sprayed',
    'A can is held a hand’s length off, a finger on its head, over a sheet on newsprint. It goes over the sheet in bands side by side, as the arrows show, and each begins and ends beyond the edges.',
    lay.spray,
  ),
  tacked: laidWithWords(
    'A dry tissue, tacked',
    'A dry tissue as large as the sheet lies on its back, its left edge turned up. The tip of an iron touches it in the middle, through a scrap of clean paper.',
    lay.tacked,
  ),
  remoistened: laidWithWords(
    'A dry coat, damped',
    'A strip of tissue lies on newsprint, its dry coat up. A hand draws a wet sponge over it, and behind the sponge the coat is wet.',
    lay.remoistened,
  ),
  'both-faces': laidWithWords(
    'Glue on both faces',
    'On the left the back of the sheet, coated; on the right the board, which a card is coating. Both are left until they are dry to the touch.',
    lay.bothFaces,
  ),
  iron: laid(
    'Set with an iron',
    'A hand holds an iron by its handle and moves it over a thin, clean sheet that covers the work; the left edge of the clean sheet is turned up.',
    lay.ironed,
  ),

  mitre: turned(
    'The corner is cut',
    'The cover lies good side down with the board on it. A knife cuts its corner off aslant, a little outside the point of the board.',
    corner.mitre,
  ),
  'turn-in-head': turned(
    'Head and tail are turned in',
    'The far edge has been turned over the board already. The near one is drawn up and over with a folder.',
    corner.turnHead,
  ),
  'nip-corner': turned(
    'The corner is tucked',
    'The corner seen from near by. The near edge of the cover is turned over the board, and at its end a little ear of paper stands out. The point of a folder presses it in against the edge of the board.',
    corner.nipCorner,
  ),
  'turn-in-side': turned(
    'Then the other two sides',
    'The flap at the right is drawn up over the board with a folder, over the tucked corner.',
    corner.turnFore,
  ),
  'corner-done': turned(
    'The corner, done',
    'The turned edges meet in a slant at each corner, and no board shows. A tick marks it as right.',
    corner.cornerDone,
  ),

  weigh: potted('Weighed', 'A bowl of powder stands on a kitchen scale.', pots.weigh),
  'pour-in': potted(
    'Poured in',
    'A hand holds a jug by its handle and tips it; water runs over its lip into the bowl.',
    () => pots.pourIn(),
  ),
  'sprinkle-in': potted(
    'Sprinkled in',
    'A hand tips a mug over a bowl of water, so that powder falls from its edge a little at a time.',
    () => pots.pourIn(true),
  ),
  stir: potted('Stirred', 'A spoon goes round in the bowl.', () => pots.stir()),
  whisk: potted('Whisked', 'A whisk goes round in the bowl.', () => pots.stir(true)),
  heat: potted(
    'Cooked and stirred',
    'The pan stands on a hotplate and steams; a spoon never stops going round in it.',
    pots.heat,
  ),
  stand: one('pot', [264, 176])(
    'Left to stand',
    'The covered bowl is left alone; beside it a clock, on which time goes by.',
    pots.stand,
  ),
  cool: potted(
    'Cooled in ice and water',
    'The bowl stands in a larger one of water and ice, and is stirred.',
    pots.cool,
  ),
  strain: potted(
    'Strained',
    'Paste is rubbed through a sieve with a spoon, and falls into a bowl without its lumps.',
    pots.strain,
  ),
  jar: potted('In a jar, with a label', 'A closed jar with a label on which three lines are written.', pots.jar),

  'paste-slurry': one('cooking', [264, 176])(
    'Starch and cold water',
    'The first of five moments. White as milk. From a spoon held over the bowl it runs in drops, and what stands settles to the bottom.',
    () => pots.stage('slurry'),
  ),
  'paste-thin': stage(
    'Warm, still thin',
    'The second of five moments. On the heat it runs off a lifted spoon in a thin thread, like water.',
    () => pots.stage('thin'),
  ),
  'paste-thick': stage(
    'It thickens',
    'The third of five moments. All at once it turns thick: it leaves the spoon in a broad band, and the spoon leaves a track.',
    () => pots.stage('thick'),
  ),
  'paste-done': stage(
    'Cooked',
    'The fourth of five moments. Glassy and no longer white. Bubbles break slowly, and it falls from the spoon in a sheet and not in drops. A tick marks it as done.',
    () => pots.stage('done'),
  ),
  'paste-set': stage(
    'Cold',
    'The last of five moments. It has set to a jelly that keeps its shape on the spoon. Strained and thinned it can be brushed.',
    () => pots.stage('set'),
  ),

  'grain-bend': test(
    'Bend it over',
    'Two sheets bent over and pressed lightly with a finger. With the fibres along the bend it lies low and gives; with the fibres across the bend it stands up and springs.',
    tests.bendTest,
  ),
  'grain-tear': test(
    'Tear it',
    'Two sheets torn. Along the fibres the tear runs straight; across them it wanders from side to side.',
    tests.tearTest,
  ),
  'grain-strips': test(
    'Hold out two strips',
    'Two strips of one size, held by one end at the edge of a block. The one cut along the fibres stands out; the one cut across them hangs down.',
    tests.stripTest,
  ),
  'grain-damp': test(
    'Damp one face',
    'A square of paper is damped on one face with a sponge. It rolls up from two sides, damp face inside, and the rolls lie the way of the fibres.',
    tests.dampTest,
  ),
  'drop-test': test(
    'The drop test',
    'A drop falls from a dropper on a sheet. At first it stands up and shines; then it sinks and the shine goes; when nothing stands on the paper any more, the clock is stopped.',
    tests.dropTest,
  ),

  'weigh-coat': test(
    'A board, weighed before and after',
    'A board lies bare on a kitchen scale. Beside it the same board, brushed all over with glue, lies on the scale again, which now shows more.',
    bench.weighCoat,
  ),
  'weigh-smear': test(
    'A smear, weighed wet and dry',
    'A piece of foil lies on a kitchen scale, and on the foil a thin, wet, shining smear of glue. Beside it the same foil the next day: the smear is dry and dull, and the scale shows less.',
    bench.weighSmear,
  ),
  'push-strip': test(
    'A strip, pushed until it stops',
    'A pasted strip lies on a board, and a fingertip pushes it by its end. At first it slides, and leaves a wet track where it lay. Later it stays where it is and rucks up before the finger: then the clock is stopped.',
    bench.pushStrip,
  ),

  'endpaper-out': repaired(
    'The endpaper is pasted',
    'The book lies open at its front, the cover flat to the left. Newsprint lies between the leaves and the endpaper and stands out at its three free sides. The endpaper is brushed from the middle out, over these and up to the joint.',
    repair.endpaperOut,
  ),
  'cover-down': repaired(
    'The cover is brought down',
    'The cover stands half open over the pasted endpaper; a hand brings it down, and it takes the paper as it closes.',
    repair.coverDown,
  ),
  'spine-strip': one('repair', [264, 190])(
    'A strip on the spine',
    'The book stands between boards, its spine up and wet with glue. A strip of tissue is laid on it from the near end: a finger rubs that down, and the other hand lets down the far end.',
    repair.spineStrip,
  ),
  'strip-torn': repaired(
    'A strip is torn',
    'Tissue lies on glass, a ruler on the tissue and a line of water along the ruler. A hand pulls the strip away from the ruler, beginning at the right; both torn edges are all fibres.',
    repair.stripTorn,
  ),
  'strip-laid': one('repair', [264, 176])(
    'The strip goes over the tear',
    'The pasted strip of tissue is let down over the tear, from its inner end to the edge of the leaf. The tear shows through it.',
    repair.stripLaid,
  ),
  't-hinge': one('repair', [264, 190])(
    'Two T-hinges',
    'A print lies on its mount. From behind its upper edge two tabs of tissue come up, and over each tab a cross-piece is pasted to the mount.',
    repair.tHinge,
  ),

  dragged: failed(
    'Dragged',
    'The brush goes to the left, and the wet sheet has rucked up into folds before it.',
    fails.dragged,
  ),
  torn: failed(
    'Torn',
    'Lifted wet, the sheet has torn across: one part is in the hand, the other stays on the board, and between their ragged ends the wet glue lies bare.',
    fails.torn,
  ),
  'fibres-left': failed(
    'Fibres left behind',
    'A hand turns the sheet up from the board. A skin of paper fibres stays on the board, and the back of the sheet is rough in the same place.',
    fails.fibresLeft,
  ),
  'face-away': one('failure', [264, 176])(
    'The face of the board comes away',
    'A hand turns the sheet up from the board. A piece of the board sticks to its back, and the board has a pit of the same shape. A cross marks it as a fault.',
    fails.faceAway,
  ),
  'strike-through': failed(
    'Glue strikes through',
    'Wet, shiny patches of glue have come through to the printed side.',
    fails.strikeThrough,
  ),
  cockle: failed('Cockled', 'The sheet has dried in waves that stand off the board.', fails.cockle),
  bow: failed('Bowed', 'The covered board has bent like a dish: its ends stand off the bench.', fails.bow),
  'starved-edge': one('failure', PAIR)(
    'A starved edge',
    'Two sheets turned up from their boards. With a tick: the glue goes to the very edge of both. With a cross: along the edge a strip of the board and of the back of the sheet is bare and dry, and only further in is glue.',
    fails.starvedEdge,
  ),

  'tool-paste-brush': tool('Paste brush', 'A wide, flat brush of bristle with a wooden handle.', () =>
    onFoot(tools.brush(30, 'nothing'), 62),
  ),
  'tool-small-brush': tool('Small brush', 'A round brush that comes to a point.', () => onFoot(tools.smallBrush, 62)),
  'tool-roller': tool('Roller', 'A short roller in a wire frame with a handle.', () => onFoot(tools.roller, 40)),
  'tool-card': tool(
    'Card',
    'A small piece of stiff card stands on its straight lower edge, held by the upper one between finger and thumb. To its left lies the glue that it has spread.',
    cardOnBoard,
  ),
  'tool-squeegee': one('tool', [176, 120])(
    'Squeegee',
    'A strip of rubber in a wooden grip, standing on the mesh of a framed screen. To its left the mesh is wet with the glue that it has drawn along, to its right still dry.',
    squeegeeOnScreen,
  ),
  'tool-folder': tool('Folder', 'A flat, smooth blade of bone, pointed at one end and round at the other.', () =>
    onFoot(tools.folder, 62),
  ),
  'tool-knife': tool('Knife', 'A knife with a flat blade, its end cut off aslant to a point.', () =>
    onFoot(tools.knife, 62),
  ),
  'tool-soft-brush': tool('Smoothing brush', 'A wide, soft brush without a handle.', () => onFoot(tools.softBrush, 0)),
  'tool-weight': tool(
    'Weight',
    'A block of iron with a knob. It stands on a board, and the board presses what lies under it.',
    () =>
      all(
        block([0, 0, 0], 88, 56, 6),
        sheet([4, 3, 6.5], 80, 50, 'plain'),
        block([0, 0, 10], 88, 56, 6),
        weight([18, 12, 16], 52, 34, 26),
      ),
  ),
  'tool-glass': tool('Pane of glass', 'A pane of glass with its light.', () => pane([0, 0, 0], 92, 62)),
  'tool-pot': tool('Pot', 'A round pot, two thirds full of glue.', () => pot([0, 0, 0], 36, 44)),
  'tool-waste': one('tool', [236, 150])(
    'Waste paper',
    'A pile of old newsprint. On the uppermost sheet stands, in glue, the outline of the work that was brushed on it. A hand takes that sheet away, so that the next coat has a clean one.',
    () => usedWaste(),
  ),
  'tool-blotter': tool(
    'Blotters',
    'A thick, soft sheet stands with its foot in a dish of water. The water climbs in it by itself, as the arrows show.',
    () => blotters(),
  ),
  ...projects,
} satisfies Readonly<Record<string, Plate>> as Readonly<Record<string, Plate>>;
/** A blotter that drinks: its foot stands in water, and the wet has climbed in it. */
function blotters(): Mark {
  const [left, right, y] = [-30, 30, 8] as const;
  const upTo = between(left, right, 13).map((at, i): P3 => [at, y, 36 + 1.6 * Math.sin(i * 2.1) - 0.006 * at * at]);
  // what stands under water is seen through it
  const nearWater: P3[] = [
    [left - 1, y, 9],
    [right + 3, y, 9],
    [right + 3, y, 3],
    [left - 1, y, 3],
  ];
  return all(
    pot([0, 8, 0], 46, 12, { liquid: 'water', full: 0.75 }),
    block([left, y, 5], right - left, 4, 72, { top: 'paper', sides: 'paper' }),
    shape([[left, y, 6], ...upTo, [right, y, 6]], 'water', 'thin'),
    shape(nearWater, 'water', 'bare'),
    strokes(
      [
        [
          [left - 6, y, 9],
          [right + 8, y, 9],
        ],
      ],
      'shine',
    ),
    way([-14, y, 16], [-14, y, 31]),
    way([8, y, 16], [8, y, 33]),
  );
}
/** Newsprint that work was brushed on: the strokes have gone out over its edges, and where it lay the print is clean. */
function usedWaste(): Mark {
  const rim = (out: number): P3[] => {
    const [x0, x1, y0, y1] = [20 - out, 74 + out, 14 - out, 48 + out];
    const side = (a: P3, b: P3) =>
      between(0, 1, 7)
        .slice(0, -1)
        .map((t, i): P3 => [
          a[0] + (b[0] - a[0]) * t + (i % 2 ? 2 : -1),
          a[1] + (b[1] - a[1]) * t + (i % 2 ? 2 : -2),
          5,
        ]);
    return [
      ...side([x0, y0, 5], [x1, y0, 5]),
      ...side([x1, y0, 5], [x1, y1, 5]),
      ...side([x1, y1, 5], [x0, y1, 5]),
      ...side([x0, y1, 5], [x0, y0, 5]),
    ];
  };
  const taken = curledStrip([0, 0, 5], 84, 132, 86);
  const hand = (part: Mark) => putAt(part, plus(taken.at(-1)!, [0, 30, 0]), -70, { mirrored: true });
  return all(
    sheet([9, -7, 0], 126, 62, 'news'),
    sheet([-5, 2, 2.5], 132, 62, 'news'),
    hand(pinch.behind),
    bent(taken, [0, 62, 0], { top: 'news', under: 'news' }),
    shape(rim(7), 'glue', 'thin'),
    sheet([20, 14, 5], 54, 34, 'news'),
    hand(pinch.front),
    way2(flat([112, -4, 22]), flat([104, -4, 66]), -8),
  );
}
export function plateOf(id: string): Plate {
  const plate = PLATES[id];
  if (!plate) throw new Error(`plates: there is none called "${id}"; the names stand in src/components/draw/plates.ts`);
  return plate;
}

/** The frames of a plate, one for most. Worked out once for the whole build. */
export const framesOf = memoize((id: string): readonly Drawing[] => {
  const { draw, size } = plateOf(id);
  return framed(draw(), ...size);
});
/** The plate at rest: of a movement, the frame that says most. */
export const stillOf = (id: string): Drawing => {
  const frames = framesOf(id);
  return frames[Math.floor(frames.length * 0.4)]!;
};
/** Whether there are words in it, which have to be large enough to be read. */
export const hasWords = (id: string): boolean => stillOf(id).body.includes('<text');
