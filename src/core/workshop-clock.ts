/** Days and hours of a class, reckoned from its start without a clock: minutes before and after it. */
import { fail, ok, type Result } from './result';

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
  const at = new Date(Date.UTC(Number(year), Number(month) - 1, Number(date)));
  // The 31st of a short month would slide into the next one.
  if (year === '' || Number(year) < 2000 || at.getUTCMonth() !== Number(month) - 1 || at.getUTCDate() !== Number(date))
    return fail([
      {
        field: 'day',
        code: 'not-a-number',
        message: 'Give a day that there is, as year-month-day: 2026-12-04. Or leave it empty.',
      },
    ]);
  return ok({ minute, dayNumber: at.getTime() / 86_400_000 });
}

const two = (value: number): string => String(value).padStart(2, '0');
const clock = (minute: number): string => `${two(Math.floor(minute / HOUR))}:${two(minute % HOUR)}`;

/** "Friday 4 December, 14:00"; without a day "the day before, 14:00". `after` in minutes from the start. */
export function momentText({ minute, dayNumber }: Start, after: number): string {
  const total = minute + after;
  const days = Math.floor(total / DAY);
  const time = clock(total - days * DAY);
  if (dayNumber !== undefined) {
    const at = new Date((dayNumber + days) * 86_400_000);
    return `${WEEKDAYS[at.getUTCDay()]} ${at.getUTCDate()} ${MONTHS[at.getUTCMonth()]}, ${time}`;
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
