/** The fonts that styles declare, and the characters that a page is written in. */
import { decoded, type BuiltPage } from './dist';

export interface Face {
  readonly url: string;
  /** does the face take the character of this code point */
  readonly holds: (codePoint: number) => boolean;
}

/** Every `@font-face` with a file, in a style sheet as text. */
export function facesIn(css: string): Face[] {
  return [...css.matchAll(/@font-face\s*\{([^}]*)\}/g)].map(([, face = '']) => {
    const url = /url\(["']?([^"')]+)/.exec(face)?.[1] ?? '';
    const ranges = [...face.matchAll(/U\+([\da-f?]+)(?:-([\da-f]+))?/gi)].map(([, from = '', to]) => [
      parseInt(from.replaceAll('?', '0'), 16),
      parseInt(to ?? from.replaceAll('?', 'f'), 16),
    ]);
    const holds = (codePoint: number) =>
      ranges.length === 0 || ranges.some(([from = 0, to = 0]) => codePoint >= from && codePoint <= to);
    return { url, holds };
  });
}

const SILENT = /<(script|style)\b[^>]*>[\s\S]*?<\/\1>/g;

/** Code points of a page's text, each once; blanks that end a line are no characters to a font. */
export function charactersOf({ html }: BuiltPage): number[] {
  const text = decoded(html.replace(SILENT, '').replace(/<[^>]*>/g, '')).replace(/[\n\r\t]+/g, ' ');
  return [...new Set(text)].map((character) => character.codePointAt(0)!);
}
