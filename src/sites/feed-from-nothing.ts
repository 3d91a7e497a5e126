/**
 * How fetching the forecasts of a site stands when its source or its place has just been changed: nothing is known of
 * the new one, and it is to be fetched now.
 */
export const feedFromNothing = (now: Date) => ({
  dueAt: now,
  queuedAt: null,
  address: null,
  etag: null,
  lastModified: null,
  fetchedAt: null,
  forecastId: null,
  failures: 0,
  failedAt: null,
  failure: null,
});
