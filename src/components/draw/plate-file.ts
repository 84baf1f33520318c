/**
 * A plate as a file of its own, for a page that fetches its drawings when they are asked for. It carries its materials
 * with it, in light and dark, since nothing of a page's styles reaches into a picture.
 */
import { readFileSync } from 'node:fs';
import path from 'node:path';
import { PLATES, plateOf, stillOf } from './plates';

/** The plates that a step of an answer can name. */
export const FILED: readonly string[] = Object.keys(PLATES).filter((id) => ['spread', 'lay'].includes(plateOf(id).set));

const styles = (name: string) => readFileSync(path.resolve('src/styles', name), 'utf8');
const inkRules = () => styles('draw.css').split('/*\n * Drawings side by side')[0]!;
const squeezed = (css: string) =>
  css
    .replace(/\/\*[\s\S]*?\*\//g, '')
    .replace(/\s+/g, ' ')
    .replace(/ ?([{};:,]) ?/g, '$1')
    .replaceAll(';}', '}');

/** The tokens that the rules name, as they stand in light and, in the second, in the dark. */
function tokensFor(rules: string): readonly [light: string, dark: string] {
  const named = new Set([...rules.matchAll(/var\(--([\w-]+)\)/g)].map(([, name = '']) => name));
  const [light = '', dark = ''] = styles('tokens.css').split('@media (prefers-color-scheme: dark)');
  const pick = (css: string) =>
    [...css.matchAll(/--([\w-]+):\s*([^;]+);/g)]
      .filter(([, name = '']) => named.has(name))
      .map(([, name, value]) => `--${name}:${value}`)
      .join(';');
  return [pick(light), pick(dark)];
}

let style: string | undefined;
function styleOfFile(): string {
  const rules = inkRules();
  const [light, dark] = tokensFor(rules);
  return squeezed(`:root{${light}} @media (prefers-color-scheme:dark){:root{${dark}}} ${rules}`);
}

/** The drawing at rest, with its styles. */
export function plateFile(id: string): string {
  const [wide, high] = plateOf(id).size;
  style ??= styleOfFile();
  return `<svg xmlns="http://www.w3.org/2000/svg" class="draw" viewBox="0 0 ${wide} ${high}" width="${wide}" height="${high}"><style>${style}</style>${stillOf(id).body}</svg>`;
}
