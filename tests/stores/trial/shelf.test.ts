/** The shelf of trials and the work at the bench, over a storage that can be filled, forbidden or shared. */
import { describe, expect, test } from 'vitest';
import { createRun } from '../../../src/stores/trial/run';
import { createShelf, TRIAL_KEY } from '../../../src/stores/trial/shelf';
import { fromLinkTail, linkTail, readIn, trialsJson } from '../../../src/stores/trial/files';
import { trialWith } from '../../core/support/trial';

/** A storage in memory; `room` characters fit. */
function memory(room = Infinity) {
  const held = new Map<string, string>();
  const storage = {
    room,
    get length() {
      return held.size;
    },
    clear: () => held.clear(),
    key: (i: number) => [...held.keys()][i] ?? null,
    getItem: (key: string) => held.get(key) ?? null,
    removeItem: (key: string) => void held.delete(key),
    setItem(key: string, value: string) {
      const used = [...held].reduce((sum, [k, v]) => sum + (k === key ? 0 : k.length + v.length), 0);
      if (used + key.length + value.length > storage.room) throw new DOMException('no room', 'QuotaExceededError');
      held.set(key, value);
    },
  };
  return storage satisfies Storage & { room: number };
}

const OPEN = trialWith(() => undefined);
const clock = { now: () => Date.parse('2026-03-01T10:00:00Z') };
const lifts = (shelf: ReturnType<typeof createShelf>) =>
  shelf.read(OPEN.id)?.swatches.map(({ outcomes }) => outcomes['lift']);

describe('the shelf', () => {
  test('what is put on it is there for the next page', () => {
    const storage = memory();
    createShelf(storage).put(OPEN);
    expect(createShelf(storage).$trials.get()).toEqual([OPEN]);
  });
  test('a change is made to what is stored, not to what this page last saw', () => {
    const storage = memory();
    const [mine, theirs] = [createShelf(storage), createShelf(storage)];
    mine.put(OPEN);
    theirs.change(OPEN.id, (trial) => ({ ...trial, name: 'Renamed' }));
    mine.change(OPEN.id, (trial) => ({ ...trial, by: 'Bo' }));
    expect(createShelf(storage).read(OPEN.id)).toMatchObject({ name: 'Renamed', by: 'Bo' });
  });
  test('deleted, its last steps go with it, and no other trial', () => {
    const storage = memory();
    const shelf = createShelf(storage);
    shelf.put(OPEN);
    shelf.put({ ...OPEN, id: 'other' });
    for (const id of [OPEN.id, 'other']) createRun(shelf, id, storage, clock).judge('lift', 'pass');
    shelf.remove(OPEN.id);
    const names = Array.from({ length: storage.length }, (_, i) => storage.key(i));
    expect(names.filter((name) => name?.includes(OPEN.id))).toEqual([]);
    expect(names.filter((name) => name?.endsWith('other'))).toHaveLength(2);
  });
  test('deleted in another tab while it is worked on here, it comes back with the next change', () => {
    const storage = memory();
    const mine = createShelf(storage);
    mine.put(OPEN);
    createShelf(storage).remove(OPEN.id);
    expect(mine.change(OPEN.id, (trial) => ({ ...trial, by: 'Bo' }))).toBe(true);
    expect(createShelf(storage).read(OPEN.id)?.by).toBe('Bo');
  });
  test('full: held in the page, said, and stored as soon as there is room', () => {
    const storage = memory();
    const shelf = createShelf(storage);
    shelf.put(OPEN);
    storage.room = 0;
    expect(shelf.change(OPEN.id, (trial) => ({ ...trial, by: 'Bo' }))).toBe(false);
    expect([shelf.$trouble.get(), shelf.read(OPEN.id)?.by, createShelf(storage).read(OPEN.id)?.by]).toEqual([
      'full',
      'Bo',
      'Ada',
    ]);
    storage.room = Infinity;
    expect(shelf.change(OPEN.id, (trial) => ({ ...trial, name: 'Later' }))).toBe(true);
    expect([shelf.$trouble.get(), createShelf(storage).read(OPEN.id)]).toMatchObject([
      undefined,
      { by: 'Bo', name: 'Later' },
    ]);
  });
  test('no storage at all: everything works in the page, and it says so', () => {
    const shelf = createShelf(undefined);
    shelf.put(OPEN);
    expect([shelf.$trouble.get(), shelf.$trials.get().length]).toEqual(['refused', 1]);
  });
  test('what is damaged is shown, kept and deleted only when told to', () => {
    const storage = memory();
    storage.setItem(`${TRIAL_KEY}x`, '{"version":1,"papers":[');
    storage.setItem('something-else', '{}');
    const shelf = createShelf(storage);
    expect(shelf.$damaged.get()).toEqual([{ key: `${TRIAL_KEY}x`, text: '{"version":1,"papers":[' }]);
    expect(storage.length).toBe(2);
    shelf.removeDamaged(`${TRIAL_KEY}x`);
    expect([storage.length, shelf.$damaged.get()]).toEqual([1, []]);
  });
});

