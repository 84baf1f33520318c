/** Reads content/ from disk through the door that all records come in by, and stops on the first look at a fault. */
import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { coverPresets, mixPresets } from '../data/mix-presets';
import { presets } from '../data/presets';
import { admit, faultText, type ContentFile, type Fault } from './door';
import type { Content } from './kinds';
import type { LessonParts } from './lesson-body';

export const ROOT = fileURLToPath(new URL('../../', import.meta.url));

/** Photographs stand beside the records that name them, and are no text. */
const PHOTOGRAPHS = 'photographs/';

/** Every record and lesson as it stands on disk. */
export function contentFiles(root = ROOT): ContentFile[] {
  const texts = filesBelow(path.join(root, 'content')).filter((name) => !name.startsWith(PHOTOGRAPHS));
  return texts.map((name) => ({
    file: `content/${name}`,
    text: readFileSync(path.join(root, 'content', name), 'utf8'),
  }));
}

/** What a lesson may name besides records. */
export function lessonParts(): LessonParts {
  return {
    components: filesBelow(path.join(ROOT, 'src/components')).filter((name) => name.endsWith('.astro')),
    presets: {
      ChooseLab: Object.keys(presets),
      MixLab: Object.keys(mixPresets),
      CoverLab: Object.keys(coverPresets),
    },
  };
}

/** All of content/, parsed. Throws one error that tells every fault. */
export function readContent(): Content {
  const { content, faults } = admit(contentFiles(), lessonParts());
  if (faults.length > 0) throw new Error(inAll(faults));
  return content;
}

const inAll = (faults: readonly Fault[]) =>
  `${faults.length === 1 ? 'One thing' : `${faults.length} things`} in content/ to put right:\n\n  ${faults.map(faultText).join('\n\n  ')}\n`;

/** From the folder, with forward slashes, in order of name. */
const filesBelow = (folder: string) =>
  readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && !entry.name.startsWith('.'))
    .map((entry) => path.relative(folder, path.join(entry.parentPath, entry.name)).split(path.sep).join('/'))
    .sort();
