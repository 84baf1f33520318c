/** The page "What was wrong" tells what readers may have relied on, and leads to pages that exist. */
import { parse } from 'yaml';
import { expect, test } from 'vitest';
import { dayInWords } from '../../src/components/day-in-words';
import { correctionSchema } from '../../src/schemas/corrections';
import { filesIn, textOf } from './support/files';

const CORRECTIONS = filesIn('content/corrections').map((file) => ({
  file,
  ...correctionSchema.parse(parse(textOf(file))),
}));
const PAGES = [...filesIn('src/pages'), ...filesIn('content/lessons')];

test('each leads to a page that there is', () => {
  const lost = CORRECTIONS.filter(({ see }) => {
    const path = (see ?? '/').replace(/#.*$/, '').replace(/^\/|\/$/g, '');
    const files = [`src/pages/${path}.astro`, `src/pages/${path}/index.astro`, `content/${path}.mdx`];
    return path !== '' && !files.some((file) => PAGES.includes(file));
  });
  expect(lost.map(({ file, see }) => `${file}: ${see}`)).toEqual([]);
});

test('the gravest of a day comes first, and no two share a place', () => {
  const shared = CORRECTIONS.filter(({ file, found, order }) =>
    CORRECTIONS.some((other) => other.file !== file && other.found === found && other.order === order),
  ).map(({ file, found, order }) => `${file}: found ${found}, order ${order}`);
  expect(shared, 'these share a day and a place of it; give one of them another number as "order"').toEqual([]);
  const first = [...CORRECTIONS].sort((a, b) => a.found.localeCompare(b.found) || a.order - b.order)[0]!;
  expect(first.file).toBe('content/corrections/trial-names.yaml');
});

test('"How we check" and the foot of every page lead to it', () => {
  for (const file of ['src/pages/how-we-check.astro', 'src/layouts/Page.astro'])
    expect(textOf(file), file).toContain("href('/what-was-wrong/')");
});

test('a day is told in words', () => {
  expect(dayInWords('2026-11-28')).toBe('28 November 2026');
  expect(dayInWords('2027-01-03')).toBe('3 January 2027');
  expect(() => dayInWords('28.11.2026')).toThrow(/a day is written 2026-11-28/);
  expect(() => dayInWords('2026-13-01')).toThrow(RangeError);
});
