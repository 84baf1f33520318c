/** Words from outside: cleaned on the way in, spelled out for each form on the way out. */
import { describe, expect, it, test } from 'vitest';
import {
  csvCell,
  escapeHtml,
  escapeMarkdown,
  fileNameOf,
  lineOf,
  notesOf,
  unguarded,
} from '../../../src/core/trial/text';

describe('one line', () => {
  it('takes text and numbers, and nothing else', () => {
    expect([lineOf('lokta', 9), lineOf(25.5, 9), lineOf(0, 9)]).toEqual(['lokta', '25.5', '0']);
    for (const other of [NaN, Infinity, null, undefined, true, ['a'], { toString: () => 'a' }])
      expect(lineOf(other, 9)).toBe('');
  });
  it('is one line, with one space between words and none around them', () => {
    expect(lineOf('  a \n\r\n\t b\u00a0 c  ', 20)).toBe('a b c');
  });
  it('as many letters as it may have, a sign of two halves counted once and never halved', () => {
    expect(lineOf('abcdefgh', 8)).toBe('abcdefgh');
    expect(lineOf('abcdefghi', 8)).toBe('abcdefgh');
    expect(lineOf('😀😀😀', 2)).toBe('😀😀');
    // trimmed after the cut, too
    expect(lineOf('abc def', 4)).toBe('abc');
    // of a flood of blanks no more is looked at than four times that
    expect(lineOf(`${' '.repeat(40)}a`, 10)).toBe('');
    expect(lineOf(`${' '.repeat(39)}a`, 10)).toBe('a');
  });
  it('drops what cannot be seen, what turns writing round, and halves of a pair, wherever they stand', () => {
    expect(lineOf('\ufeffa\u0000b\u001fc\u007fd\u200ee\u202ef\u2066g', 20)).toBe('abcdefg');
    expect(lineOf('\ud800a\udc00b\ud800', 20)).toBe('ab');
    expect(lineOf('a😀b', 20)).toBe('a😀b');
  });
});

describe('several lines', () => {
  it('keeps its lines, however they end', () => {
    expect(notesOf('a\r\nb\rc\nd', 20)).toBe('a\nb\nc\nd');
    expect(notesOf('\n a \n', 20)).toBe('a');
  });
  it('takes text and nothing else, not even numbers', () => {
    for (const other of [7, null, undefined, ['a'], {}]) expect(notesOf(other, 9)).toBe('');
  });
  it('is cleaned and cut like a line', () => {
    expect(notesOf('a\u202eb\u0000c\ud800d', 20)).toBe('abcd');
    expect(notesOf('abcdefghi', 8)).toBe('abcdefgh');
    expect(notesOf('abcdefgh', 8)).toBe('abcdefgh');
    expect(notesOf('😀😀😀', 2)).toBe('😀😀');
    expect(notesOf('abc\ndef', 4)).toBe('abc');
    expect(notesOf(`${'\u0000'.repeat(40)}a`, 10)).toBe('');
    expect(notesOf(`${'\u0000'.repeat(39)}a`, 10)).toBe('a');
  });
});

test('in HTML each mark that opens something is spelled out, every time', () => {
  const spelled = escapeHtml(`<a href="x" title='y'>&\`</a>`);
  expect(spelled).not.toMatch(/[<>"'`]/);
  expect(spelled.match(/&(lt|gt|quot|amp|#\d+);/g)).toHaveLength(10);
  // as a reader of HTML turns it back
  const back = spelled
    .replaceAll('&lt;', '<')
    .replaceAll('&gt;', '>')
    .replaceAll('&quot;', '"')
    .replace(/&#(\d+);/g, (_, code: string) => String.fromCharCode(Number(code)))
    .replaceAll('&amp;', '&');
  expect(back).toBe(`<a href="x" title='y'>&\`</a>`);
});

describe('in Markdown', () => {
  it('each mark that means something has a stroke before it', () => {
    for (const mark of '\\`*_{}[]()#+!|~^$-') expect(escapeMarkdown(`a${mark}b${mark}`)).toBe(`a\\${mark}b\\${mark}`);
    expect(escapeMarkdown('<b>&')).toBe('&lt;b&gt;&amp;');
    expect(escapeMarkdown('Käse, 25.5 g/m²')).toBe('Käse, 25.5 g/m²');
  });
  it('stays one line, or it would end its table', () => {
    expect(escapeMarkdown('a \n  b\nc')).toBe('a b c');
  });
  it('an address is broken after its first letter, so that nothing makes a link of it; a word is not', () => {
    for (const word of ['https:', 'HTTP:', 'ftp:', 'mailto:', 'javascript:', 'data:', 'www.'])
      expect(escapeMarkdown(`see ${word}x`)).toBe(`see ${word[0]}&#8203;${word.slice(1)}x`);
    expect(escapeMarkdown('the data are good')).toBe('the data are good');
  });
});

describe('a cell of a spreadsheet', () => {
  it('is quoted where it holds a separator, a quotation mark, a line end or space at its ends', () => {
    for (const text of ['a,b', 'a;b', 'a\nb', 'a\rb', 'a\tb', ' a', 'a ']) expect(csvCell(text)).toBe(`"${text}"`);
    expect(csvCell('say "a" twice')).toBe('"say ""a"" twice"');
    expect(csvCell('plain text')).toBe('plain text');
  });
  it('is empty where there is nothing, but nought is a figure', () => {
    expect([csvCell(undefined), csvCell(''), csvCell(0), csvCell(-2.5)]).toEqual(['', '', '0', '-2.5']);
  });
  it('has an apostrophe before what would be run as a formula, and none before a figure', () => {
    for (const text of ['=1', '+a', '-a', '@x', '|x', '%x', '-', '+1+1', '-2-a', '1-=', 'x=1'])
      expect(csvCell(text)).toBe(/^[1x]/.test(text) ? text : `'${text}`);
    expect(csvCell(' =1')).toBe("' =1");
    expect(csvCell('\t=1,2')).toBe(`"'\t=1,2"`);
    for (const figure of ['-2', '+3.5', '-0,5', '-12', '+100.25']) expect(csvCell(figure)).not.toMatch(/'/);
    for (const no of ['-2.', '-.5a', '+1e5x']) expect(csvCell(no)).toBe(`'${no}`);
  });
  it('comes back as it was before it was guarded; other apostrophes stay', () => {
    for (const text of ['=1', '@x', ' =1', '-a']) expect(unguarded(csvCell(text))).toBe(text);
    for (const text of ["'tis", 'a', "a'=1", '=1']) expect(unguarded(text)).toBe(text);
  });
});

describe('the name of a file', () => {
  it('letters and figures of any script, in lower case, joined by one hyphen', () => {
    expect(fileNameOf('Käse & Brot, 2.')).toBe('kase-brot-2');
    expect(fileNameOf('紙 — 糊')).toBe('紙-糊');
    expect(fileNameOf('--a--')).toBe('a');
    expect(fileNameOf(' — a, — ')).toBe('a');
    expect(fileNameOf('../../etc')).toBe('etc');
  });
  it('sixty characters of it; a word of ours where nothing is left', () => {
    expect(fileNameOf('a'.repeat(61))).toBe('a'.repeat(60));
    for (const name of ['', '***', '—']) expect(fileNameOf(name)).toBe('trial');
  });
});
