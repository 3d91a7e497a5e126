const HOUR = 3_600_000;

/** An invented forecast: a day and a half of hard frost from now on, then four mild days. */
export function hardFrost(from: Date): string {
  const start = Math.floor(from.getTime() / HOUR) * HOUR;
  const rows = Array.from({ length: 132 }, (_, hour) => {
    const temperature = hour < 36 ? 12 : 44;
    return [new Date(start + hour * HOUR).toISOString(), temperature, 6, 5, 0].join(',');
  });
  return [
    `issued_at,${new Date(start).toISOString()}`,
    'at,temperature_f,wind_mph,rain_chance_pct,rain_in',
    ...rows,
  ].join('\n');
}
