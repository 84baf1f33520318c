/**
 * The picture that a link to a lesson is shown with, drawn when the site is built. Its words are outlines of the
 * site's own font, so it comes out the same on a machine that has no fonts at all.
 */
import { readFileSync } from 'node:fs';
import path from 'node:path';
import { create, type Font } from 'fontkitten';
import sharp from 'sharp';
import { SITE } from '../../site';

export const SHARE_SIZE = { width: 1200, height: 630 } as const;

// found from where the build is run, since the bundled copy of this module stands elsewhere
const FONT = path.resolve('public/fonts/source-serif-4-latin-400.woff2');
const MARGIN = 84;
const COLOURS = {
  paper: '#fcfbf8',
  board: '#c6c3bb',
  ink: '#1c1e1d',
  soft: '#53544f',
  accent: '#1d5a49',
  water: '#b5d0dc',
};

let opened: Font | undefined;
const font = (): Font => (opened ??= openFont());

function openFont(): Font {
  const found = create(readFileSync(FONT));
  if (!('glyphsForString' in found)) throw new Error('share picture: the font file holds several fonts');
  return found;
}

/** Width of a line, in units of its size. */
function lengthOf(line: string): number {
  return (
    font()
      .glyphsForString(line)
      .reduce((sum, glyph) => sum + glyph.advanceWidth, 0) / font().unitsPerEm
  );
}

/** Words broken into lines no longer than `longest` times the size. */
export function linesOf(text: string, longest: number): string[] {
  const lines: string[] = [];
  for (const word of text.split(/\s+/)) {
    const last = lines.at(-1);
    if (last !== undefined && lengthOf(`${last} ${word}`) <= longest) lines[lines.length - 1] = `${last} ${word}`;
    else lines.push(word);
  }
  return lines;
}

/** One line of text as outlines, its baseline at y. */
function outlined(line: string, x: number, y: number, size: number, fill: string): string {
  const scale = size / font().unitsPerEm;
  let along = 0;
  const glyphs = font()
    .glyphsForString(line)
    .map((glyph) => {
      const path = `<path transform="translate(${along} 0)" d="${glyph.path.toSVG()}"/>`;
      along += glyph.advanceWidth;
      return path;
    });
  return `<g fill="${fill}" transform="translate(${x} ${y}) scale(${scale} ${-scale})">${glyphs.join('')}</g>`;
}

/** A sheet whose corner is being lifted off a wet board: what the whole site is about. */
function joint(top: number): string {
  const { width, height } = SHARE_SIZE;
  return `<rect x="0" y="${top + 34}" width="${width}" height="${height - top - 34}" fill="${COLOURS.board}"/>
<path d="M0 ${top + 24}H${width - 330}q60 0 100 10H0z" fill="${COLOURS.water}"/>
<path d="M0 ${top + 18}H${width - 330}C${width - 200} ${top + 18} ${width - 140} ${top - 20} ${width - 84} ${top - 96}" fill="none" stroke="${COLOURS.ink}" stroke-width="9"/>`;
}

/** The picture as SVG: what it is, its title in as large a size as fits, the name of the site. */
export function shareSvg({ title, label }: { title: string; label: string }): string {
  const { width, height } = SHARE_SIZE;
  const room = width - 2 * MARGIN;
  const size = [84, 74, 64, 56].find((one) => linesOf(title, room / one).length <= 3) ?? 48;
  const lines = linesOf(title, room / size);
  const words = lines.map((line, i) => outlined(line, MARGIN, 218 + i * size * 1.16, size, COLOURS.ink));
  return `<svg xmlns="http://www.w3.org/2000/svg" width="${width}" height="${height}" viewBox="0 0 ${width} ${height}">
<rect width="${width}" height="${height}" fill="${COLOURS.paper}"/>
${joint(540)}
${outlined(label, MARGIN, 112, 34, COLOURS.soft)}
${words.join('\n')}
${outlined(SITE.name, width - MARGIN - lengthOf(SITE.name) * 34, 112, 34, COLOURS.accent)}
</svg>`;
}

/** Some flat colours and the shades at their edges: 32 take half the time, and half the bytes, of the 256 usual ones. */
const FEW_COLOURS = { palette: true, colours: 32, dither: 0, effort: 1 } as const;

export const sharePng = (words: { title: string; label: string }): Promise<Buffer> =>
  sharp(Buffer.from(shareSvg(words)))
    .png(FEW_COLOURS)
    .toBuffer();
