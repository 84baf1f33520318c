/** A page is sent without the styles that it has no use for, and with every one that something in it can match. */
import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { ORIGIN, wakeIslands, withPage } from './support/browser';
import { BASE, PAGES } from './support/dist';

/** Written for every page: what one of them carries of these is left to the build. */
const EVERYWHERE = [...readFileSync('src/styles/index.css', 'utf8').matchAll(/@import '\.\/([\w-]+\.css)'/g)].map(
  ([, name]) => readFileSync(`src/styles/${name}`, 'utf8'),
);

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
];

test.for(LOOKED_AT)('/%s has each rule that something in it matches, as built and once used', async (page) => {
  await withPage({}, async (tab) => {
    await tab.goto(ORIGIN + BASE + page);
    const matched = () =>
      tab.evaluate((styles) => {
        const selectorsIn = (rules: CSSRuleList): string[] =>
          [...rules].flatMap((rule) => {
            if (rule instanceof CSSStyleRule) return rule.selectorText.split(/,(?![^()]*\))/).map((one) => one.trim());
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
      }, EVERYWHERE);
    const asBuilt = await matched();
    expect(asBuilt.here).toBeGreaterThan(80);
    expect(asBuilt.missing).toEqual([]);
    await wakeIslands(tab);
    expect((await matched()).missing).toEqual([]);
  });
});

test('no page of text carries a rule of the class, and the class does', () => {
  const carries = ({ html }: { html: string }) => html.includes('.bench-pair');
  const at = (address: string) => PAGES.find((page) => page.address === BASE + address)!;
  expect(carries(at('workshop/'))).toBe(true);
  expect(carries(at('privacy/'))).toBe(false);
});
