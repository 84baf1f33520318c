/** A swatch trial from a link: what can be read, and that nothing else makes a plan. */
import fc from 'fast-check';
import { describe, expect, it, test } from 'vitest';
import { planOf } from '../../../src/core/trial/plan';
import { planTextOf } from '../../../src/core/trial/plan-link';

const NAMES = {
  paper: (id: string) => (id === 'kozo' ? 'Kozo' : ''),
  adhesive: (id: string) => ({ pva: 'PVA', paste: 'Paste' })[id] ?? '',
  substrate: (id: string) => (id === 'card' ? 'Card' : ''),
  tool: (id: string) => (id === 'roller' ? 'Roller' : ''),
};

describe('a link with a sheet and adhesives', () => {
  const text = planTextOf('?v=1&paper=kozo~18gsm&on=card&glue=paste.pva&hold=35&room=21&rh=40', NAMES)!;
  it('is a plan, with the names of the shelf', () => {
    expect(text.papers).toEqual([{ name: 'Kozo', family: 'kozo', grammage: '18', dropSeconds: '' }]);
    expect(text.glues.map(({ name }) => name)).toEqual(['Paste', 'PVA']);
    expect(planOf(text, 1).problems).toEqual([]);
    expect(planOf(text, 1).plan).toMatchObject({ substrate: 'card', holds: [35], conditions: { celsius: 21 } });
  });
  it('takes the tool that it names, and a full brush where it names none that is known', () => {
    const toolOf = (tail: string) => planOf(planTextOf(`paper=kozo&glue=pva${tail}`, NAMES)!, 1).plan!.method;
    expect(toolOf('&tool=roller')).toEqual({ tool: 'roller' });
    expect(toolOf('')).toEqual({ tool: 'brush-full' });
    expect(toolOf('&tool=moon')).toEqual({ tool: 'brush-full' });
  });
  it('keeps the name of a paper of one’s own', () => {
    expect(planTextOf('paper=kozo~named Grey one&glue=pva', NAMES)!.papers[0]!.name).toBe('Grey one');
  });
  it('passes over what the shelf does not hold', () => {
    const other = planTextOf('paper=kozo&glue=pva.moon&on=moon', NAMES)!;
    expect(other.glues).toHaveLength(1);
    expect(other.substrate).toBe('binders-board');
  });
});

test('without a known sheet or adhesive there is no plan', () => {
  for (const tail of ['', '?', 'paper=kozo', 'glue=pva', 'paper=moon&glue=pva', 'paper=kozo&glue=moon'])
    expect(planTextOf(tail, NAMES)).toBeUndefined();
});
test('no text throws', () => {
  fc.assert(fc.property(fc.string(), (text) => void planTextOf(`paper=kozo&glue=pva&hold=${text}`, NAMES)));
});
