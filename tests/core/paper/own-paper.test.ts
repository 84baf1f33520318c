/** A paper of one’s own as one text, and back. */
import { describe, expect, it } from 'vitest';
import { isPaper, paperInSentence, paperName, readPaper, writePaper } from '../../../src/core/paper/own-paper';
import { catalogue } from '../../../src/data/catalogue';

describe('a paper as text', () => {
  it('takes each measure from its low to its high', () => {
    for (const part of ['5gsm', '600gsm', '10um', '3000um', '0.2s', '1800s', '1cobb', '400cobb'])
      expect(readPaper(`wove-text~${part}`), part).toBeDefined();
    for (const part of ['4.9gsm', '601gsm', '9um', '3001um', '0.1s', '1801s', '0.9cobb', '401cobb', '5', 'gsm', 'x'])
      expect(readPaper(`wove-text~${part}`), part).toBeUndefined();
  });
  it('reads words, and a name of up to forty letters', () => {
    expect(readPaper('kozo~92gsm~140um~25s~30cobb~textured~sized~runs~side~named Grey')).toEqual({
      family: 'kozo',
      grammage: 92,
      caliper: 140,
      dropSeconds: 25,
      cobb: 30,
      surface: 'textured',
      sizing: 'sized',
      coloursRun: true,
      grain: 'width',
      name: 'Grey',
    });
    expect(readPaper('kozo~fast~nograin')).toEqual({ family: 'kozo', coloursRun: false, grain: 'none' });
    expect(readPaper(`kozo~named ${'a'.repeat(40)}`)?.name).toHaveLength(40);
    expect(readPaper(`kozo~named ${'a'.repeat(41)}`)).toBeUndefined();
    expect(readPaper('kozo~named ')).toBeUndefined();
    expect(readPaper('kozo~constructor')).toBeUndefined();
    expect(readPaper('Kozo')).toBeUndefined();
    expect(writePaper({ family: 'kozo' })).toBe('kozo');
  });
  it('is a paper only when its density can be', () => {
    const usual = catalogue.papers.get('wove-text')!.grammage.middle;
    expect(isPaper('wove-text', catalogue)).toBe(true);
    // by its kind's weight at 10 µm it would be denser than cellulose (1.5 g/cm³), whatever that weight is
    expect(usual / 10).toBeGreaterThan(1.5);
    expect(isPaper('wove-text~10um', catalogue)).toBe(false);
    expect(isPaper('wove-text~10gsm~10um', catalogue)).toBe(true);
  });
  it('is called by its own name in quotation marks, or by its kind', () => {
    const kind = catalogue.papers.get('wove-text')!.name;
    expect(paperName('wove-text~80gsm', catalogue)).toBe(kind);
    expect(paperName('wove-text~named Grey', catalogue)).toBe('Grey');
    expect(paperInSentence('wove-text~named Grey', catalogue)).toBe('“Grey”');
    expect(paperInSentence('wove-text', catalogue)).toBe(kind[0]!.toLowerCase() + kind.slice(1));
  });
});
