/** What a link to a swatch trial asks for in vain. */
import { parsePairs } from '../link/pairs';
import { partName } from '../link/read-plan-link';
import { readPaper } from '../paper/own-paper';
import { MOST_GLUES, type ShelfNames } from './plan-link';

/**
 * What a link asks for and the plan leaves out, each as its reader would name it: "paper (moon)". Never
 * throws.
 */
export function leftOutOf(tail: string, names: ShelfNames): readonly string[] {
  const { query, broken } = parsePairs(tail);
  const stray = (key: string, isKnown: (text: string) => boolean) => {
    const text = query.get(key);
    return text === undefined || isKnown(text) ? [] : [partName(key, text)];
  };
  return [
    ...broken,
    ...stray('paper', (text) => names.paper(readPaper(text)?.family ?? '') !== ''),
    ...stray('glue', (text) => {
      const ids = text.split('.');
      return ids.length <= MOST_GLUES && ids.every((id) => names.adhesive(id) !== '');
    }),
    ...stray('on', (text) => names.substrate(text) !== ''),
    ...stray('tool', (text) => names.tool(text) !== ''),
  ];
}
