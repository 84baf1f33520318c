/** Objects that know all their fields: a field with another name fails the build, and the message says which are allowed. */
import { z } from 'astro/zod';
import { didYouMean } from './ids';

/** `example`: how the whole is written, said where it is missing. */
export function strictObject<Shape extends z.ZodRawShape>(shape: Shape, example?: string) {
  const fields = Object.keys(shape);
  const errorMap: z.ZodErrorMap = (issue, { defaultError }) => ({
    message:
      issue.code === 'unrecognized_keys'
        ? issue.keys.map((key) => `no field is called "${key}"${didYouMean(key, fields, 0)}`).join('; ') +
          (issue.keys.every((key) => /^\d+$/.test(key))
            ? '; write numbers with a point and no comma: 2.5'
            : `; the fields are ${fields.join(', ')}`)
        : issue.code === 'invalid_type' && example
          ? `${issue.received === 'undefined' ? 'is missing; write it' : 'is written'} as ${example}`
          : defaultError,
  });
  return z.object(shape, { errorMap }).strict();
}
