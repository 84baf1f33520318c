/** Trials in files and links: what is read in, what is given out. Nothing here is put on the shelf. */
import { parseTrial } from '../../core/trial/parse';
import { TRIAL_FORMAT, TRIAL_LIMITS, type Trial } from '../../core/trial/record';
import { trialFromRows, type FromRows } from '../../core/trial/rows';

export interface FileReading {
  readonly trials: readonly Trial[];
  /** what was left out or could not be read, in words */
  readonly notes: readonly string[];
}

export const newId = (): string =>
  `t-${Array.from(crypto.getRandomValues(new Uint8Array(6)), (byte) => byte.toString(16).padStart(2, '0')).join('')}`;

/** One trial, or all of them, as JSON. */
export const trialsJson = (trials: readonly Trial[]): string =>
  `${JSON.stringify({ format: TRIAL_FORMAT, trials }, null, 1)}\n`;

/** Reads a file by what is in it, whatever it is called. `tools`: what the shelf calls its tools, by id. Never throws. */
export async function readIn(
  text: string,
  info: {
    readonly name: string;
    readonly by: string;
    readonly now: string;
    readonly tools?: ReadonlyMap<string, string>;
  },
): Promise<FileReading> {
  if (text.length > TRIAL_LIMITS.file)
    return {
      trials: [],
      notes: [`The file is too large: at most ${TRIAL_LIMITS.file / 1e6} million characters are read.`],
    };
  const tidy = text.replace(/^\ufeff/, '').trim();
  if (tidy === '') return { trials: [], notes: ['The file is empty.'] };
  return /^[[{]/.test(tidy) ? fromJson(tidy) : fromCsv(tidy, info);
}

function fromJson(text: string): FileReading {
  let value: unknown;
  try {
    value = JSON.parse(text);
  } catch {
    return { trials: [], notes: ['This looks like JSON but is cut off or damaged.'] };
  }
  const inside = typeof value === 'object' && value !== null && 'trials' in value ? value.trials : value;
  const found = (Array.isArray(inside) ? inside.slice(0, 200) : [inside]).map(parseTrial);
  return {
    trials: found.flatMap((one) => (one.ok ? [one.trial] : [])),
    notes: found.flatMap((one, i) =>
      one.ok
        ? one.notes.map((note) => `${one.trial.name}: ${note}`)
        : one.problems.map((note) => (found.length > 1 ? `Trial ${i + 1}: ${note}` : note)),
    ),
  };
}

async function fromCsv(
  text: string,
  { name, by, now, tools }: { name: string; by: string; now: string; tools?: ReadonlyMap<string, string> },
): Promise<FileReading> {
  const { default: Papa } = await import('papaparse');
  const { data } = Papa.parse<string[]>(text, { skipEmptyLines: 'greedy', preview: TRIAL_LIMITS.swatches + 2 });
  const found: FromRows = trialFromRows(data, { id: newId(), name, by, createdAt: now }, tools);
  const notes = found.problems.map(
    ({ row, column, message }) => `Row ${row}${column ? `, ${column}` : ''}: ${message}`,
  );
  if (found.ignored.length > 0) notes.push(`Columns that were not understood: ${found.ignored.join(', ')}.`);
  return { trials: found.trial ? [found.trial] : [], notes };
}

/** Longest link that is given out: beyond it some messengers cut. */
const LONGEST_LINK = 6000;
/** Characters that a link may unfold to. */
const MOST_UNFOLDED = 400_000;

/** A small trial as the tail of an address, or undefined when it is too large for one. */
export async function linkTail(trial: Trial): Promise<string | undefined> {
  const packed = await new Response(
    new Blob([JSON.stringify(trial)]).stream().pipeThrough(new CompressionStream('deflate-raw')),
  ).arrayBuffer();
  const text = btoa(Array.from(new Uint8Array(packed), (byte) => String.fromCharCode(byte)).join(''));
  const tail = `t1.${text.replace(/\+/g, '-').replace(/\//g, '_').replace(/=+$/, '')}`;
  return tail.length <= LONGEST_LINK ? tail : undefined;
}

/** The trial in such a tail. Never throws; a tail that would unfold without end is cut short. */
export async function fromLinkTail(tail: string): Promise<FileReading> {
  const broken: FileReading = {
    trials: [],
    notes: ['The trial in this link is cut off or damaged. Ask for it again.'],
  };
  if (!tail.startsWith('t1.') || tail.length > 4 * LONGEST_LINK) return broken;
  try {
    const packed = Uint8Array.from(atob(tail.slice(3).replace(/-/g, '+').replace(/_/g, '/')), (letter) =>
      letter.charCodeAt(0),
    );
    const reader = new Blob([packed]).stream().pipeThrough(new DecompressionStream('deflate-raw')).getReader();
    const decoder = new TextDecoder();
    let text = '';
    for (let step = await reader.read(); !step.done; step = await reader.read()) {
      text += decoder.decode(step.value, { stream: true });
      if (text.length > MOST_UNFOLDED) {
        await reader.cancel();
        return broken;
      }
    }
    return fromJson(text);
  } catch {
    return broken;
  }
}

/** Hands a file to the reader. */
export function save(name: string, type: string, content: string): void {
  const address = URL.createObjectURL(new Blob([content], { type: `${type};charset=utf-8` }));
  const link = document.createElement('a');
  link.href = address;
  link.download = name;
  link.click();
  // Some browsers read the file only after the click has been dealt with.
  setTimeout(() => URL.revokeObjectURL(address), 10_000);
}
