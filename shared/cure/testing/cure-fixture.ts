import { inches } from '../../units/length.js';
import { rValue } from '../../units/insulation.js';
import { fahrenheit } from '../../units/temperature.js';
import { hours } from '../../units/time.js';
import { milesPerHour } from '../../units/weather-units.js';
import type { AirHour } from '../prediction/air-by-hour.js';
import type { CureRequest } from '../prediction/cure-prediction.js';
import { NO_PROTECTION, smallPourPlan, type ProtectionPlan } from '../protection/protection-plan.js';
import { after, placementOf } from './placement-fixture.js';

/** Air by hour from placing on, °F by the hour. */
export const airOf = (count: number, temperature: (hour: number) => number, wind = 8): AirHour[] =>
  Array.from({ length: count }, (_, hour) => ({
    at: after(hour),
    temperature: fahrenheit(temperature(hour)),
    wind: milesPerHour(wind),
  }));

/** Falls from 28 °F to 12 °F in sixteen hours and stays there. */
export const fallingAir = (count = 168): AirHour[] => airOf(count, (hour) => Math.max(12, 28 - hour));

/** Heated for some hours, then under two layers of blanket. */
export const tentPlan = (heatHours = 12): ProtectionPlan =>
  smallPourPlan({
    blanketLayers: 2,
    blanketR: rValue(4),
    enclosure: fahrenheit(60),
    heatHours: hours(heatHours),
  });

/** An invented footing of 10 in in falling air, without protection. */
export const requestOf = (more: Partial<CureRequest> = {}): CureRequest => ({
  placement: placementOf(),
  section: { kind: 'on-ground', thickness: inches(10) },
  plan: NO_PROTECTION,
  readings: [],
  now: after(0),
  air: fallingAir(),
  assumedAir: null,
  ...more,
});
