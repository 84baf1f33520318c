/** The number that a question wants: the one that its answer computed when the page was built. */
import { parseNumber } from '../../core/base/number-text';

const COMPUTED = /<span class="number"[^>]*>([^<]*)<\/span>/g;

/**
 * Of the numbers that stand computed in an answer, the one at place `which` (from 0), with its unit. Throws where there
 * is none, or where it is a range or a phrase, so that no question waits for an answer that nobody can type.
 */
export function expectedIn(html: string, which: number): { readonly is: number; readonly unit: string } {
  const texts = [...html.matchAll(COMPUTED)].map(([, text = '']) => text);
  const text = texts[which];
  if (text === undefined) throw new Error(`place ${which} of the numbers in the answer is empty: ${texts.join(' | ')}`);
  const [, figure = '', unit = ''] = /^\s*(?:about\s+)?([−+-]?[\d.,\s]*\d)\s*(\D*)$/.exec(text) ?? [];
  const is = parseNumber(figure);
  if (is === undefined || /\bto\b|–/.test(unit)) throw new Error(`“${text}” is not one number`);
  return { is, unit: unit.trim() };
}
