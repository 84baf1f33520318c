/**
 * Hands the records to the calculators as `virtual:records`, in small tables: 8 kB of a lesson's script where the whole
 * of content/ would be some 65. A fault in any record or lesson stops the build at once and names file, field and
 * what is allowed.
 */
import path from 'node:path';
import type { AstroIntegration } from 'astro';
import { tablesOf } from '../data/tables';
import { ON_PAGES_ONLY } from '../schemas/records';
import { contentFiles, readContent, ROOT } from '../schemas/read-content';

const MODULE = 'virtual:records';

/** The tables as the build hands them out, for tools that run without it. */
export const readTables = () => tablesOf(readContent(), ON_PAGES_ONLY);

export function records(): AstroIntegration {
  return {
    name: 'records',
    hooks: {
      'astro:config:setup': ({ command, updateConfig }) => {
        // before the pages read them, whose word on a fault would be another
        if (command === 'build') readContent();
        updateConfig({ vite: { plugins: [virtualRecords()] } });
      },
    },
  };
}

function virtualRecords() {
  return {
    name: 'virtual-records',
    resolveId: (id: string) => (id === MODULE ? `\0${MODULE}` : null),
    load(this: { addWatchFile(file: string): void }, id: string) {
      if (id !== `\0${MODULE}`) return null;
      for (const { file } of contentFiles()) if (file.endsWith('.yaml')) this.addWatchFile(path.join(ROOT, file));
      // A string that JSON parses is smaller and quicker than the same as script.
      return `export default JSON.parse(${JSON.stringify(JSON.stringify(readTables()))})`;
    },
  };
}
