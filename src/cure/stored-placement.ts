import type { Mixture } from '../../shared/cure/mixture.js';
import type { ConcreteReading, CurePlacement } from '../../shared/cure/placement.js';
import { psi } from '../../shared/units/stress.js';
import { fahrenheit } from '../../shared/units/temperature.js';
import { epochMs, HOUR_MS, hours } from '../../shared/units/time.js';
import type { ProtectionPlan } from '../../shared/cure/protection/protection-plan.js';
import type { Placement, TemperatureReading } from '../generated/prisma/client.js';
import { planOf, type ProtectionSpec, specOfKinds } from './protection/protection-spec.js';

/** A placement with the temperatures read in it. */
export type ReadPlacement = Placement & { readonly readings: readonly TemperatureReading[] };

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
export function mixtureOf(row: Pick<Placement, 'mixture'>): Mixture {
  return row.mixture as unknown as Mixture;
}

/** Kinds of protection in place: blanket, enclosure, heater. */
export function protectionOf(row: Pick<Placement, 'protection'>): string[] {
  return row.protection as string[];
}

/** How it is, or was, kept warm; by the kinds of it alone where nothing more was entered. */
export function protectionSpecOf(row: Pick<Placement, 'protection' | 'protectionPlan'>): ProtectionSpec {
  return (row.protectionPlan as unknown as ProtectionSpec | null) ?? specOfKinds(protectionOf(row));
}

/** The same by time, as the core reads it. */
export function protectionPlanOf(row: Placement): ProtectionPlan {
  const off = row.protectionOffAt;
  const after = off === null ? null : hours((off.getTime() - row.placedAt.getTime()) / HOUR_MS);
  return planOf(protectionSpecOf(row), after);
}
