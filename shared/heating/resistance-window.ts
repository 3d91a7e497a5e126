import { ohms, type Ohms } from '../units/electrical.js';
import type { CableReading } from './cable-reading.js';
import type { HeatingLabel } from './label.js';
import { leadResistance, resistanceAt } from './resistance.js';

/** Resistances that a heating set may show at its label's temperature. */
export interface ResistanceWindow {
  readonly low: Ohms;
  readonly high: Ohms;
}

/** The label's resistance with its tolerance: 19.2 Ω with −5/+10 % is 18.24 to 21.12 Ω. */
export const resistanceWindow = ({
  ohms: label,
  toleranceLow,
  toleranceHigh,
}: HeatingLabel): ResistanceWindow => ({
  low: ohms(label * (1 + toleranceLow)),
  high: ohms(label * (1 + toleranceHigh)),
});

/** What the heating cable alone would show at the label's temperature: the cold lead taken off, then corrected. */
export function resistanceAtLabel(label: HeatingLabel, reading: CableReading): Ohms {
  const cable = ohms(reading.ohms - leadResistance(label.coldLeadLength, label.coldLeadOhmsPerFoot));
  const growth = resistanceAt(
    ohms(1),
    label.labelTemperature,
    reading.cableTemperature,
    label.temperatureCoefficient,
  );
  return ohms(cable / growth);
}
