/** One's own paper in the links to the other calculators. */
import { expect, it } from 'vitest';
import { paperTails } from '../../../src/core/handover/measure-to-all';

const pairs = (tail: string) => [...new URLSearchParams(tail)];

it('each link has its version and the paper, and nothing besides; mixing is asked to stretch', () => {
  const { cover, flat, workshop, mix } = paperTails({ family: 'lokta', grammage: 60, grain: 'height' });
  const paper = ['paper', expect.stringMatching(/lokta.*60/)];
  for (const tail of [cover, flat, workshop]) expect(pairs(tail)).toEqual([['v', '1'], paper]);
  expect(pairs(mix)).toEqual([['v', '1'], ['do', 'stretch'], paper]);
});
it('the chooser’s own link names the paper too', () => {
  const { choose } = paperTails({ family: 'lokta', grammage: 60 });
  expect(choose).toMatch(/lokta/);
  expect(choose).toMatch(/60/);
});
