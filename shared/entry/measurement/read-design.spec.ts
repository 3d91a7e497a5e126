import { describe, expect, it } from '@jest/globals';
import { entryFixture } from '../testing/entry-fixture.js';
import { checkMeasurement } from './check-measurement.js';

const WEATHER = { airF: 17, dewPointF: 14, windMph: 19.6, snowInchesPerHour: 0.1, source: 'weather record' };
const HEIGHTS = {
  sillAboveWalkInches: 31,
  doorDropInches: 1,
  doorSwingsOver: false,
  handrailPlanned: true,
  guardPlanned: false,
};
const read = (design: unknown) => checkMeasurement({ ...entryFixture(), design });
const designOf = (design: unknown) => {
  const check = read(design);
  if (!check.ok) throw new Error(JSON.stringify(check.faults));
  return check.measurement.design;
};
const faultsOf = (design: unknown) => {
  const check = read(design);
  return check.ok ? [] : check.faults.map((fault) => `${fault.path}: ${fault.message}`);
};

describe('what an entry is designed for', () => {
  it.each([[undefined], [null], [{}]])('is nothing where %p is given', (design) => {
    expect(designOf(design)).toEqual({ weather: null, freeAreaClass: 'I', supply: null, heights: null });
  });

  it('is read with units', () => {
    const found = designOf({ weather: WEATHER, freeAreaClass: 'II', heights: HEIGHTS });
    expect(found.weather).toMatchObject({ air: 17, dewPoint: 14, wind: 19.6, snow: 0.1 });
    expect(found.weather?.source).toEqual({ mark: 'P', text: 'weather record' });
    expect(found.freeAreaClass).toBe('II');
    expect(found.heights).toMatchObject({
      sill: 31,
      doorDrop: 1,
      doorSwingsOver: false,
      guardPlanned: false,
    });
  });

  it('counts as common practice where nobody says where the snowfall comes from', () => {
    const { source: _, ...unsourced } = WEATHER;
    expect(designOf({ weather: unsourced }).weather?.source.mark).toBe('C');
  });

  it('takes terminals for 60 °C and no panel where none is given', () => {
    expect(designOf({ supply: { volts: 240 } }).supply).toEqual({ volts: 240, terminals: 60, panel: null });
    expect(
      designOf({ supply: { volts: 208, terminalsC: 75, panelAmperes: 200, panelCarriedAmperes: 90 } }).supply,
    ).toEqual({ volts: 208, terminals: 75, panel: { main: 200, carried: 90 } });
  });

  it.each<[unknown, string]>([
    [{ weather: { ...WEATHER, airF: 40 } }, 'design.weather.airF: must be -60 to 33 °F, got 40'],
    [{ weather: { ...WEATHER, dewPointF: 18 } }, 'design.weather.dewPointF: must be -90 to 17 °F, got 18'],
    [{ weather: { ...WEATHER, source: '' } }, 'design.weather.source: must be a text, got ""'],
    [{ freeAreaClass: 'IV' }, 'design.freeAreaClass: must be one of I, II, III, got "IV"'],
    [{ supply: { volts: 240, terminalsC: 90 } }, 'design.supply.terminalsC: must be 60 or 75 °C'],
    [
      { supply: { volts: 240, panelAmperes: 200 } },
      'design.supply.panelCarriedAmperes: must be a number in A',
    ],
    [{ snow: 1 }, 'design.snow: unknown name; remove it or use one of: weather'],
    [
      { heights: { ...HEIGHTS, sillAboveWalkInches: 25 } },
      'design.heights: sill 25 in less 1 in makes 24 in, the landing stands 30 in high; measure both again',
    ],
  ])('is refused with the place and what to do: %j', (design, message) => {
    expect(faultsOf(design).join('\n')).toContain(message);
  });
});
