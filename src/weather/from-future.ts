import { HOUR_MS } from '../../shared/units/time.js';

/** How far clocks may differ before a forecast is said to come from the future. */
const CLOCK_SLACK = HOUR_MS;

/** Whether a forecast says that it was issued later than now, beyond what clocks differ. */
export const isFromFuture = (issuedAt: number, now: Date): boolean => issuedAt > now.getTime() + CLOCK_SLACK;
