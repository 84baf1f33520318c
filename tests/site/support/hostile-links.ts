/** Tails of links that no calculator ever gave: drawn at random, and made by hand from what has broken programs before. */
import { seededUniform } from '../../../src/core/base/random';
import type { Field, FieldTable } from '../../../src/core/link/fields';

const PLANS = import.meta.glob<Record<string, unknown>>('../../../src/core/*/{plan,job,fields}.ts', { eager: true });

const isTable = (value: unknown): value is FieldTable =>
  typeof value === 'object' &&
  value !== null &&
  Object.keys(value).length > 3 &&
  Object.values(value).every((one) => typeof one === 'object' && one !== null && 'kind' in one && 'key' in one);

/** What every calculator's link may hold, as its own code says. */
const TABLES = Object.values(PLANS).flatMap((module) => Object.values(module).filter(isTable));

/** What stands for one of the page's own fields: sound values and some at and past the edge. */
function valuesOf(field: Field): readonly string[] {
  switch (field.kind) {
    case 'one-of':
      return [...field.of, 'no-such'];
    case 'yes-no':
      return ['yes', 'no', 'perhaps'];
    case 'some-of':
      return [...field.of, field.of.join('.'), `${field.of[0]}.${field.of[0]}.no-such`, '.'];
    case 'ids':
      return ['pva', 'pva.eva.no-such', 'pva.UP', '....'];
    case 'number':
    case 'length': {
      const { low, high } = field;
      return [low, high, (low + high) / 2, low - 1, high + 1, -high, 0, 1e308].map(String);
    }
    default:
      return ['unryu', 'gampi', 'glass', 'roller', 'no-such', ''];
  }
}

/** What else a link may carry: its version, the answer that its sender saw, what swatches showed. */
const BESIDES = {
  v: ['1', '2', ''],
  seen: ['1_2_3', '9_9', 'x', '1.pva.sound.10.20', '9.x.y.z', '0.glue-stick.likely.20.45.6'],
  ev: ['pva_3_4', 'x', '~~~'],
} as const;

/** The keys of a page's link, found by the sound link that the page gives. */
export function wordsOf(soundTail: string): Readonly<Record<string, readonly string[]>> {
  const keys = new Set(new URLSearchParams(soundTail).keys());
  const shared = (table: FieldTable) => Object.values(table).filter(({ key }) => keys.has(key)).length;
  const [own] = [...TABLES].sort((a, b) => shared(b) - shared(a));
  if (!own || shared(own) < 2) throw new Error(`no calculator's fields fit the link ${soundTail}`);
  const words = Object.values(own).map((field) => [field.key, valuesOf(field)] as const);
  return { ...Object.fromEntries(words), ...BESIDES };
}

const MARKUP = [
  '<img src=x onerror=hit=1>',
  '<script>hit=1</script>',
  '"><svg onload=hit=1>',
  "'-hit-'",
  'javascript:hit=1',
  '</textarea><iframe src=javascript:parent.hit=1>',
  '{{7*7}}${7*7}',
];
const NUMBERS = [
  ...['NaN', 'Infinity', '-Infinity', '1e309', '-1e309', '1e-320', '-0', '0', '00012', '0x10', '1_000', '1,5', '1.5.2'],
  ...['٣', '1²', '½', '1 000', '+5', '--5', '1e', '.', ',', '9'.repeat(400)],
];
const WORDS = [
  ...['__proto__', 'constructor', 'toString', 'hasOwnProperty', 'prototype', 'null', 'true', 'undefined', '[]', '{}'],
  ...['\u202Egnp', '\u0000', '\uD800', '\uFEFF', '\u200B', 'é'.normalize('NFD'), '🜲', 'a'.repeat(5000), ' ', '%'],
];
const BROKEN = ['%', '%E0%A4%A', '%zz', '%00', '%C0%80', '%ED%A0%80', '&&&', '===', '?', '#', '+++', ';'];

const escaped = (text: string) => {
  try {
    return encodeURIComponent(text);
  } catch {
    // half a pair of surrogates has no escaped form
    return text;
  }
};

/** `count` links by hand: each piece above in each place of a sound link, and the link mangled as a whole. */
export function craftedTails(soundTail: string, count: number): readonly string[] {
  const words = wordsOf(soundTail);
  const keys = Object.keys(words);
  const sound = soundTail.split('&');
  const pieces = [...MARKUP, ...NUMBERS, ...WORDS].map(escaped).concat(BROKEN);
  const whole = [
    ...pieces,
    ...pieces.map((piece) => `${piece}=1&${soundTail}`),
    ...sound.map((_, i) => [...sound.slice(0, i), ...sound.slice(i + 1)].join('&')),
    ...sound.map((pair) => `${soundTail}&${pair}&${pair.split('=')[0]}=`),
    ...Array.from({ length: 12 }, (_, i) => soundTail.slice(0, Math.ceil((soundTail.length * (i + 1)) / 13))),
    Array.from({ length: 3000 }, () => soundTail)
      .join('&')
      .slice(0, 60_000),
    `${soundTail}&`.repeat(40),
    sound.toReversed().join('&'),
    escaped(soundTail),
    soundTail.toUpperCase(),
  ];
  const replaced = pieces.flatMap((piece) => keys.map((key) => `${soundTail}&${key}=${piece}`));
  // every kind of piece and every key get their turn, however few are asked for
  const step = Math.max(1, (whole.length + replaced.length) / count);
  const all = [...whole, ...replaced];
  return Array.from({ length: Math.min(count, all.length) }, (_, i) => all[Math.floor(i * step)]!);
}

/** `count` links at random, the same for the same seed. */
export function randomTails(soundTail: string, count: number, seed: number): readonly string[] {
  const uniform = seededUniform(seed);
  const pick = <T>(list: readonly T[]): T => list[Math.floor(uniform() * list.length)]!;
  const words = wordsOf(soundTail);
  const keys = Object.keys(words);
  const text = () =>
    Array.from({ length: Math.floor(uniform() * 30) }, () =>
      String.fromCharCode(Math.floor(uniform() * (uniform() < 0.8 ? 128 : 65_536))),
    ).join('');
  const value = (key: string) => {
    const kind = uniform();
    if (kind < 0.5) return escaped(pick(words[key]!));
    if (kind < 0.7) return String((uniform() - 0.3) * 10 ** Math.floor(uniform() * 12 - 4));
    if (kind < 0.9) return escaped(pick([...MARKUP, ...NUMBERS, ...WORDS]));
    return uniform() < 0.5 ? escaped(text()) : text();
  };
  return Array.from({ length: count }, () => {
    if (uniform() < 0.08) return text();
    const pairs = Array.from({ length: 1 + Math.floor(uniform() * 12) }, () => {
      const key = uniform() < 0.95 ? pick(keys) : text();
      return `${key}=${value(key in words ? key : keys[0]!)}`;
    });
    const tail = pairs.join('&');
    return uniform() < 0.1 ? tail.slice(0, Math.floor(uniform() * tail.length)) : tail;
  });
}
