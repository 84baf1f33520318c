/**
 * A calculator's fields, said once: what each may be, how it is read from what was typed, and how it
 * travels in a link. A plan is the values; texts are what the reader typed, kept as typed.
 */
import { formatAmount } from '../base/format';
import type { LengthUnit } from '../base/length-text';
import { parseNumber } from '../base/number-text';
import { fail, ok, type InputError, type Result } from '../base/result';

interface Measured {
  readonly key: string;
  readonly low: number;
  readonly high: number;
  readonly unit: string;
  /** as a sentence begins */
  readonly what: string;
  /** no halves: makers, coats */
  readonly whole?: true;
}

export type Spec =
  /** 'maybe' may be left empty */
  | (Measured & { readonly kind: 'number' })
  | (Measured & { readonly kind: 'maybe' })
  /** typed in the plan's unit, with fractions, and kept in mm; it brings its own reader, as few calculators need one */
  | (Measured & {
      readonly kind: 'length';
      readonly parse: (typed: string, unit: LengthUnit, field: string) => Result<number>;
      readonly show: (kept: number, unit: LengthUnit) => string;
    })
  /** the same, and may be left empty */
  | (Measured & {
      readonly kind: 'maybe-length';
      readonly parse: (typed: string, unit: LengthUnit, field: string) => Result<number>;
      readonly show: (kept: number, unit: LengthUnit) => string;
    })
  | { readonly kind: 'one-of'; readonly key: string; readonly of: readonly string[]; readonly what: string }
  | { readonly kind: 'text'; readonly key: string; readonly pattern: RegExp; readonly what: string }
  /** what is typed in one way and kept in another, which the pattern knows */
  | {
      readonly kind: 'list';
      readonly key: string;
      readonly pattern: RegExp;
      readonly what: string;
      readonly parse: (typed: string, unit: LengthUnit) => Result<string>;
      readonly show: (kept: string, unit: LengthUnit) => string;
    };

export type Specs = Readonly<Record<string, Spec>>;

type ValueOf<S extends Spec> = S extends { readonly kind: 'number' | 'length' }
  ? number
  : S extends { readonly kind: 'maybe' | 'maybe-length' }
    ? number | undefined
    : S extends { readonly kind: 'one-of'; readonly of: readonly (infer T)[] }
      ? T
      : string;

export type PlanOf<S extends Specs> = { readonly [K in keyof S]: ValueOf<S[K]> };
export type TextsOf<S extends Specs> = { readonly [K in keyof S]: string };

const unitIn = (fields: Readonly<Record<string, unknown>>): LengthUnit =>
  fields['unit'] === 'cm' || fields['unit'] === 'in' ? fields['unit'] : 'mm';

/** A plan as its reader would have typed it. */
export function textsOf<S extends Specs>(plan: PlanOf<S>, specs: S): TextsOf<S> {
  const unit = unitIn(plan);
  const entries = Object.entries(specs).map(([field, spec]) => {
    const value: unknown = plan[field];
    if (value !== undefined && (spec.kind === 'length' || spec.kind === 'maybe-length'))
      return [field, spec.show(value as number, unit)];
    if (spec.kind === 'list') return [field, spec.show(value as string, unit)];
    return [field, value === undefined ? '' : String(value)];
  });
  return Object.fromEntries(entries) as TextsOf<S>;
}

/** The value of one text, or what is wrong with it. */
export function read(field: string, spec: Spec, text: string): Result<unknown> {
  const tidy = text.trim();
  const { what } = spec;
  if (spec.kind === 'one-of' || spec.kind === 'text' || spec.kind === 'list') {
    const fits = spec.kind === 'one-of' ? spec.of.includes(tidy) : spec.pattern.test(tidy);
    const message = spec.kind === 'one-of' ? `${what}: choose one from the list.` : `${what} cannot be read.`;
    return fits ? ok(tidy) : fail([{ field, code: 'unknown-id', message }]);
  }
  if ((spec.kind === 'maybe' || spec.kind === 'maybe-length') && tidy === '') return ok(undefined);
  const { low, high, unit } = spec;
  const value = parseNumber(tidy);
  const allowed = `from ${formatAmount(low, 6)} to ${formatAmount(high, 6)}${unit ? `\u00a0${unit}` : ''}`;
  const problem = (code: InputError['code']) =>
    fail([
      {
        field,
        code,
        message: `${what} must be a ${spec.whole ? 'whole ' : ''}number ${allowed}.`,
        limits: { low, high, unit },
      },
    ]);
  if (value === undefined || (spec.whole && !Number.isInteger(value)))
    return problem(tidy === '' ? 'empty' : 'not-a-number');
  return value < low ? problem('too-small') : value > high ? problem('too-large') : ok(value);
}

/** The same for what the reader types, where lengths bear units and lists are laid out in rows. */
function readTyped(field: string, spec: Spec, text: string, unit: LengthUnit): Result<unknown> {
  if (spec.kind === 'maybe-length' && text.trim() === '') return ok(undefined);
  if (spec.kind === 'length' || spec.kind === 'maybe-length') return spec.parse(text, unit, field);
  return spec.kind === 'list' ? spec.parse(text, unit) : read(field, spec, text);
}

/**
 * The plan that these texts make. Only `asked` fields can be wrong: what another kind of job would ask
 * for is out of sight, so a slip there is passed over and `fallback` used.
 */
export function readTexts<S extends Specs>(
  texts: TextsOf<S>,
  specs: S,
  asked: readonly (keyof S)[],
  fallback: PlanOf<S>,
): { plan: PlanOf<S>; problems: readonly InputError[] } {
  const problems: InputError[] = [];
  const entries = Object.entries(specs).map(([field, spec]) => {
    const found = readTyped(field, spec, texts[field] ?? '', unitIn(texts));
    if (found.ok) return [field, found.value];
    if (asked.includes(field)) problems.push(...found.errors);
    return [field, fallback[field]];
  });
  return { plan: Object.fromEntries(entries) as PlanOf<S>, problems };
}
