/** The mark of the site as the icon of an installed page, drawn when the site is built. */
import { readFileSync } from 'node:fs';
import path from 'node:path';
import sharp from 'sharp';
import { SITE } from '../../site';

// found from where the build is run, since the bundled copy of this module stands elsewhere
const MARK = path.resolve('public/mark.svg');
/** units of the mark's own drawing */
const MARK_SIZE = 32;

export interface Icon {
  /** px */
  readonly size: number;
  /** share of the side that the mark takes up; a system may cut a round or a drop from a maskable one */
  readonly share: number;
}

/** A maskable icon shows at least the circle of 80 % across (W3C, Web Application Manifest); a square of 56 % is inside it. */
export const ICONS: Readonly<Record<string, Icon>> = {
  'mark-192': { size: 192, share: 0.8 },
  'mark-512': { size: 512, share: 0.8 },
  'maskable-512': { size: 512, share: 0.56 },
  'apple-touch': { size: 180, share: 0.7 },
};

export async function iconPng({ size, share }: Icon): Promise<Buffer> {
  const side = Math.round(size * share);
  const mark = await sharp(readFileSync(MARK), { density: (72 * side) / MARK_SIZE })
    .resize(side, side)
    .png()
    .toBuffer();
  return sharp({ create: { width: size, height: size, channels: 3, background: SITE.colours.paper } })
    .composite([{ input: mark }])
    .png({ palette: true })
    .toBuffer();
}
