import { describe, expect, test } from '@jest/globals';
import fc from 'fast-check';
import { Temporal } from 'temporal-polyfill';
import { calendarFromWeek, type WeekCalendar } from './calendar-from-week.js';
import { CompiledCalendar } from './compiled-calendar.js';
import { instantOfSlot, slotAtOrAfter } from './slot-instant.js';
import { instantOfWallClock, wallClockAt } from './zone-time.js';

const ZONE = 'America/New_York';
const hours = [{ from: '07:00', to: '15:00' }];
const daily: WeekCalendar = {
  zone: ZONE,
  weekly: {
    monday: hours,
    tuesday: hours,
    wednesday: hours,
    thursday: hours,
    friday: hours,
    saturday: hours,
    sunday: hours,
  },
  exceptions: {},
};

/** An independent library's idea of a local time. */
const instant = (local: string): number =>
  Temporal.PlainDateTime.from(local).toZonedDateTime(ZONE).epochMilliseconds;

// In 2024 the clocks of New York change on 10 March (forward) and on 3 November (back): 15 U.S.C. 260a.
describe.each([
  ['forward', '2024-03-08', '2024-03-10', 23],
  ['back', '2024-11-01', '2024-11-03', 25],
])('when clocks go %s', (_name, first, change, dayHours) => {
  const start = instant(`${first}T00:00`);
  const open = calendarFromWeek(daily, start, 96 * 6);

  test('every shift of 8 hours is 8 hours, and starts at its local time', () => {
    expect(open).toHaveLength(6);
    open.forEach(({ from, to }, i) => {
      const date = Temporal.PlainDate.from(first).add({ days: i });
      expect(to - from).toBe(32);
      expect(instantOfSlot(from, start)).toBe(instant(`${date.toString()}T07:00`));
      expect(instantOfSlot(to, start)).toBe(instant(`${date.toString()}T15:00`));
    });
  });

  test('a cure of 24 hours is 24 hours', () => {
    const noon = slotAtOrAfter(
      instant(`${Temporal.PlainDate.from(change).subtract({ days: 1 }).toString()}T12:00`),
      start,
    );
    const finish = CompiledCalendar.always(1000).add(noon, 96)!;
    expect(instantOfSlot(finish, start) - instantOfSlot(noon, start)).toBe(24 * 3_600_000);
    const local = Temporal.Instant.fromEpochMilliseconds(instantOfSlot(finish, start)).toZonedDateTimeISO(
      ZONE,
    );
    expect(local.hour).toBe(12 + (24 - dayHours));
  });

  test('the day of the change is as long as it is', () => {
    const whole = { from: '00:00', to: '24:00' };
    const [day] = calendarFromWeek(
      { zone: ZONE, weekly: {}, exceptions: { [change]: [whole] } },
      start,
      96 * 6,
    );
    expect(day!.to - day!.from).toBe(dayHours * 4);
  });

  test('a night shift over the change has the hours of the clock on the wall', () => {
    const eve = Temporal.PlainDate.from(change).subtract({ days: 1 }).toString();
    const night = { from: '22:00', to: '06:00' };
    const [shift] = calendarFromWeek(
      { zone: ZONE, weekly: {}, exceptions: { [eve]: [night] } },
      start,
      96 * 6,
    );
    expect((shift!.to - shift!.from) / 4).toBe(8 + dayHours - 24);
  });
});

test('exceptions close a day or give it other hours, and only that day', () => {
  const start = instant('2024-01-08T00:00');
  const open = calendarFromWeek(
    { ...daily, exceptions: { '2024-01-09': [], '2024-01-10': [{ from: '10:00', to: '12:00' }] } },
    start,
    96 * 3,
  );
  expect(open).toEqual([
    { from: 28, to: 60 },
    { from: 96 * 2 + 40, to: 96 * 2 + 48 },
  ]);
});

test('hours that miss the slots are narrowed, the horizon cuts, the past is reached on request', () => {
  const start = instant('2024-01-08T00:00');
  const odd = { zone: ZONE, weekly: { monday: [{ from: '07:10', to: '08:05' }] }, exceptions: {} };
  expect(calendarFromWeek(odd, start, 96)).toEqual([{ from: 29, to: 32 }]);
  expect(calendarFromWeek(daily, start, 40)).toEqual([{ from: 28, to: 40 }]);
  expect(calendarFromWeek(daily, start, 40, 96)).toEqual([
    { from: -68, to: -36 },
    { from: 28, to: 40 },
  ]);
});

test('faulty hours, dates and zones are refused with what to write instead', () => {
  const week = (part: Partial<WeekCalendar>): WeekCalendar => ({ ...daily, ...part });
  const expand = (part: Partial<WeekCalendar>) => () => calendarFromWeek(week(part), 0, 96 * 7);
  expect(expand({ weekly: { monday: [{ from: '7:00', to: '15:00' }] } })).toThrow(/HH:MM/);
  expect(expand({ weekly: { monday: [{ from: '07:00', to: '24:30' }] } })).toThrow(/HH:MM/);
  expect(expand({ exceptions: { '2024-02-30': [] } })).toThrow(/YYYY-MM-DD/);
  expect(expand({ zone: 'Nowhere/Town' })).toThrow(/IANA/);
});

test('local times agree with an independent library, in every hour around both changes and in other zones', () => {
  const zones = [ZONE, 'America/Chicago', 'Europe/Oslo', 'Asia/Kolkata', 'Australia/Lord_Howe', 'UTC'];
  const minutes = fc.integer({ min: 0, max: 366 * 24 * 60 });
  const near = (day: number) => fc.integer({ min: day * 1440 - 1440, max: day * 1440 + 2880 });
  const times = fc.oneof(minutes, near(69), near(307), near(90), near(300), near(279), near(96));
  fc.assert(
    fc.property(fc.constantFrom(...zones), times, (zone, minute) => {
      const wall = Date.UTC(2024, 0, 1) + minute * 60_000;
      const local = Temporal.PlainDateTime.from(new Date(wall).toISOString().slice(0, 19));
      expect(instantOfWallClock(wall, zone)).toBe(local.toZonedDateTime(zone).epochMilliseconds);
      const shown = Temporal.Instant.fromEpochMilliseconds(wall).toZonedDateTimeISO(zone).toPlainDateTime();
      expect(wallClockAt(wall, zone)).toBe(shown.toZonedDateTime('UTC').epochMilliseconds);
    }),
    { numRuns: 2000 },
  );
});
