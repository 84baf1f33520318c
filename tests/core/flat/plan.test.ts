/** Which questions the flatness calculator asks, and when. */
import { askedOf } from '../../../src/core/link/fields';
import { expect, it } from 'vitest';
import { FLAT_FIELDS, DEFAULT_FLAT } from '../../../src/core/flat/plan';
it('asks about a lining only where there is one', () => {
  const inside = ['liningPaper', 'liningWeight', 'liningGrain'];
  expect(askedOf({ ...DEFAULT_FLAT, lining: 'paper' }, FLAT_FIELDS)).toEqual(
    expect.arrayContaining([...inside, 'paper', 'later']),
  );
  expect(askedOf({ ...DEFAULT_FLAT, lining: 'none' }, FLAT_FIELDS).filter((field) => inside.includes(field))).toEqual(
    [],
  );
  expect(askedOf({ ...DEFAULT_FLAT, lining: 'none' }, FLAT_FIELDS)).toEqual(
    expect.arrayContaining(['paper', 'lining', 'later']),
  );
});
