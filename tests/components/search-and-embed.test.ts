/** What the search shows, and what a framed calculator and the page around it say to each other. */
import { describe, expect, test } from 'vitest';
import { readable } from '../../src/build/search-index';
import { pieces, told } from '../../src/components/search/find';
import { heightIn } from '../../src/components/embed/height';
import { readLink, snippetFor } from '../../src/components/embed/snippet';

test('an excerpt becomes plain text with its found words marked, and no markup of its own', () => {
  expect(pieces('wet &lt;b&gt; <mark>lokta</mark> &amp; board')).toEqual([
    { text: 'wet <b> ', marked: false },
    { text: 'lokta', marked: true },
    { text: ' & board', marked: false },
  ]);
  expect(pieces('<img src=x onerror=alert(1)>glue')).toEqual([{ text: 'glue', marked: false }]);
});

test('a page is read for the search with its cells, blocks and lists apart, and without what is chosen from', () => {
  const text = (html: string) =>
    readable(html)
      .replace(/<[^>]*>/g, '')
      .replace(/\s+/g, ' ')
      .trim();
  const table =
    '<table><tr><th>Grade</th><th>lb</th></tr><tr><th>one 10 cm square</th><td>0.8 g</td><td>80.0 ± 8.2</td></tr></table>';
  expect(text(table)).toBe('Grade · lb; one 10 cm square · 0.8 g · 80.0 ± 8.2;');
  expect(text('<p>One.</p><p>Two.</p><ul><li>a</li><li>b</li></ul>')).toBe('One. Two. a b');
  expect(text('<label>in</label><select><option>mm</option><option>cm</option></select><p>wide</p>')).toBe('in wide');
});

test('the number found is said in words', () => {
  expect(told(0, 'glou')).toContain('Nothing found for “glou”');
  expect(told(1, 'glue')).toBe('One page found for “glue”.');
  expect(told(12, 'glue')).toBe('12 pages found for “glue”.');
});

describe('the height of a frame', () => {
  test('is taken from our own message, whole and within bounds', () => {
    expect(heightIn({ type: 'open-time:height', height: 1234.4 })).toBe(1234);
    expect(heightIn({ type: 'open-time:height', height: 5 })).toBe(200);
    expect(heightIn({ type: 'open-time:height', height: 1e9 })).toBe(20_000);
  });
  test.for([null, undefined, 'open-time:height', 7, {}, { type: 'other', height: 500 }])('is not in %j', (data) => {
    expect(heightIn(data)).toBeUndefined();
  });
  test.for([Number.NaN, Infinity, '900', undefined, { valueOf: (): number => 900 }])('is not %s', (height) => {
    expect(heightIn({ type: 'open-time:height', height })).toBeUndefined();
  });
});

describe('a link becomes a frame', () => {
  const site = 'https://paper.example/open-time/';
  test('from the calculator, with its tail', () => {
    const read = readLink(` ${site}choose/?v=1&paper=unryu&note=a?b#answer`, site);
    expect(read?.calculator.frame).toBe('/embed/choose/');
    expect(read?.tail).toBe('v=1&paper=unryu&note=a?b');
  });
  test('from the frame itself, and without a closing slash', () => {
    expect(readLink(`${site}embed/mix/?v=1`, site)?.calculator.id).toBe('mix');
    expect(readLink(`${site}cover`, site)).toMatchObject({ calculator: { id: 'cover' }, tail: '' });
    expect(readLink(`${site}cut/?v=1&kits=9`, site)).toMatchObject({ calculator: { id: 'cut' }, tail: 'v=1&kits=9' });
  });
  test.for(['', 'lokta', 'https://elsewhere.example/choose/?v=1', `${site}lessons/`, 'javascript:alert(1)'])(
    'but not from %j',
    (link) => {
      expect(readLink(link, site)).toBeUndefined();
    },
  );
  test('nothing in a tail gets out of the attribute it stands in', () => {
    const lines = snippetFor({ title: 'T', frame: `${site}embed/choose/`, tail: 'a="><script>x&b=1' });
    const address = /src="([^"]*)"/.exec(lines)?.[1];
    expect(address).toBe(`${site}embed/choose/?a=&quot;><script>x&amp;b=1`);
    expect(lines).toContain("event.origin !== 'https://paper.example'");
  });
});
