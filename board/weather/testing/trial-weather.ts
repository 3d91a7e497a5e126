import type { ForecastHour, SiteForecast, Windows } from '../site-weather.js';

/** An hour of a forecast of which a test says what it is about; the rest is calm, dry and 40 °F. */
export const trialHour = (at: string, more: Partial<ForecastHour> = {}): ForecastHour => ({
  at,
  temperatureF: 40,
  windMph: 0,
  gustMph: null,
  rainChance: 0,
  rainInches: 0,
  ...more,
});

/** A forecast of these hours. */
export const trialForecast = (hours: readonly ForecastHour[]): NonNullable<SiteForecast> => ({
  id: 'f',
  source: 'test sheet',
  issuedAt: '2031-01-13T05:00:00Z',
  hours,
});

/** So many hours from a moment on. */
export const hoursFrom = (
  from: string,
  count: number,
  of: (hour: number) => Partial<ForecastHour> = () => ({}),
): ForecastHour[] =>
  Array.from({ length: count }, (_, i) =>
    trialHour(new Date(Date.parse(from) + i * 3_600_000).toISOString(), of(i)),
  );

/** Windows of a kind of work that is open unless a test says otherwise. */
export const trialWindows = (more: Partial<Windows> = {}): Windows => ({
  limitKey: 'stone',
  name: 'Bed and stone',
  protection: [],
  issuedAt: '2031-01-13T05:00:00Z',
  unknownAfter: null,
  closed: [],
  requirements: [],
  unknown: [],
  ...more,
});

/** A closed stretch with one cause, from memory. */
export const trialClosed = (
  from: string,
  to: string,
  text = 'Too cold: 30 °F, under 50 °F',
  hour = from,
) => ({
  from,
  to,
  causes: [{ limitId: 'stone-cold', text, hour, mark: 'M', source: 'ANSI A108' }],
});
