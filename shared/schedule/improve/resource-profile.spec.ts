import { describe, expect, test } from '@jest/globals';
import fc from 'fast-check';
import { ResourceProfile } from './resource-profile.js';

/** The same by a plain table of what is free. */
class Table {
  private readonly free: number[][];
  constructor(
    private readonly capacities: readonly number[],
    private readonly demands: readonly (readonly number[])[],
    slots: number,
  ) {
    this.free = Array.from({ length: slots }, () => [...capacities]);
  }
  fits(i: number, start: number, duration: number): boolean {
    for (let t = start; t < start + duration; t++) {
      const free = this.free[t] ?? this.capacities;
      if (this.demands[i]!.some((taken, r) => taken > free[r]!)) return false;
    }
    return true;
  }
  earliest(i: number, at: number, duration: number): number {
    let start = at;
    while (!this.fits(i, start, duration)) start++;
    return start;
  }
  take(i: number, start: number, duration: number): void {
    for (let t = start; t < start + duration; t++) {
      this.demands[i]!.forEach((taken, r) => (this.free[t]![r]! -= taken));
    }
  }
}

describe('what is free of several resources', () => {
  // Capacities on both sides of what a lane of 8 and of 16 bits holds, and more resources than fit one word.
  const cases = fc
    .record({
      capacities: fc.array(
        fc.oneof(fc.nat(127), fc.nat(32_767), fc.constantFrom(127, 128, 32_767, 32_768, 1e6)),
        {
          minLength: 0,
          maxLength: 6,
        },
      ),
      shares: fc.array(fc.array(fc.double({ min: 0, max: 1, noNaN: true }), { minLength: 6, maxLength: 6 }), {
        minLength: 1,
        maxLength: 8,
      }),
      durations: fc.array(fc.nat(4), { minLength: 8, maxLength: 8 }),
      ats: fc.array(fc.nat(12), { minLength: 8, maxLength: 8 }),
    })
    .map(({ capacities, shares, ...rest }) => ({
      capacities,
      demands: shares.map((row) => capacities.map((all, r) => Math.floor(all * row[r]!))),
      ...rest,
    }));

  test('is told as a plain table tells it, and again after everything is given back', () => {
    fc.assert(
      fc.property(cases, ({ capacities, demands, durations, ats }) => {
        const profile = new ResourceProfile(capacities, demands, 60);
        for (let round = 0; round < 2; round++) {
          profile.clear();
          const table = new Table(capacities, demands, 60);
          demands.forEach((_, i) => {
            const start = table.earliest(i, ats[i]!, durations[i]!);
            expect(profile.earliest(i, ats[i]!, durations[i]!)).toBe(start);
            table.take(i, start, durations[i]!);
            profile.take(i, start, durations[i]!);
          });
        }
      }),
      { numRuns: 500 },
    );
  });

  test('is refused where it cannot be counted', () => {
    expect(() => new ResourceProfile([2 ** 30], [[1]], 5)).toThrow('more than can be counted');
    expect(() => new ResourceProfile([3], [[4]], 5)).toThrow('takes more than there is');
  });
});
