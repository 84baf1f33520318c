/**
 * Hostile links over the calculators' real way in. The page is loaded once; for each link its address is set, and the
 * calculator as it came from the server is put in afresh, so the built code wakes it, reads the link and answers. What
 * `npm test` does is a slice; `npm run test:fuzz` does 10 000 random and 1 000 crafted ones.
 */
import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { complaintsOf, ORIGIN, wakeIslands, withPage } from './support/browser';
import { PAGES_WITH_ISLANDS } from './support/dist';
import { craftedTails, randomTails } from './support/hostile-links';

const FULL = process.env['FUZZ'] === 'full';
const COUNTS = FULL ? { random: 10_000, crafted: 1000 } : { random: 60, crafted: 60 };
const AT_ONCE = 200;
/** pages of their own that give and take a link */
const CALCULATORS = PAGES_WITH_ISLANDS.filter(
  ({ file, html }) => /^[a-z-]+\/index\.html$/.test(file) && html.includes('Link to exactly'),
).map(({ address }) => address);
/** The asked number of links is shared out between the calculators. */
const share = (count: number) => Math.ceil(count / CALCULATORS.length);

interface Fresh {
  pristine: Element;
  hit?: unknown;
}

/** Before the page's own script: keeps the calculator as it came, and makes a frame come at once. */
const prepare = (page: Page) =>
  page.addInitScript(() => {
    const held = globalThis as unknown as Fresh;
    const look = new MutationObserver(() => {
      // whole as soon as something stands behind it
      const island = document.querySelector('astro-island');
      if (held.pristine || !island?.querySelector('.bench-answer') || !document.querySelector('footer')) return;
      held.pristine = island.cloneNode(true) as Element;
      look.disconnect();
    });
    look.observe(document, { childList: true, subtree: true });
    globalThis.requestAnimationFrame = (step) => setTimeout(() => step(performance.now()), 0) as unknown as number;
  });

/** What is wrong after each of these links, and how many of them the page said it could not read in full. */
const openAll = (page: Page, tails: readonly string[]) =>
  page.evaluate(async (links) => {
    const held = globalThis as unknown as Fresh;
    const wrong: string[] = [];
    let noticed = 0;
    const bad = /\b(?:NaN|undefined|Infinity)\b|\[object \w+\]|∞/;
    const turn = () => new Promise((done) => setTimeout(done, 0));
    const place = document.querySelector('astro-island')!.parentElement!;
    for (const tail of links) {
      // spelt as a browser spells the address of a link that was followed; line breaks in it are gone by then
      history.replaceState(null, '', new URL(`${location.pathname}?${tail}`, location.origin).href);
      document.dispatchEvent(new Event('astro:after-swap'));
      const fresh = held.pristine.cloneNode(true) as Element;
      place.querySelector('astro-island')!.replaceWith(fresh);
      for (let i = 0; i < 20_000 && fresh.hasAttribute('ssr'); i += 1) await turn();
      // the frame in which it wakes, the one in which it reads the link, and the one in which it shows it
      for (let i = 0; i < 6; i += 1) await turn();
      const say = (what: string) => wrong.push(`${what} — ${tail.slice(0, 300)}`);
      if (fresh.hasAttribute('ssr')) say('does not wake');
      if ((fresh.querySelector('.bench-answer')?.textContent ?? '').trim().length < 20) say('shows no answer');
      if (held.hit !== undefined) say('runs what is in the link');
      held.hit = undefined;
      if (fresh.querySelector('.bench [role="status"]:not(.visually-hidden)')?.textContent) noticed += 1;
      if (fresh.querySelector('script, iframe, object, embed, img, base, meta, [onerror], [onload], [onclick]'))
        say('takes markup from the link');
      const texts = document.createTreeWalker(fresh, NodeFilter.SHOW_TEXT);
      for (let text = texts.nextNode(); text !== null; text = texts.nextNode()) {
        // the notice repeats what it could not read, the page's own link what it was given, word for word
        if (!text.parentElement?.closest('[role="status"], .link-text, style') && bad.test(text.nodeValue ?? ''))
          say(`shows “${text.nodeValue?.slice(0, 80)}”`);
      }
      for (const field of fresh.querySelectorAll('input:not([readonly]), textarea'))
        if (bad.test((field as HTMLInputElement).value))
          say(`holds “${(field as HTMLInputElement).value.slice(0, 80)}”`);
    }
    return { wrong, noticed };
  }, tails);

describe('hostile links', () => {
  test('there are calculators to send them to', () => {
    expect(CALCULATORS.length).toBeGreaterThanOrEqual(3);
  });
  test.for(CALCULATORS)(
    '%s answers whatever the link says, and runs none of it',
    { timeout: 1_800_000 },
    async (address) => {
      await withPage({}, async (page) => {
        const complaints = complaintsOf(page);
        page.on('dialog', (dialog) => void dialog.dismiss().then(() => complaints.push('a dialog')));
        await prepare(page);
        await page.goto(ORIGIN + address);
        await wakeIslands(page);
        const sound = new URL(await page.getByRole('textbox', { name: /^Link to exactly/ }).inputValue()).search.slice(
          1,
        );
        // the way in is the real one: a sound link is taken
        expect(await openAll(page, [sound])).toEqual({ wrong: [], noticed: 0 });
        expect(await openAll(page, ['v=moon'])).toEqual({ wrong: [], noticed: 1 });

        const tails = [
          ...craftedTails(sound, share(COUNTS.crafted)),
          ...randomTails(sound, share(COUNTS.random), 20_261_125),
        ];
        const wrong: string[] = [];
        let noticed = 0;
        const began = performance.now();
        for (let i = 0; i < tails.length; i += AT_ONCE) {
          const found = await openAll(page, tails.slice(i, i + AT_ONCE));
          wrong.push(...found.wrong);
          noticed += found.noticed;
        }
        console.log(
          `${address}: ${tails.length} links, ${noticed} with a notice, in ${((performance.now() - began) / 1000).toFixed(1)} s`,
        );
        expect(wrong.slice(0, 20)).toEqual([]);
        expect(complaints).toEqual([]);
        // were the links not read at all, there would be nothing to notice; of sixteen, many happen to be sound
        expect(noticed).toBeGreaterThan(tails.length / 10);
      });
    },
  );
});
