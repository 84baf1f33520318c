/** The typed plan of a class. */
import { askedOf } from '../../../src/core/link/fields';
import { describe, expect, it } from 'vitest';
import { CLASS_FIELDS, DEFAULT_CLASS, projectOf, type ClassPlan } from '../../../src/core/class/plan';
const plan = (change: Partial<ClassPlan> = {}): ClassPlan => ({ ...DEFAULT_CLASS, ...change });

describe('the plan of a class', () => {
  it('an accordion’s strips are as long as the inside sheet is across its grain, unless a length is given', () => {
    const own = { project: 'accordion', liningWide: 700, liningHigh: 1000 } as const;
    expect(projectOf(plan({ ...own, liningGrain: 'long' })).sheet).toBe(700);
    expect(projectOf(plan({ ...own, liningGrain: 'short' })).sheet).toBe(1000);
    expect(projectOf(plan({ ...own, liningWide: 1000, liningHigh: 700, liningGrain: 'short' })).sheet).toBe(1000);
    expect(projectOf(plan({ ...own, sheet: 333 })).sheet).toBe(333);
    expect(projectOf(plan({ project: 'notebook' })).sheet).toBeUndefined();
  });
  it('asks the project’s own fields, the class’s, and three for each stock', () => {
    const asked = askedOf(plan(), CLASS_FIELDS);
    for (const field of ['project', 'square', 'people', 'day', 'humidity', 'boardGrain', 'liningHigh'] as const)
      expect(asked).toContain(field);
    expect(asked).not.toContain('tie');
    expect(new Set(asked).size).toBe(asked.length);
  });
});
