/**
 * What axe does not look for: that every drawing is said in words too, that pages are told apart by their titles, and
 * that the site holds with no motion and in forced colours.
 */
import { describe, expect, test } from 'vitest';
import { SITE, wakeIslands, withPage } from './support/browser';
import { PAGES } from './support/dist';

/** What is read off a page as it was built. */
interface Read {
  readonly title: string;
  readonly lang: string;
  readonly drawings: number;
  /** drawings that are neither named nor hidden */
  readonly silent: readonly string[];
  /** drawings that are named in less than a sentence, or with nothing beside them that says the same */
  readonly alone: readonly string[];
  readonly isHeaded: boolean;
  /** the first thing that can be pressed does not lead past the head */
  readonly isTrapped: boolean;
  readonly levels: readonly number[];
}

/** All pages, read but not run, by the browser's own reader of HTML: some forty times as fast as one in Node. */
const read: Promise<readonly (Read & { readonly address: string })[]> = withPage({}, async (tab) => {
  const all = await tab.evaluate(
    (pages) =>
      pages.map((html): Read => {
        const page = new DOMParser().parseFromString(html, 'text/html');
        const drawings = [...page.querySelectorAll('svg')];
        const [first] = page.body.querySelectorAll('a, button, input, select, summary');
        return {
          title: page.title,
          lang: page.documentElement.lang,
          drawings: drawings.length,
          silent: drawings
            .filter((svg) => svg.closest('[aria-hidden="true"]') === null)
            .filter((svg) => svg.getAttribute('role') !== 'img' || !svg.getAttribute('aria-label')?.trim())
            .map((svg) => svg.outerHTML.slice(0, 120)),
          alone: [...page.querySelectorAll('[role="img"]')]
            .filter((image) => {
              const name = image.getAttribute('aria-label') ?? '';
              const around = image.closest('figure, section, .bench, .handout, .send-it');
              const said = around?.querySelector('figcaption, table, ol, ul, dl, .link-text');
              return name.trim().length < 12 || !said || !said.textContent?.trim();
            })
            .map((image) => image.getAttribute('aria-label') ?? image.outerHTML.slice(0, 120)),
          isHeaded: page.querySelector('.running-head') !== null,
          isTrapped: first?.getAttribute('href') !== '#main' || page.querySelectorAll('main#main').length !== 1,
          levels: [...page.querySelectorAll('h1, h2, h3, h4, h5, h6')].map(({ localName }) => Number(localName[1])),
        };
      }),
    PAGES.map(({ html }) => html),
  );
  return all.map((page, i) => ({ ...page, address: PAGES[i]!.address }));
});
const guilty = async (find: (page: Read) => readonly string[]) =>
  (await read).flatMap((page) => find(page).map((words) => `${page.address}: ${words}`));

describe('every drawing', () => {
  test('is either named or hidden from those who listen', async () => {
    expect((await read).reduce((sum, { drawings }) => sum + drawings, 0)).toBeGreaterThan(200);
    expect(await guilty(({ silent }) => silent)).toEqual([]);
  });

  test('that is named has a sentence for a name, and numbers or words beside it that say the same', async () => {
    expect(await guilty(({ alone }) => alone)).toEqual([]);
  });
});

describe('every page', () => {
  test('has a title of its own, in English, and a way past its head', async () => {
    const titles = (await read).map(({ title }) => title);
    expect(titles).toHaveLength(PAGES.length);
    expect(titles.filter((title, i) => title === '' || titles.indexOf(title) !== i)).toEqual([]);
    expect(await guilty(({ lang }) => (lang === 'en-GB' ? [] : ['not in English']))).toEqual([]);
    const headed = (await read).filter(({ isHeaded }) => isHeaded);
    expect(headed.length).toBeGreaterThan(200);
    expect(headed.filter(({ isTrapped }) => isTrapped).map(({ address }) => address)).toEqual([]);
  });

  test('has one first heading and skips no step below it', async () => {
    const uneven = await guilty(({ levels }) => {
      const skips = levels.filter((level, i) => level > (levels[i - 1] ?? 0) + 1);
      return levels.filter((level) => level === 1).length === 1 && skips.length === 0 ? [] : [levels.join(' ')];
    });
    expect(uneven).toEqual([]);
  });
});

test('where less motion is asked for, nothing moves', () =>
  withPage({ reducedMotion: 'reduce' }, async (page) => {
    for (const path of ['lessons/open-time/', 'choose/', 'trials/']) {
      await page.goto(SITE + path);
      await wakeIslands(page);
      const moving = await page.evaluate(() => [
        ...document.getAnimations().map((one) => String((one as CSSAnimation).animationName)),
        ...[...document.querySelectorAll('*')].flatMap((element) => {
          const { transitionDuration, animationName, scrollBehavior } = getComputedStyle(element);
          const still = transitionDuration === '0s' && animationName === 'none' && scrollBehavior === 'auto';
          return still ? [] : [element.outerHTML.slice(0, 80)];
        }),
      ]);
      expect(moving).toEqual([]);
    }
  }));

describe('in forced colours', () => {
  test('controls keep an edge, the chosen one shows, and the focus has a mark', () =>
    withPage({ forcedColors: 'active' }, async (page) => {
      await page.goto(`${SITE}make/`);
      await wakeIslands(page);
      const bare = await page.evaluate(() =>
        [...document.querySelectorAll('input:not([type="radio"], [type="checkbox"]), select, .button, .button-quiet')]
          .filter((element) => element.checkVisibility())
          .filter((element) => {
            const { borderTopWidth, borderTopColor, backgroundColor } = getComputedStyle(element);
            return parseFloat(borderTopWidth) < 1 || borderTopColor === backgroundColor;
          })
          .map((element) => element.outerHTML.slice(0, 80)),
      );
      expect(bare).toEqual([]);
      const radio = page.locator('input[type="radio"]:checked').first();
      expect(await radio.evaluate((one) => getComputedStyle(one).appearance)).not.toBe('none');
      await radio.focus();
      await page.keyboard.press('ArrowDown');
      const mark = await page.evaluate(() => {
        const { outlineStyle, outlineWidth } = getComputedStyle(document.activeElement!);
        return `${outlineStyle} ${outlineWidth}`;
      });
      expect(mark).toBe('solid 3px');
      // the page shown has a line under its name in the head, and the others none
      const lines = await page.evaluate(() => {
        const paper = getComputedStyle(document.body).backgroundColor;
        return [...document.querySelectorAll('.running-head nav a')]
          .filter((link) => getComputedStyle(link).borderBottomColor !== paper)
          .map((link) => link.textContent?.trim());
      });
      expect(lines).toEqual(['Calculators']);
    }));

  test('words on a drawing’s areas can be read, and areas differ from the ground', () =>
    withPage({ forcedColors: 'active' }, async (page) => {
      await page.goto(`${SITE}make/`);
      await wakeIslands(page);
      const looks = await page.evaluate(() => {
        const board = getComputedStyle(document.querySelector('.plate .fill-board')!);
        const paper = getComputedStyle(document.querySelector('.plate .fill-paper')!);
        return { board: `${board.fill} ${board.fillOpacity}`, paper: `${paper.fill} ${paper.fillOpacity}` };
      });
      // black or white at an eighth: what is written on it keeps more than 7 : 1
      expect(looks.board).toMatch(/^rgb\((0, 0, 0|255, 255, 255)\) 0\.12$/);
      expect(looks.paper).not.toBe(looks.board);
    }));
});
