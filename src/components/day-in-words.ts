const MONTHS = 'January February March April May June July August September October November December'.split(' ');

/** A day as it is read: "2026-11-28" → "28 November 2026". Throws RangeError on what is no such day. */
export function dayInWords(day: string): string {
  const [, year, month, date] = /^(\d{4})-(\d{2})-(\d{2})$/.exec(day) ?? [];
  const name = MONTHS[Number(month) - 1];
  if (!year || !date || !name) throw new RangeError(`a day is written 2026-11-28; got "${day}"`);
  return `${Number(date)} ${name} ${year}`;
}
