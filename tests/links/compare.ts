/** The record of links that a program of before wrote, and what opens differently today. */
import { readFileSync } from 'node:fs';
import { jobIn, type Opened, type Room } from './open';

interface Head {
  /** the day on which the links were written and opened */
  readonly written: string;
  /** the model that gave the answers */
  readonly modelVersion: number;
}

export interface Kept {
  readonly room: Room;
  readonly link: string;
  /** the job as the program of before wrote it again, where it is not what stands in the link */
  readonly job?: string;
  /** what its reader was told could not be read */
  readonly dropped?: readonly string[];
  /** what its reader was told that the sender had seen, where that was another answer */
  readonly other?: string;
  readonly answer: readonly string[];
}

export const RECORD = new URL('before.json', import.meta.url);

export const readRecord = (): { readonly head: Head; readonly links: readonly Kept[] } =>
  JSON.parse(readFileSync(RECORD, 'utf8'));

/** Ready to be written: a line for each link, so that a change of one shows as one. */
export const recordText = (head: Head, links: readonly Kept[]): string =>
  `{\n"head": ${JSON.stringify(head)},\n"links": [\n${links.map((one) => JSON.stringify(one)).join(',\n')}\n]\n}\n`;

/** A thousandth of a millimetre is no other length: inches to millimetres and back leave as much. */
const tidied = (link: string): string =>
  link.replace(/\d+\.\d{4,}/g, (number) => String(Number(Number(number).toFixed(3))));

/** The job that a link opened at, and what could not be read of it, when these are not as they were; in which order parts are named does not matter. */
export function otherJob(kept: Kept, opened: Opened): string[] {
  const job = tidied(kept.job ?? jobIn(kept.link));
  const now = tidied(jobIn(opened.again));
  const [dropped, droppedNow] = [kept.dropped ?? [], opened.dropped].map((list) => [...list].sort().join(', '));
  return [
    ...(job === now ? [] : [`job: ${job} is now ${now}`]),
    ...(dropped === droppedNow ? [] : [`could not be read: ${dropped} is now ${droppedNow}`]),
  ];
}

/** Lines of the answer that are not as they were, and what is said of the sender's answer. */
export function otherAnswer(kept: Kept, opened: Opened): string[] {
  const lines = Array.from({ length: Math.max(kept.answer.length, opened.answer.length) }, (_, i) => i).flatMap((i) =>
    kept.answer[i] === opened.answer[i] ? [] : [`answer: ${kept.answer[i]} is now ${opened.answer[i]}`],
  );
  return kept.other === opened.other ? lines : [...lines, `sender saw: ${kept.other} is now ${opened.other}`];
}
