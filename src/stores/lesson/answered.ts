/** Which questions of which lessons were answered right, kept on this device. */

/** The page looks for it too before it fetches this. */
export const ANSWERED_KEY = 'open-time:answered';

type Answered = Readonly<Record<string, readonly string[]>>;

/** Nothing, where nothing is kept or what is kept cannot be read. Never throws. */
function read(storage: Storage | undefined): Answered {
  try {
    const held: unknown = JSON.parse(storage?.getItem(ANSWERED_KEY) ?? '{}');
    if (held === null || typeof held !== 'object' || Array.isArray(held)) return {};
    return Object.fromEntries(
      Object.entries(held).flatMap(([lesson, ids]) =>
        Array.isArray(ids) ? [[lesson, ids.filter((id): id is string => typeof id === 'string')]] : [],
      ),
    );
  } catch {
    return {};
  }
}

/** What was answered in this visit, which counts where nothing may be kept. */
const now = new Map<string, Set<string>>();

/** Ids of the questions of a lesson that were answered right, here or before. */
export const answeredIn = (lesson: string, storage: Storage | undefined): ReadonlySet<string> =>
  new Set([...(read(storage)[lesson] ?? []), ...(now.get(lesson) ?? [])]);

/** False where the browser did not keep it; it then counts until the page is left. */
export function keepAnswered(lesson: string, question: string, storage: Storage | undefined): boolean {
  now.set(lesson, (now.get(lesson) ?? new Set()).add(question));
  return write({ ...read(storage), [lesson]: [...answeredIn(lesson, storage)] }, storage);
}

/** Forgets what was answered in a lesson. */
export function forgetAnswered(lesson: string, storage: Storage | undefined): void {
  now.delete(lesson);
  const { [lesson]: _forgotten, ...others } = read(storage);
  write(others, storage);
}

function write(answered: Answered, storage: Storage | undefined): boolean {
  if (!storage) return false;
  try {
    if (Object.keys(answered).length === 0) storage.removeItem(ANSWERED_KEY);
    else storage.setItem(ANSWERED_KEY, JSON.stringify(answered));
    return true;
  } catch {
    return false;
  }
}
