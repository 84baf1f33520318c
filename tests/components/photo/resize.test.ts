/** A keeper's photographs, tried with pictures that are made here. */
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import sharp from 'sharp';
import { afterAll, beforeAll, expect, test } from 'vitest';
import {
  FORMATS,
  photoFile,
  photoName,
  photoSize,
  resized,
  PHOTO_WIDTHS,
  widthsOf,
} from '../../../src/components/photo/resize';
import { admit, faultText } from '../../../src/schemas/door';
import { contentFiles, lessonParts } from '../../../src/schemas/read-content';

const folder = mkdtempSync(path.join(tmpdir(), 'photographs-'));
const made = (width: number, height: number) =>
  sharp({ create: { width, height, channels: 3, background: '#8a7350' } }).jpeg();

beforeAll(async () => {
  await made(2400, 1600)
    .withExif({ IFD0: { Artist: 'somebody' } })
    .toFile(path.join(folder, 'large.jpg'));
  await made(500, 400).toFile(path.join(folder, 'small.jpg'));
  // held upright: 800 wide as it lies in the file, and turned by what the camera noted
  await made(800, 600).withMetadata({ orientation: 6 }).toFile(path.join(folder, 'upright.jpg'));
  writeFileSync(path.join(folder, 'broken.jpg'), 'no picture');
});
afterAll(() => rmSync(folder, { recursive: true }));

test('it comes out in both kinds, in each width that it has pixels for, and never larger than it is', async () => {
  expect(widthsOf(await photoSize('large.jpg', folder))).toEqual(PHOTO_WIDTHS);
  expect(widthsOf(await photoSize('small.jpg', folder))).toEqual([360, 500]);
  for (const format of FORMATS)
    for (const width of [360, 720]) {
      const {
        width: got,
        height,
        format: kind,
      } = await sharp(await resized('large.jpg', width, format, folder)).metadata();
      expect([got, height, kind]).toEqual([width, (width * 2) / 3, format === 'avif' ? 'heif' : 'webp']);
    }
  expect((await sharp(await resized('small.jpg', 1200, 'webp', folder)).metadata()).width).toBe(500);
});

test('it stands as it was held, and carries nothing that the camera wrote beside it', async () => {
  expect(await photoSize('upright.jpg', folder)).toEqual({ width: 600, height: 800 });
  const { width, height, exif } = await sharp(await resized('upright.jpg', 300, 'webp', folder)).metadata();
  expect([width, height]).toEqual([300, 400]);
  expect(exif).toBeUndefined();
  expect((await sharp(await resized('large.jpg', 360, 'webp', folder)).metadata()).exif).toBeUndefined();
});

test('a file that is not there, or is no picture, is told with what to do', async () => {
  expect(() => photoFile('gone.jpg', folder)).toThrow('there is no file gone.jpg in content/photographs; put it there');
  await expect(photoSize('broken.jpg', folder)).rejects.toThrow();
  expect(photoName('unryu-1.jpg', 720, 'avif')).toBe('unryu-1-720.avif');
});

/** What the door says of a copy of content/ in which one paper has photographs. */
function saidOf(photos: string): string {
  const files = contentFiles().map((one) =>
    one.file === 'content/papers/copy.yaml' ? { ...one, text: `${one.text}\nphotos:\n  - ${photos}\n` } : one,
  );
  return admit(files, lessonParts()).faults.map(faultText).join('\n');
}
const WHOLE = "alt: 'A sheet of office paper on a table.', credit: Somebody, licence: CC BY 4.0";

test('a photograph beside a record comes in; one without its text stops the build, in plain words', () => {
  expect(saidOf(`{ file: copy-1.jpg, ${WHOLE} }`)).toBe('');
  expect(saidOf('{ file: copy-1.jpg, credit: Somebody, licence: ours }')).toMatch(
    /copy\.yaml[\s\S]*photos › no\. 1 › alt: is missing or too short; say in a sentence what the photograph shows/,
  );
  expect(saidOf("{ file: copy-1.jpg, alt: '', credit: Somebody, licence: ours }")).toContain('is missing or too short');
  expect(saidOf("{ file: copy-1.jpg, alt: 'A sheet of office paper.', licence: ours }")).toContain(
    'credit: is missing; write who made',
  );
  expect(saidOf("{ file: copy-1.jpg, alt: 'A sheet of office paper.', credit: Somebody }")).toContain(
    'licence: is missing',
  );
  expect(saidOf(`{ file: My Photo.JPG, ${WHOLE} }`)).toContain('in lower case: unryu-1.jpg');
});

test('a plate may have photographs too: a step, a failure, a project', () => {
  const plate = { file: 'content/plates/rub-down.yaml', text: `photos:\n  - { file: rub.jpg, ${WHOLE} }\n` };
  const { content, faults } = admit([...contentFiles(), plate], lessonParts());
  expect(faults).toEqual([]);
  expect(content.plates.get('rub-down')!.photos[0]!.credit).toBe('Somebody');
});
