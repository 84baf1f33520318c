/** Trials in a real browser: nothing is lost on reload, in two tabs or with full storage; what comes in does no harm. */
import type { BrowserContext, Download, Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import type { Trial } from '../../src/core/trial/record';
import { trialWith } from '../core/support/trial';
import { SITE, wakeIslands, withPage } from './support/browser';

const OPEN = trialWith(() => undefined, { id: 't-open', name: 'An open trial' });
const KEY = 'open-time:trial:';

/** Puts trials on the device before the page is opened. */
async function keep(page: Page, ...trials: readonly Trial[]): Promise<void> {
  await page.goto(`${SITE}404.html`);
  await page.evaluate(
    (entries) => entries.forEach(([key, text]) => localStorage.setItem(key, text)),
    trials.map((trial) => [KEY + trial.id, JSON.stringify(trial)] as const),
  );
}

/** What a download holds. */
async function textOf(file: Download): Promise<string> {
  const pieces: Buffer[] = [];
  for await (const piece of await file.createReadStream()) pieces.push(piece as Buffer);
  return Buffer.concat(pieces).toString('utf8');
}

const stored = (page: Page, id: string): Promise<Trial> =>
  page.evaluate((key) => JSON.parse(localStorage.getItem(key) ?? 'null'), KEY + id);

const run = `${SITE}trials/run/?trial=${OPEN.id}`;
const answer = (page: Page, name: string) => page.locator('.run-question').first().getByRole('button', { name });
const number = (page: Page) => page.locator('.run-number');

test('a plan becomes a trial, and its first swatch is up', () =>
  withPage({}, async (page) => {
    await page.goto(`${SITE}trials/plan/`);
    await wakeIslands(page);
    await page.locator('#plan-holds').fill('soon');
    await page.getByRole('button', { name: 'Draw the order and begin' }).click();
    await expect.poll(() => page.locator('#plan-holds').getAttribute('aria-invalid')).toBe('true');
    expect(page.url()).toContain('/trials/plan/');
    // what was typed is still there after a reload
    await page.reload();
    await expect.poll(() => page.locator('#plan-holds').inputValue()).toBe('soon');
    await page.locator('#plan-holds').fill('20 60');
    await page.getByRole('button', { name: 'Draw the order and begin' }).click();
    await page.waitForURL(/trials\/run/);
    await expect.poll(() => page.locator('.run-place').innerText()).toMatch(/1 of 16/);
  }));

test('a plan says what of its link it could not read, and cards that the trial asked for is elsewhere', () =>
  withPage({}, async (page) => {
    await page.goto(`${SITE}trials/plan/?paper=moon&glue=pva`);
    await page.getByText('could not be read').waitFor();
    expect(await page.locator('#plan-answer').innerText()).toContain('paper (moon)');
    await page.goto(`${SITE}trials/plan/?paper=marbled&glue=pva`);
    await expect.poll(() => page.locator('#plan-paper-0-name').inputValue()).toBe('Marbled paper');
    expect(await page.getByText('could not be read').count()).toBe(0);
    await page.goto(`${SITE}trials/cards/?trial=elsewhere`);
    await page.getByText('This device holds no such trial').waitFor();
  }));

test('who comes back to a plan that a link began finds it as they left it', () =>
  withPage({}, async (page) => {
    const glues = page.locator('[id^="plan-glue-"][id$="-record"]');
    const link = `${SITE}trials/plan/?v=1&paper=marbled&glue=pva.wheat-starch-paste-thin`;
    await page.goto(link);
    await wakeIslands(page);
    await page.getByRole('button', { name: 'Remove adhesive 2' }).click();
    await expect.poll(() => glues.count()).toBe(1);
    await page.goto(`${SITE}workshop/`);
    await page.goBack();
    await wakeIslands(page);
    await expect.poll(() => glues.count()).toBe(1);
    expect(await page.locator('#plan-answer').innerText()).toContain('1 adhesive');
    await page.reload();
    await wakeIslands(page);
    await expect.poll(() => glues.count()).toBe(1);
    // whoever opens the link anew sees what it says
    await page.goto(`${SITE}workshop/`);
    await page.goto(link);
    await wakeIslands(page);
    await expect.poll(() => glues.count()).toBe(2);
  }));

test('a browser that keeps nothing is said to, once the page has asked it', () =>
  withPage({}, async (page) => {
    await page.addInitScript(() => {
      Object.defineProperty(window, 'localStorage', {
        get: () => {
          throw new DOMException('refused', 'SecurityError');
        },
      });
    });
    await page.goto(`${SITE}trials/plan/?paper=marbled&glue=pva`);
    await page.getByText('does not let the page keep anything').waitFor();
  }));

test('a judgement is kept at once: reload in the midst of it loses nothing, and Undo still goes back', () =>
  withPage({}, async (page) => {
    await keep(page, OPEN);
    await page.goto(run);
    await answer(page, 'Partly').click();
    await page.reload();
    await page.getByRole('button', { name: 'Before' }).click();
    await expect.poll(() => answer(page, 'Partly').getAttribute('aria-pressed')).toBe('true');
    expect((await stored(page, OPEN.id)).swatches[0]?.outcomes).toEqual({ lift: 'partly' });
    await page.getByRole('button', { name: 'Undo' }).click();
    await expect.poll(async () => (await stored(page, OPEN.id)).swatches[0]?.outcomes).toEqual({});
  }));

test('the clock is right after a sleep and after a reload, because it counts from the stored instant', () =>
  withPage({}, async (page) => {
    await page.clock.install({ time: new Date('2026-03-01T10:00:00Z') });
    await keep(page, OPEN);
    await page.goto(run);
    await page.getByRole('button', { name: /start the clock/ }).click();
    await page.clock.runFor(5000);
    await expect.poll(() => page.getByRole('timer').innerText()).toBe('0:15');
    // asleep: time passes, timers do not run
    await page.clock.setSystemTime(new Date('2026-03-01T10:00:33Z'));
    await page.reload();
    await page.clock.runFor(400);
    await expect.poll(() => page.getByRole('timer').innerText()).toBe('+0:13');
    await expect.poll(() => page.locator('.run-word').innerText()).toBe('Lift it now');
  }));

/** A second page of the same browser, as a second tab. */
const secondTab = (context: BrowserContext) => context.newPage();

test('two tabs at once: each keeps what the other does', () =>
  withPage({}, async (page) => {
    await keep(page, OPEN);
    await page.goto(run);
    const other = await secondTab(page.context());
    await other.goto(run);
    await other.getByRole('button', { name: /^Next/ }).click();
    await expect.poll(() => number(other).innerText()).toBe('2');
    // both were loaded before either wrote
    await answer(page, 'Pass').click();
    await answer(other, 'Fail').click();
    await expect
      .poll(async () => (await stored(page, OPEN.id)).swatches.slice(0, 2).map(({ outcomes }) => outcomes['lift']))
      .toEqual(['pass', 'fail']);
    await expect.poll(() => page.locator('.run-place').innerText()).toContain('2 done');
  }));

test('full storage: it is said, what was judged stays on the screen and can be saved, and is stored once there is room', () =>
  withPage({ acceptDownloads: true }, async (page) => {
    await keep(page, OPEN);
    await page.goto(run);
    await page.evaluate(() => {
      let size = 4_000_000;
      for (let i = 0; size > 0; i += 1) {
        try {
          localStorage.setItem(`filler-${i}`, 'x'.repeat(size));
        } catch {
          size = Math.floor(size / 2);
        }
      }
    });
    await answer(page, 'Pass').click();
    await page.getByRole('button', { name: /^Next/ }).click();
    await answer(page, 'Fail').click();
    const alert = page.getByRole('alert');
    await expect.poll(() => alert.innerText()).toContain('full');
    await page.getByRole('button', { name: 'Before' }).click();
    await expect.poll(() => answer(page, 'Pass').getAttribute('aria-pressed')).toBe('true');
    const [file] = await Promise.all([page.waitForEvent('download'), alert.getByRole('button').click()]);
    const saved = JSON.parse(await textOf(file)) as { trials: Trial[] };
    expect(saved.trials[0]?.swatches.slice(0, 2).map(({ outcomes }) => outcomes)).toEqual([
      { lift: 'pass' },
      { lift: 'fail' },
    ]);
    await page.evaluate(() =>
      Object.keys(localStorage)
        .filter((key) => key.startsWith('filler'))
        .forEach((key) => localStorage.removeItem(key)),
    );
    await page.getByRole('button', { name: /^Next/ }).click();
    await page.getByRole('button', { name: /^Next/ }).click();
    await answer(page, 'Pass').click();
    await expect
      .poll(async () => (await stored(page, OPEN.id)).swatches.filter(({ outcomes }) => outcomes['lift']).length)
      .toBe(3);
    await expect.poll(() => alert.count()).toBe(0);
  }));

test('storage that is forbidden: the pages work, and say that nothing is kept', () =>
  withPage({}, async (page) => {
    const errors: string[] = [];
    page.on('pageerror', (error) => errors.push(String(error)));
    await page.addInitScript(() => {
      Object.defineProperty(window, 'localStorage', {
        get: () => {
          throw new DOMException('forbidden', 'SecurityError');
        },
      });
    });
    await page.goto(`${SITE}trials/`);
    await expect.poll(() => page.getByRole('alert').innerText()).toContain('does not let the page keep anything');
    await page.goto(`${SITE}trials/plan/`);
    await wakeIslands(page);
    await page.getByRole('button', { name: 'Draw the order and begin' }).click();
    await expect.poll(() => page.locator('main').innerText()).toContain('did not keep the trial');
    await page.goto(`${SITE}choose/`);
    await expect.poll(() => page.locator('.verdict-word').first().innerText()).not.toBe('');
    expect(errors).toEqual([]);
  }));

test('a photo is scaled down, shown, and still there after a reload', () =>
  withPage({}, async (page) => {
    await keep(page, OPEN);
    await page.goto(run);
    const picture = await page.evaluate(() => {
      const canvas = document.createElement('canvas');
      [canvas.width, canvas.height] = [2400, 1200];
      canvas.getContext('2d')?.fillRect(0, 0, 1200, 1200);
      return canvas.toDataURL('image/png').slice('data:image/png;base64,'.length);
    });
    const open = async () => page.getByText('Note, photo, set aside').click();
    await open();
    await page
      .locator('#run-photo')
      .setInputFiles({ name: 'a.png', mimeType: 'image/png', buffer: Buffer.from(picture, 'base64') });
    const size = () =>
      page.locator('.run-photo').evaluate((image: HTMLImageElement) => [image.naturalWidth, image.naturalHeight]);
    await expect.poll(size).toEqual([1000, 500]);
    await page.reload();
    await open();
    await expect.poll(size).toEqual([1000, 500]);
    await page
      .locator('#run-photo')
      .setInputFiles({ name: 'a.txt', mimeType: 'text/plain', buffer: Buffer.from('no picture') });
    await expect.poll(() => page.locator('main').innerText()).toContain('could not be read or kept');
  }));

test('a whole swatch with the keyboard alone, judged blind', () =>
  withPage({}, async (page) => {
    await keep(page, OPEN);
    await page.goto(run);
    await wakeIslands(page);
    const to = async (name: RegExp) => {
      for (let i = 0; i < 60; i += 1) {
        await page.keyboard.press('Tab');
        const text = await page.evaluate(
          () => document.activeElement?.closest('label')?.textContent ?? document.activeElement?.textContent ?? '',
        );
        if (name.test(text)) return;
      }
      throw new Error(`the keyboard does not reach ${name}`);
    };
    await to(/start the clock/);
    await page.keyboard.press('Enter');
    // it counts, however long the machine takes to look; from where is held above
    await expect.poll(() => page.getByRole('timer').innerText()).toMatch(/^(?:0:(?:20|[01]\d)|\+\d+:\d\d)$/);
    await to(/^Partly/);
    await page.keyboard.press('Space');
    await expect.poll(async () => (await stored(page, OPEN.id)).swatches[0]?.outcomes).toEqual({ lift: 'partly' });
    await to(/^Next/);
    await page.keyboard.press('Enter');
    await expect.poll(() => number(page).innerText()).toBe('2');
    await to(/^Tool, room, batches/);
    await page.keyboard.press('Enter');
    await to(/^Judge blind/);
    await page.keyboard.press('Space');
    await expect.poll(() => page.locator('.run-what').innerText()).toContain('hidden');
    expect(await page.locator('.run-what').innerText()).not.toMatch(/Paste|Vinyl/);
  }));

describe('reading in', () => {
  const NASTY = '<img src=x onerror="window.__hit=1"><script>window.__hit=1</script>';

  async function paste(page: Page, text: string): Promise<void> {
    await page.goto(`${SITE}trials/`);
    await wakeIslands(page);
    await page.getByText('Or paste it').click();
    await page.locator('#read-text').fill(text);
    await page.getByRole('button', { name: 'Look at it' }).click();
  }

  test('a spreadsheet with markup in its names stays text on every page, and its bad cells are named', () =>
    withPage({}, async (page) => {
      await paste(
        page,
        `paper;gsm;adhesive;lift;${NASTY}\n"${NASTY.replace(/"/g, '""')}";25,5;=1+1;pass;pass\nB;heavy;P;maybe;fail`,
      );
      await expect.poll(() => page.locator('.incoming').innerText()).toContain('25.5');
      expect(await page.locator('[aria-live] .problem-list').innerText()).toMatch(/Row 3, gsm.*5 to 600/s);
      await page.getByRole('button', { name: 'Keep it' }).click();
      await page.getByRole('link', { name: 'Read it' }).click();
      await expect.poll(() => page.locator('.heat').first().innerText()).toContain('<img src=x');
      for (const where of ['run', 'cards']) {
        await page.goto(page.url().replace(/trials\/[a-z]+\//, `trials/${where}/`));
        await expect.poll(() => page.locator('main').innerText()).toContain('<img src=x');
      }
      expect(await page.evaluate(() => '__hit' in window)).toBe(false);
      expect(await page.locator('main img[src="x"]').count()).toBe(0);
    }));

  test('the same trial from another device is joined, and nothing is overwritten unasked', () =>
    withPage({}, async (page) => {
      await keep(
        page,
        trialWith(({ number: n }) => (n <= 2 ? 'pass' : undefined), { id: OPEN.id }),
      );
      await paste(
        page,
        JSON.stringify(trialWith(({ number: n }) => (n === 1 ? 'fail' : n <= 4 ? 'pass' : undefined), { id: OPEN.id })),
      );
      await page.getByRole('button', { name: 'Join them' }).click();
      await expect.poll(() => page.getByRole('alert').innerText()).toContain('One swatch was judged differently');
      const lifts = async () =>
        (await stored(page, OPEN.id)).swatches.slice(0, 4).map(({ outcomes }) => outcomes['lift']);
      expect(await lifts()).toEqual(['pass', 'pass', undefined, undefined]);
      await page.getByRole('button', { name: 'Those on this device' }).click();
      await expect.poll(lifts).toEqual(['pass', 'pass', 'pass', 'pass']);
    }));
});

const JUDGED = trialWith(({ glue }) => (glue === 'glue-2' ? 'fail' : 'pass'), {
  id: 't-judged',
  name: 'Judged & done',
});

test('a link carries the trial; a page in a file needs nothing from anywhere', () =>
  withPage({ acceptDownloads: true, permissions: ['clipboard-read', 'clipboard-write'] }, async (page) => {
    await keep(page, JUDGED);
    await page.goto(`${SITE}trials/read/?trial=${JUDGED.id}`);
    await expect.poll(() => page.locator('main').innerText()).toContain('Judged & done');
    const heat = await page.locator('.heat').first().innerText();
    await page.getByRole('button', { name: 'Link' }).click();
    await expect.poll(() => page.getByRole('status').last().innerText()).toContain('copied');
    const link = await page.evaluate(() => navigator.clipboard.readText());
    const [file] = await Promise.all([
      page.waitForEvent('download'),
      page.getByRole('button', { name: 'Page in a file' }).click(),
    ]);
    const html = await textOf(file);
    expect(html).toContain('Judged &amp; done');
    expect(html).not.toMatch(/<script|src="http|href="http|url\(/i);
    await withPage({}, async (fresh) => {
      await fresh.goto(link);
      await expect.poll(() => fresh.locator('main').innerText()).toContain('Judged & done');
      expect(await fresh.locator('.heat').first().innerText()).toBe(heat);
      await fresh.goto(`${link.slice(0, -40)}`);
      await expect.poll(() => fresh.locator('main').innerText()).toContain('cut off or damaged');
    });
  }));

test('the chooser shows the model alone beside the trials, can leave them out, and its link shows a student the same', () =>
  withPage({}, async (page) => {
    await keep(page, JUDGED);
    await page.goto(`${SITE}choose/?v=1&paper=unryu&gsm=25&on=binders-board&place=20`);
    const panel = page.locator('.own-trials');
    await expect.poll(() => panel.innerText()).toMatch(/3 swatches/);
    const row = async (tab: Page) => (await tab.locator('.own-trials tbody').first().innerText()).replace(/\s+/g, ' ');
    await expect.poll(() => page.url()).toContain('ls=');
    expect(page.url()).toContain('ev=');
    const link = page.url();
    const shown = await row(page);
    const sentence = (tab: Page) => tab.locator('.verdict-why').first().innerText();
    const learned = /had learned from 6 swatches, which a link does not carry: .+ in 10/;
    await withPage({}, async (fresh) => {
      await fresh.goto(link);
      await expect.poll(() => fresh.locator('.own-trials').innerText()).toContain('whoever sent this');
      await expect.poll(() => fresh.locator('.problem-list').innerText()).toMatch(learned);
      await expect.poll(() => row(fresh)).toBe(shown);
      await expect.poll(() => sentence(fresh)).toBe(await sentence(page));
    });
    // on the device with the swatches the same link needs no such word
    await page.reload();
    await expect.poll(() => page.locator('.taught').innerText()).toContain('your 6 swatches');
    expect(await page.getByText(learned).count()).toBe(0);
    await page.getByRole('checkbox', { name: /counts them/ }).uncheck();
    await expect.poll(() => page.url()).not.toContain('ev=');
    await expect.poll(() => panel.innerText()).toContain('the model alone');
  }));
