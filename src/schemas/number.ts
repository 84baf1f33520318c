/** A number in a record: a value or a range, its unit, and where it comes from. */
import { z } from 'astro/zod';
import { idOf } from './ids';
import { strictObject } from './strict';

const basis = z.enum(['published', 'common-practice', 'from-memory', 'calibrated', 'estimate']);

/** How a number is known that stands alone, without a range: kept beside it under its name and `Basis`. */
export const plainBasis = z.enum(['common-practice', 'from-memory', 'estimate']);

/**
 * `low` and `high` bound what is met in practice; `middle` is the value to use when one is needed
 * (left out, it is the geometric mean). `unit` is fixed by the field, so a slip of unit fails the build.
 */
export function quantity<Unit extends string>(unit: Unit, limits: { min: number; max: number }) {
  const allowed = `has to be from ${limits.min} to ${limits.max}`;
  const inLimits = z.number().min(limits.min, allowed).max(limits.max, allowed);
  return strictObject(
    {
      low: inLimits,
      middle: inLimits.optional(),
      high: inLimits,
      unit: z.literal(unit),
      basis,
      source: idOf('sources').optional(),
      checks: z.array(idOf('checks')).optional(),
      note: z.string().optional(),
    },
    `{ low: …, high: …, unit: ${unit}, basis: from-memory }, with numbers from ${limits.min} to ${limits.max}`,
  ).superRefine((number, context) => {
    const say = (message: string) => context.addIssue({ code: z.ZodIssueCode.custom, message });
    if (number.low > number.high) say('low is above high');
    const middle = number.middle;
    if (middle !== undefined && (middle < number.low || middle > number.high)) say('middle lies outside low to high');
    if (number.basis === 'published' && !number.source)
      say('published needs a source: …, the name of a file in content/sources');
    if (number.basis === 'calibrated' && !number.checks?.length)
      say('calibrated needs checks: […], the names of the files in content/checks that it was fitted to');
  });
}
