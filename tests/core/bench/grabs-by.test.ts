import { describe, expect, it } from 'vitest';
import { grabsBy } from '../../../src/core/bench/grabs-by';
import type { WetAdhesive } from '../../../src/core/records/records';
import { readCatalogue } from '../../tools/read-content';

const catalogue = readCatalogue();
const wet = (id: string) => catalogue.adhesives.get(id) as WetAdhesive;

describe('which ingredient grabs', () => {
  it.for([
    ['pva', 'pva'],
    ['wheat-starch-paste-12', 'wheat-starch'],
    ['methylcellulose-2-5', 'methylcellulose'],
    ['pva-mc-1-1', undefined],
  ] as const)('of %s it is %s', ([adhesive, ingredient]) => {
    expect(grabsBy(wet(adhesive), catalogue)?.id).toBe(ingredient);
  });
});