describe('at the bench', () => {
  function bench() {
    const storage = memory();
    const shelf = createShelf(storage);
    shelf.put(OPEN);
    return { storage, shelf, run: createRun(shelf, OPEN.id, storage, clock) };
  }
  test('the first open swatch is up; a judged one stays until Next', () => {
    const { run } = bench();
    expect(run.$swatch.get()?.number).toBe(1);
    run.judge('lift', 'pass');
    expect(run.$swatch.get()).toMatchObject({
      number: 1,
      outcomes: { lift: 'pass' },
      judgedAt: '2026-03-01T10:00:00.000Z',
    });
    run.next();
    expect(run.$swatch.get()?.number).toBe(2);
  });
  test('a second tap takes an answer back', () => {
    const { run } = bench();
    run.judge('lift', 'pass');
    run.judge('lift', 'pass');
    expect(run.$swatch.get()?.outcomes).toEqual({});
  });
  test('Next goes round to what was left open', () => {
    const { run } = bench();
    run.show(12);
    run.judge('lift', 'fail');
    run.next();
    expect(run.$swatch.get()?.number).toBe(1);
  });
  test('Undo goes back step by step, also after the page was closed, and shows where', () => {
    const { run, storage, shelf } = bench();
    run.judge('lift', 'pass');
    run.next();
    run.spoil(true);
    const after = createRun(createShelf(storage), OPEN.id, storage, clock);
    after.undo();
    expect(after.$swatch.get()).toMatchObject({ number: 2 });
    expect(after.$swatch.get()?.spoiled).toBeUndefined();
    after.undo();
    shelf.refresh();
    expect(lifts(shelf)?.[0]).toBeUndefined();
    expect(after.$canUndo.get()).toBe(false);
  });
  test('two tabs judge at once and neither loses the other’s', () => {
    const { run, storage } = bench();
    const other = createRun(createShelf(storage), OPEN.id, storage, clock);
    other.show(2);
    run.judge('lift', 'pass');
    other.judge('lift', 'fail');
    run.note('a note');
    expect(lifts(createShelf(storage))?.slice(0, 2)).toEqual(['pass', 'fail']);
  });
  test('who judges is signed to each swatch', () => {
    const { run } = bench();
    run.setWho(' Bo ');
    run.judge('lift', 'pass');
    expect(run.$swatch.get()?.by).toBe('Bo');
  });
});

describe('files and links', () => {
  const info = { name: 'x', by: '', now: '2026-03-01' };
  test('all trials go out and come back', async () => {
    const both = [trialWith(() => 'pass'), trialWith(() => 'fail', { id: 'second' })];
    expect(await readIn(trialsJson(both), info)).toEqual({ trials: both, notes: [] });
  });
  test('a link unfolds to the same trial; anything else is refused in words', async () => {
    const trial = trialWith(({ number }) => (number % 2 ? 'pass' : 'partly'));
    const tail = (await linkTail(trial)) ?? '';
    expect(tail).toMatch(/^t1\.[A-Za-z0-9_-]+$/);
    expect((await fromLinkTail(tail)).trials).toEqual([trial]);
    for (const bad of ['t1.', 't1.!!!', tail.slice(0, -20), 't2.abc', `t1.${'A'.repeat(50_000)}`]) {
      expect(await fromLinkTail(bad), bad.slice(0, 20)).toMatchObject({
        trials: [],
        notes: [expect.stringContaining('damaged')],
      });
    }
  });
  test('a link that would unfold without end is cut short', async () => {
    const bomb = await new Response(
      new Blob([`{"x":"${'a'.repeat(3_000_000)}"}`]).stream().pipeThrough(new CompressionStream('deflate-raw')),
    ).arrayBuffer();
    const tail = `t1.${Buffer.from(bomb).toString('base64url')}`;
    expect(tail.length).toBeLessThan(24_000);
    expect((await fromLinkTail(tail)).trials).toEqual([]);
  });
  test('a trial too large for a link gets none', async () => {
    const long = trialWith(() => 'pass');
    const noted = long.swatches.map((swatch, i) => ({
      ...swatch,
      note: Array.from({ length: 400 }, (_, j) => (i * 7919 + j * 104729).toString(36)).join(' '),
    }));
    expect(await linkTail({ ...long, swatches: noted })).toBeUndefined();
  });
  test('empty, huge and damaged files are named as such', async () => {
    expect((await readIn('  ', info)).notes).toEqual(['The file is empty.']);
    expect((await readIn('[{', info)).notes[0]).toContain('damaged');
    expect((await readIn('x'.repeat(1_000_001), info)).notes[0]).toContain('too large');
  });
});
