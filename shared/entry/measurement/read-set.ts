import { megaohms, ohms, ohmsPerFoot, volts, watts } from '../../units/electrical.js';
import { inches } from '../../units/length.js';
import { fahrenheit } from '../../units/temperature.js';
import { days } from '../../units/time.js';
import { KEY } from '../read/key.js';
import type { Reader } from '../read/reader.js';
import type { MeasuredSet } from './measurement.js';
import { readFeet } from './read-length.js';

const NAMES = [
  'key',
  'name',
  'areas',
  'watts',
  'volts',
  'ohms',
  'labelTemperatureF',
  'heatedFeet',
  'coldLeadFeet',
  'coldLeadOhmsPerFoot',
  'temperatureCoefficientPerK',
  'toleranceLow',
  'toleranceHigh',
  'minMegaohms',
  'insulationTestVolts',
  'minBendInches',
  'cureDays',
  'coldLeadRunFeet',
];

/** Reads a heating set. What the label often leaves out has the defaults of common practice. */
export function readSet(reader: Reader): MeasuredSet {
  const faultsBefore = reader.faults.length;
  reader.object(NAMES);
  const bend = reader.at('minBendInches');
  const set: MeasuredSet = {
    key: reader.at('key').text(KEY),
    name: reader.at('name').text(),
    areas: reader
      .at('areas')
      .list(1)
      .map((area) => area.text(KEY)),
    watts: watts(reader.at('watts').number({ min: 50, max: 20_000, unit: 'W' })),
    volts: volts(reader.at('volts').number({ min: 100, max: 600, unit: 'V' })),
    ohms: ohms(reader.at('ohms').number({ min: 0.5, max: 2000, unit: 'Ω' })),
    labelTemperature: fahrenheit(
      reader.at('labelTemperatureF').numberOr(68, { min: 32, max: 120, unit: '°F' }),
    ),
    heatedLength: readFeet(reader.at('heatedFeet'), 5, 2000),
    coldLeadLength: readFeet(reader.at('coldLeadFeet'), 1, 200),
    coldLeadOhmsPerFoot: ohmsPerFoot(
      reader.at('coldLeadOhmsPerFoot').numberOr(0, { min: 0, max: 0.02, unit: 'Ω/ft' }),
    ),
    temperatureCoefficient: reader
      .at('temperatureCoefficientPerK')
      .numberOr(0, { min: 0, max: 0.007, unit: '1/K' }),
    toleranceLow: reader.at('toleranceLow').numberOr(-0.05, { min: -0.2, max: 0 }),
    toleranceHigh: reader.at('toleranceHigh').numberOr(0.1, { min: 0, max: 0.2 }),
    minInsulation: megaohms(reader.at('minMegaohms').numberOr(20, { min: 1, max: 10_000, unit: 'MΩ' })),
    insulationTestVolts: volts(
      reader.at('insulationTestVolts').numberOr(500, { min: 100, max: 2500, unit: 'V' }),
    ),
    minBend: bend.missing ? null : inches(bend.number({ min: 0.25, max: 6, unit: 'in' })),
    cureDays: days(reader.at('cureDays').numberOr(28, { min: 1, max: 90, unit: 'days' })),
    coldLeadRun: readFeet(reader.at('coldLeadRunFeet'), 0, 200),
  };
  if (reader.faults.length === faultsBefore) checkLabel(reader, set);
  return set;
}

/** Watts, volts and ohms of one label must agree: P = V²/R, within a tenth. */
function checkLabel(reader: Reader, set: MeasuredSet): void {
  const expected = set.volts ** 2 / set.watts;
  if (Math.abs(set.ohms / expected - 1) > 0.1) {
    const says = `${set.watts} W at ${set.volts} V makes ${expected.toFixed(2)} Ω`;
    reader.at('ohms').fault(`${says}, the label says ${set.ohms} Ω; read the label again`);
  }
}
