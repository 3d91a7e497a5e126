import { describe, expect, it } from '@jest/globals';
import fc from 'fast-check';
import { inches } from '../../units/length.js';
import { fahrenheit } from '../../units/temperature.js';
import { days } from '../../units/time.js';
import { frostPenetration, type Winter } from './berggren.js';
import { frostDepth } from './frost-depth.js';
import { neumannLambda } from './neumann-root.js';
import { latentHeat, soilConductivity, soilHeat, type Soil } from './soil.js';

const winterOf = (more: Partial<Winter> = {}): Winter => ({
  surfaceIndex: 1500,
  season: days(120),
  meanAnnual: fahrenheit(45),
  ...more,
});
const silt: Soil = { texture: 'fine', dryDensity: 100, moisture: 15 };
const soils = fc.record({
  texture: fc.constantFrom('fine' as const, 'coarse' as const),
  dryDensity: fc.double({ min: 80, max: 130, noNaN: true }),
  moisture: fc.double({ min: 5, max: 30, noNaN: true }),
});

describe('Neumann’s root', () => {
  it('is below 1, and falls with μ and with α', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.01, max: 1, noNaN: true }),
        fc.double({ min: 0, max: 4, noNaN: true }),
        (mu, alpha) => {
          const found = neumannLambda(mu, alpha);
          expect(found).toBeGreaterThan(0);
          expect(found).toBeLessThan(1);
          expect(neumannLambda(mu + 0.05, alpha)).toBeLessThan(found);
          expect(neumannLambda(mu, alpha + 0.05)).toBeLessThan(found);
        },
      ),
    );
  });

  // Stefan's formula is what is left when the soil itself holds no heat.
  it('goes to 1 as the soil’s own heat goes to nothing', () => {
    expect(neumannLambda(1e-6, 0)).toBeCloseTo(1, 5);
  });

  it('is refused without heat', () => {
    expect(() => neumannLambda(0, 0.3)).toThrow('μ must be more than 0');
    expect(() => neumannLambda(0.2, -0.1)).toThrow('α no less than 0');
  });
});

describe('soil', () => {
  // Computed by hand: 144 × 100 × 0.15; 100 × (0.17 + 0.75 × 0.15).
  it('holds latent and sensible heat by its water', () => {
    expect(latentHeat(silt)).toBe(2160);
    expect(soilHeat(silt)).toBeCloseTo(28.25, 9);
  });

  it('conducts better when it is denser, and sand better than silt', () => {
    expect(soilConductivity({ ...silt, dryDensity: 110 })).toBeGreaterThan(soilConductivity(silt));
    expect(soilConductivity({ ...silt, texture: 'coarse' })).toBeGreaterThan(soilConductivity(silt));
  });
});

describe('frost', () => {
  it('goes deeper in a harder winter and less deep in a warmer place', () => {
    fc.assert(
      fc.property(soils, fc.double({ min: 200, max: 4000, noNaN: true }), (soil, surfaceIndex) => {
        const depth = (more: Partial<Winter>) =>
          frostPenetration(winterOf({ surfaceIndex, ...more }), soil).depth;
        expect(depth({ surfaceIndex: surfaceIndex * 1.1 })).toBeGreaterThan(depth({}));
        expect(depth({ meanAnnual: fahrenheit(50) })).toBeLessThan(depth({}));
        expect(depth({})).toBeGreaterThan(0);
      }),
    );
  });

  it.each([
    [winterOf({ surfaceIndex: 0 }), silt, 'freezing index and season must be more than 0'],
    [winterOf({ meanAnnual: fahrenheit(30) }), silt, 'is permafrost'],
    [winterOf(), { ...silt, dryDensity: 30 }, 'weighs 60 to 150'],
    [winterOf(), { ...silt, moisture: 1 }, 'holds 3 to 40 %'],
  ])('is not guessed for what the formula does not know (%#)', (winter, soil, message) => {
    expect(() => frostPenetration(winter, soil)).toThrow(message);
  });

  it('is the adopted depth where there is one', () => {
    const adopted = { depth: inches(42), source: 'building department' };
    expect(frostDepth(adopted, winterOf(), silt)).toBe(adopted);
  });

  it('is computed where there is none, up to the whole inch, and says so', () => {
    const found = frostDepth(null, winterOf(), silt);
    const depth = frostPenetration(winterOf(), silt).depth * 12;
    expect(Number.isInteger(found.depth)).toBe(true);
    expect(found.depth - depth).toBeGreaterThanOrEqual(0);
    expect(found.depth - depth).toBeLessThan(1);
    expect(found.source).toContain('from memory');
    expect(found.source).toContain('no depth is adopted here');
  });
});
