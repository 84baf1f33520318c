/**
 * A link is a promise: those in before.json were written by an earlier program and stand in messages, prints and
 * books. Each opens at the same job for good; its answer is the same as long as the model is.
 */
import { describe, expect, test } from 'vitest';
import { readCatalogue } from '../tools/read-content';
import { otherAnswer, otherJob, readRecord, type Kept } from './compare';
import { decodeSeen, encodeSeen, MODEL_VERSION, opener, ROOMS, type Opened } from './open';

const { head, links } = readRecord();
const sameModel = MODEL_VERSION === head.modelVersion;
const open = opener(readCatalogue());
const known = new Map<Kept, Promise<Opened>>();
const opened = (kept: Kept): Promise<Opened> => {
  const now = known.get(kept) ?? open(kept.room, kept.link);
  known.set(kept, now);
  return now;
};

/** Every link that opens otherwise, with how. */
async function allThat(list: readonly Kept[], differs: (kept: Kept, now: Opened) => string[]): Promise<string[]> {
  const found = await Promise.all(list.map(async (kept) => ({ kept, how: differs(kept, await opened(kept)) })));
  return found.flatMap(({ kept, how }) => (how.length > 0 ? [[kept.link, ...how].join('\n  ')] : []));
}

describe.each(ROOMS)('links of before: %s', (room) => {
  const own = links.filter((kept) => kept.room === room);

  test('each opens at its job', async () => {
    expect(own.length).toBeGreaterThanOrEqual(10);
    expect(await allThat(own, otherJob)).toEqual([]);
  });

  test.runIf(sameModel)('and shows its answer', async () => {
    const others = await allThat(own, otherAnswer);
    expect(others, 'If this is meant: raise MODEL_VERSION, then npx tsx tests/links/renew.ts').toEqual([]);
  });
});

test('where another adhesive or another word comes first than the sender saw, the reader is told', async () => {
  const answerIn = (link: string) => decodeSeen(/(?:^|&)seen=([^&]*)/.exec(link)?.[1]);
  const shared = links.flatMap((kept) => {
    const seen = kept.room === 'choose' ? answerIn(kept.link) : undefined;
    return seen ? [{ kept, seen }] : [];
  });
  expect(shared.length).toBeGreaterThanOrEqual(50);
  for (const { kept, seen } of shared) {
    const { again, other } = await opened(kept);
    const now = answerIn(again)!;
    const same = now.adhesiveId === seen.adhesiveId && now.verdict === seen.verdict;
    if (!same) expect(other, kept.link).toBe(encodeSeen(seen));
  }
});

describe('the comparison notices', () => {
  const kept = links.find(({ room, job, dropped }) => room === 'choose' && !job && !dropped)!;
  const changed = async (change: Partial<Opened>): Promise<Opened> =>
    ({
      ...(await opened(kept)),
      // as the record has it, so that one change is one difference whatever the model says today
      answer: kept.answer,
      ...(kept.other === undefined ? { other: undefined } : { other: kept.other }),
      ...change,
    }) as Opened;

  test('another job', async () => {
    const wider = await open('choose', kept.link.replace('wide=', 'wide=1'));
    expect(otherJob(kept, wider)).toHaveLength(1);
  });
  test('a part that was dropped, and one that no longer is', async () => {
    expect(otherJob(kept, await changed({ dropped: ['gsm (abc)'] }))).toHaveLength(1);
    expect(otherJob({ ...kept, dropped: ['gsm (abc)'] }, await changed({}))).toHaveLength(1);
  });
  test('another line of the answer, one more, one less, and what the sender saw', async () => {
    const { answer } = kept;
    expect(otherAnswer(kept, await changed({ answer: ['Unlikely', ...answer.slice(1)] }))).toHaveLength(1);
    expect(otherAnswer(kept, await changed({ answer: [...answer, 'more'] }))).toHaveLength(1);
    expect(otherAnswer(kept, await changed({ answer: answer.slice(1) })).length).toBeGreaterThan(0);
    expect(otherAnswer(kept, await changed({ other: '1.pva.sound.20.60' }))).toHaveLength(1);
  });
});
