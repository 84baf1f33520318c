/**
 * Writes the answers of before.json anew, for when their wording or the model was changed on purpose; look at the
 * difference line by line before you keep it. Jobs stay as they were recorded, and one that opens otherwise stops it.
 *
 *     npx tsx tests/links/renew.ts
 */
import { writeFileSync } from 'node:fs';
import { readCatalogue } from '../tools/read-content';
import { otherJob, readRecord, RECORD, recordText, type Kept } from './compare';
import { MODEL_VERSION, opener } from './open';

const { head, links } = readRecord();
const open = opener(readCatalogue());
const renewed: Kept[] = [];
for (const kept of links) {
  const opened = await open(kept.room, kept.link);
  const wrong = otherJob(kept, opened);
  if (wrong.length > 0) throw new Error(`${kept.room}?${kept.link}\n${wrong.join('\n')}`);
  const { other: _before, answer: _old, ...job } = kept;
  renewed.push({ ...job, ...(opened.other !== undefined && { other: opened.other }), answer: opened.answer });
}
writeFileSync(RECORD, recordText({ ...head, modelVersion: MODEL_VERSION }, renewed));
