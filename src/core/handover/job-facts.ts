/**
 * What several rooms ask: the sheet, what it goes on, the size, the adhesive, the tool, the room's air, the project.
 * Each room says these in its own link under its own keys; here they are read out of one room's link and written
 * into another's. All of it is text, as links carry it, so that no room need fetch the fields of another.
 */
import { parsePairs, writePairs } from '../link/pairs';
import { readPaper, writePaper, type OwnPaper } from '../paper/own-paper';
import type { RoomId } from './rooms';

/** Facts of a job, each as a link carries it. A size is two; what is made is one for each of its keys. */
export type JobFacts = Readonly<Record<string, string>>;
type Query = ReadonlyMap<string, string>;
type Pairs = Record<string, string>;

/** Keys of a room's link that carry a fact as it stands. */
const SAME: Readonly<Record<RoomId, Readonly<Record<string, string>>>> = {
  measure: {},
  choose: { on: 'on', wide: 'wide', high: 'high', tool: 'tool', celsius: 'room', humidity: 'rh', bench: 'bench' },
  mix: { paper: 'paper', tool: 'tool', celsius: 'room' },
  cover: { paper: 'paper', glue: 'glue', tool: 'tool', bench: 'bench' },
  flat: {
    paper: 'paper',
    on: 'board',
    wide: 'wide',
    high: 'high',
    glue: 'glue',
    tool: 'tool',
    celsius: 'room',
    humidity: 'rh',
    bench: 'bench',
  },
  make: {},
  cut: {},
  class: { paper: 'paper', on: 'on', glue: 'glue', tool: 'tool', celsius: 'celsius', humidity: 'rh', bench: 'bench' },
  bench: {},
  trial: { paper: 'paper', on: 'on', glue: 'glue', tool: 'tool', celsius: 'room', humidity: 'rh' },
};

/** What a project is made from: the same keys where it is measured and in a class. */
export const PROJECT_KEYS = [
  ...['make', 'in', 'wide', 'high', 'thick-by', 'thick', 'leaves', 'caliper', 'board', 'cover', 'with'],
  ...['spine-lining', 'panels', 'sheet', 'lined', 'ties', 'square', 'joint', 'spine', 'turn', 'mitre', 'cloth'],
  ...['lap', 'tab', 'deep', 'tall', 'room', 'lid', 'air', 'layer', 'back', 'flap', 'tie'],
];
const isProjectRoom = (room: RoomId): boolean => room === 'make' || room === 'class';
/** A piece of the chooser is of this size at most and at least, mm; a board that may warp, of that. */
const SIZES = { choose: [5, 3000], flat: [10, 2000] } as const;

/** What is measured of a sheet, by the chooser's keys and by those of a paper of one's own. */
const ASKED = { gsm: 'grammage', thick: 'caliper', drop: 'dropSeconds', cobb: 'cobb' } as const;

/** The sheet of a chooser's link as one text; undefined where it names none. */
function paperAsked(query: Query): string | undefined {
  const family = query.get('paper');
  if (family === undefined) return undefined;
  const measured = Object.entries(ASKED).flatMap(([key, field]) => {
    const value = Number(query.get(key) || 'none');
    return Number.isFinite(value) ? [[field, Number(value.toFixed(3))]] : [];
  });
  const words = { surface: query.get('face'), sizing: query.get('size') };
  const runs = query.get('runs');
  const paper = {
    family,
    ...Object.fromEntries(measured),
    ...Object.fromEntries(Object.entries(words).filter(([, word]) => word)),
    ...(runs && { coloursRun: runs === 'yes' }),
  } as OwnPaper;
  const text = writePaper(paper);
  return readPaper(text) ? text : undefined;
}

/** Whether a text that names no sheet of one's own speaks of the very sheet that another names. */
export function isSameSheet(text: string, named: string): boolean {
  const [asked, own] = [readPaper(text), readPaper(named)];
  if (!asked || !own || asked.name !== undefined) return false;
  const { name: _name, grain: _grain, ...measured } = own;
  const { grain: _asked, ...said } = asked;
  return writePaper(said) === writePaper(measured);
}

/** The same the other way: every key, so that nothing stays of the sheet before it. */
function askedPaper(text: string): Pairs {
  const paper = readPaper(text);
  if (!paper) return {};
  const shown = (value: unknown) => (value === undefined ? '' : String(value));
  return {
    paper: paper.family,
    ...Object.fromEntries(Object.entries(ASKED).map(([key, field]) => [key, shown(paper[field])])),
    face: shown(paper.surface),
    size: shown(paper.sizing),
    runs: paper.coloursRun === undefined ? '' : paper.coloursRun ? 'yes' : 'no',
  };
}

