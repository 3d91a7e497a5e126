import { describe, expect, it } from '@jest/globals';
import { blockCount } from '../../shared/entry/quantities/block-count.js';
import { concreteVolume } from '../../shared/entry/quantities/concrete-volume.js';
import { mortarMix } from '../../shared/entry/quantities/mortar.js';
import { cubicYards, feet, inches, rectangle, squareFeet } from '../../shared/units/length.js';

// Source: Navy Builder training manual (published), estimating concrete masonry.
describe('block for a wall', () => {
  it('100 × 10 ft takes 1125', () => {
    expect(blockCount(rectangle(feet(100), feet(10)))).toBe(1125);
  });

  it('a building of 20 × 8 × 8 ft takes 504 before its openings', () => {
    // Four walls: 2 × (20 + 8) ft × 8 ft = 448 ft².
    expect(blockCount(squareFeet(2 * (20 + 8) * 8))).toBe(504);
  });

  it('openings of 24 block leave 480', () => {
    // 24 block is 24 / 1.125 ft² of openings.
    expect(blockCount(squareFeet(448 - 24 / 1.125))).toBe(480);
  });
});

// Source: Navy Builder training manual (published); the number with waste computed by hand.
describe('concrete for a slab', () => {
  it('420 ft² at 4 in is 5.185 yd³', () => {
    expect(concreteVolume(squareFeet(420), inches(4))).toBeCloseTo(5.185, 3);
  });

  it('is 5.44 yd³ with 5 % of waste', () => {
    expect(concreteVolume(squareFeet(420), inches(4), 0.05)).toBeCloseTo(5.44, 2);
  });
});

// Source: Navy Builder training manual, rule 38 (published); numbers computed by hand.
describe('mortar by rule 38', () => {
  it('one to three takes 9.5 sacks and 28.5 ft³ of sand a cubic yard', () => {
    expect(mortarMix(cubicYards(1), 3)).toEqual({ sacks: 9.5, sandCubicFeet: 28.5 });
  });
});
