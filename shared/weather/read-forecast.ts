import type { ForecastRead } from './forecast-fault.js';
import type { Forecast } from './forecast.js';
import { readForecastCsv } from './read-forecast-csv.js';
import { readForecastJson } from './read-forecast-json.js';

/** Reads an uploaded forecast, CSV or JSON by what it begins with. */
export const readForecast = (text: string): ForecastRead<Forecast> =>
  /^\uFEFF?\s*[{[]/.test(text) ? readForecastJson(text) : readForecastCsv(text);
