/** Whether a sheet bears the tool. */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { BOND_CONSTANTS } from '../../../src/core/joint/constants';
import { spreadMargin } from '../../../src/core/joint/spread';

const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const spreading = fc.record({
  grammage: number(5, 620),
  viscosity: number(1, 1e6),
  toolDrag: number(0.1, 3),
});
const more = number(1, 50);

test('a heavier sheet of the same make never bears less, and bears by the fitted power of its weight (model relation 8)', () => {
  fc.assert(
    fc.property(spreading, more, (one, times) => {
      const heavier = spreadMargin({ ...one, grammage: one.grammage * times });
      expect(heavier).toBeGreaterThanOrEqual(spreadMargin(one));
      expect(Math.log(heavier / spreadMargin(one))).toBeCloseTo(BOND_CONSTANTS.bearingExponent * Math.log(times), 8);
    }),
  );
});

test('a thicker liquid and a rougher tool never leave more', () => {
  fc.assert(
    fc.property(spreading, more, (one, times) => {
      expect(spreadMargin({ ...one, viscosity: one.viscosity * times })).toBeLessThanOrEqual(spreadMargin(one));
      expect(spreadMargin({ ...one, toolDrag: one.toolDrag * times })).toBeLessThanOrEqual(spreadMargin(one));
    }),
  );
});

test('every margin is a number above 0', () => {
  fc.assert(
    fc.property(spreading, (one) => {
      const margin = spreadMargin(one);
      expect(Number.isFinite(margin) && margin > 0).toBe(true);
    }),
  );
});

test('a tool is a full bristle brush unless another is named', () => {
  const one = { grammage: 50, viscosity: 3000 };
  expect(spreadMargin(one)).toBe(spreadMargin({ ...one, toolDrag: 1 }));
});

test('nonsense throws', () => {
  const one = { grammage: 50, viscosity: 3000 };
  expect(() => spreadMargin({ ...one, grammage: 0 })).toThrow(/grammage/);
  expect(() => spreadMargin({ ...one, viscosity: -1 })).toThrow(RangeError);
  expect(() => spreadMargin({ ...one, toolDrag: NaN })).toThrow(/toolDrag/);
});
