import type { Mixture } from '../../shared/cure/mixture.js';
import type { ConcreteReading, CurePlacement } from '../../shared/cure/placement.js';
import { psi } from '../../shared/units/stress.js';
import { fahrenheit } from '../../shared/units/temperature.js';
import { epochMs } from '../../shared/units/time.js';
import type { Placement, TemperatureReading } from '../generated/prisma/client.js';

/** A placement with the temperatures read in it. */
export type ReadPlacement = Placement & { readonly readings: readonly TemperatureReading[] };

/** The mixture as it is kept: the core's, and whether an accelerator is in it. */
export type StoredMixture = Mixture & { readonly accelerated: boolean };

/** A placement as the core reads it. */
export function curePlacement(row: Placement, requiredPsi = row.requiredPsi): CurePlacement {
  return {
    placedAt: epochMs(row.placedAt.getTime()),
    placedTemperature: fahrenheit(row.placedTempF),
    mixture: mixtureOf(row),
    required: psi(requiredPsi),
  };
}

/** Its readings as the core reads them. */
export function concreteReadings({ readings }: ReadPlacement): ConcreteReading[] {
  return readings.map(({ at, concreteF }) => ({
    at: epochMs(at.getTime()),
    concrete: fahrenheit(concreteF),
  }));
}

/** The mixture of a placement. */
export function mixtureOf(row: Pick<Placement, 'mixture'>): StoredMixture {
  return row.mixture as unknown as StoredMixture;
}

/** Kinds of protection in place: blanket, enclosure, heater. */
export function protectionOf(row: Pick<Placement, 'protection'>): string[] {
  return row.protection as string[];
}
