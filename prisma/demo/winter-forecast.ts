const HOUR = 3_600_000;

/** Hours of the invented forecast. */
const HOURS = 7 * 24;

/**
 * An invented week of winter as a forecast file: days around freezing, a cold spell from the third night, rain towards
 * the end. The same start gives the same file.
 */
export function winterForecast(from: Date): string {
  const start = Math.floor(from.getTime() / HOUR) * HOUR;
  const rows = Array.from({ length: HOURS }, (_, hour) => {
    const day = hour / 24;
    const spell = day > 2.5 && day < 4.5 ? 17 : 0;
    const daily = 9 * Math.sin(((hour % 24) - 4) * (Math.PI / 12));
    const temperature = Math.round((37 - spell + daily) * 10) / 10;
    const rain = day > 5.5 && day < 6 ? 0.08 : 0;
    const wind = Math.round(7 + 4 * Math.sin(hour / 9) + (spell ? 5 : 0));
    return [new Date(start + hour * HOUR).toISOString(), temperature, wind, rain > 0 ? 75 : 10, rain].join(
      ',',
    );
  });
  return [
    `issued_at,${new Date(start).toISOString()}`,
    'at,temperature_f,wind_mph,rain_chance_pct,rain_in',
    ...rows,
  ].join('\n');
}
