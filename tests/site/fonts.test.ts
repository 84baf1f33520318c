/** Every character the site is written in is in its fonts, or is known to come from the reader's own. */
import { readFileSync, readdirSync } from 'node:fs';
import { create } from 'fontkitten';
import { expect, test } from 'vitest';
import { ORIGIN, withPage } from './support/browser';
import { charactersOf, facesIn } from './support/fonts';
import { BASE, PAGES } from './support/dist';

const FONTS = 'public/fonts';
const CSS = readFileSync('src/styles/tokens.css', 'utf8');
const FACES = facesIn(CSS);

/**
 * Left to the reader's own fonts: signs of equations, which MathML sets in the font for mathematics; small
 * figures of chemistry; the root in a unit; the thin blank that groups digits; the box on a printed card.
 */
const FROM_THE_READER = new Set('√ραβγεηθκλτφ⋅∑˙ℓ≥⁶\u202f\u2061₁₂☐');

const charactersIn = (file: string): ReadonlySet<number> => {
  const font = create(readFileSync(`${FONTS}/${file}`));
  if (!('characterSet' in font)) throw new Error(`${file} is not one font`);
  return new Set(font.characterSet);
};

test('each face is a file that holds the characters it is declared for, and no file lies unused', () => {
  expect(FACES.length).toBeGreaterThan(0);
  for (const { url, holds } of FACES) {
    const inside = charactersIn(url.split('/').at(-1)!);
    const declared = Array.from({ length: 0x2300 }, (_, codePoint) => codePoint).filter(holds);
    expect(declared.length, url).toBeGreaterThan(50);
    expect(declared.filter((codePoint) => !inside.has(codePoint)).map(String), url).toEqual([]);
  }
  const named = FACES.map(({ url }) => url.split('/').at(-1)).sort();
  expect(readdirSync(FONTS).filter((name) => name.endsWith('.woff2'))).toEqual(named);
});

test('the face that was cut sets every two characters as far apart as the whole font does', async () => {
  const [cut, whole] = ['source-serif-4-text-400.woff2', 'source-serif-4-latin-400.woff2'] as const;
  // what both hold; a blank that may not break is set like any other
  const both = [...charactersIn(cut)].filter((codePoint) => charactersIn(whole).has(codePoint));
  expect(both.length).toBeGreaterThan(100);
  await withPage({}, async (tab) => {
    await tab.goto(`${ORIGIN}${BASE}privacy/`);
    const { apart, kerned } = await tab.evaluate(
      async ({ base, faces, characters }) => {
        const [one, other] = await Promise.all(
          faces.map(async (file) => {
            const name = file.replaceAll('.', '-');
            document.fonts.add(await new FontFace(name, `url(${base}fonts/${file})`).load());
            const pen = document.createElement('canvas').getContext('2d')!;
            pen.font = `1000px "${name}"`;
            return (text: string) => pen.measureText(text).width;
          }),
        );
        const pairs = characters.flatMap((first) => characters.map((second) => first + second));
        return {
          apart: pairs.filter((pair) => Math.abs(one!(pair) - other!(pair)) > 0.01),
          kerned: pairs.filter((pair) => one!(pair) < one!(pair[0]!) + one!(pair[1]!) - 0.01).length,
        };
      },
      { base: BASE, faces: [cut, whole], characters: both.map((codePoint) => String.fromCodePoint(codePoint)) },
    );
    expect(apart).toEqual([]);
    expect(kerned).toBeGreaterThan(1000);
  });
});

test('no more than two families, and one file of them fetched ahead', () => {
  const families = new Set([...CSS.matchAll(/font-family:\s*'([^']+)'/g)].map(([, name]) => name));
  expect(families.size).toBeLessThanOrEqual(2);
  for (const { html, address } of PAGES) {
    expect(html.match(/<link[^>]+rel="preload"[^>]+as="font"/g)?.length ?? 0, address).toBeLessThanOrEqual(1);
  }
});

test('no font is asked for in the head, where a browser would wait for it before it paints anything', () => {
  for (const { html, address } of PAGES)
    expect(html.slice(0, html.indexOf('<body')), address).not.toMatch(/rel="preload"[^>]+as="font"/);
});

test('every character of every page is in a font of the site, or known to come from the reader', () => {
  const strangers = new Map<string, string>();
  for (const page of PAGES) {
    for (const codePoint of charactersOf(page)) {
      const character = String.fromCodePoint(codePoint);
      const known = FACES.some(({ holds }) => holds(codePoint)) || FROM_THE_READER.has(character);
      if (!known) strangers.set(character, page.address);
    }
  }
  expect(Object.fromEntries(strangers)).toEqual({});
});
