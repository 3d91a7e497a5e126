const HOUR = 3_600_000;

/** Air in °F so many hours after the begin: 28 falling to 12 within a day, two days of hard frost, then mild. */
export function airAt(hour: number): number {
  if (hour < 24) return Math.round((28 - (16 * hour) / 24) * 10) / 10;
  if (hour < 72) return 12 + (Math.floor(hour / 6) % 2) * 3;
  return 46;
}

/** An invented forecast of that air for a week, as a file. */
export function fallingFrost(from: Date): string {
  const start = Math.floor(from.getTime() / HOUR) * HOUR;
  const rows = Array.from({ length: 7 * 24 }, (_, hour) =>
    [new Date(start + hour * HOUR).toISOString(), airAt(hour), 6, 5, 0].join(','),
  );
  const head = 'at,temperature_f,wind_mph,rain_chance_pct,rain_in';
  return [`issued_at,${new Date(start).toISOString()}`, head, ...rows].join('\n');
}
