import { describe, expect, it } from 'vitest';
import { grabOfStrips, slipAt, type Strip } from '../../../src/core/bench/grab';
import { sheetOf } from '../../../src/core/paper/sheet';
import type { WetAdhesive } from '../../../src/core/records/records';
import { readCatalogue } from '../../tools/read-content';

const catalogue = readCatalogue();
const wet = (id: string) => catalogue.adhesives.get(id) as WetAdhesive;
const strip = (change: Partial<Strip> = {}): Strip => ({
  seconds: [30, 35, 30],
  every: 1,
  adhesive: wet('pva'),
  sheet: sheetOf({ paper: { family: 'wove-text' } }, catalogue),
  board: catalogue.substrates.get('binders-board')!,
  tool: catalogue.techniques.get('brush-full')!,
  ...change,
});

describe('a strip that was pushed', () => {
  it('turned round gives back the share that the model was asked with', () => {
    for (const share of [0.62, 0.67, 0.72]) {
      const seconds = slipAt(strip(), share, catalogue);
      const found = grabOfStrips(strip({ seconds: [seconds + 0.5], every: 1 }), catalogue)!;
      expect(found.value).toBeCloseTo(share, 3);
    }
  });
  it('which slides longer says that it grabs later', () => {
    const at = (seconds: number) => grabOfStrips(strip({ seconds: [seconds] }), catalogue)!.value;
    expect(at(20)).toBeLessThan(at(40));
    expect(at(40)).toBeLessThan(at(80));
  });
  it('is surer with finer pushes, more strips and a coat that was weighed', () => {
    const standard = (change: Partial<Strip>) => grabOfStrips(strip(change), catalogue)!.standard;
    const usual = standard({});
    // read half a step early, so that the time is the same
    expect(standard({ every: 21, seconds: [40, 45, 40] })).toBeGreaterThan(usual);
    expect(standard({ seconds: [32] })).toBeGreaterThan(usual);
    const weighed = { ...strip().tool, coat: { low: 58, middle: 63, high: 69, basis: 'measured' as const } };
    expect(standard({ tool: weighed })).toBeLessThan(usual);
  });
  it('that slid for longer than any share explains has none', () => {
    expect(grabOfStrips(strip({ seconds: [3000] }), catalogue)).toBeUndefined();
  });
  it('throws on no strip', () => {
    expect(() => grabOfStrips(strip({ seconds: [] }), catalogue)).toThrow(RangeError);
  });
});
