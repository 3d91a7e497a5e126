import type { Supply } from '../../heating/circuit/circuit-plan.js';
import type { DesignWeather } from '../../heating/demand/design-weather.js';
import { amperes, volts } from '../../units/electrical.js';
import { inchesPerHour } from '../../units/heat.js';
import { fahrenheit } from '../../units/temperature.js';
import { milesPerHour } from '../../units/weather-units.js';
import type { Reader } from '../read/reader.js';
import { COMMON_PRACTICE, published } from '../source.js';
import type { EntryDesign, EntryHeights } from './design.js';
import { readInches } from './read-length.js';

/** Reads what an entry is designed for; nothing given is nothing known. */
export function readDesign(reader: Reader): EntryDesign {
  if (reader.missing) return { weather: null, freeAreaClass: 'I', supply: null, heights: null };
  reader.object(['weather', 'freeAreaClass', 'supply', 'heights']);
  const part = <T>(name: string, read: (part: Reader) => T): T | null => {
    const at = reader.at(name);
    return at.missing ? null : read(at);
  };
  return {
    weather: part('weather', readWeather),
    freeAreaClass: part('freeAreaClass', (at) => at.oneOf(['I', 'II', 'III'] as const)) ?? 'I',
    supply: part('supply', readSupply),
    heights: part('heights', readHeights),
  };
}

function readWeather(reader: Reader): DesignWeather {
  reader.object(['airF', 'dewPointF', 'windMph', 'snowInchesPerHour', 'source']);
  const air = reader.at('airF').number({ min: -60, max: 33, unit: '°F' });
  return {
    name: 'Design snowfall of the site',
    air: fahrenheit(air),
    dewPoint: fahrenheit(reader.at('dewPointF').number({ min: -90, max: air, unit: '°F' })),
    wind: milesPerHour(reader.at('windMph').number({ min: 0, max: 80, unit: 'mph' })),
    snow: inchesPerHour(reader.at('snowInchesPerHour').number({ min: 0, max: 1, unit: 'in/h of water' })),
    source: reader.at('source').missing ? COMMON_PRACTICE : published(reader.at('source').text()),
  };
}

function readSupply(reader: Reader): Supply {
  reader.object(['volts', 'terminalsC', 'panelAmperes', 'panelCarriedAmperes']);
  const main = reader.at('panelAmperes');
  const terminals = reader.at('terminalsC').numberOr(60);
  if (terminals !== 60 && terminals !== 75)
    reader.at('terminalsC').fault('must be 60 or 75 °C, as the terminals are marked; 60 where they are not');
  return {
    volts: volts(reader.at('volts').number({ min: 100, max: 600, unit: 'V' })),
    terminals: terminals === 75 ? 75 : 60,
    panel: main.missing
      ? null
      : {
          main: amperes(main.number({ min: 30, max: 1200, unit: 'A' })),
          carried: amperes(reader.at('panelCarriedAmperes').number({ min: 0, max: 1200, unit: 'A' })),
        },
  };
}

function readHeights(reader: Reader): EntryHeights {
  reader.object([
    'sillAboveWalkInches',
    'doorDropInches',
    'doorSwingsOver',
    'handrailPlanned',
    'guardPlanned',
  ]);
  return {
    sill: readInches(reader.at('sillAboveWalkInches'), 0, 150),
    doorDrop: readInches(reader.at('doorDropInches'), 0, 12),
    doorSwingsOver: reader.at('doorSwingsOver').flag(),
    handrailPlanned: reader.at('handrailPlanned').flag(),
    guardPlanned: reader.at('guardPlanned').flag(),
  };
}
