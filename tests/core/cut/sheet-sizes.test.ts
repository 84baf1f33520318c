/** Sheets as they are sold, known by what was typed. A4 is 210 × 297 mm (ISO 216). */
import { expect, it } from 'vitest';
import { sizeTyped, typedSize } from '../../../src/core/cut/sheet-sizes';

it('knows a size by its two lengths, in any unit, to half a tenth of a millimetre', () => {
  expect([sizeTyped('210', '297', 'mm'), sizeTyped('21', '29.7', 'cm'), sizeTyped('20', '26', 'in')]).toEqual([
    'a4',
    'a4',
    'in-20-26',
  ]);
  expect([
    sizeTyped('210.04', '296.96', 'mm'),
    sizeTyped('210.06', '297', 'mm'),
    sizeTyped('210', '296.94', 'mm'),
  ]).toEqual(['a4', 'own', 'own']);
});
it('what is sold nowhere, lies the other way round or cannot be read is the reader’s own', () => {
  for (const [wide, high] of [
    ['211', '297'],
    ['297', '210'],
    ['wide', '297'],
    ['210', ''],
    ['', ''],
  ] as const)
    expect(sizeTyped(wide, high, 'mm'), `${wide} × ${high}`).toBe('own');
});
it('gives a size back as it would be typed, and nothing for one’s own', () => {
  expect(typedSize('a4', 'mm')).toEqual({ wide: '210', high: '297' });
  expect(typedSize('in-20-26', 'in')).toEqual({ wide: '20', high: '26' });
  expect(typedSize('own', 'mm')).toBeUndefined();
});
