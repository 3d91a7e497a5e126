import { describe, expect, it } from '@jest/globals';
import fc from 'fast-check';
import { inches } from '../units/length.js';
import { estimateSerpentine } from './serpentine.js';

const sides = fc.double({ min: 24, max: 200, noNaN: true });

describe('a serpentine in a plain rectangle', () => {
  it('is longer with square turns, and runs fit between the setbacks', () => {
    fc.assert(
      fc.property(sides, sides, fc.double({ min: 3, max: 12, noNaN: true }), (across, along, spacing) => {
        const facts = {
          across: inches(across),
          alongRuns: inches(along),
          setback: inches(3),
          spacing: inches(spacing),
        };
        const found = estimateSerpentine(facts);
        expect((found.runs - 1) * spacing).toBeLessThanOrEqual(across - 6 + 1e-6);
        expect(found.runs * spacing).toBeGreaterThan(across - 6 - 1e-6);
        expect(found.squareTurns).toBeGreaterThanOrEqual(found.roundTurns);
      }),
    );
  });

  it('of one run is the run', () => {
    const facts = { across: inches(7), alongRuns: inches(30), setback: inches(3), spacing: inches(3) };
    expect(estimateSerpentine(facts)).toMatchObject({ runs: 1, squareTurns: 2 });
  });

  it('is refused where nothing can be laid', () => {
    const facts = { across: inches(5), alongRuns: inches(30), setback: inches(3), spacing: inches(3) };
    expect(() => estimateSerpentine(facts)).toThrow(
      'a setback of 3 in leaves no room in 5 by 30 in; lessen it',
    );
    expect(() => estimateSerpentine({ ...facts, spacing: inches(0) })).toThrow('spacing must be more than 0');
  });
});
