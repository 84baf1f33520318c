/** What hurts follows from what is done, how hot and with what: rules worked by hand on made-up work. */
import { BURNS_FROM } from '../../../src/core/safety/burns-from';
import { describe, expect, it } from 'vitest';
import { carefully, CAUTIONS, cautionsFor, DEEDS, gravestFirst, NATURES } from '../../../src/core/safety/hazards';

describe('cautions of work', () => {
  it('of nothing: none', () => {
    expect(cautionsFor({ steps: [] })).toEqual([]);
    expect(cautionsFor({ steps: [{}], natures: ['powder', 'dispersion', 'wood'] })).toEqual([]);
  });
  it('of heat: from the temperature alone, and from no lower than burns', () => {
    expect(cautionsFor({ steps: [{ celsius: 80 }] })).toEqual(['hot-liquid']);
    expect(cautionsFor({ steps: [{ celsius: BURNS_FROM }] })).toEqual(['hot-liquid']);
    expect(cautionsFor({ steps: [{ celsius: BURNS_FROM - 1 }] })).toEqual([]);
  });
  it('of both a thing and what is done with it', () => {
    expect(cautionsFor({ steps: [{ does: ['keep'] }], natures: ['dispersion'] })).toEqual(['frost']);
    expect(cautionsFor({ steps: [{ does: ['cut'] }], natures: ['wood'] })).toEqual(['knife', 'wood-dust']);
    // each piece of work by itself: the paper is cut, the plywood is only glued
    expect(cautionsFor({ steps: [{ does: ['cut'] }] }, { steps: [], natures: ['wood'] })).toEqual(['knife']);
  });
  it('each once, the gravest first', () => {
    const { steps, cautions } = carefully(
      [
        { text: 'Weigh it.', does: ['pour-powder'] },
        { text: 'Cook it.', celsius: 95 },
        { text: 'Cut and press.', does: ['cut', 'press', 'cut'] },
      ],
      ['wheat', 'perishable', 'wheat'],
    );
    expect(steps).toEqual(['Weigh it.', 'Cook it.', 'Cut and press.']);
    expect(cautions).toEqual([
      ...['hot-liquid', 'knife', 'flour-allergen', 'powder-dust', 'spoilage', 'preservatives', 'press'],
    ]);
    expect(gravestFirst(['press', 'unheard-of', 'hot-liquid', 'press'])).toEqual(['hot-liquid', 'press', 'unheard-of']);
  });
  it('every caution can come up, every deed but keeping brings one, every nature brings one with some deed', () => {
    const found = new Set(cautionsFor({ steps: [{ does: DEEDS, celsius: 100 }], natures: NATURES }));
    const byNeed: readonly string[] = ['valued-original', 'food-contact'];
    expect(CAUTIONS.filter((caution) => !found.has(caution) && !byNeed.includes(caution))).toEqual([]);
    for (const deed of DEEDS) expect(cautionsFor({ steps: [{ does: [deed] }] }).length > 0, deed).toBe(deed !== 'keep');
    const deedsAlone = new Set(cautionsFor({ steps: [{ does: DEEDS }] }));
    // wood brings no other than sawing does, and dust comes of the deed of pouring
    for (const nature of NATURES.filter((one) => one !== 'powder' && one !== 'wood'))
      expect(
        cautionsFor({ steps: [{ does: DEEDS }], natures: [nature] }).some((one) => !deedsAlone.has(one)),
        nature,
      ).toBe(true);
  });
});
