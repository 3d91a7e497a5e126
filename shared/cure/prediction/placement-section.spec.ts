import { describe, expect, it } from '@jest/globals';
import { inches } from '../../units/length.js';
import { fahrenheit } from '../../units/temperature.js';
import { DEFAULT_MIXTURES } from '../mixture.js';
import { heatPerVolume } from '../hydration/hydration-heat.js';
import { sectionOf, type PlacementSection } from './placement-section.js';

const of = (section: Partial<PlacementSection>, mixture = DEFAULT_MIXTURES.concrete) =>
  sectionOf({ kind: 'on-ground', thickness: inches(10), ...section }, mixture, fahrenheit(59));
const names = (section: Partial<PlacementSection>) => of(section).layers.map(({ material }) => material.name);

describe('the layers of a placement', () => {
  it('of a footing: concrete as placed over ground of 40 °F', () => {
    const section = of({});
    expect(names({})).toEqual(['concrete', 'ground', 'ground', 'ground']);
    expect(section).toMatchObject({ placed: 0, below: 'ground' });
    expect(section.layers[0]!.thickness).toBeCloseTo(0.254, 9);
    expect(section.layers[0]!.start).toBeCloseTo(15, 9);
    expect(section.layers[1]!.start).toBeCloseTo(40 / 9, 9);
  });

  it('of filled block: free on both faces', () => {
    expect(names({ kind: 'free', block: true })).toEqual(['filled block']);
    expect(of({ kind: 'free' }).below).toBe('air');
  });

  it('of a bed: mortar between stone and block', () => {
    const bed = { kind: 'bed', thickness: inches(1.5), stone: inches(2) } as const;
    expect(names(bed).slice(0, 3)).toEqual(['stone', 'mortar', 'filled block']);
    expect(of(bed).placed).toBe(1);
  });

  it('set heat free in what was placed only', () => {
    const heats = of({ kind: 'bed', stone: inches(2) }).layers.map(({ heat }) => heat !== null);
    expect(heats).toEqual([false, true, false, false, false, false]);
  });

  it('follow the cement, and an accelerator brings the heat earlier but makes no more', () => {
    const heat = (more: object) => of({}, { ...DEFAULT_MIXTURES.concrete, ...more }).layers[0]!.heat!;
    expect(heatPerVolume(heat({ cementLbPerYd3: 600 }))).toBeCloseTo(1.2 * heatPerVolume(heat({})), 3);
    expect(heatPerVolume(heat({ accelerated: true }))).toBe(heatPerVolume(heat({})));
    expect(heat({ accelerated: true }).hydration.tauHours).toBeLessThan(heat({}).hydration.tauHours);
  });

  it('take a measured ground', () => {
    expect(of({ ground: fahrenheit(50) }).layers[1]!.start).toBeCloseTo(10, 9);
  });
});
