import { describe, expect, it } from '@jest/globals';
import fc from 'fast-check';
import type { Field } from '../field.js';
import { rounded } from '../fillet.js';
import { Buckets } from './buckets.js';
import { nearestOnGrid } from './nearest-on-grid.js';
import { mayLie, roomTo } from './room.js';
import { samplePath } from './sample-path.js';
import { GapFinder } from './widest-gap.js';

const at = (x: number, y: number) => ({ x, y });
const square = (size: number, keepOuts: Field['keepOuts'] = []): Field => ({
  key: 'landing',
  areaKey: 'landing',
  kind: 'landing',
  sides: [at(0, 0), at(size, 0), at(size, size), at(0, size)].map((a, i, all) => ({
    a,
    b: all[(i + 1) % 4]!,
    setback: 3,
  })),
  keepOuts,
  level: 0,
});
const drain: Field['keepOuts'][number] = {
  kind: 'outline',
  name: 'drain',
  clearance: 2,
  outline: [at(20, 20), at(40, 20), at(40, 24), at(20, 24)],
};
const line = (...points: [number, number][]) =>
  samplePath(
    rounded(
      points.map(([x, y]) => ({ x, y, z: 0 })),
      () => 1.5,
    ),
    0.5,
  );

const coordinate = fc.double({ min: -50, max: 50, noNaN: true });
const places = fc.array(fc.tuple(coordinate, coordinate), { minLength: 1, maxLength: 40 });

describe('the widest gap', () => {
  it('lies as far from a single run as the field reaches, computed by hand', () => {
    const gap = new GapFinder(square(40), 1.5, 0.5).widest(line([3, 3], [37, 3]));
    expect(gap.across).toBeCloseTo(2 * 34, 1);
    expect(gap.at.y).toBeCloseTo(37, 1);
  });
  it('is the spacing where runs lie side by side', () => {
    const runs = line([3, 3], [37, 3], [37, 20], [3, 20], [3, 37], [37, 37]);
    expect(new GapFinder(square(40), 1.5, 0.5).widest(runs).across).toBeGreaterThan(16.9);
    expect(new GapFinder(square(40), 1.5, 0.5).widest(runs).across).toBeLessThan(24.1);
  });
  it('is not looked for where the cable may not lie', () => {
    const field = square(60, [{ kind: 'round', name: 'post', centre: at(30, 30), radius: 24, clearance: 3 }]);
    const around = line([3, 3], [57, 3], [57, 57], [3, 57], [3, 4.5]);
    // Widest at the corners: from the circle that the post keeps, of 27 in, to both runs beside it.
    expect(new GapFinder(field, 1.5, 0.5).widest(around).across).toBeCloseTo(2 * (27 - 27 / Math.SQRT2), 0);
    expect(new GapFinder(square(60), 1.5, 0.5).widest(around).across).toBeGreaterThan(50);
  });
  it('is without bound where no cable lies', () => {
    const other = { ...square(40), level: -7 };
    expect(new GapFinder(other, 1.5, 1).widest(line([3, 3], [37, 3])).across).toBe(Infinity);
  });
});

describe('where the cable may lie', () => {
  it('is inside the setbacks and clear of keep-outs, by what runs on both hands need at least', () => {
    const field = square(60, [drain]);
    expect(mayLie(field, at(3, 3), 1.5)).toBe(true);
    expect(mayLie(field, at(2.99, 3), 1.5)).toBe(false);
    expect(mayLie(field, at(30, 26), 1.5)).toBe(true);
    expect(mayLie(field, at(30, 25.9), 1.5)).toBe(false);
    expect(mayLie(field, at(30, 26), 2.5)).toBe(false);
    expect(mayLie(field, at(-20, 30), 1.5)).toBe(false);
  });
  it('knows how deep inside a drain a place is', () => {
    expect(roomTo(drain, at(30, 22))).toBe(-2);
    expect(roomTo(drain, at(43, 28))).toBe(5);
  });
});

describe('finding what is near', () => {
  it('shows every place within the side of a square', () => {
    fc.assert(
      fc.property(places, coordinate, coordinate, (points, x, y) => {
        const [xs, ys] = [Float64Array.from(points, (p) => p[0]), Float64Array.from(points, (p) => p[1])];
        const buckets = new Buckets(xs, ys, points.length, 7);
        points.forEach((_, i) => buckets.put(i));
        const seen = new Set<number>();
        buckets.near(x, y, (i) => seen.add(i));
        points.forEach(([px, py], i) => {
          if (Math.hypot(px - x, py - y) <= 7) expect(seen.has(i)).toBe(true);
        });
      }),
    );
  });

  it('hands the nearest place on over a grid, off by less than half its pitch', () => {
    fc.assert(
      fc.property(places, (points) => {
        const [x, y] = [Float64Array.from(points, (p) => p[0]), Float64Array.from(points, (p) => p[1])];
        const grid = { left: -50, top: -50, pitch: 2, columns: 51, rows: 51 };
        const samples = { count: points.length, x, y, z: x, along: x };
        const nearest = nearestOnGrid(
          grid,
          samples,
          points.map((_, i) => i),
        );
        for (let node = 0; node < nearest.length; node += 7) {
          const [gx, gy] = [-50 + (node % 51) * 2, -50 + Math.floor(node / 51) * 2];
          const away = (i: number) => Math.hypot(x[i]! - gx, y[i]! - gy);
          const least = Math.min(...points.map((_, i) => away(i)));
          expect(away(nearest[node]!)).toBeLessThan(least + 1);
        }
      }),
      { numRuns: 30 },
    );
  });
});
