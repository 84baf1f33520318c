/** Every calculator with the keyboard alone, and what those hear who listen. */
import type { Page } from 'playwright-core';
import { describe, test, type ExpectStatic } from 'vitest';
import { look, painted, SITE, wakeIslands, withPage } from './support/browser';
import { EVERY_PAGE } from './support/dist';
import { focused, listen, reach, startFrom, walk, type Walk } from './support/keyboard';

/** 320 px is what 1280 becomes at 400 % zoom, 640 × 450 what 1280 × 900 becomes at 200 %. */
const NARROWEST = { width: 320, height: 640 };
const DESK = { width: 1280, height: 900 };
const SIZES = EVERY_PAGE ? [NARROWEST, { width: 640, height: 450 }, { width: 390, height: 844 }] : [NARROWEST];

/** WCAG 2.2, 2.4.13, asks for an outline of 2 px at 3 : 1; we keep to it though it is level AAA. */
const OUTLINE_PX = 2;
const CONTRAST = 3;

interface Bench {
  readonly path: string;
  /** a field, what is typed into it key by key (for another answer than the page opens with), and what makes no sense in it */
  readonly type?: { readonly field: string; readonly sound: string; readonly wrong: string };
}

const BENCHES: readonly Bench[] = [
  { path: 'choose/', type: { field: 'ch-grammage', sound: '300', wrong: 'heavy' } },
  { path: 'mix/', type: { field: 'mix-need', sound: '345', wrong: 'lots' } },
  { path: 'cover/?v=1&thing=own', type: { field: 'cover-piece-0-wide', sound: '321', wrong: 'wide' } },
  {
    path: 'paper/?v=1&weight=weighed&grams=34&wide=210&high=297&sheets=6&step=1',
    type: { field: 'know-grams', sound: '27.5', wrong: 'light' },
  },
  { path: 'flat/', type: { field: 'warp-width', sound: '312', wrong: 'wide' } },
  { path: 'make/', type: { field: 'make-width', sound: '123', wrong: 'wide' } },
  { path: 'cut/', type: { field: 'cut-kits', sound: '13', wrong: 'many' } },
  { path: 'workshop/', type: { field: 'class-people', sound: '17', wrong: 'many' } },
  { path: 'trials/plan/', type: { field: 'plan-replicates', sound: '11', wrong: 'many' } },
  { path: 'bench/' },
  { path: 'trials/' },
  { path: 'trials/read/' },
  { path: 'trials/cards/' },
  { path: 'search/' },
  { path: 'embed/' },
];
const typed = BENCHES.flatMap(({ path, type }) => (type ? [{ path, ...type }] : []));

async function open(page: Page, path: string): Promise<void> {
  await page.goto(SITE + path);
  await wakeIslands(page);
}

/** Draws up the trial that stands ready in the planner, with the keyboard; ends on the page that runs it. */
async function drawUp(page: Page): Promise<void> {
  await open(page, 'trials/plan/');
  await reach(page, '.bench-answer .button');
  await page.keyboard.press('Enter');
  await page.waitForURL(/trials\/run\/\?trial=/);
  await page.locator('.run-answer').first().waitFor();
}

function judge({ stops, missed, out }: Walk, expect: ExpectStatic) {
  expect(stops.length).toBeGreaterThan(10);
  expect(stops[0]!.is).toMatch(/Skip to the page/);
  expect(missed, 'not reached by Tab').toEqual([]);
  expect(out, 'the focus leaves the page at its end').toBe(true);
  const backward = stops.filter(({ place }, i) => i > 0 && place < stops[i - 1]!.place);
  expect(
    backward.map(({ is }) => is),
    'reached against the order of the page',
  ).toEqual([]);
  // what is in a frame has marks of its own
  const faint = stops.filter(
    ({ is, outlinePx, contrast }) => !is.startsWith('iframe') && (outlinePx < OUTLINE_PX || contrast < CONTRAST),
  );
  expect(faint.map(({ is, outlinePx, contrast }) => `${is}: ${outlinePx} px, ${contrast.toFixed(1)} : 1`)).toEqual([]);
  const hidden = stops.filter(({ hiddenBy }) => hiddenBy !== '');
  expect(hidden.map(({ is, hiddenBy }) => `${is} lies under ${hiddenBy}`)).toEqual([]);
}

