/**
 * A calculator's fields, said once. A table has a row for each: what it is called, what it may be, what stands there
 * at first, when it is asked for, and what carries it in a link. From the table follow the form, what is said of a
 * slip, the link and what is said of a link that cannot be read, and the tests that send nonsense.
 *
 * A plan is the values, typed; texts are what stands in the form, as it was typed or ticked. The grammar of a link
 * stands in links alone (`plan-link.ts` writes it, `read-plan-link.ts` reads it).
 */
import type { LengthUnit } from '../base/length-text';
import { withinLimits, type NumberLimits } from '../base/limits';
import { parseNumber } from '../base/number-text';
import { unknownId } from '../base/record-id';
import { fail, ok, type InputError, type Result } from '../base/result';

interface Row {
  /** what carries it in a link; never changes once links are about */
  readonly key: string;
  /** as the form shows it; none where the form words it by the rest of the plan */
  readonly label?: string;
  /** as a sentence begins: "The width" */
  readonly what: string;
  /** what is allowed, where no more can be said of a wrong text than that it cannot be read */
  readonly allows?: string;
  /** whether a plan asks for it, by the plan's other values; always where this is left out */
  readonly asked?: (plan: never) => boolean;
  /** its usual value is an example: it stands in the form only where a plan asks for it, so that nobody takes it for theirs */
  readonly example?: true;
  /** for the id of a record: whether it is one, and what it is called in "Choose … from the list." */
  readonly record?: { readonly called: string; readonly isOne: (id: string, catalogue: never) => boolean };
}

export type Field = Row &
  (
    | (NumberLimits & { readonly kind: 'number'; readonly optional?: true; readonly usual?: number | undefined })
    /** typed in the plan's unit, with fractions, and kept in mm; it brings its own reader, as few calculators need one */
    | (NumberLimits & {
        readonly kind: 'length';
        readonly optional?: true;
        readonly usual?: number | undefined;
        readonly parse: (typed: string, unit: LengthUnit, field: string) => Result<number>;
        readonly show: (kept: number, unit: LengthUnit) => string;
      })
    | {
        readonly kind: 'one-of';
        readonly of: readonly string[];
        readonly optional?: true;
        readonly usual?: string | undefined;
      }
    | { readonly kind: 'yes-no'; readonly optional?: true; readonly usual?: boolean | undefined }
    | { readonly kind: 'text'; readonly pattern: RegExp; readonly optional?: true; readonly usual?: string | undefined }
    /** any of a few words, in the table's order whichever was ticked first */
    | { readonly kind: 'some-of'; readonly of: readonly string[]; readonly usual: readonly string[] }
    /** ids of records, `most` at most */
    | {
        readonly kind: 'ids';
        readonly pattern: RegExp;
        readonly most: number;
        readonly usual: readonly string[];
      }
    /** rows of several values: the reader's grammar and the link's are its own, what is kept is typed */
    | {
        readonly kind: 'rows';
        readonly parse: (typed: string, unit: LengthUnit) => Result<unknown>;
        readonly show: (kept: never, unit: LengthUnit) => string;
        /** from a link's text; undefined where it is none */
        readonly read: (text: string) => unknown;
        readonly write: (kept: never) => string;
        readonly usual: unknown;
      }
  );

/** Rows by the name of their field, in the order in which links are written. */
export type FieldTable = Readonly<Record<string, Field>>;

type Kept<F extends Field> = F extends { readonly kind: 'number' | 'length' }
  ? number
  : F extends { readonly kind: 'yes-no' }
    ? boolean
    : F extends { readonly kind: 'one-of'; readonly of: readonly (infer T)[] }
      ? T
      : F extends { readonly kind: 'some-of'; readonly of: readonly (infer T)[] }
        ? readonly T[]
        : F extends { readonly kind: 'ids' }
          ? readonly string[]
          : F extends { readonly kind: 'rows'; readonly read: (text: string) => infer T }
            ? Exclude<T, undefined>
            : string;

/** The values of a table's fields; of what may be left empty, undefined. */
export type PlanOf<S extends FieldTable> = {
  readonly [K in keyof S]: S[K] extends { readonly optional: true } ? Kept<S[K]> | undefined : Kept<S[K]>;
};
/** What stands in the form: the text of each field; of those that are ticked, what is ticked. */
export type TextsOf<S extends FieldTable> = {
  readonly [K in keyof S]: S[K] extends { readonly kind: 'some-of' | 'ids' } ? Kept<S[K]> : string;
};

const unitIn = (values: Readonly<Record<string, unknown>>): LengthUnit =>
  values['unit'] === 'cm' || values['unit'] === 'in' ? values['unit'] : 'mm';

/** What stands there when nothing was said. */
export const usualOf = <S extends FieldTable>(fields: S): PlanOf<S> =>
  Object.fromEntries(Object.entries(fields).map(([name, { usual }]) => [name, usual])) as PlanOf<S>;

/** The fields that a plan asks for; a slip in any other is out of sight. */
export const askedOf = <S extends FieldTable>(plan: PlanOf<S>, fields: S): readonly (keyof S & string)[] =>
  Object.keys(fields).filter((name) => isAsked(fields[name]!, plan));

const mayBeEmpty = (field: Field): boolean => 'optional' in field && field.optional === true;

