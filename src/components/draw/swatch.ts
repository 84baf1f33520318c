/**
 * A swatch of a paper, drawn from its record: as it lies flat, against the light, torn. Six centimetres of it each way.
 * The same record gives the same swatch on every machine: chance comes from the paper's own name.
 */
import { middleOf } from '../../core/base/quantity';
import { seededUniform } from '../../core/base/random';
import type { Parsed } from '../../schemas/kinds';

export type Looks = Parsed<'papers'>['looks'];
/** Side of one view, and from one view to the next. */
const SIDE = 116;
const PITCH = 122;
export const SWATCH = { side: SIDE, wide: 2 * PITCH + SIDE } as const;
const PER_MM = SIDE / 60;

const COLOURS: Readonly<Record<Looks['colour'], readonly string[]>> = {
  white: ['#faf9f4'],
  cream: ['#f3ebd8'],
  natural: ['#f0e7d0'],
  grey: ['#b7b4ab'],
  brown: ['#a98358'],
  dyed: ['#7d3f3c', '#2f5f66', '#3b527c', '#8b6c31', '#55693f'],
  bright: ['#d1573f', '#e0a52a', '#3f84b5', '#4f9a5c', '#b45b91'],
  metal: ['#c8c4b8'],
};
const INKS = [
  ['#8c2f2a', '#1f4a5c', '#d9a441'],
  ['#27506b', '#b5543c', '#e3c98b'],
  ['#3f5d3a', '#8e3b46', '#d8b25a'],
] as const;

type Chance = () => number;
const chanceOf = (name: string): Chance => {
  // FNV-1a, which tells short names apart
  let seed = 0x811c9dc5;
  for (const letter of name) seed = Math.imul(seed ^ letter.charCodeAt(0), 0x01000193) >>> 0;
  return seededUniform(seed);
};
const one = (value: number): string => String(Math.round(value * 10) / 10);
const mixed = (a: string, b: string, share: number): string => {
  const parts = (hex: string) => [1, 3, 5].map((at) => Number.parseInt(hex.slice(at, at + 2), 16));
  const [from, to] = [parts(a), parts(b)];
  return `#${from
    .map((value, i) =>
      Math.round(value + (to[i]! - value) * share)
        .toString(16)
        .padStart(2, '0'),
    )
    .join('')}`;
};

/** The way of one fibre, in radians: the grain runs up and down. */
function wayOf(direction: Looks['fibreDirection'], chance: Chance): number {
  if (direction !== 'mostly-one-way') return chance() * Math.PI;
  return Math.PI / 2 + (chance() + chance() + chance() - 1.5) * 0.9;
}

/** Fibres long enough to be seen, as the `d` of one path. */
function fibres(looks: Looks, chance: Chance): string {
  const long = middleOf(looks.fibreLength);
  if (long < 2.2 || looks.relief === 'weave') return '';
  const count = Math.round(Math.min(110, 900 / (long * 1.4)) * (looks.formation === 'open' ? 0.7 : 1));
  return Array.from({ length: count }, () => {
    const length = long * PER_MM * (0.5 + chance());
    const angle = wayOf(looks.fibreDirection, chance);
    const [x, y] = [chance() * SIDE, chance() * SIDE];
    const [dx, dy] = [Math.cos(angle) * length, Math.sin(angle) * length];
    const bend = (chance() - 0.5) * length * (looks.fibreDirection === 'swirls' ? 1.6 : 0.5);
    const again = (chance() - 0.5) * length * (looks.fibreDirection === 'swirls' ? 1.2 : 0.3);
    const p = (t: number, side: number) =>
      `${one(dx * t - (dy / length) * side)} ${one(dy * t + (dx / length) * side)}`;
    return `M${one(x - dx / 2)} ${one(y - dy / 2)}c${p(0.3, bend)} ${p(0.7, again)} ${p(1, 0)}`;
  }).join('');
}

