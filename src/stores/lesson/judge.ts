/** Says of an answer to a lesson's question whether it is right, and if not, what may have gone wrong. */
import { parseNumber } from '../../core/base/number-text';

export interface NumberWanted {
  readonly is: number;
  /** how far off still counts as right, in the same unit; above 0 */
  readonly within: number;
  /** as it stands behind the field; "" for a bare number */
  readonly unit: string;
  /** wrong answers that people arrive at by a known mistake */
  readonly slips: readonly Slip[];
}

export interface Slip {
  readonly is: number;
  readonly because: string;
}

export interface ReplyJudged {
  /** 'unread': no number could be read, so nothing was judged */
  readonly verdict: 'right' | 'wrong' | 'unread';
  readonly says: string;
}

/** Takes what was typed, with or without its unit. Never throws. */
export function judgeNumber(typed: string, { is, within, unit, slips }: NumberWanted): ReplyJudged {
  const text = typed.trim();
  const bare = unit !== '' && text.toLowerCase().endsWith(unit.toLowerCase()) ? text.slice(0, -unit.length) : text;
  const number = parseNumber(bare);
  if (number === undefined)
    return {
      verdict: 'unread',
      says: `Type a number${unit === '' ? '' : ` in ${unit}`}, such as 12 or 0.5.`,
    };
  const near = (other: number) => Math.abs(number - other) <= within;
  if (near(is)) return { verdict: 'right', says: 'Right.' };
  const slip = slips.find((one) => near(one.is));
  if (slip) return { verdict: 'wrong', says: `Not quite. ${slip.because}` };
  const tenfold = [10, 100, 1000].some((times) =>
    [is * times, is / times].some((other) => other !== 0 && Math.abs(number / other - 1) < Math.abs(within / is)),
  );
  if (tenfold)
    return { verdict: 'wrong', says: 'The figures are right, but the decimal point is not. Look at the units.' };
  return {
    verdict: 'wrong',
    says: `Not yet: that is too ${number > is ? 'large' : 'small'}. Try again, or open the answer.`,
  };
}