/** Whether this plan asks for a field of its table. */
export const isAsked = ({ asked }: Field, plan: object): boolean => asked === undefined || asked(plan as never);

/** A plan as its reader would have typed it. */
export function textsOf<S extends FieldTable>(plan: PlanOf<S>, fields: S): TextsOf<S> {
  const unit = unitIn(plan);
  const entries = Object.entries(fields).map(([name, field]) => {
    const text = textOf(field, plan[name], unit);
    const isExample = field.example && !isAsked(field, plan) && text === textOf(field, field.usual, unit);
    return [name, isExample ? '' : text];
  });
  return Object.fromEntries(entries) as TextsOf<S>;
}

function textOf(field: Field, value: unknown, unit: LengthUnit): string | readonly string[] {
  if (value === undefined) return '';
  if (field.kind === 'length') return field.show(value as number, unit);
  if (field.kind === 'rows') return field.show(value as never, unit);
  if (field.kind === 'yes-no') return value ? 'yes' : 'no';
  return field.kind === 'some-of' || field.kind === 'ids' ? (value as readonly string[]) : String(value);
}

const unreadable = (name: string, field: Field): InputError => ({
  field: name,
  code: 'unknown-id',
  message: field.allows ?? `${field.what} cannot be read.`,
});

/** What is wrong with one value that is kept, or undefined. With a `catalogue`, records must be there too. */
export function problemWith(name: string, field: Field, value: unknown, catalogue?: object): InputError | undefined {
  if (value === undefined && mayBeEmpty(field)) return undefined;
  const { record, what } = field;
  if (record && catalogue) {
    const known = [value].flat().every((id) => record.isOne(id as string, catalogue as never));
    return known ? undefined : unknownId(name, record.called);
  }
  switch (field.kind) {
    case 'number':
    case 'length': {
      const found = withinLimits(name, value as number, field);
      return found.ok ? undefined : found.errors[0];
    }
    case 'one-of':
    case 'some-of': {
      const fits = [value].flat().every((one) => field.of.includes(one as string));
      return fits ? undefined : { ...unreadable(name, field), message: `${what}: choose one from the list.` };
    }
    case 'yes-no':
      return typeof value === 'boolean' ? undefined : unreadable(name, field);
    case 'rows':
      return field.read(field.write(value as never)) === undefined ? unreadable(name, field) : undefined;
    case 'ids':
    case 'text':
      return [value].flat().every((one) => field.pattern.test(one as string)) ? undefined : unreadable(name, field);
  }
}

/** Records that a plan names and that are not there, each beside its field. */
export const unknownRecords = <S extends FieldTable>(plan: PlanOf<S>, fields: S, catalogue: object): InputError[] =>
  Object.entries(fields).flatMap(([name, field]) =>
    field.record ? (problemWith(name, field, plan[name], catalogue) ?? []) : [],
  );

/** The value of one text, a length in mm without its unit; or what is wrong with it. */
export function valueOf(name: string, field: Field, text: string): Result<unknown> {
  const tidy = text.trim();
  if (tidy === '' && mayBeEmpty(field)) return ok(undefined);
  if (field.kind === 'number' || field.kind === 'length') {
    const found = withinLimits(name, parseNumber(tidy), field);
    return found.ok || tidy !== '' ? found : fail(found.errors.map((error) => ({ ...error, code: 'empty' })));
  }
  if (field.kind === 'rows') {
    const rows = field.read(tidy);
    return rows === undefined ? fail([unreadable(name, field)]) : ok(rows);
  }
  const value = field.kind !== 'yes-no' ? tidy : tidy === 'yes' ? true : tidy === 'no' ? false : tidy;
  const problem = problemWith(name, field, value);
  return problem ? fail([problem]) : ok(value);
}

/** The same for what the reader types, where lengths bear units and lists are laid out in rows. */
function typedValueOf(
  name: string,
  field: Field,
  typed: string | readonly string[],
  unit: LengthUnit,
): Result<unknown> {
  if (typeof typed !== 'string') return ok(typed);
  if (typed.trim() === '' && mayBeEmpty(field)) return ok(undefined);
  if (field.kind === 'length') return field.parse(typed, unit, name);
  return field.kind === 'rows' ? field.parse(typed, unit) : valueOf(name, field, typed);
}

/**
 * The plan that these texts make. Only fields that are asked for can be wrong: what another kind of job would ask
 * for is out of sight, so a slip there is passed over and the value of `fallback` used. `asked` names others than
 * those that the plan itself asks for.
 */
export function readTexts<S extends FieldTable>(
  texts: TextsOf<S>,
  fields: S,
  fallback: PlanOf<S>,
  asked?: readonly (keyof S)[],
): { plan: PlanOf<S>; problems: readonly InputError[] } {
  const slips = new Map<string, readonly InputError[]>();
  const entries = Object.entries(fields).map(([name, field]) => {
    const found = typedValueOf(name, field, texts[name] ?? '', unitIn(texts));
    if (found.ok) return [name, found.value];
    slips.set(name, found.errors);
    return [name, fallback[name]];
  });
  const plan = Object.fromEntries(entries) as PlanOf<S>;
  const seen = asked ?? askedOf(plan, fields);
  return { plan, problems: [...slips].flatMap(([name, errors]) => (seen.includes(name) ? errors : [])) };
}
