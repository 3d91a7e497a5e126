import { describe, expect, it } from '@jest/globals';
import { cableCover } from '../../shared/entry/rules/cable-cover.js';
import { cableSpacing } from '../../shared/entry/rules/cable-spacing.js';
import { powerDensity } from '../../shared/entry/rules/power-density.js';
import { walkBase } from '../../shared/entry/rules/walk-base.js';
import { estimateSerpentine } from '../../shared/heating/serpentine.js';
import {
  fromWattsPerSquareMetre,
  spacingForDensity,
  spacingForLength,
  wattsPerFoot,
  wattsPerSquareFoot,
} from '../../shared/units/electrical.js';
import { feet, inches, squareFeet } from '../../shared/units/length.js';

// Source: NEC 426.20 (published): at most 120 W/ft², at least 1½ in of cover, base at least 2 in.
describe('NEC 426.20', () => {
  it.each([
    [120, true],
    [120.01, false],
  ])('%p W/ft²: %p', (density, ok) => {
    expect(powerDensity(wattsPerSquareFoot(density)).ok).toBe(ok);
  });

  it('holds 1300 W/m² against the figure per square foot: 120.77 fails', () => {
    const density = fromWattsPerSquareMetre(1300);
    expect(density).toBeCloseTo(120.77, 2);
    expect(powerDensity(density).ok).toBe(false);
  });

  it.each([
    [1.5, true],
    [1.4, false],
  ])('cover of %p in: %p', (cover, ok) => {
    const finding = cableCover(inches(cover));
    expect(finding.ok).toBe(ok);
    expect(finding.source).toEqual({ mark: 'P', text: 'NEC 426.20' });
  });

  it.each([
    [2, true],
    [1.9, false],
  ])('base of %p in: %p', (base, ok) => {
    expect(walkBase(inches(base)).ok).toBe(ok);
  });
});

// The trade's rule, no source: 3 in on centres at least, 12 in at most.
describe('spacing by the rule of the trade', () => {
  it.each([
    [2.9, false],
    [3, true],
    [12, true],
    [12.1, false],
    [13, false],
  ])('%p in on centres: %p', (spacing, ok) => {
    const finding = cableSpacing(inches(spacing));
    expect(finding.ok).toBe(ok);
    expect(finding.source.mark).toBe('T');
  });
});

// Computed by hand from spacing = 12·w/p = 12·A/L.
describe('spacing formulas', () => {
  it('9 W/ft at 40 W/ft² lies 2.70 in apart', () => {
    expect(spacingForDensity(wattsPerFoot(9), wattsPerSquareFoot(40))).toBeCloseTo(2.7, 10);
  });

  it('240 ft over 60 ft² lies 3.00 in apart', () => {
    expect(spacingForLength(squareFeet(60), feet(240))).toBeCloseTo(3, 10);
  });
});

// Computed by hand: n·(L − s) + (n − 1)·π·s/2 with half-circle turns, n·L + (n − 1)·s with square ones.
describe('60 by 72 in, setback 3 in, spacing 3 in', () => {
  const found = estimateSerpentine({
    across: inches(60),
    alongRuns: inches(72),
    setback: inches(3),
    spacing: inches(3),
  });

  it('takes 19 runs, 106.8 ft with round turns and 109.0 ft with square ones', () => {
    expect(found.runs).toBe(19);
    expect(found.roundTurns).toBeCloseTo(106.8, 1);
    expect(found.squareTurns).toBeCloseTo(109.0, 1);
  });
});
