/** Objects that know all their fields: a field with another name fails the build, and the message says which are allowed. */
import { z } from 'astro/zod';

export function strictObject<Shape extends z.ZodRawShape>(shape: Shape) {
  const fields = Object.keys(shape).join(', ');
  const errorMap: z.ZodErrorMap = (issue, { defaultError }) => ({
    message:
      issue.code === 'unrecognized_keys'
        ? `no field is called ${issue.keys.map((key) => `"${key}"`).join(' or ')}; the fields are ${fields}`
        : defaultError,
  });
  return z.object(shape, { errorMap }).strict();
}
