/**
 * The picture that a link to a lesson is shown with, drawn when the site is built. Its words are outlines of the
 * site's own font, so it comes out the same on a machine that has no fonts at all.
 */
import { readFileSync } from 'node:fs';
import path from 'node:path';
import { create, type Font } from 'fontkitten';
import sharp from 'sharp';
import { SITE } from '../../site';
import { SWATCH } from '../draw/swatch';

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
  for (const word of text.split(/[ \n]+/)) {
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

export interface ShareWords {
  readonly title: string;
  readonly label: string;
  /** an answer, under its title */
  readonly sentence?: string;
  /** a swatch of the paper that it is about, as a picture (see `swatchPng`) */
  readonly swatch?: Buffer;
}
/** The lowest baseline that clears the joint. */
const LOWEST = 540;
/** Side of a swatch in the picture. */
const SWATCH_SIDE = 264;

/** The picture as SVG: what it is, its title in as large a size as fits, the name of the site. */
export function shareSvg({ title, label, sentence = '', swatch }: ShareWords): string {
  const { width, height } = SHARE_SIZE;
  const room = width - 2 * MARGIN - (swatch ? SWATCH_SIDE + 48 : 0);
  const most = sentence ? 2 : 3;
  const said = sentence ? linesOf(sentence, room / 34) : [];
  /** Where the lines below a title of this size begin. */
  const under = (one: number) => 218 + linesOf(title, room / one).length * one * 1.16;
  const fits = (one: number) => under(one) + (said.length - 1) * 44 <= LOWEST;
  const size = [84, 74, 64, 56].find((one) => linesOf(title, room / one).length <= most && fits(one)) ?? 48;
  // cut short, an answer could say what it does not mean
  if (!fits(size)) throw new Error(`share picture: no room for all of “${sentence}”`);
  const lines = linesOf(title, room / size);
  const below = under(size);
  const words = [
    ...lines.map((line, i) => outlined(line, MARGIN, 218 + i * size * 1.16, size, COLOURS.ink)),
    ...said.map((line, i) => outlined(line, MARGIN, below + i * 44, 34, COLOURS.soft)),
  ];
  return `<svg xmlns="http://www.w3.org/2000/svg" width="${width}" height="${height}" viewBox="0 0 ${width} ${height}">
<rect width="${width}" height="${height}" fill="${COLOURS.paper}"/>
${joint(540)}
${outlined(label, MARGIN, 112, 34, COLOURS.soft)}
${words.join('\n')}
${swatch ? placed(swatch) : ''}
${outlined(SITE.name, width - MARGIN - lengthOf(SITE.name) * 34, 112, 34, COLOURS.accent)}
</svg>`;
}

/** A swatch, at the right. */
function placed(swatch: Buffer): string {
  const at = `x="${SHARE_SIZE.width - MARGIN - SWATCH_SIDE}" y="150" width="${SWATCH_SIDE}" height="${SWATCH_SIDE}"`;
  return `<image ${at} href="data:image/png;base64,${swatch.toString('base64')}"/><rect ${at} fill="none" stroke="${COLOURS.board}" stroke-width="2"/>`;
}

/** The flat view of a swatch as a picture, which several answers about one paper share. */
export const swatchPng = (svg: string): Promise<Buffer> => {
  const size = `width="${SWATCH_SIDE}" height="${SWATCH_SIDE}" viewBox="0 0 ${SWATCH.side} ${SWATCH.side}"`;
  return sharp(Buffer.from(svg.replace(/viewBox="[^"]*" width="\d+" height="\d+"/, size)))
    .png()
    .toBuffer();
};

/** Some flat colours and the shades at their edges: 32 take half the time, and half the bytes, of the 256 usual ones. */
const FEW_COLOURS = { palette: true, colours: 32, dither: 0, effort: 1 } as const;

/** A swatch has shades of its own. */
const MORE_COLOURS = { ...FEW_COLOURS, colours: 96 } as const;

export const sharePng = (words: ShareWords): Promise<Buffer> =>
  sharp(Buffer.from(shareSvg(words)))
    .png(words.swatch ? MORE_COLOURS : FEW_COLOURS)
    .toBuffer();
