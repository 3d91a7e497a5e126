import { ordinaryHeat } from '../../shared/cure/hydration/hydration-heat.js';
import { CONCRETE } from '../../shared/cure/thermal/material.js';
import type { FaceCondition, Section } from '../../shared/cure/thermal/section.js';
import { celsius } from '../../shared/units/temperature.js';

/** Days that are run through. */
export const DAYS = 14;

/** Film and one blanket, m²·K/W. */
const RESISTANCE = 0.3;

/** A wall of 10 in of concrete from 15 °C, free on both faces, cut into cells. */
export const wallOf = (cells: number): Section => ({
  layers: [
    {
      thickness: 0.254,
      material: CONCRETE,
      cells,
      start: celsius(15),
      heat: ordinaryHeat(300),
    },
  ],
  placed: 0,
  below: 'air',
});

/** Air that falls and swings from day to night. */
export const faceAt = (hour: number): FaceCondition => ({
  temperature: -4 + 5 * Math.sin((hour / 24) * 2 * Math.PI) - hour / 100,
  resistance: RESISTANCE,
});
