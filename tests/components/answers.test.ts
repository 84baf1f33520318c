/** The answers that have pages, the judgements that are shown, and the share pictures. */
import sharp from 'sharp';
import { describe, expect, test } from 'vitest';
import { choose } from '../../src/core/choose/choose';
import { DEFAULT_JOB } from '../../src/core/choose/job';
import { decodeJob } from '../../src/core/choose/read-link';
import { catalogue } from '../../src/data/catalogue';
import { TASKS } from '../../src/core/records/task';
import { usualOfTask } from '../../src/core/choose/task-words';
import {
  ASKED_GROUNDS,
  answerFor,
  askedPairs,
  nearTo,
  pairId,
  taskAnswer,
} from '../../src/components/choose/answer-pairs';
import { tasksAsked } from '../../src/components/choose/asked-tasks';
import { judgements } from '../../src/components/model/judgements';
import { standingsOf } from '../../src/components/shelf/suits';
import { linesOf, sharePng, SHARE_SIZE, shareSvg } from '../../src/components/share/picture';

describe('answers', () => {
  test('there is one for every paper on every ground that is asked about, each at its own address', () => {
    const ids = askedPairs().map(({ id }) => id);
    const covers = [...catalogue.papers.keys()].flatMap((paper) =>
      ASKED_GROUNDS.map((ground) => pairId(paper, ground)),
    );
    expect(ids.filter((id) => covers.includes(id))).toHaveLength(covers.length);
    expect(new Set(ids).size).toBe(ids.length);
  });

  test('every task but covering has pages, for its usual paper and others, in its own words', () => {
    expect(tasksAsked().map(([task]) => task)).toEqual(TASKS.filter((task) => task !== 'cover'));
    for (const [task, { papers }] of tasksAsked()) expect(papers).toContain(usualOfTask(task).family);
    const { title, page, job, inChooser } = taskAnswer('mend', 'kozo-tissue');
    expect(title).toBe('Mending a tear with kozo tissue');
    expect(page).toBe('/answers/mending-a-tear-with-kozo-tissue/');
    expect(job).toMatchObject({ task: 'mend', substrate: 'text-block', widthMm: 10, heightMm: 120 });
    expect(decodeJob(inChooser.split('?')[1]).job).toEqual(job);
    expect(taskAnswer('hinge', 'kozo-medium').title).toBe('Hinging a print with medium kozo');
    // other papers for the task stand beside it, and itself does not
    expect(nearTo(taskAnswer('mend', 'kozo-tissue')).map(({ id }) => id)).not.toContain(
      'mending-a-tear-with-kozo-tissue',
    );
    expect(nearTo(answerFor('kozo-tissue')).map(({ id }) => id)).toContain('mending-a-tear-with-kozo-tissue');
  });

  test('each is what the chooser says, and its link opens the chooser at the same job', () => {
    for (const paper of ['lokta-light', 'glassine', 'card']) {
      const { choices, inChooser } = answerFor(paper, 'plywood');
      const job = { ...DEFAULT_JOB, paper: { family: paper }, substrate: 'plywood' };
      const asked = choose(job, catalogue);
      expect(choices.map(({ adhesiveId }) => adhesiveId)).toEqual(asked.map(({ adhesiveId }) => adhesiveId));
      const read = decodeJob(inChooser.split('?')[1]);
      expect(read.dropped).toEqual([]);
      expect(read.job).toEqual(job);
      expect(read.seen?.adhesiveId).toBe(asked[0]?.adhesiveId);
    }
  });

  test('a title names the sheet and the ground', () => {
    expect(answerFor('lokta-light').title).toBe('Lokta, light, on binder’s board');
    expect(answerFor('unryu', 'plywood').title).toBe('Unryu on plywood or MDF');
  });

  test('the places of all adhesives for one paper are 1 to their number', () => {
    const places = [...catalogue.adhesives.keys()].map(
      (id) => standingsOf(id).find(({ paper }) => paper === 'copy')?.place,
    );
    expect(places.sort((a, b) => a! - b!)).toEqual(places.map((_, i) => i + 1));
  });
});

// Read off suitability.ts and needs.ts by hand.
test('what is taken off is what the code takes off', () => {
  const takes = new Map(judgements().map(({ when, takes: what }) => [when, what]));
  const find = (start: string) => [...takes].filter(([when]) => when.startsWith(start)).map(([, what]) => what);
  expect(find('“Can be undone with water” is asked')).toEqual(['× 0.5', 'ruled out']);
  expect(find('“Children in the room” is asked')).toEqual(['× 0.8', 'ruled out', '× 0.95', '× 0.9']);
  expect(find('“May get damp” is asked')).toEqual(['× 0.85', '× 0.5']);
  expect(find('Nothing asked: it')).toEqual(['× 0.95', '× 0.8', '× 0.95', '× 0.85']);
  expect(find('It gives off fumes')).toEqual(['× 0.75']);
  expect(find('“No heat” is asked')).toEqual(['ruled out', '× 0.6', '× 0.9']);
  expect(find('Food will touch it')).toEqual(['refused']);
  expect(find('Colours are likely to run, under a water-borne glue')).toEqual(['× 0.85', '× 0.05']);
  expect(find('Water marks the paper')).toEqual(['× 0.3', '× 0.7']);
});

describe('share pictures', () => {
  test('words are broken into lines that fit, none lost', () => {
    const title = 'Flatness: why covers warp, and what linings and pressing do about it';
    const lines = linesOf(title, 14);
    expect(lines.length).toBeGreaterThan(2);
    expect(lines.join(' ')).toBe(title);
  });

  test('the picture has the stated size, and its words are in it', async () => {
    const blank = await sharp(await sharePng({ title: ' ', label: ' ' })).stats();
    const png = await sharePng({ title: 'Paper weight', label: 'Lesson 1' });
    const { width, height, format } = await sharp(png).metadata();
    expect({ width, height, format }).toEqual({ ...SHARE_SIZE, format: 'png' });
    // ink where there was paper: the mean gets darker
    expect((await sharp(png).stats()).channels[0]!.mean).toBeLessThan(blank.channels[0]!.mean - 1);
  });

  // The library that draws the picture is asked what the file holds, and what it drew.
  test('the picture is as it was drawn, within 40 of 255 for a shade at an edge, and 1 for a flat colour', async () => {
    const words = { title: 'Making methylcellulose', label: 'Lesson 3' };
    const read = async (file: Buffer) => sharp(file).removeAlpha().raw().toBuffer();
    const [shown, drawn] = [await read(await sharePng(words)), await read(Buffer.from(shareSvg(words)))];
    expect(shown.length).toBe(drawn.length);
    expect(
      Math.max(...['#fcfbf8', '#c6c3bb', '#1c1e1d'].map((colour) => worst(shown, drawn, colour))),
    ).toBeLessThanOrEqual(1);
    expect(worst(shown, drawn)).toBeLessThanOrEqual(40);
  });
});

/** The largest difference of a channel, over all pixels or over those that were drawn in one colour. */
function worst(shown: Buffer, drawn: Buffer, colour?: string): number {
  const wanted = colour === undefined ? undefined : Buffer.from(colour.slice(1), 'hex');
  let most = 0;
  for (let at = 0; at < drawn.length; at += 3) {
    if (wanted && !wanted.equals(drawn.subarray(at, at + 3))) continue;
    for (const i of [0, 1, 2]) most = Math.max(most, Math.abs(shown[at + i]! - drawn[at + i]!));
  }
  return most;
}
