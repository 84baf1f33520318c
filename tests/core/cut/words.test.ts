/** A cutting plan in sentences. */
import { describe, expect, it } from 'vitest';
import { cutSentence, cutWarnings, leftOver } from '../../../src/core/cut/words';
import type { SheetLayout } from '../../../src/core/cut/layout-types';

const plainly = (text: string) => text.replaceAll('\u00a0', ' ');
const layout = (over: Partial<SheetLayout>) =>
  ({ sheets: 2, bound: 2, proved: true, waste: 0.11, ...over }) as SheetLayout;

describe('a cutting plan', () => {
  it('says what is left in whole per cents, and never nothing for something', () => {
    expect([0.11, 0.0049, 0.0004, 0].map((waste) => plainly(leftOver(layout({ waste }))))).toEqual([
      ...['11 %', 'under 1 %', 'nothing', 'nothing'],
    ]);
  });
  it('says sheets, what is left, and that no plan needs fewer', () =>
    expect(
      plainly(
        cutSentence([
          { name: 'board', layout: layout({}) },
          { name: 'paper', layout: layout({ sheets: 1, bound: 1, waste: 0.4 }) },
        ]),
      ),
    ).toBe(
      '2 sheets of board and 1 sheet of paper. Left over: 11 % of the board and 40 % of the paper. Proved: no plan of straight-through cuts needs fewer.',
    ));
  it('says how far it is proved where it is not', () => {
    const open = { name: 'board', layout: layout({ proved: false, bound: 1 }) };
    expect(cutSentence([open])).toMatch(
      /Perhaps it can be done with fewer: any plan takes at least 1 sheet of board\.$/,
    );
    expect(cutSentence([open, { name: 'paper', layout: layout({}) }])).toMatch(
      /of board\. For the rest it is proved that no plan needs fewer\.$/,
    );
  });
  it('warns where a grain is asked for and not minded, and of what a cut takes', () => {
    const stock = { name: 'board', grain: 'none' } as never;
    const piece = (grain: 'height' | 'either', at = 0) => ({ stock: at, grain }) as never;
    expect(cutWarnings([stock], [piece('either')], '')).toEqual([]);
    expect(cutWarnings([stock], [piece('height', 1)], '')).toEqual([]);
    expect(cutWarnings([{ name: 'board', grain: 'long' } as never], [piece('height')], '')).toEqual([]);
    expect(cutWarnings([stock], [piece('height')], '')[0]).toMatch(/^The grain of board is not minded/);
    expect(cutWarnings([{ name: '', grain: 'none' } as never], [piece('height')], '')[0]).toContain('of one sheet');
    const both = cutWarnings([stock], [piece('height')], '2 mm');
    expect(both).toHaveLength(2);
    expect(both[1]).toContain('Each cut takes 2 mm');
  });
});
