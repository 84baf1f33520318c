/**
 * What axe does not look for: that every drawing is said in words too, that pages are told apart by their titles, that a
 * thumb finds every control, and that the site holds with no motion and in forced colours.
 */
import { describe, expect, test } from 'vitest';
import { ORIGIN, PHONE, SITE, wakeIslands, withPage } from './support/browser';
import { EVERY_PAGE, LESSONS, LOOKED_AT, PAGES, PAGES_WITH_ISLANDS, documentOf, type BuiltPage } from './support/dist';

const READ = PAGES.map((page) => ({ page, document: documentOf(page) }));
const guilty = (find: (page: (typeof READ)[number]) => readonly string[]) =>
  READ.flatMap((read) => find(read).map((words) => `${read.page.address}: ${words}`));

describe('every drawing', () => {
  test('is either named or hidden from those who listen', () => {
    expect(READ.reduce((sum, { document }) => sum + document.querySelectorAll('svg').length, 0)).toBeGreaterThan(200);
    const silent = guilty(({ document }) =>
      [...document.querySelectorAll('svg')]
        .filter((svg) => svg.closest('[aria-hidden="true"]') === null)
        .filter((svg) => svg.getAttribute('role') !== 'img' || !svg.getAttribute('aria-label')?.trim())
        .map((svg) => svg.outerHTML.slice(0, 120)),
    );
    expect(silent).toEqual([]);
  });

  test('that is named has a sentence for a name, and numbers or words beside it that say the same', () => {
    const alone = guilty(({ document }) =>
      [...document.querySelectorAll('[role="img"]')]
        .filter((image) => {
          const name = image.getAttribute('aria-label') ?? '';
          const around = image.closest('figure, section, .bench, .handout, .send-it');
          const said = around?.querySelector('figcaption, table, ol, ul, dl, .link-text');
          return name.trim().length < 12 || !said || !said.textContent?.trim();
        })
        .map((image) => image.getAttribute('aria-label') ?? image.outerHTML.slice(0, 120)),
    );
    expect(alone).toEqual([]);
  });
});

describe('every page', () => {
  test('has a title of its own, in English, and a way past its head', () => {
    const titles = READ.map(({ document }) => document.title);
    expect(titles.filter((title, i) => titles.indexOf(title) !== i)).toEqual([]);
    expect(guilty(({ document }) => (document.documentElement.lang === 'en-GB' ? [] : ['not in English']))).toEqual([]);
    const headed = READ.filter(({ document }) => document.querySelector('.running-head') !== null);
    expect(headed.length).toBeGreaterThan(200);
    const [trapped] = [
      headed.filter(({ document }) => {
        const [first] = document.body.querySelectorAll('a, button, input, select, summary');
        return first?.getAttribute('href') !== '#main' || document.querySelectorAll('main#main').length !== 1;
      }),
    ];
    expect(trapped.map(({ page }) => page.address)).toEqual([]);
  });

  test('has one first heading and skips no step below it', () => {
    const uneven = guilty(({ document }) => {
      const levels = [...document.querySelectorAll('h1, h2, h3, h4, h5, h6')].map(({ localName }) =>
        Number(localName[1]),
      );
      const skips = levels.filter((level, i) => level > (levels[i - 1] ?? 0) + 1);
      return levels.filter((level) => level === 1).length === 1 && skips.length === 0 ? [] : [levels.join(' ')];
    });
    expect(uneven).toEqual([]);
  });
});

/** WCAG 2.2, 2.5.8, asks for 24 px where a link is not part of a sentence; 44 px for what a wet thumb presses is our own. */
const LINK_PX = 24;
const CONTROL_PX = 44;
/** Every calculator, a lesson, and what is neither; `ALL_PAGES=1` measures the rest too. */
const MEASURED = EVERY_PAGE
  ? PAGES
  : LOOKED_AT.filter(
      (page) =>
        (PAGES_WITH_ISLANDS.includes(page) && !LESSONS.includes(page)) ||
        LESSONS.indexOf(page) === 0 ||
        /^((shelf(\/(papers|adhesives|ingredients|plates))?|embed|search|glossary)\/)?index\.html$/.test(page.file),
    );

function tooSmall(built: BuiltPage): Promise<string[]> {
  return withPage(PHONE, async (page) => {
    await page.goto(ORIGIN + built.address);
    await wakeIslands(page);
    return page.evaluate(
      ({ link, control }) => {
        document.querySelectorAll('details').forEach((one) => one.setAttribute('open', ''));
        const blockOf = (element: Element): Element =>
          getComputedStyle(element).display.startsWith('inline') && element.parentElement
            ? blockOf(element.parentElement)
            : element;
        const inSentence = (element: Element) => {
          const others = (blockOf(element).textContent ?? '').replace(element.textContent ?? '', '');
          return getComputedStyle(element).display === 'inline' && /\p{L}/u.test(others);
        };
        const targets = [...document.querySelectorAll('a[href], button, input, select, textarea, summary')]
          .filter(
            (one) => one.checkVisibility({ visibilityProperty: true }) && !one.closest('.visually-hidden, .skip-link'),
          )
          // what bears a label is pressed by it too
          .map((element) => ({ element, box: (element.closest('label') ?? element).getBoundingClientRect() }));
        type Box = DOMRect;
        const middle = (box: Box) => [box.x + box.width / 2, box.y + box.height / 2] as const;
        const apart = ([x, y]: readonly [number, number], box: Box) =>
          Math.hypot(Math.max(box.left - x, 0, x - box.right), Math.max(box.top - y, 0, y - box.bottom));
        /** small, but with nothing else within the circle that a large one would fill: the exception of 2.5.8 */
        const standsFree = ({ element, box }: (typeof targets)[number]) =>
          targets.every(
            (other) =>
              other.element === element ||
              (apart(middle(box), other.box) >= link / 2 &&
                (Math.min(other.box.width, other.box.height) >= link ||
                  Math.hypot(middle(box)[0] - middle(other.box)[0], middle(box)[1] - middle(other.box)[1]) >= link)),
          );
        return targets.flatMap((target) => {
          const { element, box } = target;
          const isLink = element.localName === 'a' && !element.matches('.button, .button-quiet');
          if (isLink && inSentence(element)) return [];
          // a note on one number stands in a table of numbers
          const least = isLink || element.matches('.provenance > summary') ? link : control;
          const small = Math.min(box.height, isLink ? box.width : box.height) < least - 0.5;
          if (!small || (isLink && standsFree(target))) return [];
          const name = `${element.localName}.${element.className} “${(element.textContent ?? '').trim().slice(0, 30)}”`;
          return [`${name}: ${Math.round(box.width)} × ${Math.round(box.height)} px`];
        });
      },
      { link: LINK_PX, control: CONTROL_PX },
    );
  });
}

describe.concurrent('a thumb finds every control, and every link that stands alone', () => {
  test.for(MEASURED.map((page) => [page.address, page] as const))('%s', async ([, page], { expect }) => {
    expect([...new Set(await tooSmall(page))]).toEqual([]);
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