/** Bits of bark, specks, long threads laid in. */
function inclusions(looks: Looks, chance: Chance): string {
  const at = () => `${one(chance() * SIDE)} ${one(chance() * SIDE)}`;
  const bit = (long: number) => {
    const angle = wayOf(looks.fibreDirection, chance);
    return `M${at()}l${one(Math.cos(angle) * long)} ${one(Math.sin(angle) * long)}`;
  };
  if (looks.inclusions === 'flecks')
    return `<path d="${Array.from({ length: 60 }, () => bit(0.6 + chance() * 2.4)).join('')}" stroke="#6b5a44" stroke-opacity=".55" stroke-width=".7"/>`;
  if (looks.inclusions === 'bark')
    return ['#5b4128', '#7a5a38']
      .map(
        (colour, i) =>
          `<path d="${Array.from({ length: 12 }, () => `${bit(3 + chance() * 8)}q1 ${one(2 * chance())} ${one(chance() * 4)} ${one(chance() * 5)}`).join('')}" stroke="${colour}" stroke-width="${i ? 0.9 : 1.7}" stroke-opacity=".85"/>`,
      )
      .join('');
  return '';
}

/** Swirls of long fibre, thick enough to shine. */
const swirls = (looks: Looks, chance: Chance): string =>
  looks.inclusions === 'long-fibres'
    ? Array.from({ length: 16 }, () => {
        const turn = () => `${one((chance() - 0.5) * 70)} ${one((chance() - 0.5) * 70)}`;
        return `M${one(chance() * SIDE)} ${one(chance() * SIDE)}c${turn()} ${turn()} ${turn()}s${turn()} ${turn()}`;
      }).join('')
    : '';

