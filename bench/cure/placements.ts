import type { AirHour } from '../../shared/cure/prediction/air-by-hour.js';
import type { CureRequest } from '../../shared/cure/prediction/cure-prediction.js';
import { DEFAULT_MIXTURES } from '../../shared/cure/mixture.js';
import { smallPourPlan } from '../../shared/cure/protection/protection-plan.js';
import { rValue } from '../../shared/units/insulation.js';
import { inches } from '../../shared/units/length.js';
import { psi } from '../../shared/units/stress.js';
import { fahrenheit } from '../../shared/units/temperature.js';
import { addHours, epochMs, HOUR_MS, hours } from '../../shared/units/time.js';
import { milesPerHour } from '../../shared/units/weather-units.js';
import { seeded } from '../portfolio/seeded.js';

const NOW = Date.UTC(2026, 0, 14, 15);

/** A forecast of a week, colder by some degrees. */
const forecast = (colder: number): AirHour[] =>
  Array.from({ length: 24 * 10 }, (_, hour) => ({
    at: epochMs(NOW + (hour - 72) * HOUR_MS),
    temperature: fahrenheit(28 + 8 * Math.sin((hour / 24) * 2 * Math.PI) - colder),
    wind: milesPerHour(8),
  }));

/** Invented placements of the last three days, with readings every six hours, under one forecast. */
export function placements(count: number, colder: number): CureRequest[] {
  const pick = seeded(20_260_114);
  const air = forecast(colder);
  return Array.from({ length: count }, () => {
    const age = pick(72);
    const placedAt = epochMs(NOW - age * HOUR_MS);
    const warm = 50 + pick(15);
    return {
      placement: {
        placedAt,
        placedTemperature: fahrenheit(60),
        mixture: { ...DEFAULT_MIXTURES.concrete, accelerated: pick(2) === 0 },
        required: psi(2000 + 100 * pick(15)),
      },
      section: { kind: pick(2) === 0 ? 'on-ground' : 'free', thickness: inches(6 + pick(12)) },
      plan: smallPourPlan({
        blanketLayers: 1 + pick(3),
        blanketR: rValue(4),
        enclosure: fahrenheit(60),
        heatHours: hours(12),
      }),
      readings: Array.from({ length: Math.floor(age / 6) }, (_, i) => ({
        at: addHours(placedAt, hours((i + 1) * 6)),
        concrete: fahrenheit(warm),
      })),
      now: epochMs(NOW),
      air,
      assumedAir: fahrenheit(30),
    };
  });
}
