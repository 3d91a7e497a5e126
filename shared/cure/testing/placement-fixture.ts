import { psi } from '../../units/stress.js';
import { fahrenheit } from '../../units/temperature.js';
import { epochMs, HOUR_MS, type EpochMs } from '../../units/time.js';
import { DEFAULT_MIXTURES } from '../mixture.js';
import type { ConcreteReading, CurePlacement } from '../placement.js';

/** When the invented placement was placed. */
export const PLACED = Date.UTC(2026, 0, 14, 15);

/** The instant some hours after placing. */
export const after = (hours: number): EpochMs => epochMs(PLACED + hours * HOUR_MS);

/** An invented footing, placed at 60 °F, that must reach 1,000 psi. */
export const placementOf = (more: Partial<CurePlacement> = {}): CurePlacement => ({
  placedAt: epochMs(PLACED),
  placedTemperature: fahrenheit(60),
  mixture: DEFAULT_MIXTURES.concrete,
  required: psi(1000),
  ...more,
});

/** Readings as pairs of hours after placing and °F. */
export const readingsAt = (...pairs: [number, number][]): ConcreteReading[] =>
  pairs.map(([hour, temperature]) => ({ at: after(hour), concrete: fahrenheit(temperature) }));

/** A reading every six hours at one temperature. */
export const steadyReadings = (hours: number, temperature: number): ConcreteReading[] =>
  readingsAt(...Array.from({ length: hours / 6 }, (_, i): [number, number] => [(i + 1) * 6, temperature]));
