import type { MeasuredSet } from '../../../shared/entry/measurement/measurement.js';

/** A heating set as designed; the label as delivered is filled in when it is received. */
export function heatingSetRow(set: MeasuredSet) {
  return {
    key: set.key,
    name: set.name,
    watts: set.watts,
    volts: set.volts,
    ohms: set.ohms,
    labelTempF: set.labelTemperature,
    heatedFeet: set.heatedLength,
    coldLeadFeet: set.coldLeadLength,
    coldLeadOhmsPerFoot: set.coldLeadOhmsPerFoot,
    tempCoefficient: set.temperatureCoefficient,
    toleranceLow: set.toleranceLow,
    toleranceHigh: set.toleranceHigh,
    minMegaohms: set.minInsulation,
    insulationVolts: set.insulationTestVolts,
    minBendInches: set.minBend,
    cureDays: Math.ceil(set.cureDays),
  };
}
