/** Values of a file, each taken for what it may be and for nothing else. Never throws. */
import { ID } from './record';

export type Loose = Readonly<Record<string, unknown>>;

/** Whether a value from a file is an object. */
export const isObject = (value: unknown): value is Loose =>
  typeof value === 'object' && value !== null && !Array.isArray(value);
/** A record's own entry: what it inherits ("constructor", "__proto__") is none. */
export const own = (value: Loose, key: string): unknown => (Object.hasOwn(value, key) ? value[key] : undefined);
/** The record id in a value from a file, or undefined. */
export const idIn = (value: unknown): string | undefined =>
  typeof value === 'string' && ID.test(value) ? value : undefined;
/** The date in a value from a file, or undefined. */
export const dateIn = (value: unknown): string | undefined =>
  typeof value === 'string' && /^\d{4}-\d\d-\d\d(?:T\d\d:\d\d(?::\d\d(?:\.\d{1,3})?)?Z)?$/.test(value)
    ? value
    : undefined;

/** The number in a value from a file when it is within its limits, or undefined. */
export function numberIn(value: unknown, { low, high }: { low: number; high: number }): number | undefined {
  return typeof value === 'number' && value >= low && value <= high ? value : undefined;
}
