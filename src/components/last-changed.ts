/** When the files of a folder of content were last changed, for the feed: from the history, where the checkout has one. */
import { execFileSync } from 'node:child_process';
import { statSync } from 'node:fs';

const COMMIT = 'commit ';

/** ISO 8601, to the second, of any file in the folder. The history is read once, however many files there are. */
export function lastChangedIn(folder: string): (file: string) => string {
  const history = historyOf(folder);
  return (file) =>
    history.get(file) ??
    statSync(file)
      .mtime.toISOString()
      .replace(/\.\d+Z$/, 'Z');
}

/** File, as seen from here → when it was last committed. */
function historyOf(folder: string): ReadonlyMap<string, string> {
  const found = new Map<string, string>();
  let date = '';
  for (const line of log(folder).split('\n')) {
    // a commit's date stands before its files, the newest commit first
    if (line.startsWith(COMMIT)) date = line.slice(COMMIT.length);
    else if (line !== '' && !found.has(line)) found.set(line, date);
  }
  return found;
}

function log(folder: string): string {
  try {
    const asked = ['log', '--relative', '--name-only', `--format=${COMMIT}%cI`, '--', folder];
    return execFileSync('git', ['-c', 'core.quotePath=off', ...asked], {
      encoding: 'utf8',
      maxBuffer: 2 ** 28,
      stdio: ['ignore', 'pipe', 'ignore'],
    });
  } catch {
    // an unpacked archive has no history
    return '';
  }
}
