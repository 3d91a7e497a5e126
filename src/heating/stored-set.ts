import type { HeatingLabel } from '../../shared/heating/label.js';
import type { CableReading as CoreReading } from '../../shared/heating/cable-reading.js';
import { megaohms, ohms, ohmsPerFoot, volts } from '../../shared/units/electrical.js';
import { feet } from '../../shared/units/length.js';
import { fahrenheit } from '../../shared/units/temperature.js';
import { epochMs } from '../../shared/units/time.js';
import type { Area, CableReading, HeatingSet, HeatingSetArea, Prisma } from '../generated/prisma/client.js';

/** A heating set with the areas its uncut cable runs through, in turn, and its readings in order of time. */
export type ReadSet = HeatingSet & {
  readonly areas: readonly (HeatingSetArea & { readonly area: Area })[];
  readonly readings: readonly CableReading[];
};

/** What to include to read a `ReadSet`. */
export const READ_SET = {
  areas: { include: { area: true }, orderBy: { position: 'asc' } },
  readings: { orderBy: [{ at: 'asc' }, { id: 'asc' }] },
} satisfies Prisma.HeatingSetInclude;

/** The label of a set as the core reads it. */
export function labelOf(set: HeatingSet): HeatingLabel {
  return {
    ohms: ohms(set.ohms),
    labelTemperature: fahrenheit(set.labelTempF),
    temperatureCoefficient: set.tempCoefficient,
    toleranceLow: set.toleranceLow,
    toleranceHigh: set.toleranceHigh,
    coldLeadLength: feet(set.coldLeadFeet),
    coldLeadOhmsPerFoot: ohmsPerFoot(set.coldLeadOhmsPerFoot),
    minInsulation: megaohms(set.minMegaohms),
    insulationTestVolts: volts(set.insulationVolts),
  };
}

/** Key of an area of the set by its id. */
export function areaKeyOf(set: Pick<ReadSet, 'areas'>, areaId: string | null): string | null {
  return set.areas.find(({ area }) => area.id === areaId)?.area.key ?? null;
}

/** A reading as the core reads it. */
export function coreReading(
  set: Pick<ReadSet, 'areas'>,
  row: Pick<CableReading, 'stage' | 'areaId' | 'at' | 'ohms' | 'megaohms' | 'testVolts' | 'cableTempF'>,
): CoreReading {
  return {
    stage: row.stage,
    areaKey: areaKeyOf(set, row.areaId),
    at: epochMs(row.at.getTime()),
    ohms: ohms(row.ohms),
    megaohms: megaohms(row.megaohms),
    testVolts: volts(row.testVolts),
    cableTemperature: fahrenheit(row.cableTempF),
  };
}
