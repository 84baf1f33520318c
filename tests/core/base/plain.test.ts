/** Sentences that keep together what is read together. Common practice, no source. */
import { expect, test } from 'vitest';
import { keepUnits } from '../../../src/core/base/format';

const NO_BREAK = '\u00a0';

test.each([
  ['cut 12 mm off', `cut 12${NO_BREAK}mm off`],
  ['3 of 148 × 210 × 12 mm, twice', `3 of 148${NO_BREAK}×${NO_BREAK}210${NO_BREAK}×${NO_BREAK}12${NO_BREAK}mm, twice`],
  ['4 × piece 1', '4 × piece 1'],
])('"%s" holds its numbers together', (said, held) => {
  expect(keepUnits(said)).toBe(held);
});
