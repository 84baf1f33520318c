/** Whether what is covered stays flat. */
import { piecesIn } from '../support/rows';
import { describe, expect, it } from 'vitest';
import { coverAnswer } from '../../../src/core/cover/answer';
import { flatFacts } from '../../../src/core/handover/cover-flat';
import { DEFAULT_COVER, type CoverPlan } from '../../../src/core/cover/plan';
import { catalogue } from '../../../src/data/catalogue';

describe('whether a cover stays flat', () => {
  const flat = (change: Partial<CoverPlan>) => {
    const plan = { ...DEFAULT_COVER, ...change };
    const found = coverAnswer(plan, catalogue);
    if (!found.ok) throw new Error(found.errors[0]?.message);
    return flatFacts(plan, found.value.coverage, catalogue);
  };
  const said = (change: Partial<CoverPlan>) => flat(change).warnings.join(' ');
  const chance = (change: Partial<CoverPlan>) =>
    flat(change).facts.find(({ label }) => label === 'It dries flat')!.value;
  it('a coat that brings more water than a light sheet has room for wets it through; a heavy sheet not', () => {
    // 20 g/m² at 0.5 g/cm³ is 40 µm, two thirds of it pore: 27 g/m²; thin paste brings some 60
    const soaked = flat({ adhesive: 'wheat-starch-paste-thin', paper: 'wove-text~20gsm~40um' });
    expect(soaked.facts[0]!.value).toBe('27\u00a0g/m²');
    expect(soaked.facts[0]!.note).toMatch(/from your measurements/);
    expect(soaked.warnings.join(' ')).toMatch(/wet through/);
    const dry = flat({ adhesive: 'pva', paper: 'wove-text~200gsm~400um' });
    expect(dry.facts[0]!.value).toBe('270\u00a0g/m²');
    expect(dry.warnings).toEqual([]);
    expect(flat({ adhesive: 'pva', paper: 'wove-text~200gsm' }).facts[0]!.note).toMatch(/from its records/);
  });
  it('a large thing bows more than a small one, and then what helps is said', () => {
    expect(said({ width: 60, height: 60, adhesive: 'pva' })).not.toMatch(/may curl/);
    expect(said({ width: 2000, height: 2000, adhesive: 'wheat-starch-paste-thin' })).toMatch(/may curl or cockle/);
    // beyond the chooser's limits it is taken at them
    expect(chance({ thing: 'own', pieces: piecesIn('5000x5000x1') })).toBe(
      chance({ thing: 'own', pieces: piecesIn('3000x3000x1') }),
    );
    expect(chance({ thing: 'own', pieces: piecesIn('2x2x1') })).toBe(
      chance({ thing: 'own', pieces: piecesIn('5x5x1') }),
    );
    // loose pieces bow as a thing of that size
    for (const side of [60, 200, 400, 800, 1600])
      expect(chance({ thing: 'own', pieces: piecesIn(`${side}x${side}x1`) })).toBe(
        chance({ width: side, height: side }),
      );
    expect(chance({ thing: 'own', pieces: piecesIn('60x60x1') })).not.toBe(
      chance({ thing: 'own', pieces: piecesIn('2000x2000x1') }),
    );
    // of a thing its own size counts, not the rows of loose pieces
    expect(chance({ width: 60, height: 60, pieces: piecesIn('2000x2000x1') })).toBe(chance({ width: 60, height: 60 }));
    expect(chance({ width: 2000, height: 2000, pieces: piecesIn('60x60x1') })).not.toBe(
      chance({ width: 60, height: 60 }),
    );
  });
  it('a dry film is not spread', () => {
    const found = coverAnswer(DEFAULT_COVER, catalogue);
    if (!found.ok) throw new Error('no coverage');
    const plan = { ...DEFAULT_COVER, adhesive: 'film-double-sided' };
    expect(() => flatFacts(plan, found.value.coverage, catalogue)).toThrow(/not spread wet/);
  });
});
