import { describe, expect, it } from '@jest/globals';
import { adiabatic } from '../../shared/cure/hydration/adiabatic.js';
import { affinityStep, type Affinity } from '../../shared/cure/hydration/affinity.js';
import { degreeOfHydration } from '../../shared/cure/hydration/hydration.js';
import { celsius, type Celsius } from '../../shared/units/temperature.js';

const hydration = { ultimate: 0.85, tauHours: 13.5, exponent: 0.9 };
const CAPACITY = 2458 * 870;

// Source: OOFEM, an open finite-element program, hydration test 01 (recomputed).
describe('three-parameter hydration', () => {
  it('has 0.4973780 after 27 h at the reference', () => {
    expect(Math.abs(degreeOfHydration(hydration, 27) - 0.497378)).toBeLessThan(1e-6);
  });
});

// Source: OOFEM, hydration test 02 (recomputed); converged values and limit computed by hand.
describe('the same without loss of heat, from 25 °C', () => {
  const rate = (t: Celsius) => Math.exp((38_300 / 8.314) * (1 / 298.15 - 1 / (273.15 + t)));
  const heat = { hydration, potential: 509_000, cement: 409, rate };

  it.each([
    [5, 35.955, 0.1125],
    [29, 104.397, 0.81558],
  ])('by steps of an hour, after %p h', (steps, temperature, degree) => {
    const state = adiabatic(heat, celsius(25), CAPACITY, steps, 1);
    expect(Math.abs(state.temperature - temperature)).toBeLessThan(2e-3);
    expect(Math.abs(state.degree - degree)).toBeLessThan(2e-3);
  });

  it.each([
    [5, 34.297],
    [29, 104.094],
  ])('converged, after %p h', (time, temperature) => {
    const state = adiabatic(heat, celsius(25), CAPACITY, time * 1000, 1e-3);
    expect(Math.abs(state.temperature - temperature)).toBeLessThan(2e-3);
  });

  it('rises by 82.748 K in the end', () => {
    const state = adiabatic(heat, celsius(25), CAPACITY, 4000, 100_000);
    expect(Math.abs(state.temperature - 25 - 82.748)).toBeLessThan(0.01);
  });
});

// Source: BAM FenicsConcrete, an open program, its own test (recomputed): steps of 1800 s, read in between evenly.
describe('affinity form at 25 °C', () => {
  const form: Affinity = {
    b1: 2.916e-4,
    b2: 0.0024229,
    eta: 5.554,
    ultimate: 0.875,
    activation: 0,
    reference: celsius(25),
  };

  it('has 0.33872329 and 169.3616 J/g after 40 000 s', () => {
    let before = 0;
    let degree = 0;
    for (let time = 0; time < 40_000; time += 1800) {
      before = degree;
      degree = affinityStep(form, degree, 1800, () => celsius(25));
    }
    const read = before + ((degree - before) * (40_000 - 22 * 1800)) / 1800;
    expect(Math.abs(read - 0.33872329)).toBeLessThan(1e-7);
    expect(Math.abs(500 * read - 169.3616)).toBeLessThan(1e-4);
  });
});

// Source: OOFEM, hydration test 04 (recomputed); density and heat as in test 02.
describe('affinity form without loss of heat, cast at 2 h', () => {
  const form: Affinity = {
    b1: 3.51861e-4,
    b2: 8e-6,
    eta: 7.4,
    ultimate: 0.85,
    activation: 38_300,
    reference: celsius(25),
  };
  const temperatureAt = (degree: number) => celsius(25 + (degree * 509_000 * 400) / CAPACITY);

  it('has 74.12 °C at 20 h, 85.94 °C and 0.6394 at 29 h', () => {
    const seconds = 2;
    let degree = 0;
    let at20 = 0;
    for (let step = 1; step <= (27 * 3600) / seconds; step++) {
      degree = affinityStep(form, degree, seconds, temperatureAt);
      if (step * seconds === 18 * 3600) at20 = temperatureAt(degree);
    }
    expect(Math.abs(at20 - 74.12)).toBeLessThan(0.02);
    expect(Math.abs(temperatureAt(degree) - 85.94)).toBeLessThan(0.02);
    expect(Math.abs(degree - 0.6394)).toBeLessThan(1e-3);
  });
});
