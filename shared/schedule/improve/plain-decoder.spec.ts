import { describe, expect, test } from '@jest/globals';
import fc from 'fast-check';
import { PlainDecoder } from './plain-decoder.js';
import { broken, projectOf } from './testing/small-project.js';

const draws = fc.array(fc.nat(99), { minLength: 150, maxLength: 150 });
const projects = (most: number) => draws.map((drawn) => projectOf(drawn, most));

const passes = fc.record({
  project: projects(10),
  keys: fc.array(fc.integer({ min: -50, max: 50 }), { minLength: 10, maxLength: 10 }),
  delay: fc.oneof(fc.nat(8), fc.constant(Infinity)),
  direction: fc.constantFrom(0 as const, 1 as const),
});

describe('a pass', () => {
  test('keeps links and quantities in either direction, and says the latest finish', () => {
    fc.assert(
      fc.property(passes, ({ project, keys, delay, direction }) => {
        const decoder = new PlainDecoder(project);
        const starts = new Int32Array(decoder.activities);
        const end = decoder.decode(direction, Float64Array.from(keys), delay, starts);
        expect(broken(project, starts, direction === 1)).toBe(0);
        expect(end).toBe(Math.max(...project.durations.map((duration, i) => starts[i]! + duration)));
        expect(end).toBeGreaterThanOrEqual(decoder.bound);
      }),
      { numRuns: 500 },
    );
  });

  test('leaves no activity that could start earlier where it is', () => {
    fc.assert(
      fc.property(passes, ({ project, keys, delay }) => {
        const decoder = new PlainDecoder(project);
        const starts = new Int32Array(decoder.activities);
        decoder.decode(0, Float64Array.from(keys), delay, starts);
        starts.forEach((start, i) => {
          const moved = Int32Array.from(starts);
          for (let t = 0; t < start; t++) {
            moved[i] = t;
            expect(broken(project, moved, false)).toBeGreaterThan(0);
          }
        });
      }),
      { numRuns: 200 },
    );
  });

  test('without delay starts nothing later than it could when its turn came', () => {
    // Two machines' worth of one resource; the long one would be first by key but cannot start before the short ones.
    const project = {
      durations: [2, 3, 1],
      successors: [[], [], []],
      demands: [[1], [2], [1]],
      capacities: [2],
    };
    const decoder = new PlainDecoder(project);
    const starts = new Int32Array(3);
    expect(decoder.decode(0, Float64Array.of(0, 1, 2), 0, starts)).toBe(5);
    expect([...starts]).toEqual([0, 2, 0]);
    expect(decoder.decode(0, Float64Array.of(0, 1, 2), Infinity, starts)).toBe(5);
    expect([...starts]).toEqual([0, 2, 0]);
    expect(decoder.decode(0, Float64Array.of(1, 0, 2), Infinity, starts)).toBe(5);
    expect([...starts]).toEqual([3, 0, 3]);
  });

  test('is refused for a circle', () => {
    const circle = { durations: [1, 1], successors: [[1], [0]], demands: [[], []], capacities: [] };
    expect(() => new PlainDecoder(circle)).toThrow('in a circle');
  });
});