describe.concurrent('everything is reached by Tab, in order, in sight, with a mark on it, and left again', () => {
  const cases = SIZES.flatMap((viewport) => BENCHES.map(({ path }) => ({ path, viewport, at: viewport.width })));
  test.for(cases)('$path at $at px', ({ path, viewport }, { expect }) =>
    look({ viewport }, async (page) => {
      await open(page, path);
      judge(await walk(page), expect);
    }),
  );
  // at a desk the answer stays in view beside the fields, and what follows passes over it
  test.for(EVERY_PAGE ? BENCHES.map(({ path }) => path) : ['make/'])(
    '%s at a desk, there and back',
    (path, { expect }) =>
      look({ viewport: DESK }, async (page) => {
        await open(page, path);
        judge(await walk(page), expect);
        const { stops } = await walk(page, 'Shift+Tab');
        const hidden = stops.filter(({ hiddenBy }) => hiddenBy !== '');
        expect(stops.length).toBeGreaterThan(10);
        expect(hidden.map(({ is, hiddenBy }) => `${is} lies under ${hiddenBy}`)).toEqual([]);
      }),
  );
  test.for(SIZES)('trials/run/ at $width px', (viewport, { expect }) =>
    withPage({ viewport, colorScheme: 'dark' }, async (page) => {
      await drawUp(page);
      judge(await walk(page), expect);
    }),
  );
});

/**
 * From here on the page's own time stands still while keys are pressed: as quick as a hand, on any machine. What is
 * heard from then on, at once or after a little of that time. The page's clock must be installed.
 */
async function holdTime(page: Page) {
  await page.clock.pauseAt(await page.evaluate(() => Date.now() + 60_000));
  const heard = await listen(page);
  const afterPause = async () => {
    await page.clock.runFor(50);
    return heard();
  };
  return { heard, afterPause };
}

describe.concurrent('what is typed is answered once, after a pause, and so is what makes no sense', () => {
  test.for(typed)('$path', ({ path, field, sound, wrong }, { expect }) =>
    withPage({ viewport: NARROWEST }, async (page) => {
      await page.clock.install();
      await open(page, path);
      await page.locator(`#${field}`).evaluate((input) => {
        // it may stand in a part that is folded away
        input.closest('details')?.setAttribute('open', '');
        (input as HTMLInputElement).focus();
      });
      await page.keyboard.press('ControlOrMeta+a');
      const { heard, afterPause } = await holdTime(page);
      await page.keyboard.type(sound);
      expect(await heard()).toEqual([]);
      await expect.poll(afterPause).toHaveLength(1);

      await page.keyboard.press('ControlOrMeta+a');
      await page.keyboard.type(wrong);
      await expect.poll(afterPause).toHaveLength(2);
      await page.clock.runFor(3000);
      expect(await heard()).toHaveLength(2);
      const input = page.locator(`#${field}`);
      expect((await heard())[1]).toContain(await page.locator(`#${field}-error`).innerText());
      expect(await input.getAttribute('aria-invalid')).toBe('true');
      expect(await input.getAttribute('aria-describedby')).toContain(`${field}-error`);
      expect(await input.inputValue()).toBe(wrong);
      expect(await focused(page)).toBe(field);
    }),
  );
});