/** What is printed or coloured on its face. */
function print(looks: Looks, chance: Chance): string {
  const inks = INKS[Math.floor(chance() * INKS.length)]!;
  switch (looks.print) {
    case 'none':
      return '';
    case 'stencilled': {
      const flowers = Array.from({ length: 6 * 6 }, (_, i) => {
        const [x, y] = [(i % 6) * 20 + (Math.floor(i / 6) % 2 ? 10 : 0) + 4, Math.floor(i / 6) * 20 + 6];
        return { x, y };
      });
      const petals = flowers
        .map(({ x, y }) =>
          [0, 1, 2, 3, 4]
            .map((k) => `M${one(x + 4.2 * Math.sin(k * 1.257))} ${one(y - 4.2 * Math.cos(k * 1.257))}h0`)
            .join(''),
        )
        .join('');
      const waves = Array.from(
        { length: 7 },
        (_, i) => `M0 ${i * 20 + 16}q5-5 10 0t10 0t10 0t10 0t10 0t10 0t10 0t10 0t10 0t10 0t10 0t10 0`,
      ).join('');
      return `<rect width="${SIDE}" height="${SIDE}" fill="${inks[2]}" fill-opacity=".55"/><path d="${waves}" stroke="${inks[1]}" stroke-width="1.6"/><path d="${petals}" stroke="${inks[0]}" stroke-width="4.6"/><path d="${flowers.map(({ x, y }) => `M${x} ${y}h0`).join('')}" stroke="#f6ecd2" stroke-width="2.6"/>`;
    }
    case 'marbled': {
      const bands = Array.from({ length: 10 }, (_, row) =>
        Array.from({ length: 3 }, (_, layer) => {
          const y = row * 13 - 4 + layer * 3.4;
          const start = (row % 2) * -9;
          const scallops = Array.from(
            { length: 8 },
            () =>
              `q${one(4 + chance() * 2)} ${one(13 + chance() * 5)} ${one(9)} ${one(1 + chance())}t9 ${one(-1 - chance())}`,
          ).join('');
          return [layer, `M${start} ${one(y)}${scallops}`] as const;
        }),
      ).flat();
      return `<rect width="${SIDE}" height="${SIDE}" fill="${inks[1]}"/>${inks
        .map(
          (ink, layer) =>
            `<path d="${bands
              .filter(([of]) => of === layer)
              .map(([, d]) => d)
              .join('')}" stroke="${layer === 1 ? '#f2e8d2' : ink}" stroke-width="${layer === 1 ? 1.6 : 2.6}"/>`,
        )
        .join('')}`;
    }
    case 'combed': {
      const lines = Array.from(
        { length: 26 },
        (_, i) => `M${one(i * 4.7 - 2)} -4q7 10 0 20t0 20t0 20t0 20t0 20t0 20t0 20`,
      ).join('');
      return `<path d="${lines}" stroke="#fff" stroke-opacity=".4" stroke-width="1.5"/><path d="${lines}" transform="translate(1.6)" stroke="#000" stroke-opacity=".25" stroke-width=".9"/>`;
    }
    case 'picture':
      return `<g transform="translate(9 9)"><rect width="98" height="98" fill="#a9c3d1"/><path d="M0 62C20 44 34 50 50 58S82 40 98 52V98H0Z" fill="#5f7a63"/><path d="M0 78C26 66 60 84 98 70V98H0Z" fill="#3d5544"/><circle cx="74" cy="24" r="9" fill="#f4e6b8"/></g>`;
  }
}

/** Woven threads, over and under: two by two of them make the whole cloth. */
const weave = (dark: string): string =>
  `<pattern id="v" width="8" height="8" patternUnits="userSpaceOnUse"><path d="M2 0v8M6 0v8" stroke="${dark}" stroke-width="2.4" stroke-opacity=".5"/><path d="M4 2h4M0 6h4" stroke="${dark}" stroke-width="2.6" stroke-linecap="butt" stroke-opacity=".75"/></pattern>`;

const RELIEF: Partial<Readonly<Record<Looks['relief'], readonly [kind: string, frequency: string, height: number]>>> = {
  tooth: ['fractalNoise', '.42', 0.9],
  crumpled: ['turbulence', '.03', 7],
  crinkled: ['fractalNoise', '.012 .22', 3.2],
};
const FORMATION: Readonly<Record<Looks['formation'], readonly [frequency: number, depth: number]>> = {
  even: [0.16, 0.3],
  cloudy: [0.055, 1],
  wild: [0.03, 1.5],
  open: [0.045, 1.3],
};

/** Raised motifs, lit from the upper left. */
const raised = (): string => {
  const spots = Array.from(
    { length: 25 },
    (_, i) =>
      `M${(i % 5) * 24 + (Math.floor(i / 5) % 2 ? 16 : 8)} ${Math.floor(i / 5) * 24 + 8}q7-7 12 2q-2 9-11 7q-5-4-1-9`,
  ).join('');
  return `<path d="${spots}" stroke="#000" stroke-opacity=".25" stroke-width="2" transform="translate(.9 .9)"/><path d="${spots}" stroke="#fff" stroke-width="1.8"/>`;
};

/** Where it is torn: the edge of the sheet from top to bottom, and what stands out of it. */
function torn(looks: Looks, base: string, chance: Chance): { edge: string; fringe: string } {
  const rough = { short: 2.2, soft: 3, feathery: 5, 'white-core': 2.5, film: 1.6, frayed: 0.6 }[looks.edge];
  const points = Array.from(
    { length: 30 },
    (_, i) => [70 + (chance() - 0.5) * 2 * rough + 4 * Math.sin(i * 0.5), (i / 29) * SIDE] as const,
  );
  const edge = `M0 0H${one(points[0]![0])}${points.map(([x, y]) => `L${one(x)} ${one(y)}`).join('')}H0Z`;
  const line = points.map(([x, y], i) => `${i ? 'L' : 'M'}${one(x)} ${one(y)}`).join('');
  const hairs = (count: number, long: number, spread: number) =>
    Array.from({ length: count }, () => {
      const [x, y] = points[Math.floor(chance() * points.length)]!;
      const angle = (chance() - 0.5) * spread;
      const length = long * (0.4 + chance());
      return `M${one(x - 2)} ${one(y + (chance() - 0.5) * 5)}q${one(length * 0.5)} ${one((chance() - 0.5) * length * 0.6)} ${one(length * Math.cos(angle))} ${one(length * Math.sin(angle))}`;
    }).join('');
  const pale = mixed(base, '#ffffff', 0.55);
  const stroke = (d: string, width: number, colour = pale) =>
    `<path d="${d}" stroke="${colour}" stroke-width="${width}"/>`;
  switch (looks.edge) {
    case 'feathery':
      return { edge, fringe: stroke(hairs(95, Math.min(15, middleOf(looks.fibreLength) * PER_MM * 0.9), 1.6), 0.6) };
    case 'soft':
      return { edge, fringe: stroke(hairs(150, 4.5, 2), 0.7) };
    case 'short':
      return { edge, fringe: stroke(hairs(120, 2.6, 2), 0.6) };
    case 'white-core':
      return {
        edge,
        fringe: `<path d="${line}" stroke="#fdfcf8" stroke-width="7" transform="translate(3)"/>${stroke(hairs(70, 5, 1.8), 0.6, '#fdfcf8')}`,
      };
    case 'film':
      return {
        edge,
        fringe: `<path d="${line}" stroke="#fff" stroke-opacity=".8" stroke-width="2.4" transform="translate(1)"/><path d="${line}" stroke="#8a877f" stroke-width=".7" transform="translate(2.4)"/>`,
      };
    case 'frayed':
      return {
        edge,
        fringe: stroke(
          Array.from(
            { length: 29 },
            (_, i) =>
              `M68 ${i * 4 + 2}h${one(8 + chance() * 9)}q${one(2 + chance() * 3)} ${one((chance() - 0.5) * 5)} ${one(3 + chance() * 3)} ${one((chance() - 0.5) * 5)}`,
          ).join(''),
          1.5,
          mixed(base, '#000000', 0.12),
        ),
      };
  }
}

/** The swatch as a file of its own, with the views `#flat`, `#light` and `#torn` in it. */
export function swatchSvg(id: string, looks: Looks): string {
  const all = `width="${SIDE}" height="${SIDE}"`;
  const chance = chanceOf(id);
  const palette = COLOURS[looks.colour];
  const base = palette[Math.floor(chance() * palette.length)]!;
  const through = middleOf(looks.translucency);
  const seed = Math.floor(chance() * 900) + 1;
  const [frequency, depth] = FORMATION[looks.formation];
  const relief = RELIEF[looks.relief];
  const fibre = fibres(looks, chance);
  const swirl = swirls(looks, chance);
  const bits = inclusions(looks, chance);
  const printed = print(looks, chance);
  const dark = ['grey', 'brown', 'dyed', 'bright'].includes(looks.colour);
  const strand = mixed(base, dark ? '#ffffff' : '#8a7350', dark ? 0.35 : 0.42);
  const cloth = looks.relief === 'weave' ? `<rect ${all} fill="url(#v)"/>` : '';
  const chains = looks.chainLines ? middleOf(looks.chainLines) * PER_MM : 0;
  const laid = looks.laidLines ? (10 / middleOf(looks.laidLines)) * PER_MM : 0;
  const { edge, fringe } = torn(looks, base, chance);
  const gloss = { matt: 0, soft: 0.22, glossy: 0.5, metal: 0.85 }[looks.sheen];

  const defs = [
    `<clipPath id="s"><rect ${all}/></clipPath>`,
    `<clipPath id="e"><path d="${edge}"/></clipPath>`,
    `<filter id="n" x="0" y="0" width="1" height="1"><feTurbulence type="fractalNoise" baseFrequency="${frequency}" numOctaves="3" seed="${seed}"/><feColorMatrix values="0 0 0 0 .25 0 0 0 0 .2 0 0 0 0 .12 ${one(depth * 3)} 0 0 0 ${one(-depth * 1.3)}"/></filter>`,
    relief &&
      `<filter id="r" x="0" y="0" width="1" height="1"><feTurbulence type="${relief[0]}" baseFrequency="${relief[1]}" numOctaves="2" seed="${seed}" result="t"/><feDiffuseLighting in="t" surfaceScale="${relief[2]}" lighting-color="#fff" result="l"><feDistantLight azimuth="225" elevation="58"/></feDiffuseLighting><feBlend in="SourceGraphic" in2="l" mode="multiply"/></filter>`,
    cloth && weave(mixed(base, '#000000', 0.35)),
    fibre && `<path id="f" d="${fibre}"/>`,
    swirl && `<path id="w" d="${swirl}"/>`,
    laid > 0 &&
      `<pattern id="l" width="9" height="${laid.toFixed(2)}" patternUnits="userSpaceOnUse"><path d="M0 .5h9" stroke="#fff" stroke-width=".8"/></pattern>`,
    chains > 0 &&
      `<pattern id="c" width="${chains.toFixed(1)}" height="9" patternUnits="userSpaceOnUse" x="14"><path d="M1 0v9" stroke="#fff" stroke-width="1.1"/></pattern>`,
    gloss > 0 &&
      `<linearGradient id="g" x2="1" y2="1">${(looks.sheen === 'metal' ? [0, 0.2, 0.35, 0.5, 0.7, 0.85, 1] : [0.1, 0.38, 0.6]).map((at, i) => `<stop offset="${at}" stop-color="#fff" stop-opacity="${i % 2 ? gloss : 0}"/>`).join('')}</linearGradient>`,
  ];
  const lines = (strength: number) =>
    (laid > 0 ? `<rect ${all} fill="url(#l)" opacity="${strength}"/>` : '') +
    (chains > 0 ? `<rect ${all} fill="url(#c)" opacity="${strength}"/>` : '');
  const face = [
    `<rect ${all} fill="${base}"/>`,
    `<rect ${all} filter="url(#n)" opacity=".12"/>`,
    lines(0.14),
    cloth,
    fibre && `<use href="#f" stroke="${strand}" stroke-width=".6" opacity=".55"/>`,
    bits,
    swirl &&
      `<use href="#w" stroke="#fff" stroke-width="1"/><use href="#w" stroke="${strand}" stroke-width=".5" opacity=".6"/>`,
    printed,
    looks.relief === 'pattern' && raised(),
  ];
  const shine = gloss > 0 ? `<rect ${all} fill="url(#g)"/>` : '';
  const flat = `<g id="a"><g${relief ? ' filter="url(#r)"' : ''}>${join(face)}</g>${shine}</g>`;
  // a lamp behind, and a pencil between it and the sheet
  const veil = mixed(base, '#3c352b', 0.75 * (1 - through));
  const light = join([
    `<rect ${all} fill="#fffbe6"/>`,
    `<path d="M-6 92L92-6L104 6L6 104Z" fill="#2c2a27"/>`,
    `<rect ${all} fill="${veil}" opacity="${(1 - 0.92 * through).toFixed(2)}"/>`,
    `<rect ${all} filter="url(#n)" opacity="${(0.2 + 0.5 * Math.min(1, through * 1.6)).toFixed(2)}"/>`,
    lines(0.4 + through),
    cloth,
    fibre && `<use href="#f" stroke="#6b5638" stroke-width=".7" opacity="${(0.25 + 0.5 * through).toFixed(2)}"/>`,
    bits,
    swirl && `<use href="#w" stroke="#4f3f28" stroke-width="1.1" opacity=".75"/>`,
    printed && `<g opacity="${(0.15 + 0.5 * through).toFixed(2)}">${printed === '' ? '' : '<use href="#p"/>'}</g>`,
  ]);
  const withPrint = printed ? flat.replace(printed, `<g id="p">${printed}</g>`) : flat;
  const view = (name: string, i: number) => `<view id="${name}" viewBox="${i * PITCH} 0 ${SIDE} ${SIDE}"/>`;
  const box = (i: number, inner: string) => `<g transform="translate(${i * PITCH})" clip-path="url(#s)">${inner}</g>`;
  return (
    `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${SWATCH.wide} ${SIDE}" width="${SWATCH.wide}" height="${SIDE}" fill="none" stroke-linecap="round">` +
    `<defs>${join(defs)}</defs>${['flat', 'light', 'torn'].map(view).join('')}` +
    box(0, withPrint) +
    box(1, light) +
    box(2, `<rect ${all} fill="#c6c3bb"/><g clip-path="url(#e)"><use href="#a"/></g>${fringe}`) +
    `</svg>`
  );
}
const join = (parts: readonly (string | false | undefined)[]): string => parts.filter(Boolean).join('');
