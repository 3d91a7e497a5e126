import { quantity, type Quantity } from '../../units/quantity.js';
import type { Hours } from '../../units/time.js';

/** Heat through an area, W/m². */
export type WattsPerSquareMetre = Quantity<'W/m²'>;
/** A depth of water, mm, which is as many kg/m². */
export type Millimetres = Quantity<'mm'>;

/** W/m² from a bare number. */
export const wattsPerSquareMetre = (value: number): WattsPerSquareMetre => quantity(value, 'W/m²');
/** mm from a bare number. */
export const millimetres = (value: number): Millimetres => quantity(value, 'mm');

/** Heat that melts a kilogram of ice, J/kg. */
const FUSION = 333_500;

/**
 * Which share of the heat that was supplied went into melting: snow that held `water`, melted by `power` in `time`. What
 * is left went into the ground, the surface and the air.
 */
export function meltingShare(water: Millimetres, power: WattsPerSquareMetre, time: Hours): number {
  const supplied = power * time * 3600;
  if (!(supplied > 0))
    throw new RangeError(`power and time must be more than 0, got ${power} W/m² and ${time} h`);
  return (water * FUSION) / supplied;
}
