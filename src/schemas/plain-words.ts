/** What is wrong with a record, in words that need no programmer: what is missing, and what may be written. */
import { z } from 'astro/zod';
import { didYouMean } from './ids';

const A_KIND: Readonly<Record<string, string>> = {
  string: 'a text',
  number: 'a number',
  integer: 'a whole number',
  boolean: 'true or false',
  array: 'a list in square brackets, [like, this], or [] for none',
  object: 'a group of fields',
  null: 'left empty',
  nan: 'not a number',
};
/** "'smooth' | 'textured'", as the library names a choice, in words */
const aKind = (expected: string) =>
  A_KIND[expected] ??
  (expected.includes("'") ? `one of ${expected.replaceAll("'", '').replaceAll(' | ', ', ')}` : expected);
const shown = (value: unknown) => (typeof value === 'string' ? `"${value}"` : String(value));

/** Given to a schema as its error map. Where the schema has words of its own for a fault, those stand. */
export const plainWords: z.ZodErrorMap = (issue, context) => {
  const own = z.defaultErrorMap(issue, context).message !== context.defaultError;
  return { message: (!own && inPlainWords(issue, context.data)) || context.defaultError };
};

function inPlainWords(issue: z.ZodIssueOptionalMessage, data: unknown): string | undefined {
  switch (issue.code) {
    case 'invalid_type':
      if (issue.received === 'undefined') return `is missing; write ${aKind(issue.expected)}`;
      return `has to be ${aKind(issue.expected)}, but is ${A_KIND[issue.received] ?? issue.received}${
        typeof data === 'string' && issue.expected === 'number'
          ? `, ${shown(data)}; write it in digits, with a point and no quotation marks: 2.5`
          : ''
      }`;
    case 'invalid_enum_value':
      return `${shown(issue.received)} is not allowed${didYouMean(String(issue.received), issue.options.map(String), 0)}; write one of ${issue.options.join(', ')}`;
    case 'invalid_literal':
      return `has to be ${String(issue.expected)}, ${data === undefined ? 'but is missing' : `not ${shown(data)}`}`;
    case 'invalid_union_discriminator':
      return `${discriminatorSaid(issue, data)}; write one of ${issue.options.map(String).join(', ')}`;
    case 'too_small':
      if (issue.type === 'string') return `is too short; write at least ${String(issue.minimum)} letters`;
      if (issue.type === 'array') return `needs at least ${String(issue.minimum)} in its list`;
      return `has to be ${issue.inclusive ? 'at least' : 'above'} ${String(issue.minimum)}`;
    case 'too_big':
      if (issue.type === 'string') return `is too long; write at most ${String(issue.maximum)} letters`;
      return `has to be ${issue.inclusive ? 'at most' : 'below'} ${String(issue.maximum)}`;
    default:
      return undefined;
  }
}

/** Of the field that says which of several shapes a record has, the whole record is handed over. */
function discriminatorSaid({ path }: z.ZodIssueOptionalMessage, record: unknown): string {
  const written = (record as Readonly<Record<string, unknown>> | null)?.[path.at(-1) ?? ''];
  return written === undefined ? 'is missing' : `${shown(written)} is not allowed`;
}
