/** Where an adhesive stands on the shelf follows from what is in its pot. */
import { expect, test } from 'vitest';
import { adhesiveFamilyOf } from '../../src/components/shelf/families';
import { readCatalogue } from '../tools/read-content';

const catalogue = readCatalogue();
const familyOf = (id: string) => adhesiveFamilyOf(catalogue.adhesives.get(id)!, catalogue);

test.for([
  ['wheat-starch-paste-8', 'starch'],
  ['flour-paste', 'starch'],
  ['methylcellulose-4', 'ether'],
  ['pva-thinned', 'vinyl'],
  ['eva', 'vinyl'],
  ['animal-glue-hot', 'protein'],
  ['film-double-sided', 'dry'],
  // one of its parts was itself mixed first
  ['pva-mc-1-3', 'mixed'],
  ['pva-paste', 'mixed'],
  ['paste-mc', 'mixed'],
] as const)('%s is with %s', ([id, family]) => {
  expect(familyOf(id)).toBe(family);
});

test('a pot of which nothing says its kind is named', () => {
  const water = { ...catalogue.adhesives.get('pva')!, id: 'wet', form: 'wet', parts: [{ of: 'water', parts: 1 }] };
  expect(() => adhesiveFamilyOf(water as Parameters<typeof adhesiveFamilyOf>[0], catalogue)).toThrow(/"wet"/);
});
