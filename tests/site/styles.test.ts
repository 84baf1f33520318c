/** A page is sent every rule that something in it can match, and not those of one page alone. */
import { readdirSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { ORIGIN, wakeIslands, withPage } from './support/browser';
import { BASE, PAGES } from './support/dist';

/** All that is written for some page. */
const WRITTEN = readdirSync('src/styles')
  .filter((name) => name !== 'index.css')
  .map((name) => readFileSync(`src/styles/${name}`, 'utf8'));

/** Of the chooser alone, though others have such a fold. */
const OF_ONE_PAGE = ['.bench-rest > .fold:first-of-type'];

const isMeant = (selector: string) => !OF_ONE_PAGE.includes(selector);

const LOOKED_AT = [
  '',
  'lessons/open-time/',
  'lessons/testing-your-own-papers/',
  'lessons/thickness/',
  'choose/',
  'mix/',
  'cut/',
  'paper/',
  'workshop/',
  'trials/plan/',
  'trials/run/',
  'glossary/',
  'how-we-check/',
  'shelf/papers/',
  'shelf/cautions/',
  'shelf/plates/moving/',
  'lessons/',
  'calculators/',
  'answers/',
  'sources/',
  'bench/',
  'flat/',
  'make/',
  'cover/',
  '404.html',
];

test.for(LOOKED_AT)('/%s has each rule that something in it matches, as built and once used', async (page) => {
  await withPage({}, async (tab) => {
    await tab.goto(ORIGIN + BASE + page);
    const matched = () =>
      tab.evaluate((styles) => {
        /** At commas, but not at those in brackets, however deep. */
        const apart = (selectors: string): string[] => {
          const parts = [''];
          let deep = 0;
          for (const sign of selectors) {
            if (sign === '(') deep += 1;
            if (sign === ')') deep -= 1;
            if (sign === ',' && deep === 0) parts.push('');
            else parts[parts.length - 1] += sign;
          }
          return parts.map((part) => part.trim());
        };
        const selectorsIn = (rules: CSSRuleList): string[] =>
          [...rules].flatMap((rule) => {
            if (rule instanceof CSSStyleRule) return apart(rule.selectorText);
            return rule instanceof CSSGroupingRule ? selectorsIn(rule.cssRules) : [];
          });
        const carried = new Set([...document.styleSheets].flatMap((sheet) => selectorsIn(sheet.cssRules)));
        // whatever state its element is in, and whichever part of it is meant
        const atRest = (selector: string) =>
          selector.replace(/\((?:[^()]|\([^()]*\))*\)|::?[\w-]+(?![\w-]*\()/g, (part) => (part[0] === '(' ? part : ''));
        const written = styles.flatMap((text) => {
          const sheet = new CSSStyleSheet();
          sheet.replaceSync(text);
          return selectorsIn(sheet.cssRules);
        });
        const here = written.filter((selector) => {
          const plain = atRest(selector).trim();
          return document.querySelector(plain === '' || /[>+~]$/.test(plain) ? `${plain} *` : plain) !== null;
        });
        return { here: here.length, missing: here.filter((selector) => !carried.has(selector)) };
      }, WRITTEN);
    const asBuilt = await matched();
    expect(asBuilt.here).toBeGreaterThan(60);
    expect(asBuilt.missing.filter(isMeant)).toEqual([]);
    await wakeIslands(tab);
    expect((await matched()).missing.filter(isMeant)).toEqual([]);
  });
});

test.for([
  ['.handout-links', 'workshop/', 'privacy/'],
  ['.joint-frame', 'lessons/open-time/', 'lessons/thickness/'],
  ['.portions', 'mix/', 'lessons/thickness/'],
])('%s is sent to %s and not to %s', ([rule, to, notTo]) => {
  const carries = (address: string) => PAGES.find((page) => page.address === BASE + address)!.html.includes(rule!);
  expect(carries(to!)).toBe(true);
  expect(carries(notTo!)).toBe(false);
});
