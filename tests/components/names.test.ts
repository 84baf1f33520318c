/** What records are called in a sentence, and where lessons speak of them. */
import { expect, test } from 'vitest';
import { isNamed } from '../../src/components/shelf/named-in';
import { plainName, shortName } from '../../src/components/plain-name';
import { pageKindOf, isSearched } from '../../src/components/search/kinds';

test.for([
  ["Binder's board (grey board)", 'binder’s board'],
  ['PVA, as supplied', 'PVA, as supplied'],
  ['EVA dispersion, as supplied', 'EVA dispersion, as supplied'],
  ['Crêpe paper', 'crêpe paper'],
  ['PVA and methylcellulose, 1 : 1', 'PVA and methylcellulose, 1:1'],
] as const)('%s in a sentence is %s', ([name, plain]) => {
  expect(plainName(name)).toBe(plain);
});

test('a short name keeps its capital and loses what stands in brackets', () => {
  expect(shortName('Unryu (cloud-dragon tissue)')).toBe('Unryu');
});

test('a lesson names a record by link, by preset or by name, and not by a part of another word', () => {
  expect(isNamed('see [it](/shelf/papers/gampi/)', 'papers', 'gampi', [])).toBe(true);
  expect(isNamed('<ChooseLab preset="light-sheet" />', 'papers', 'kozo-tissue', [])).toBe(true);
  expect(isNamed('<ChooseLab preset="light-sheet" />', 'substrates', 'binders-board', [])).toBe(false);
  expect(isNamed('A sheet of lokta tears.', 'papers', 'lokta-light', ['Lokta, light'])).toBe(true);
  expect(isNamed('a leather-like paper', 'substrates', 'leather', ['Leather'])).toBe(false);
  expect(isNamed('cardinal', 'papers', 'card', ['Card'])).toBe(false);
});

test('a page is sifted by the folder it stands in, and lists of pages are not searched', () => {
  expect(pageKindOf('lessons/grain/')).toBe('Lessons');
  expect(pageKindOf('shelf/papers/copy/')).toBe('Shelf');
  expect(pageKindOf('sources/')).toBe('Other pages');
  expect(isSearched('answers/copy-on-plywood/')).toBe(true);
  expect(['shelf/papers/copy/', 'shelf/ingredients/', 'shelf/plates/failure/'].every(isSearched)).toBe(true);
  expect(['', 'answers/', 'search/', 'shelf/', 'shelf/papers/', '404/'].some(isSearched)).toBe(false);
});
