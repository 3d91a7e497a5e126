import {
  dayNumber,
  dayOf,
  isWeekend,
  putTogether,
  takeApart,
  type LocalDay,
  type LocalTime,
} from './local-time.js';
import type { LifeRule, NoticeRule } from './mark-out-rule.js';

const DAY_MINUTES = 24 * 60;

/** The earliest time at which digging may begin after asking at `asked`; holidays as the state keeps them. */
export function earliestDig(rule: NoticeRule, asked: LocalTime, holidays: readonly LocalDay[]): LocalTime {
  const counts = countingDays(holidays);
  const { day, minutes } = takeApart(asked);
  switch (rule.kind) {
    case 'hours':
      return afterHours(rule.hours, day, minutes, counts);
    case 'nth-day':
      return putTogether(nthDay(day, rule.days, counts), 0);
    case 'full-days':
      return putTogether(nthDay(day, rule.days + 1, counts), 0);
  }
}

/** The last day on which a mark-out asked for at `asked` is good. */
export function lastDay(rule: LifeRule, asked: LocalTime, holidays: readonly LocalDay[]): LocalDay {
  const { day } = takeApart(asked);
  return dayOf(
    rule.counted === 'calendar' ? day + rule.days : nthDay(day, rule.days, countingDays(holidays)),
  );
}

type Counts = (day: number) => boolean;

function countingDays(holidays: readonly LocalDay[]): Counts {
  const kept = new Set(holidays.map(dayNumber));
  return (day) => !isWeekend(day) && !kept.has(day);
}

/** The n-th day after `day` that counts. */
function nthDay(day: number, n: number, counts: Counts): number {
  let at = day;
  for (let left = n; left > 0;) {
    at++;
    if (counts(at)) left--;
  }
  return at;
}

/** Clock hours of days that count; asked on a day that does not, they begin with the next that does. */
function afterHours(hours: number, day: number, minutes: number, counts: Counts): LocalTime {
  let left = hours * 60;
  let at = day;
  let from = minutes;
  while (!counts(at) || left > DAY_MINUTES - from) {
    if (counts(at)) left -= DAY_MINUTES - from;
    at++;
    from = 0;
  }
  const end = from + left;
  return end === DAY_MINUTES ? putTogether(nthDay(at, 1, counts), 0) : putTogether(at, end);
}