describe.concurrent('every field that makes no sense says so, and the list leads to it', () => {
  test.for(typed)('$path', ({ path }, { expect }) =>
    withPage({}, async (page) => {
      await open(page, path);
      const fields = page.locator('.bench-inputs input[inputmode="decimal"]');
      const ids = await fields.evaluateAll((inputs) => inputs.map(({ id }) => id));
      expect(ids.length).toBeGreaterThan(0);
      for (const id of ids) {
        await page.locator(`#${id}`).evaluate((input) => {
          (input as HTMLInputElement).value = 'x';
          input.dispatchEvent(new Event('input', { bubbles: true }));
        });
      }
      const links = page.locator('.bench-inputs .problem-list a');
      await expect.poll(() => links.count()).toBeGreaterThan(0);
      // the first of them may be marked before the last has been read
      await painted(page);
      const marked = await page.locator('.bench-inputs [aria-invalid="true"]').evaluateAll((inputs) =>
        inputs.map((input) => ({
          id: input.id,
          says: (input.getAttribute('aria-describedby') ?? '')
            .split(' ')
            .map((id) => document.getElementById(id)?.textContent ?? '')
            .join(' '),
        })),
      );
      for (const link of await links.all()) {
        const message = await link.innerText();
        await link.focus();
        await page.keyboard.press('Enter');
        const there = await focused(page);
        expect(marked.find(({ id }) => id === there)?.says, `where “${message}” leads: ${there}`).toContain(message);
        expect(await page.locator(`#${there}`).isVisible()).toBe(true);
      }
    }),
  );
});

interface List {
  readonly path: string;
  readonly add: string;
  readonly take: string;
  /** id of a row without its number, which begins at 0 */
  readonly row: string;
  /** where the focus goes when the last one goes */
  readonly rest?: string;
}
const LISTS: readonly List[] = [
  { path: 'cover/?v=1&thing=own', add: 'Add a piece', take: 'Remove piece', row: 'cover-piece-' },
  { path: 'cut/', add: 'Add a sheet', take: 'Remove sheet', row: 'cut-stock-' },
  { path: 'cut/', add: 'Add a piece', take: 'Remove piece', row: 'cut-piece-', rest: 'cut-pieces' },
  { path: 'trials/plan/', add: 'Add a paper', take: 'Remove paper', row: 'plan-paper-' },
  { path: 'trials/plan/', add: 'Add an adhesive', take: 'Remove adhesive', row: 'plan-glue-' },
  {
    path: 'trials/plan/',
    add: 'Add a question of your own',
    take: 'Remove your question',
    row: 'plan-own-question-',
    rest: 'plan-questions',
  },
];

describe.concurrent('a row that comes or goes never loses the focus', () => {
  test.for(LISTS)('$path: $add', ({ path, add, take, row, rest }, { expect }) =>
    withPage({}, async (page) => {
      await open(page, path);
      const taking = page.getByRole('button', { name: new RegExp(`^${take} \\d`) });
      const rows = () => page.locator(`fieldset[id^="${row}"]`).count();
      const press = async (button: ReturnType<typeof taking.first>) => {
        await button.focus();
        await page.keyboard.press('Enter');
      };
      const before = await rows();
      await press(page.getByRole('button', { name: add, exact: true }));
      await expect.poll(() => focused(page)).toBe(row + before);
      expect(await rows()).toBe(before + 1);
      // the first goes: what was the second stands in its place
      if ((await taking.count()) > 1) {
        await press(taking.first());
        await expect.poll(() => focused(page)).toBe(`${row}0`);
      }
      while ((await taking.count()) > 0) {
        const left = (await rows()) - 1;
        await press(taking.last());
        await expect.poll(rows).toBe(left);
        await expect.poll(() => focused(page)).toBe(left === 0 ? rest : row + (left - 1));
      }
    }),
  );
});

