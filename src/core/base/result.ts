/**
 * How the core says no. A reader's typing error is a value (`InputError`), shown beside its field;
 * a call outside a formula's stated range is a programmer's error and throws `RangeError`.
 */

export type ErrorCode =
  | 'not-a-number'
  | 'too-small'
  | 'too-large'
  | 'not-positive'
  | 'contradiction'
  | 'unknown-id'
  | 'empty';

export interface InputError {
  readonly field: string;
  readonly code: ErrorCode;
  /** what is allowed, in words a reader can act on */
  readonly message: string;
  readonly limits?: { readonly low: number; readonly high: number; readonly unit: string };
}

export type Result<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly errors: readonly InputError[] };

/** What answers has not been fetched yet: neither an answer nor a fault, and the same question can be asked again. */
export interface Loading {
  readonly ok: false;
  readonly loading: true;
}
export const LOADING: Loading = { ok: false, loading: true };

/** A result that was found. */
export const ok = <T>(value: T): Result<T> => ({ ok: true, value });
/** A result that could not be: what is wrong, field by field. */
export const fail = (errors: readonly InputError[]): Result<never> => ({ ok: false, errors });

/** Guards a formula: `value` must be a finite number in [low, high]. */
export function mustBeWithin(name: string, value: number, low: number, high: number): void {
  if (!Number.isFinite(value) || value < low || value > high) {
    throw new RangeError(`${name} must be a number from ${low} to ${high}; got ${value}`);
  }
}

/** Guards a formula: `value` must be a finite number above zero. */
export function mustBePositive(name: string, value: number): void {
  if (!Number.isFinite(value) || value <= 0) throw new RangeError(`${name} must be a number above 0; got ${value}`);
}
