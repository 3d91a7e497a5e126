import { describe, expect, it } from '@jest/globals';
import { readFrom } from '../read/reader.js';
import { entryFixture, type Loose } from '../testing/entry-fixture.js';
import { readSet } from './read-set.js';

const read = (change: (set: Loose) => void) => {
  const set: Loose = entryFixture().heatingSets[0];
  change(set);
  const root = readFrom(set);
  return { set: readSet(root), faults: root.faults.map((fault) => `${fault.path}: ${fault.message}`) };
};

describe('a heating set', () => {
  it('keeps what its label says', () => {
    const label = {
      labelTemperatureF: 77,
      coldLeadOhmsPerFoot: 0.0016,
      temperatureCoefficientPerK: 0.0004,
      toleranceLow: -0.1,
      toleranceHigh: 0.05,
      minMegaohms: 100,
      insulationTestVolts: 1000,
      minBendInches: 1.25,
      cureDays: 14,
    };
    const { set, faults } = read((given) => Object.assign(given, label));
    expect(faults).toEqual([]);
    expect(set).toMatchObject({
      labelTemperature: 77,
      coldLeadOhmsPerFoot: 0.0016,
      temperatureCoefficient: 0.0004,
      toleranceLow: -0.1,
      toleranceHigh: 0.05,
      minInsulation: 100,
      insulationTestVolts: 1000,
      minBend: 1.25,
      cureDays: 14,
    });
  });

  it.each<[string, unknown, string]>([
    ['watts', 0, 'watts: must be 50 to 20000 W, got 0'],
    ['volts', 12, 'volts: must be 100 to 600 V, got 12'],
    ['heatedFeet', 3, 'heatedFeet: must be 5 to 2000 ft, got 3'],
    ['coldLeadFeet', 0, 'coldLeadFeet: must be 1 to 200 ft, got 0'],
    ['coldLeadOhmsPerFoot', 1.6, 'coldLeadOhmsPerFoot: must be 0 to 0.02 Ω/ft, got 1.6'],
    ['temperatureCoefficientPerK', 0.4, 'temperatureCoefficientPerK: must be 0 to 0.007 1/K, got 0.4'],
    ['toleranceLow', 0.05, 'toleranceLow: must be -0.2 to 0, got 0.05'],
    ['toleranceHigh', 10, 'toleranceHigh: must be 0 to 0.2, got 10'],
    ['minMegaohms', 0, 'minMegaohms: must be 1 to 10000 MΩ, got 0'],
    ['cureDays', 0, 'cureDays: must be 1 to 90 days, got 0'],
    ['areas', [], 'areas: needs at least 1, got 0'],
    ['key', 'Set One', 'key: must be a short key'],
  ])('with %s of %p is refused', (name, value, message) => {
    expect(read((set) => (set[name] = value)).faults.join('\n')).toContain(message);
  });

  it('is not asked whether watts, volts and ohms agree while one of them is no number', () => {
    expect(read((set) => (set.watts = 'many')).faults).toEqual(['watts: must be a number in W, got "many"']);
  });
});