const ONE_PIECE = /^(\d+(?:\.\d+)?)x(\d+(?:\.\d+)?)x1$/;

/** What a room's link says of the job. Takes any text; what it cannot read it leaves out. */
export function factsIn(room: RoomId, tail: string): JobFacts {
  const { query } = parsePairs(tail);
  const facts: Pairs = {};
  const say = (fact: string, text: string | undefined) => {
    if (text !== undefined && text !== '') facts[fact] = text;
  };
  for (const [fact, key] of Object.entries(SAME[room])) say(fact, query.get(key));
  if (room === 'choose') {
    say('paper', paperAsked(query));
    // what its sender saw: version, adhesive, …
    say('glue', query.get('seen')?.split('.')[1]);
  }
  if (room === 'flat') {
    const paper = readPaper(query.get('paper') ?? '');
    const grammage = Number(query.get('gsm') || 'none');
    if (paper && Number.isFinite(grammage)) say('paper', writePaper({ ...paper, grammage }));
  }
  if (room === 'mix' && query.get('do') !== 'stretch') {
    delete facts['paper'];
    delete facts['tool'];
  }
  if (room === 'cover' && query.get('thing') === 'own') {
    const [, wide, high] = ONE_PIECE.exec(query.get('pieces') ?? '') ?? [];
    say('wide', wide);
    say('high', high);
  }
  if (isProjectRoom(room) && query.has('make'))
    for (const key of PROJECT_KEYS) facts[`project ${key}`] = query.get(key) ?? '';
  return facts;
}

const within = (text: string, [low, high]: readonly [number, number]): string => {
  const mm = Number(text);
  return Number.isFinite(mm) ? String(Math.min(high, Math.max(low, mm))) : text;
};

/** What a room's link carries of these facts: pairs to lay over those that it has. */
export function pairsFor(room: RoomId, facts: JobFacts): Readonly<Record<string, string>> {
  const pairs: Pairs = {};
  for (const [fact, key] of Object.entries(SAME[room])) if (facts[fact]) pairs[key] = facts[fact];
  const { paper, wide, high } = facts;
  if (room === 'choose' && paper) Object.assign(pairs, askedPaper(paper));
  if (room === 'measure' && paper) pairs['paper'] = readPaper(paper)?.family ?? paper;
  if (room === 'flat' && paper) pairs['gsm'] = '';
  if (room === 'mix' && (paper || facts['tool'])) delete pairs['celsius'];
  if (room === 'cover' && wide && high) {
    pairs['thing'] = 'own';
    pairs['pieces'] = `${wide}x${high}x1`;
  }
  if (room === 'choose' || room === 'flat')
    for (const side of ['wide', 'high'] as const) if (pairs[side]) pairs[side] = within(pairs[side], SIZES[room]);
  if (room === 'flat' && pairs['rh']) pairs['rh'] = within(pairs['rh'], [5, 95]);
  if (room === 'flat' && pairs['room']) pairs['room'] = within(pairs['room'], [5, 40]);
  if (room === 'class' && pairs['rh']) pairs['rh'] = within(pairs['rh'], [5, 95]);
  if (isProjectRoom(room))
    for (const [fact, text] of Object.entries(facts)) if (fact.startsWith('project ')) pairs[fact.slice(8)] = text;
  if (room === 'cover' && facts['cover pieces']) Object.assign(pairs, pairsIn(facts['cover pieces']));
  if (room === 'cut' && facts['cut pieces']) Object.assign(pairs, pairsIn(facts['cut pieces']));
  if (room === 'mix' && facts['mix']) Object.assign(pairs, pairsIn(facts['mix']));
  return pairs;
}

const pairsIn = (tail: string): Pairs => {
  const { v: _format, seen: _seen, ...pairs } = Object.fromEntries(parsePairs(tail).query);
  return pairs;
};

/** The tail of a link with these facts laid over what it says; what is empty is left out. */
export function tailWith(room: RoomId, facts: JobFacts, tail = ''): string {
  const before = pairsIn(tail);
  const all = { ...before, ...pairsFor(room, facts) };
  return writePairs([['v', '1'], ...Object.entries(all).filter(([, text]) => text !== '')]);
}
