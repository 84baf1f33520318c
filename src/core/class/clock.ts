/** Days and hours of a class, reckoned from its start without a clock: minutes before and after it. */
import { fail, ok, type Result } from '../base/result';

export const HOUR = 60;
export const DAY = 24 * HOUR;
const WEEKDAYS = ['Sunday', 'Monday', 'Tuesday', 'Wednesday', 'Thursday', 'Friday', 'Saturday'];
const MONTHS = [
  ...['January', 'February', 'March', 'April', 'May', 'June'],
  ...['July', 'August', 'September', 'October', 'November', 'December'],
];

export interface Start {
  /** minute of the day */
  readonly minute: number;
  /** days since 1 January 1970; undefined where no day was given */
  readonly dayNumber?: number;
}

/** The start from "2026-12-04" (or nothing) and "14:00". */
export function startOf(day: string, time: string): Result<Start> {
  const [, hour = '', minutes = ''] = /^(\d{1,2}):(\d{2})$/.exec(time.trim()) ?? [];
  if (hour === '' || Number(hour) > 23 || Number(minutes) > 59)
    return fail([
      { field: 'time', code: 'not-a-number', message: 'Give the time as hours and minutes, such as 14:00.' },
    ]);
  const minute = Number(hour) * HOUR + Number(minutes);
  if (day.trim() === '') return ok({ minute });
  const [, year = '', month = '', date = ''] = /^(\d{4})-(\d{2})-(\d{2})$/.exec(day.trim()) ?? [];
  const dayNumber = dayNumberOf(Number(year), Number(month), Number(date));
  // The 31st of a short month would slide into the next one.
  const back = dateOf(dayNumber);
  if (year === '' || Number(year) < 2000 || back.month !== Number(month) || back.date !== Number(date))
    return fail([
      {
        field: 'day',
        code: 'not-a-number',
        message: 'Give a day that there is, as year-month-day: 2026-12-04. Or leave it blank.',
      },
    ]);
  return ok({ minute, dayNumber });
}

/**
 * Days since 1 January 1970 in the Gregorian calendar: years are counted from March, so that the leap day comes last,
 * in eras of 400 years, which have 146 097 days each.
 */
function dayNumberOf(year: number, month: number, date: number): number {
  const y = month <= 2 ? year - 1 : year;
  const ofYear = Math.floor((153 * (month + (month > 2 ? -3 : 9)) + 2) / 5) + date - 1;
  const ofEra = (y % 400) * 365 + Math.floor((y % 400) / 4) - Math.floor((y % 400) / 100) + ofYear;
  return Math.floor(y / 400) * 146_097 + ofEra - 719_468;
}

function dateOf(dayNumber: number): { readonly month: number; readonly date: number } {
  const day = (((dayNumber + 719_468) % 146_097) + 146_097) % 146_097;
  const year = Math.floor((day - Math.floor(day / 1460) + Math.floor(day / 36_524) - Math.floor(day / 146_096)) / 365);
  const ofYear = day - (365 * year + Math.floor(year / 4) - Math.floor(year / 100));
  const fromMarch = Math.floor((5 * ofYear + 2) / 153);
  return {
    month: fromMarch < 10 ? fromMarch + 3 : fromMarch - 9,
    date: ofYear - Math.floor((153 * fromMarch + 2) / 5) + 1,
  };
}

const two = (value: number): string => String(value).padStart(2, '0');
const clock = (minute: number): string => `${two(Math.floor(minute / HOUR))}:${two(minute % HOUR)}`;

/** "Friday 4 December, 14:00"; without a day "the day before, 14:00". `after` in minutes from the start. */
export function momentText({ minute, dayNumber }: Start, after: number): string {
  const total = minute + after;
  const days = Math.floor(total / DAY);
  const time = clock(total - days * DAY);
  if (dayNumber !== undefined) {
    const { month, date } = dateOf(dayNumber + days);
    // 1 January 1970 was a Thursday.
    return `${WEEKDAYS[(dayNumber + days + 4) % 7]} ${date} ${MONTHS[month - 1]}, ${time}`;
  }
  if (days === 0) return time;
  if (days === -1) return `the day before, ${time}`;
  if (days === 1) return `the next day, ${time}`;
  return days < 0 ? `${-days} days before` : `${days} days later, ${time}`;
}

/** "1 h 40 min", in steps of 5 min. */
export function lasting(minutes: number): string {
  const rounded = Math.max(5, Math.round(minutes / 5) * 5);
  const hours = Math.floor(rounded / HOUR);
  const rest = rounded % HOUR;
  return [hours > 0 ? `${hours}\u00a0h` : '', rest > 0 ? `${rest}\u00a0min` : ''].filter(Boolean).join(' ');
}
