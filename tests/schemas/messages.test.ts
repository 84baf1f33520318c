/** A slip in a record or in the head of a lesson is answered with the field and with what is allowed. */
import { expect, test } from 'vitest';
import { z } from 'astro/zod';
import { cautionSchema, paperSchema } from '../../src/schemas/records';
import { quantity } from '../../src/schemas/number';
import { plainWords } from '../../src/schemas/plain-words';
import { strictObject } from '../../src/schemas/strict';

const said = (schema: z.ZodTypeAny, value: unknown) =>
  schema
    .safeParse(value, { errorMap: plainWords })
    .error?.issues.map(({ path, message }) => `${path.join('.')}: ${message}`) ?? [];

test('a field with another name is answered with the names there are', () => {
  const schema = strictObject({ title: z.string(), order: z.number() });
  expect(said(schema, { title: 'a', order: 1 })).toEqual([]);
  expect(said(schema, { title: 'a', order: 1, ordre: 2 })).toEqual([
    ': no field is called "ordre"; did you mean "order"?; the fields are title, order',
  ]);
  expect(said(schema, { title: 'a', order: 1, x: 1, y: 1 })[0]).toMatch(/"x".*"y"/);
});

test('a caution names its fields', () => {
  const [message] = said(cautionSchema, { title: 'Knife', text: 'Mind your fingers near the blade.', sources: 'x' });
  expect(message).toContain('"sources"');
  expect(message).toContain('title, text, source');
});

test('a class outside the list is answered with the list', () => {
  const messages = said(paperSchema, { sizing: 'medium', surface: 'rough' }).join('\n');
  expect(messages).toContain('sizing: "medium" is not allowed');
  expect(messages).toContain('write one of unsized, lightly-sized, sized, hard-sized, coated');
  expect(messages).toMatch(/surface: .*write one of smooth, textured, embossed/);
  expect(messages).toMatch(/grammage: is missing; write it as .*g\/m².*from 5 to 600/);
});

test('a number is answered with its unit, its limits and what its basis asks for', () => {
  const grammage = quantity('g/m²', { min: 5, max: 600 });
  const right = { low: 30, middle: 40, high: 50, unit: 'g/m²', basis: 'estimate' };
  expect(said(grammage, right)).toEqual([]);
  expect(said(grammage, { ...right, unit: 'gsm' })[0]).toBe('unit: has to be g/m², not "gsm"');
  expect(said(grammage, { ...right, high: 900 })[0]).toBe('high: has to be from 5 to 600');
  expect(said(grammage, { ...right, basis: 'published' })).toContain(
    ': published needs a source: …, the name of a file in content/sources',
  );
  expect(said(grammage, { ...right, middle: 90 })).toContain(': middle lies outside low to high');
});
