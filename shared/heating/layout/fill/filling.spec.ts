import { describe, expect, it } from '@jest/globals';
import fc from 'fast-check';
import type { Lattice } from '../lattice/lattice.js';
import { bendsFit } from './bends-fit.js';
import { contour } from './contour.js';
import { drawnIn, halfTurns } from './half-turns.js';
import { LoopFiller } from './hang-loops.js';

/** Lines 3 in apart with some nodes taken away. */
function lattice(rows: number, columns: number, taken: readonly number[] = []): Lattice {
  const count = rows * columns;
  const free = Uint8Array.from({ length: count }, (_, i) => (taken.includes(i) ? 0 : 1));
  const both = (i: number, j: number) => (free[i] && free[j] ? 1 : 0);
  return {
    rows,
    columns,
    x: Float64Array.from({ length: count }, (_, i) => 3 * (i % columns)),
    y: Float64Array.from({ length: count }, (_, i) => 3 * Math.floor(i / columns)),
    free,
    alongRow: Uint8Array.from({ length: count }, (_, i) =>
      i % columns === columns - 1 ? 0 : both(i, i + 1),
    ),
    alongColumn: Uint8Array.from({ length: count }, (_, i) =>
      i + columns < count ? both(i, i + columns) : 0,
    ),
    rowGap: 3,
    columnGap: 3,
    bend: 0,
  };
}

/** Lines 3 in apart whose columns lean over by an angle from square, where every corner needs room for a bend of `bend` inches. */
function leaning(rows: number, columns: number, degrees: number, bend: number): Lattice {
  const square = lattice(rows, columns);
  const lean = (degrees * Math.PI) / 180;
  const down = 3 / Math.cos(lean);
  return {
    ...square,
    x: square.x.map((x, i) => x / Math.cos(lean) + Math.floor(i / columns) * down * Math.sin(lean)),
    y: square.y.map((_, i) => Math.floor(i / columns) * down * Math.cos(lean)),
    bend,
  };
}

/** All nodes of a path that is said by its corners. */
function nodesOf(corners: readonly number[], columns: number): number[] {
  const out = [corners[0]!];
  for (const to of corners.slice(1)) {
    const from = out[out.length - 1]!;
    const step = (to - from) % columns === 0 ? columns * Math.sign(to - from) : Math.sign(to - from);
    for (let node = from + step; node !== to; node += step) out.push(node);
    out.push(to);
  }
  return out;
}

describe('the way along the edge', () => {
  it('goes around on the hand that is asked for', () => {
    const four = lattice(4, 4);
    expect(contour(four, 0, 1, 1, 12)).toEqual([0, 4, 8, 12]);
    expect(contour(four, 0, 1, -1, 12)).toEqual([0, 1, 2, 3, 7, 11, 15, 14, 13, 12]);
  });

  it('goes around what stands at the edge', () => {
    expect(contour(lattice(4, 4, [4]), 0, 1, 1, 12)).toEqual([0, 1, 5, 9, 8, 12]);
  });

  it('leaves a dead end out', () => {
    // Node 3 hangs on node 2 alone.
    expect(contour(lattice(3, 4, [7, 11]), 0, 1, -1, 8)).toEqual([0, 1, 2, 6, 10, 9, 8]);
  });

  it('says when it does not lead there', () => {
    expect(contour(lattice(3, 3, [3, 4, 5]), 0, 0, 1, 8)).toBeNull();
    expect(contour(lattice(1, 1), 0, 0, 1, 0)).toBeNull();
  });
});