describe.concurrent('what goes away hands the focus on', () => {
  test('a paper that was kept on this device', ({ expect }) =>
    withPage({}, async (page) => {
      await open(page, 'paper/');
      await page.locator('#know-name').fill('Found in a drawer');
      await page.locator('#keep-paper').focus();
      await page.keyboard.press('Enter');
      await page.getByRole('button', { name: 'Remove Found in a drawer' }).focus();
      await page.keyboard.press('Enter');
      await expect.poll(() => focused(page)).toBe('keep-paper');
    }));

  test('a swatch, its clock and the list of all swatches', ({ expect }) =>
    withPage({}, async (page) => {
      await drawUp(page);
      await reach(page, '.run-lay');
      await page.keyboard.press('Enter');
      await page.locator('.run-time').waitFor();
      expect(await focused(page)).not.toBe('body');
      await reach(page, '.run-answer');
      await page.keyboard.press('Enter');
      await reach(page, '.run-steps [aria-disabled="false"]');
      await page.keyboard.press('Enter');
      // nothing is left to undo, and the button that did it is still where one stands
      await expect.poll(() => focused(page)).toBe('Undo');
      await page.locator('summary', { hasText: 'All swatches' }).focus();
      await page.keyboard.press('Enter');
      await reach(page, '.run-list button[aria-current="true"]');
      await page.keyboard.press('Tab');
      await page.keyboard.press('Enter');
      await expect.poll(() => focused(page)).toBe('run-place');
    }));

  test('a trial that is deleted, after asking', ({ expect }) =>
    withPage({}, async (page) => {
      await drawUp(page);
      await open(page, 'trials/');
      const ask = page.getByRole('button', { name: 'Delete', exact: true });
      await ask.focus();
      await page.keyboard.press('Enter');
      await expect.poll(() => focused(page)).toMatch(/^ask-/);
      await page.getByRole('button', { name: 'Keep it' }).focus();
      await page.keyboard.press('Enter');
      await expect.poll(() => focused(page)).toMatch(/^delete-/);
      await page.keyboard.press('Enter');
      await page.getByRole('button', { name: 'Delete it' }).focus();
      await page.keyboard.press('Enter');
      await expect.poll(() => focused(page)).toBe('own-trials-here');
    }));
});

describe.concurrent('copied and printed with the keyboard', () => {
  // one part does it on every page
  const pages = ['cut/', 'choose/', 'mix/', 'cover/', 'paper/', 'flat/', 'make/', 'workshop/'];
  test.for(EVERY_PAGE ? pages : pages.slice(0, 1))('%s', (path, { expect }) =>
    withPage({ permissions: ['clipboard-read', 'clipboard-write'] }, async (page) => {
      await page.addInitScript(() => {
        window.print = () => document.body.setAttribute('data-printed', '');
      });
      await open(page, path);
      const heard = await listen(page);
      await page.locator('.send-it .button').focus();
      await page.keyboard.press('Enter');
      await expect.poll(heard).toContain('The link is copied.');
      expect(await focused(page)).toBe('Copy the link');
      await page.keyboard.press('Tab');
      await page.keyboard.press('Space');
      await page.locator('body[data-printed]').waitFor({ state: 'attached' });
    }),
  );
});

test('found with the keyboard: a word, what it gives, and the page itself', ({ expect }) =>
  withPage({}, async (page) => {
    await page.clock.install();
    await open(page, 'search/');
    await reach(page, '.search-form input');
    const { afterPause } = await holdTime(page);
    await page.keyboard.type('grain');
    await expect.poll(afterPause).toHaveLength(1);
    await reach(page, 'main a[href*="grain"]');
    await page.keyboard.press('Enter');
    await page.waitForURL((url) => !url.pathname.endsWith('/search/'));
    expect(await page.locator('h1').count()).toBe(1);
  }));

test('the first stop of a page leads past its head', ({ expect }) =>
  withPage({}, async (page) => {
    await open(page, 'choose/');
    await startFrom(page, 'top');
    await page.keyboard.press('Tab');
    expect(await page.locator('.skip-link').boundingBox()).toMatchObject({ x: 0, y: 0 });
    await page.keyboard.press('Enter');
    expect(await focused(page)).toBe('main');
    await page.keyboard.press('Tab');
    expect(await page.evaluate(() => document.activeElement?.closest('main') !== null)).toBe(true);
  }));
