import { describe, expect, it } from '@jest/globals';
import { fahrenheit } from '../../units/temperature.js';
import { airOf } from '../testing/cure-fixture.js';
import { after } from '../testing/placement-fixture.js';
import { AirByHour } from './air-by-hour.js';

describe('air by hour', () => {
  const hours = airOf(3, (hour) => 20 + hour);

  it('holds from the hour for an hour', () => {
    const air = new AirByHour(hours, null);
    expect(air.at(after(0))).toMatchObject({ temperature: 20, wind: 8, known: true });
    expect(air.at(after(0.99))).toMatchObject({ temperature: 20 });
    expect(air.at(after(1))).toMatchObject({ temperature: 21 });
    expect(air.at(after(2.5))).toMatchObject({ temperature: 22 });
  });

  it('is unknown before, after and in gaps', () => {
    expect(new AirByHour(hours, null).at(after(-0.1))).toBeNull();
    expect(new AirByHour(hours, null).at(after(3))).toBeNull();
    const gap = new AirByHour([hours[0]!, hours[2]!], null);
    expect([0, 1, 2].map((hour) => gap.at(after(hour)) !== null)).toEqual([true, false, true]);
  });

  it('is unknown where a forecast says nothing', () => {
    const air = new AirByHour([{ ...hours[0]!, temperature: null }], null);
    expect(air.at(after(0.5))).toBeNull();
  });

  it('takes an assumption in its place, without wind and never as known', () => {
    const air = new AirByHour(hours, fahrenheit(10));
    expect(air.at(after(-1))).toEqual({ temperature: 10, wind: null, known: false });
    expect(air.at(after(1))).toMatchObject({ temperature: 21, known: true });
    expect(air.at(after(9))).toEqual({ temperature: 10, wind: null, known: false });
  });

  it('takes hours in any order', () => {
    const air = new AirByHour([...hours].reverse(), null);
    expect([0, 1, 2].map((hour) => air.at(after(hour))?.temperature)).toEqual([20, 21, 22]);
  });
});
