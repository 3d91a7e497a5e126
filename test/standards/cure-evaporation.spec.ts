import { describe, expect, it } from '@jest/globals';
import {
  evaporation,
  evaporationUs,
  kilometresPerHour,
  type SurfaceAir,
} from '../../shared/weather/evaporation.js';
import { evaporationFinding } from '../../shared/cure/rules/evaporation.js';
import { celsius, fahrenheit } from '../../shared/units/temperature.js';
import { milesPerHour, percent } from '../../shared/units/weather-units.js';

const si = (concrete: number, air: number, humidity: number, wind: number) =>
  evaporation({
    concrete: celsius(concrete),
    air: celsius(air),
    humidity: percent(humidity),
    wind: kilometresPerHour(wind),
  });
const us = (concrete: number, air: number, humidity: number, wind: number) => ({
  concrete: fahrenheit(concrete),
  air: fahrenheit(air),
  humidity: percent(humidity),
  wind: milesPerHour(wind),
});

// Formula published: Uno 1998. Numbers computed by hand.
describe('evaporation in SI units', () => {
  it('is 1.1880 and 0.9160 kg/m²/h', () => {
    expect(Math.abs(si(30, 25, 50, 20) - 1.188)).toBeLessThan(1e-4);
    expect(Math.abs(si(20, 5, 50, 20) - 0.916)).toBeLessThan(1e-4);
  });

  it('is nothing at equal temperatures and 100 %', () => {
    expect(si(20, 20, 100, 20)).toBe(0);
  });
});

// From memory: Lerch.
describe('evaporation at 70/70 °F and 70 %', () => {
  it.each([
    [0, 0.015],
    [5, 0.038],
    [10, 0.062],
    [15, 0.085],
    [20, 0.11],
    [25, 0.135],
  ])('in %p mph is %p lb/ft²/h within 0.003', (wind, expected) => {
    expect(Math.abs(evaporationUs(us(70, 70, 70, wind)) - expected)).toBeLessThan(0.003);
  });
});

// Computed by hand: what the SI form says when it is handed °F and mph.
describe('units that are mixed up', () => {
  it('would give 5.448, and do not compile', () => {
    const mixedUp = us(86, 77, 50, 12.4274);
    // @ts-expect-error °F and mph are not °C and km/h
    const wrong: SurfaceAir = mixedUp;
    expect(Math.abs(evaporation(wrong) - 5.448)).toBeLessThan(0.01);
    expect(evaporationUs(mixedUp) * 4.8824).toBeLessThan(1.3);
  });
});

// Published: UFGS 03 30 00.
describe('precautions against drying', () => {
  it('are asked for above 0.2 lb/ft²/h, in cold dry wind too', () => {
    expect(evaporationFinding(us(70, 70, 70, 5)).ok).toBe(true);
    expect(evaporationFinding(us(65, 35, 30, 30)).ok).toBe(false);
  });
});
