/** Records to tables and back: nothing that a calculator reads is lost, and the schemas and core agree by type. */
import { describe, expect, expectTypeOf, test } from 'vitest';
import { readContent } from '../../src/schemas/read-content';
import { readTables } from '../../src/build/records';
import type { Catalogue } from '../../src/core/records/records';
import { catalogue } from '../../src/data/catalogue';
import { catalogueFrom, type ShelfKind, type Stored } from '../../src/data/tables';

const CONTENT = readContent();
const KINDS = ['papers', 'substrates', 'ingredients', 'adhesives', 'techniques'] as const satisfies ShelfKind[];

test('the module that the build hands out is made of these tables', () => {
  expect(catalogue).toEqual(catalogueFrom(readTables()));
});

describe('what comes out is what the record says', () => {
  test.for(KINDS)('%s', (kind) => {
    for (const [id, record] of CONTENT[kind]) {
      const told = catalogue[kind].get(id) as unknown as Record<string, unknown>;
      expect(told['id']).toBe(id);
      for (const [field, value] of Object.entries(record) as [string, unknown][]) {
        if (!(field in told)) continue;
        if (value !== null && typeof value === 'object' && 'unit' in value) {
          const { low, high, basis, middle } = value as Record<string, unknown>;
          expect(told[field], `${id} ${field}`).toMatchObject({
            low,
            high,
            basis,
            ...(middle === undefined ? {} : { middle }),
          });
        } else if (typeof value !== 'object') expect(told[field], `${id} ${field}`).toBe(value);
      }
    }
  });
});

test('prose stays in the pages', () => {
  const text = JSON.stringify(readTables());
  for (const prose of ['about', 'alsoCalled', 'Note', '"note"', 'traits', 'lookAlikes'])
    expect(text).not.toContain(prose);
});

type Fields<T> = T extends unknown ? keyof T : never;
type InCore<K extends ShelfKind> = Fields<Catalogue[K] extends ReadonlyMap<string, infer One> ? One : never>;
/** Fields that are carried to the browser and that nothing of core reads: there is to be none. */
type Unread = { [K in ShelfKind]: Exclude<Fields<Stored<K>>, InCore<K>> }[ShelfKind];

test('no field is carried to the browser that core does not know', () => {
  expectTypeOf<Unread>().toEqualTypeOf<never>();
});
