/** When a file of content was last changed, for the feed: from the history, where the checkout has one. */
import { execFileSync } from 'node:child_process';
import { statSync } from 'node:fs';

/** ISO 8601, to the second. */
export function lastChanged(file: string): string {
  return (
    fromHistory(file) ??
    statSync(file)
      .mtime.toISOString()
      .replace(/\.\d+Z$/, 'Z')
  );
}

function fromHistory(file: string): string | undefined {
  try {
    const date = execFileSync('git', ['log', '-1', '--format=%cI', '--', file], {
      encoding: 'utf8',
      stdio: ['ignore', 'pipe', 'ignore'],
    }).trim();
    return date === '' ? undefined : date;
  } catch {
    // an unpacked archive has no history
    return undefined;
  }
}
