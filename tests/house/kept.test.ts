/** What is kept from build to build: made once, given back as it was, dropped when a build had no use for it. */
import { mkdtempSync, readdirSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { keptIn } from '../../src/build/kept.mjs';

let folder = '';
beforeEach(() => void (folder = mkdtempSync(path.join(tmpdir(), 'kept-'))));
afterEach(() => rmSync(folder, { recursive: true }));

test('what one build made, the next is given and does not make', async () => {
  const make = vi.fn(() => Promise.resolve(Buffer.from('squeezed')));
  for (let build = 0; build < 2; build += 1) {
    const kept = await keptIn(folder);
    expect(String(await kept.get('a.br', make))).toBe('squeezed');
    await kept.drop();
  }
  expect(make).toHaveBeenCalledTimes(1);
});

test('what a build had no use for goes at its end, with what a stopped build left half done', async () => {
  const first = await keptIn(folder);
  for (const name of ['a.br', 'b.br', 'c.br.77-1']) await first.get(name, () => Promise.resolve(Buffer.from(name)));
  const second = await keptIn(folder);
  await second.get('b.br', () => Promise.reject(new Error('is there already')));
  await second.drop();
  expect(readdirSync(folder)).toEqual(['b.br']);
});

test('two that ask for one name at once both get it', async () => {
  const kept = await keptIn(folder);
  const both = await Promise.all([1, 2].map(() => kept.get('a.gz', () => Promise.resolve(Buffer.from('same')))));
  expect(both.map(String)).toEqual(['same', 'same']);
  expect(readdirSync(folder)).toEqual(['a.gz']);
});
