import { describe, expect, it } from '@jest/globals';
import { exposedConcrete } from '../../shared/entry/footing/exposed-concrete.js';
import { leastCover, leastLap, type BarGrade } from '../../shared/entry/footing/rebar.js';
import { frostPenetration } from '../../shared/entry/frost/berggren.js';
import { neumannLambda } from '../../shared/entry/frost/neumann-root.js';
import { excavationProtection } from '../../shared/entry/rules/excavation-protection.js';
import { respiratorFactor, silicaRespirator } from '../../shared/entry/rules/silica-respirator.js';
import { feet } from '../../shared/units/length.js';
import { fahrenheit } from '../../shared/units/temperature.js';
import { days, hours } from '../../shared/units/time.js';

// Source: IRC R402.2 (published): steps in the weather.
describe('concrete of exposed steps', () => {
  it.each([
    ['negligible', 2500],
    ['moderate', 3000],
    ['severe', 3500],
  ] as const)('where weathering is %s has %p psi', (weathering, strength) => {
    expect(exposedConcrete(weathering)).toMatchObject({
      strength,
      source: { mark: 'P', text: 'IRC R402.2' },
    });
  });

  it('has 5 to 7 % of air where it freezes', () => {
    for (const weathering of ['moderate', 'severe'] as const)
      expect(exposedConcrete(weathering).air).toEqual({ least: 5, most: 7 });
  });
});

// Source: ACI 318 (published).
describe('cover of bars', () => {
  it('is 3 in against earth; 1½ in for #5 and 2 in for #6 in the weather', () => {
    expect(leastCover(5, 'cast-against-earth')).toBe(3);
    expect(leastCover(5, 'weather')).toBe(1.5);
    expect(leastCover(6, 'weather')).toBe(2);
  });
});

// Source: IRC R608.5.4(1) (published).
describe('laps', () => {
  it.each<[number, BarGrade, number]>([
    [4, 40, 20],
    [4, 60, 30],
    [5, 40, 25],
    [5, 60, 38],
    [6, 40, 30],
    [6, 60, 45],
  ])('of #%p in grade %p are %p in', (bar, grade, lap) => {
    expect(leastLap(bar, grade)).toBe(lap);
  });
});

// From memory: worked example of UFC 3-130-06; the exact root computed by hand.
describe('frost by the modified Berggren formula', () => {
  const soil = { texture: 'fine' as const, dryDensity: 100, moisture: 15 };
  const winter = { surfaceIndex: 2500, season: days(160), meanAnnual: fahrenheit(37.2) };
  const found = frostPenetration(winter, soil);

  it('has the properties of the example', () => {
    expect(found.latentHeat).toBe(2160);
    expect(found.conductivity).toBeCloseTo(0.76, 2);
    expect(found.alpha).toBeCloseTo(0.333, 3);
    expect(found.mu).toBeCloseTo(0.204, 3);
    // The example reads it off a chart.
    expect(Math.abs(found.lambda - 0.89)).toBeLessThanOrEqual(0.01);
  });

  it('goes 5.8 ft deep within 0.1 ft, less than the closed form', () => {
    expect(Math.abs(found.depth - 5.8)).toBeLessThanOrEqual(0.1);
    const closed = Math.sqrt(1 / (1 + found.mu * (found.alpha + 0.5))) * (found.depth / found.lambda);
    expect(closed).toBeCloseTo(6.01, 1);
    expect(closed / found.depth).toBeGreaterThan(1.03);
  });
});

// Computed by hand from Neumann's equation. Within 0.5 %.
describe('λ of Neumann’s root', () => {
  it.each([
    [0.2, 0.33, 0.8976],
    [0.1, 0.5, 0.9111],
    [0.5, 1.0, 0.6492],
  ])('of μ %p and α %p is %p', (mu, alpha, lambda) => {
    expect(Math.abs(neumannLambda(mu, alpha) / lambda - 1)).toBeLessThanOrEqual(0.005);
  });
});

// Source: 29 CFR 1926.652 (published).
describe('an excavation', () => {
  it.each([
    [4.99, 'found-stable', true],
    [5, 'found-stable', false],
    [5, 'protected', true],
  ] as const)('of %p ft, %s: %p', (depth, care, ok) => {
    expect(excavationProtection(feet(depth), care)).toMatchObject({ ok, source: { mark: 'P' } });
  });
});

// Source: 29 CFR 1926.1153, Table 1 (published): wet hand-held saw.
describe('a wet hand-held saw', () => {
  it.each([
    [4, false, 0],
    [4.1, false, 10],
    [0.5, true, 10],
  ])('for %p h, indoors %p, asks a factor of %p', (time, indoors, factor) => {
    expect(respiratorFactor(hours(time), indoors)).toBe(factor);
    expect(silicaRespirator(hours(time), indoors, factor).ok).toBe(true);
    expect(silicaRespirator(hours(time), indoors, factor - 1).ok).toBe(false);
  });
});
