/** The measures that a maker may set for themselves: what each is, what is usual, and who says so. */
import {
  BOX_SLACK,
  COVERING,
  LID_ROOM,
  SLIP_CASE_SLACK,
  SQUARE,
  TURN_IN,
  usualJoint,
  usualLidDepth,
  usualSpine,
  type Space,
} from '../base/board-sizes';

export interface Measure {
  readonly label: string;
  /** as a sentence begins */
  readonly what: string;
  readonly key: string;
  /** mm */
  readonly low: number;
  readonly high: number;
  /** what it is, then who says what is usual */
  readonly says: string;
  /** id of a record in content/sources; none where it is common practice */
  readonly source?: string;
}

const COMMON = 'Common practice, no source.';
const measure = (
  key: string,
  label: string,
  [low, high]: readonly [number, number],
  says: string,
  source?: string,
): Measure => ({
  key,
  label,
  what: `The measure “${label.toLowerCase()}”`,
  low,
  high,
  says: source === undefined ? `${says} ${COMMON}` : says,
  ...(source !== undefined && { source }),
});

const VAUGHN = 'vaughn-printing-bookbinding';
const BRIGHTON = 'brighton-slip-case';

export const MEASURES = {
  square: measure('square', 'Square', [0, 30], 'How far the board stands out. Vaughn: 1/8 to 3/16 in.', VAUGHN),
  joint: measure(
    'joint',
    'Joint',
    [1, 40],
    'From the board to the spine strip. Roberts and Etherington: 1/8 to 1/4 in; 7 mm is common practice.',
    'roberts-etherington-1982',
  ),
  spine: measure('spine', 'Spine strip', [1, 250], 'Its width: the block and both boards.'),
  turnIn: measure('turn', 'Turn-in', [4, 100], 'Vaughn: 3/4 in; 5/8 in for library bindings.', VAUGHN),
  corner: measure(
    'mitre',
    'Left at the corners',
    [0, 30],
    'Between board and mitre cut. Vaughn: about the board’s thickness; others leave up to twice that.',
    VAUGHN,
  ),
  onBoard: measure('cloth', 'Cloth on a board', [3, 500], 'A fifth of the board’s width.'),
  lap: measure('lap', 'Sides lap the cloth', [0, 50], 'Vaughn: 1/8 in.', VAUGHN),
  tab: measure('tab', 'Joining tab', [3, 60], 'Where one strip is glued to the next.'),
  slackWidth: measure('deep', 'Slack in width', [0, 30], 'None in a slip case, 2 mm in a box.'),
  slackHeight: measure(
    'tall',
    'Slack in height',
    [0, 30],
    'A worksheet of the University of Brighton: 2 mm in a slip case. Elsewhere common practice.',
    BRIGHTON,
  ),
  slackThickness: measure(
    'room',
    'Slack in thickness',
    [0, 30],
    'A worksheet of the University of Brighton: 2 mm in a slip case. Elsewhere common practice.',
    BRIGHTON,
  ),
  lidDepth: measure('lid', 'Lid, inside depth', [3, 230], 'A third of the depth of the tray.'),
  lidRoom: measure('air', 'Air under the lid', [0, 10], 'Between covered tray and lined lid, both sides together.'),
  covering: measure(
    'layer',
    'One covering',
    [0.05, 2],
    'Thickness of one layer with its glue; four lie between tray and lid.',
  ),
  margin: measure('back', 'Linings stand back', [0, 30], 'From every edge of what they line.'),
  flap: measure('flap', 'Flaps reach in', [10, 500], 'A third of the width of the contents.'),
  tie: measure('tie', 'Length of a tie', [50, 1000], 'Of each tape; 30 mm of it is glued under the lining.'),
} as const satisfies Readonly<Record<string, Measure>>;

export type MeasureId = keyof typeof MEASURES;
export type Measured = Readonly<Record<MeasureId, number>>;

export interface ForMeasures {
  readonly project: string;
  readonly width: number;
  readonly board: number;
  /** mm, however it is known */
  readonly thick: number;
  readonly own: Readonly<Partial<Record<MeasureId, number | undefined>>>;
}

/** Portfolios take what they hold loosely. Common practice, no source. */
const PORTFOLIO_SLACK: Space = { width: 4, height: 4, thickness: 2 };
const NO_SLACK: Space = { width: 0, height: 0, thickness: 0 };
const SLACKS: Readonly<Record<string, Space>> = {
  'slip-case': SLIP_CASE_SLACK,
  'lidded-box': BOX_SLACK,
  portfolio: PORTFOLIO_SLACK,
};

/** The reader's own measures, and the usual one wherever they gave none. */
export function measuresFor(given: ForMeasures): Measured {
  const usual = usualMeasures(given);
  const entries = (Object.keys(MEASURES) as MeasureId[]).map((id) => [id, given.own[id] ?? usual[id]]);
  return Object.fromEntries(entries) as Measured;
}

/** What is usual, mm, for this board, these contents and what else the reader set. */
export function usualMeasures({ project, width, board, thick, own }: ForMeasures): Measured {
  const slack = SLACKS[project] ?? NO_SLACK;
  const [wide, deep] = [width + (own.slackWidth ?? slack.width), thick + (own.slackThickness ?? slack.thickness)];
  const [square, joint] = [own.square ?? SQUARE, own.joint ?? usualJoint(board)];
  return {
    square: SQUARE,
    joint: usualJoint(board),
    spine: usualSpine(deep, board),
    turnIn: TURN_IN,
    corner: board,
    onBoard: Math.max(3, (wide + square - joint) / 5),
    lap: 3,
    tab: 10,
    slackWidth: slack.width,
    slackHeight: slack.height,
    slackThickness: slack.thickness,
    lidDepth: Math.max(3, usualLidDepth(deep)),
    lidRoom: LID_ROOM,
    covering: COVERING,
    margin: project === 'portfolio' ? 3 : 0,
    flap: Math.max(10, width / 3),
    tie: 250,
  };
}