describe('hanging loops on a path', () => {
  it('makes the plain serpentine of a rectangle', () => {
    const filler = new LoopFiller(lattice(4, 6), [0, 6, 12, 18]);
    filler.hang('rows', 2);
    expect(filler.corners()).toEqual([0, 5, 11, 6, 12, 17, 23, 18]);
    expect(filler.bare()).toBe(0);
  });

  it('leaves the last row of an odd number bare, and fills it only with loops as short as are allowed', () => {
    const filler = new LoopFiller(lattice(3, 6), [0, 6, 12]);
    filler.hang('rows', 2);
    filler.hang('both', 2);
    expect(filler.bare()).toBe(5);
    filler.hang('both', 1);
    expect(filler.bare()).toBeLessThan(2);
  });

  it('counts a bare node far from all cable as more than one beside it', () => {
    const one = new LoopFiller(lattice(3, 2), [0, 1]);
    expect(one.bare()).toBe(1 + 1 + 6 + 6);
  });

  it('visits no node twice, keeps to free ways and keeps both ends, whatever stands in the way', () => {
    const size = fc.integer({ min: 2, max: 9 });
    fc.assert(
      fc.property(
        size,
        size,
        fc.array(fc.integer({ min: 0, max: 80 }), { maxLength: 8 }),
        (rows, columns, taken) => {
          const field = lattice(
            rows,
            columns,
            taken.filter((n) => n !== 0),
          );
          const corner = (rows - 1) * columns;
          const spine = field.free[corner] ? contour(field, 0, 1, 1, corner) : null;
          if (!spine) return;
          const filler = new LoopFiller(field, spine);
          filler.hang('rows', 3);
          filler.hang('both', 1);
          const path = nodesOf(filler.corners(), columns);
          expect(new Set(path).size).toBe(path.length);
          expect([path[0], path[path.length - 1]]).toEqual([0, corner]);
          path.forEach((n, i) => {
            expect(field.free[n]).toBe(1);
            const next = path[i + 1];
            if (next === undefined) return;
            const ways = Math.abs(next - n) === 1 ? field.alongRow : field.alongColumn;
            expect(ways[Math.min(n, next)]).toBe(1);
          });
        },
      ),
    );
  });
});

describe('room for bends where lines meet aslant', () => {
  it('is what the tangents of both corners need', () => {
    // Two corners of 90° share 3 in: bends of up to 1.5 in.
    const square = lattice(3, 3);
    expect(bendsFit({ ...square, bend: 1.5 }, [0, 2, 5, 3])).toBe(true);
    expect(bendsFit({ ...square, bend: 1.6 }, [0, 2, 5, 3])).toBe(false);
    // From a row down a column that leans back by 45° and on along the row: two turns of 135°, tangent 2.414 each.
    const long = 3 / Math.cos(Math.PI / 4);
    const back = leaning(2, 6, -45, long / (2 * Math.tan((67.5 * Math.PI) / 180)));
    expect(bendsFit({ ...back, bend: back.bend - 0.01 }, [0, 2, 8, 11])).toBe(true);
    expect(bendsFit({ ...back, bend: back.bend + 0.01 }, [0, 2, 8, 11])).toBe(false);
  });

  it('is kept by every loop that is hung', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 3, max: 8 }),
        fc.integer({ min: 3, max: 8 }),
        fc.integer({ min: -50, max: 50 }),
        fc.constantFrom(1, 1.25, 1.5),
        (rows, columns, degrees, bend) => {
          const field = leaning(rows, columns, degrees, bend);
          const spine = contour(field, 0, 1, 1, (rows - 1) * columns)!;
          const filler = new LoopFiller(field, spine);
          filler.hang('rows', 3);
          filler.hang('both', 1);
          expect(bendsFit(field, filler.corners())).toBe(true);
        },
      ),
    );
  });
});

describe('drawing half turns in', () => {
  const at = (x: number, y: number) => ({ x, y });
  const line = [at(0, 0), at(30, 0), at(30, 3), at(0, 3), at(0, 6), at(30, 6)];
  const length = (points: readonly { x: number; y: number }[]) =>
    points.slice(1).reduce((sum, p, i) => sum + Math.hypot(p.x - points[i]!.x, p.y - points[i]!.y), 0);

  it('finds where a line goes back beside itself', () => {
    expect(halfTurns(line, 3).map((turn) => turn.at)).toEqual([1, 3]);
    expect(halfTurns(line, 1)).toEqual([]);
    expect(halfTurns([at(0, 0), at(30, 0), at(30, 3), at(60, 3)], 3)).toEqual([]);
  });

  it('gives up twice as much cable as it draws in, at each half turn', () => {
    const turns = halfTurns(line, 3);
    expect(length(line) - length(drawnIn(line, turns, 2))).toBeCloseTo(8, 9);
    expect(drawnIn(line, turns, 0)).toEqual(line);
  });

  it('never draws further than both runs allow', () => {
    const turns = halfTurns(line, 3);
    expect(length(line) - length(drawnIn(line, turns, 99))).toBeCloseTo(4 * 13.5, 9);
  });
});
