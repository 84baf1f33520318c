/** A number in a record: a value or a range, its unit, and where it comes from. */
import { z } from 'astro/zod';
import { strictObject } from './strict';

const basis = z.enum(['published', 'common-practice', 'from-memory', 'calibrated', 'estimate']);

/** Ids are file names without their ending: lower case, digits, hyphens. */
export const id = z.string().regex(/^[a-z0-9]+(?:-[a-z0-9]+)*$/, 'lower-case words joined by hyphens');

/**
 * `low` and `high` bound what is met in practice; `middle` is the value to use when one is needed
 * (left out, it is the geometric mean). `unit` is fixed by the field, so a slip of unit fails the build.
 */
export function quantity(unit: string, limits: { min: number; max: number }) {
  const inLimits = z.number().min(limits.min).max(limits.max);
  return strictObject({
    low: inLimits,
    middle: inLimits.optional(),
    high: inLimits,
    unit: z.literal(unit),
    basis,
    source: id.optional(),
    checks: z.array(id).optional(),
    note: z.string().optional(),
  }).superRefine((number, context) => {
    const say = (message: string) => context.addIssue({ code: z.ZodIssueCode.custom, message });
    if (number.low > number.high) say('low is above high');
    const middle = number.middle;
    if (middle !== undefined && (middle < number.low || middle > number.high)) say('middle lies outside low to high');
    if (number.basis === 'published' && !number.source) say('published needs a source id');
    if (number.basis === 'calibrated' && !number.checks?.length)
      say('calibrated needs the ids of the checks it was fitted to');
  });
}
