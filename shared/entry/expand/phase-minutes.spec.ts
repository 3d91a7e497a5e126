import { describe, expect, it } from '@jest/globals';
import fc from 'fast-check';
import { noQuantities } from '../quantities/quantity-names.js';
import { COMMON_PRACTICE } from '../source.js';
import type { TemplateDuration } from '../template/template.js';
import { phaseMinutes } from './phase-minutes.js';

const work = (crewSize: number, setUpMinutes: number, ...rates: [number, number][]): TemplateDuration => ({
  kind: 'work',
  crewSize,
  setUpMinutes,
  rates: rates.map(([minutesPerUnit], i) => ({ quantity: i === 0 ? 'blocks' : 'cableFeet', minutesPerUnit })),
  source: COMMON_PRACTICE,
});
const amounts = (blocks: number, cableFeet = 0) => ({ ...noQuantities(), blocks, cableFeet });

describe('the length of a phase', () => {
  it.each([
    [work(2, 0, [8, 0]), amounts(150), 600],
    [work(2, 60, [8, 0]), amounts(150), 660],
    [work(2, 60, [8, 0]), amounts(151), 675],
    [work(1, 30), amounts(150), 30],
    [work(3, 0, [8, 0], [1.5, 0]), amounts(30, 100), 135],
    [work(1, 0, [8, 0]), amounts(0), 0],
  ])('%j of %j is as computed by hand', (duration, quantities, expected) => {
    expect(phaseMinutes(duration, quantities)).toBe(expected);
  });

  it('by the clock is taken as it stands, whatever the quantities', () => {
    const cure: TemplateDuration = { kind: 'elapsed', minutes: 2881, source: COMMON_PRACTICE };
    expect(phaseMinutes(cure, amounts(1000))).toBe(2881);
  });

  it('never shrinks with more to do, nor grows with more people', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 5000 }), fc.integer({ min: 1, max: 10 }), (blocks, crew) => {
        const now = phaseMinutes(work(crew, 30, [8, 0]), amounts(blocks));
        expect(phaseMinutes(work(crew, 30, [8, 0]), amounts(blocks + 1))).toBeGreaterThanOrEqual(now);
        expect(phaseMinutes(work(crew + 1, 30, [8, 0]), amounts(blocks))).toBeLessThanOrEqual(now);
        expect(now % 15).toBe(0);
      }),
    );
  });
});
