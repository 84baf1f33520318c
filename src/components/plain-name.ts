import { lowerFirst } from '../core/base/format';

/** A record's name as a sentence says it: "Binder's board (grey board)" → "binder’s board". */
export function plainName(name: string): string {
  return lowerFirst(shortName(name));
}

/** The same at the head of a line: "Binder’s board". */
export function shortName(name: string): string {
  return name
    .replace(/ \(.*\)$/, '')
    .replaceAll("'", '’')
    .replace(/(\d) : (\d)/g, '$1:$2');
}
