/** Numbers as people type them. */
import { describe, expect, it } from 'vitest';
import { parseNumber } from '../../../src/core/base/number-text';

describe('numbers as they are typed', () => {
  it('reads signs only at the front and any number of decimals', () => {
    expect([' \u22122,5 ', '+3', '.25', '1 200'].map(parseNumber)).toEqual([-2.5, 3, 0.25, 1200]);
    for (const bad of ['3\u22122', '1,2,3', '', '.', 'e5', '1e5']) expect(parseNumber(bad), bad).toBeUndefined();
  });
});
