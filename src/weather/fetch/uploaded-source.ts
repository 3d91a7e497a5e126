import type { ForecastSource } from './forecast-source.js';

/** Files that people upload; nothing is fetched. They name the source of each file themselves. */
export const uploadedSource: ForecastSource = {
  kind: 'uploaded',
  title: 'uploaded file',
  saysWhenIssued: true,
  fetch: null,
};
