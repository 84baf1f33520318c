/** Days, hours and lengths of time as a teacher writes them. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { lasting, momentText, startOf } from '../../../src/core/class/clock';
describe('days and hours', () => {
  it('knows the calendar', () => {
    const start = startOf('2026-12-04', '14:00');
    if (!start.ok) throw new Error('no start');
    // 4 December 2026 is a Friday; the years 2024 and 2028 leap (any calendar)
    expect(momentText(start.value, 0)).toBe('Friday 4 December, 14:00');
    expect(momentText(start.value, -26 * 60)).toBe('Thursday 3 December, 12:00');
    const leap = startOf('2028-03-01', '9:30');
    if (!leap.ok) throw new Error('no start');
    expect(momentText(leap.value, -24 * 60)).toBe('Tuesday 29 February, 09:30');
  });
  it('keeps the calendar that the platform keeps', () => {
    fc.assert(
      fc.property(fc.integer({ min: 10957, max: 60000 }), (days) => {
        const at = new Date(days * 86_400_000);
        const start = startOf(at.toISOString().slice(0, 10), '12:00');
        const words = at.toLocaleDateString('en-GB', {
          weekday: 'long',
          day: 'numeric',
          month: 'long',
          timeZone: 'UTC',
        });
        expect(start.ok && start.value.dayNumber).toBe(days);
        expect(start.ok && momentText(start.value, 0).replaceAll(',', '')).toBe(`${words.replaceAll(',', '')} 12:00`);
      }),
    );
  });
  it('speaks of days before and after where none was given', () => {
    expect(momentText({ minute: 14 * 60 }, -60)).toBe('13:00');
    expect(momentText({ minute: 14 * 60 }, -20 * 60)).toBe('the day before, 18:00');
    expect(momentText({ minute: 14 * 60 }, 16 * 60)).toBe('the next day, 06:00');
    expect(momentText({ minute: 14 * 60 }, -7 * 1440)).toBe('7 days before');
  });
  it.each([
    ['2026-02-30', '14:00', 'day'],
    ['2026-13-01', '14:00', 'day'],
    ['soon', '14:00', 'day'],
    ['', '25:00', 'time'],
    ['', 'noon', 'time'],
  ])('refuses %j at %j beside its field', (day, time, field) => {
    const found = startOf(day, time);
    expect(found.ok).toBe(false);
    if (!found.ok) expect(found.errors[0]?.field).toBe(field);
  });
  it('says durations in steps of five minutes', () => {
    expect(lasting(98)).toBe('1\u00a0h 40\u00a0min');
    expect(lasting(1)).toBe('5\u00a0min');
    expect(lasting(120)).toBe('2\u00a0h');
  });
});

describe('days and hours as they are typed', () => {
  it.each([
    [' 2026-12-04 ', ' 14:00 ', 14 * 60],
    ['', '0:00', 0],
    ['', '23:59', 23 * 60 + 59],
    ['  ', '9:05', 9 * 60 + 5],
    ['2000-01-01', '23:00', 23 * 60],
  ])('%j at %j', (day, time, minute) => {
    const found = startOf(day, time);
    expect(found.ok && found.value.minute).toBe(minute);
    if (found.ok) expect(found.value.dayNumber === undefined).toBe(day.trim() === '');
  });
  it.each([
    ['', '24:00'],
    ['', '12:60'],
    ['', 'at 12:00'],
    ['', '12:00 h'],
    ['', ''],
    ['1999-12-31', '12:00'],
    ['on 2026-12-04', '12:00'],
    ['2026-12-045', '12:00'],
    ['2026-12-32', '12:00'],
    ['2026-00-10', '12:00'],
    ['2026-06-31', '12:00'],
  ])('%j at %j is refused', (day, time) => expect(startOf(day, time).ok).toBe(false));
  it('days after the next are counted, with their hour', () => {
    expect(momentText({ minute: 0 }, 3 * 1440 + 90)).toBe('3 days later, 01:30');
    expect(momentText({ minute: 0 }, -1)).toBe('the day before, 23:59');
    expect(momentText({ minute: 0 }, -1441)).toBe('2 days before');
  });
});
