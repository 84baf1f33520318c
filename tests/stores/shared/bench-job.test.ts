/** One job on one bench: what one room says another knows, a stranger's link wins, and nothing breaks where nothing is kept. */
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import {
  $benchJob,
  comeBackTo,
  leaveBenchOut,
  openWith,
  sayFrom,
  sayWhole,
  startAfresh,
  tailAhead,
  tailKeptFor,
  takeBack,
} from '../../../src/stores/shared/bench-job';

let kept: Map<string, string>;
const storage = {
  getItem: (key: string) => kept.get(key) ?? null,
  setItem: (key: string, text: string) => void kept.set(key, text),
  removeItem: (key: string) => void kept.delete(key),
};
const HERE = 'https://paper.example/choose/';
const at = (sessionStorage: unknown) =>
  vi.stubGlobal('window', { sessionStorage, location: { origin: 'https://paper.example' } });
const query = (tail: string) => Object.fromEntries(new URLSearchParams(tail));

beforeEach(() => {
  kept = new Map();
  at(storage);
  startAfresh();
});
afterEach(() => vi.unstubAllGlobals());

describe('a job said in one room', () => {
  it('is known in another, and is found again as it was left', () => {
    const say = sayFrom('flat', 'v=1&paper=marbled&press=24', {});
    say('v=1&paper=lokta-light&press=48', {});
    expect(query(openWith('cover', '', ''))).toEqual({ v: '1', paper: 'lokta-light' });
    expect(query(openWith('flat', '', ''))).toMatchObject({ paper: 'lokta-light', press: '48' });
  });
  it('says only what was changed: what stood there at first is nobody’s', () => {
    sayFrom('flat', 'v=1&paper=marbled&glue=pva', {})('v=1&paper=lokta-light&glue=pva', {});
    expect($benchJob.get().facts).toEqual({ paper: 'lokta-light' });
  });
  it('follows the last word, wherever it was said', () => {
    sayFrom('flat', 'v=1&paper=marbled', {})('v=1&paper=lokta-light', {});
    sayFrom('cover', 'v=1&paper=lokta-light', {})('v=1&paper=unryu', {});
    expect(query(tailKeptFor('flat'))).toMatchObject({ paper: 'unryu' });
  });
  it('a link of this site is laid over what the room was left with', () => {
    sayFrom('class', 'v=1&people=8&glue=pva', {})('v=1&people=12&glue=pva', {});
    expect(query(openWith('class', '?v=1&glue=pva-mc-1-1', HERE))).toEqual({
      v: '1',
      people: '12',
      glue: 'pva-mc-1-1',
    });
  });
  it('is what a room will open with, which can be asked before it opens; a link is that itself', () => {
    expect(tailAhead('flat', '')).toBe('');
    sayFrom('cover', 'v=1&paper=marbled', {})('v=1&paper=unryu', {});
    const before = new Map(kept);
    expect(query(tailAhead('flat', '')).paper).toBe('unryu');
    expect(tailAhead('flat', '?v=1&paper=gampi')).toBe('?v=1&paper=gampi');
    expect(kept).toEqual(before);
    expect(tailAhead('flat', '')).toBe(openWith('flat', '', ''));
  });
  it('is forgotten when one starts afresh', () => {
    sayFrom('flat', 'v=1&paper=marbled', {})('v=1&paper=lokta-light', {});
    startAfresh();
    expect(openWith('flat', '', '')).toBe('');
    expect($benchJob.get()).toEqual({ facts: {} });
  });
});

