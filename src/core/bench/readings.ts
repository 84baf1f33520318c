/** Several readings in one field: as typed, "41.2 40.8", and as a link has them, "41.2_40.8". */
import { parseNumber } from '../base/number-text';
import { fail, ok, type Result } from '../base/result';

/** As many as are taken on one afternoon. */
export const MOST_READINGS = 10;

interface Readings {
  /** name of the field */
  readonly field: string;
  /** as a message says it: "weights" */
  readonly what: string;
  readonly low: number;
  readonly high: number;
  readonly unit: string;
}

const IN_LINK = /^\d{1,6}(\.\d{1,3})?(_\d{1,6}(\.\d{1,3})?){0,9}$/;

/** Reader, shower and link's grammar of such a field. */
export function readings({ field, what, low, high, unit }: Readings) {
  const fits = (one: number) => one >= low && one <= high;
  return {
    kind: 'rows',
    parse: (typed: string): Result<readonly number[]> => {
      const texts = typed.split(/[\s;]+/).filter(Boolean);
      const how = `Give 1 to ${MOST_READINGS} ${what}, each from ${low} to ${high}\u00a0${unit}, with spaces between them.`;
      const code = texts.length === 0 ? 'empty' : 'not-a-number';
      if (texts.length === 0 || texts.length > MOST_READINGS) return fail([{ field, code, message: how }]);
      const values = texts.map(parseNumber);
      const wrong = values.findIndex((one) => one === undefined || !fits(one));
      if (wrong < 0) return ok(values.map((one) => Number(one!.toFixed(3))));
      return fail([{ field, code, message: `“${texts[wrong]!.slice(0, 20)}” cannot be one of them. ${how}` }]);
    },
    show: (kept: readonly number[]): string => kept.join(' '),
    read: (text: string): readonly number[] | undefined => {
      const values = IN_LINK.test(text) ? text.split('_').map(Number) : undefined;
      return values?.every(fits) ? values : undefined;
    },
    write: (kept: readonly number[]): string => kept.join('_'),
  } as const;
}
