import { describe, expect, it } from '@jest/globals';
import { mixingTemperature } from '../../shared/cure/mixing-temperature.js';
import { settingFactor } from '../../shared/cure/setting.js';
import { SectionRun } from '../../shared/cure/thermal/section-run.js';
import { celsius, fahrenheit } from '../../shared/units/temperature.js';

const slab = (thickness: number, conductivity: number, cells: number) =>
  new SectionRun({
    layers: [
      {
        thickness,
        material: { name: 'slab', conductivity, density: 2300, specificHeat: 880 },
        cells,
        start: celsius(15),
        heat: null,
      },
    ],
    placed: 0,
    below: 'insulated',
  });
const NOTHING = { temperature: 0, resistance: 1 };

// Computed by hand: a lump of heat behind a resistance, T = Tₐ + (T₀ − Tₐ)·exp[−t/(ρ·c·L·R)].
describe('a slab of 0.15 m from 15 °C in air at −10 °C, after 24 h', () => {
  const after = (conductivity: number, resistance: number) => {
    const run = slab(0.15, conductivity, 6);
    for (let i = 0; i < 24 * 3600; i++) run.step(1, { temperature: -10, resistance }, NOTHING);
    return run.centre;
  };

  it.each([
    [0.044, -9.961],
    [0.35, 1.087],
    [0.7, 6.649],
  ])('behind %p m²K/W comes to %p °C as its conductivity grows', (resistance, expected) => {
    expect(Math.abs(after(1e5, resistance) - expected)).toBeLessThan(1e-3);
    const [poor, better] = [after(20, resistance), after(2000, resistance)];
    expect(Math.abs(better - expected)).toBeLessThanOrEqual(Math.abs(poor - expected) + 1e-4);
  });
});

// Computed by hand: half-space with a step of its surface, erf(x/(2·√(a·t))).
describe('a half-space from 15 °C whose surface goes to −10 °C, a = 8e-7 m²/s', () => {
  it.each([
    [0.05, 1, 2.2495],
    [0.1, 6, 0.2341],
  ])('%p m down after %p h', (depth, time, expected) => {
    const cells = 201;
    const run = slab(2.01, 8e-7 * 2300 * 880, cells);
    for (let i = 0; i < time * 360; i++) run.step(10, { temperature: -10, resistance: 0 }, NOTHING);
    const below = Math.round(depth / 0.01);
    // The depth lies on the border of two cells of a centimetre.
    const temperature = (run.temperatures[below - 1]! + run.temperatures[below]!) / 2;
    expect(Math.abs(temperature - expected)).toBeLessThan(0.05);
  });
});

// Formula published: ACI 306R and PCA. Number computed by hand.
describe('temperature of a batch', () => {
  const part = (mass: number, temperature: number) => ({ mass, temperature: celsius(temperature) });

  it('with hot water comes to 15.41 °C', () => {
    const batch = {
      aggregate: part(1800, 2),
      cement: part(335, 10),
      water: part(140, 60),
      freeWater: part(40, 2),
    };
    expect(Math.abs(mixingTemperature(batch) - 15.41)).toBeLessThan(0.01);
  });

  it('of parts that are all as warm is as warm', () => {
    const batch = {
      aggregate: part(1800, 7),
      cement: part(335, 7),
      water: part(140, 7),
      freeWater: part(40, 7),
    };
    expect(mixingTemperature(batch)).toBeCloseTo(7, 12);
  });
});

// From memory: PCA setting-time table.
describe('setting', () => {
  it('takes 1.6 to 2.2 times as long at 40 °F as at 60 °F', () => {
    const factor = settingFactor(fahrenheit(60), fahrenheit(40));
    expect(factor).toBeGreaterThan(1.6);
    expect(factor).toBeLessThan(2.2);
  });
});
