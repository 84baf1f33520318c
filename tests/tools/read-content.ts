/** Reads content/ from disk, for tests and tools that run without Vite. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { parse } from 'yaml';
import { readTables } from '../../src/build/records';
import { catalogueFrom } from '../../src/data/tables';
import type { Catalogue } from '../../src/core/records/records';

const CONTENT = new URL('../../content/', import.meta.url).pathname;

/** Every YAML file of one folder of content/, whole, by file name. */
export function readRecords(kind: string): Record<string, any> {
  const folder = join(CONTENT, kind);
  const names = readdirSync(folder).filter((name) => name.endsWith('.yaml'));
  return Object.fromEntries(names.map((name) => [name, parse(readFileSync(join(folder, name), 'utf8'))]));
}

export function readCatalogue(): Catalogue {
  return catalogueFrom(readTables());
}