describe('gone back to', () => {
  it('an address that is how the room was left is opened as it stands while nothing was said elsewhere', () => {
    sayFrom('flat', 'v=1&paper=marbled', {})('v=1&seen=1_2&paper=lokta-light&press=48', {});
    expect(openWith('flat', '?v=1&seen=1_2&paper=lokta-light&press=48', '')).toBe(
      '?v=1&seen=1_2&paper=lokta-light&press=48',
    );
    expect(comeBackTo('flat')).toBe('');
  });
  it('and with what was said elsewhere since, be it loaded anew or kept whole by the browser', () => {
    sayFrom('flat', 'v=1&paper=marbled', {})('v=1&paper=lokta-light&press=48', {});
    sayFrom('cover', 'v=1&paper=lokta-light', {})('v=1&paper=unryu', {});
    const now = { v: '1', paper: 'unryu', press: '48' };
    expect(query(openWith('flat', '?v=1&paper=lokta-light&press=48', 'https://elsewhere.example/'))).toEqual(now);
    expect(query(comeBackTo('flat'))).toEqual(now);
    expect($benchJob.get()).toEqual({ facts: { paper: 'unryu' } });
  });
  it('and not with what another room’s answer hands on: what was typed here stays', () => {
    sayFrom('mix', 'v=1&need=250', {})('v=1&need=120', {});
    sayFrom('cover', 'v=1', {})('v=1', { mix: 'v=1&need=5&loss=0' });
    expect(comeBackTo('mix')).toBe('');
    expect(query(tailKeptFor('mix'))).toMatchObject({ need: '5' });
  });
  it('a room where nothing was said comes back as it is', () => {
    sayFrom('cover', 'v=1&paper=lokta-light', {})('v=1&paper=unryu', {});
    expect(comeBackTo('flat')).toBe('');
  });
});

describe('a sheet with a name', () => {
  const NAMED = 'chiyogami~92gsm~up~named Grey with cranes';
  it('keeps it where a room asks for its figures one by one', () => {
    sayFrom('measure', 'v=1', {})('v=1', { paper: NAMED });
    sayWhole('choose', 'v=1&paper=chiyogami&gsm=92&on=binders-board');
    expect($benchJob.get().facts).toEqual({ paper: NAMED, on: 'binders-board' });
  });
  it('is another once a figure is another', () => {
    sayFrom('measure', 'v=1', {})('v=1', { paper: NAMED });
    sayWhole('choose', 'v=1&paper=chiyogami&gsm=93');
    expect($benchJob.get().facts).toEqual({ paper: 'chiyogami~93gsm' });
  });
});

it('a bench that is left out is left out of every room', () => {
  sayFrom('cover', 'v=1', {})('v=1&loss=12&bench=brush-full_coat_54_63_73', {});
  expect(query(openWith('flat', '', ''))).toMatchObject({ bench: 'brush-full_coat_54_63_73' });
  leaveBenchOut();
  expect($benchJob.get().facts).toEqual({});
  expect(query(tailKeptFor('cover'))).toEqual({ v: '1', loss: '12' });
  expect(tailKeptFor('flat')).toBe('');
});

describe('a stranger’s link', () => {
  it('wins, puts the job aside, and gives it back', () => {
    sayFrom('flat', 'v=1&paper=marbled', {})('v=1&paper=lokta-light', {});
    expect(openWith('cover', '?v=1&paper=unryu', '')).toBe('?v=1&paper=unryu');
    expect($benchJob.get()).toEqual({ facts: { paper: 'unryu' }, aside: { paper: 'lokta-light' } });
    takeBack();
    expect($benchJob.get()).toEqual({ facts: { paper: 'lokta-light' } });
    expect(query(openWith('cover', '', ''))).toMatchObject({ paper: 'lokta-light' });
  });
  it('is no other job when it says the same', () => {
    sayFrom('flat', 'v=1&paper=marbled', {})('v=1&paper=lokta-light', {});
    openWith('cover', '?v=1&paper=lokta-light&glue=pva', 'https://elsewhere.example/');
    expect($benchJob.get()).toEqual({ facts: { paper: 'lokta-light', glue: 'pva' } });
  });
});

describe('where nothing can be kept', () => {
  const refusing = {
    getItem: () => null,
    setItem: () => {
      throw new DOMException('full', 'QuotaExceededError');
    },
    removeItem: () => {
      throw new DOMException('no', 'SecurityError');
    },
  };
  it.for([['refused', refusing] as const, ['absent', undefined] as const])(
    '%s: every room works by itself',
    ([, none]) => {
      at(none);
      expect(openWith('flat', '', '')).toBe('');
      sayFrom('flat', 'v=1&paper=marbled', {})('v=1&paper=unryu', {});
      expect(openWith('cover', '?v=1&paper=kozo-tissue', '')).toBe('?v=1&paper=kozo-tissue');
      expect(() => startAfresh()).not.toThrow();
    },
  );
  it.for(['', 'null', '[]', '{"facts":7}', '{"count":1,"facts":{"paper":[7]},"rooms":{}}', '{'])(
    'what cannot be read is no job: %s',
    (text) => {
      kept.set('open-time:job', text);
      expect(openWith('flat', '', '')).toBe('');
    },
  );
});
