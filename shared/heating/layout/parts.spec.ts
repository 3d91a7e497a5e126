import { describe, expect, it } from '@jest/globals';
import fc from 'fast-check';
import { bandSpan } from './capsule.js';
import { chamferFor, roomAtNosing } from './chamfer.js';
import { rounded } from './fillet.js';
import { innerRing } from './inner-ring.js';
import { tightestBend } from './measure/bend-radius.js';
import { closestRuns } from './measure/run-spacing.js';
import { samplePath } from './measure/sample-path.js';
import { cutToLength, pathLength } from './cable-path.js';

const place = (x: number, y: number, z = 0) => ({ x, y, z });
const far = () => Infinity;

describe('rounding corners', () => {
  it('makes two corners of a turn one half circle', () => {
    const pieces = rounded([place(0, 0), place(10, 0), place(10, 3), place(0, 3)], far);
    expect(pieces.map(({ kind }) => kind)).toEqual(['straight', 'bend', 'bend', 'straight']);
    expect(pathLength(pieces)).toBeCloseTo(2 * 8.5 + Math.PI * 1.5, 9);
    expect(tightestBend(pieces)).toBeCloseTo(1.5, 9);
  });

  it('gives a slanted turn the circle that touches both runs', () => {
    const pieces = rounded([place(0, 0), place(10, 0), place(12, 3), place(0, 3)], far);
    expect(tightestBend(pieces)).toBeCloseTo(1.5, 9);
  });

  it('is as long as a serpentine computed by hand: n runs and n − 1 half circles', () => {
    // n·(L − s) + (n − 1)·πs/2, with the outer ends of the first and last run straight.
    const [n, L, s] = [6, 40, 3];
    const line = Array.from({ length: n }, (_, i) => {
      const xs = i % 2 === 0 ? [0, L] : [L, 0];
      return xs.map((x) => place(x, i * s));
    }).flat();
    const inner = n * (L - s) + ((n - 1) * Math.PI * s) / 2;
    expect(pathLength(rounded(line, far))).toBeCloseTo(inner + s, 9);
  });

  it('bends a step down in its own upright plane', () => {
    const pieces = rounded(
      [place(0, 0, 0), place(9, 0, 0), place(10, 0, -1), place(10, 0, -7), place(20, 0, -7)],
      () => 1,
    );
    expect(tightestBend(pieces)).toBeCloseTo(1, 9);
    for (const piece of pieces) expect(piece.from.y).toBe(0);
  });
});

describe('the chamfer where the cable steps down', () => {
  it('is about an inch for usual cables (common practice, no source) and larger for a wide bend', () => {
    expect(chamferFor(1)).toBe(1);
    expect(chamferFor(1.5)).toBe(1);
    expect(chamferFor(2)).toBe(1.25);
  });

  it('lets the path keep its bend', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.5, max: 4, noNaN: true }), (bend) => {
        const c = chamferFor(bend);
        const back = roomAtNosing(bend);
        const line = [place(0, 30), place(0, 0), place(back - c, 0), place(back, 0, -c), place(back, 0, -20)];
        expect(tightestBend(rounded(line, far))).toBeGreaterThanOrEqual(bend - 1e-9);
      }),
    );
  });
});

describe('what a capsule takes of a band', () => {
  const coordinate = fc.double({ min: -20, max: 20, noNaN: true });
  it('is what sampling finds', () => {
    fc.assert(
      fc.property(
        coordinate,
        coordinate,
        coordinate,
        coordinate,
        fc.double({ min: 0.5, max: 8, noNaN: true }),
        coordinate,
        (ax, ay, bx, by, radius, y1) => {
          const capsule = { a: { x: ax, y: ay }, b: { x: bx, y: by }, radius };
          const span = bandSpan(capsule, y1, y1 + 3);
          for (let k = 0; k <= 40; k++) {
            const [cx, cy] = [ax + ((bx - ax) * k) / 40, ay + ((by - ay) * k) / 40];
            for (let t = 0; t < 16; t++) {
              const [x, y] = [
                cx + radius * Math.cos((t * Math.PI) / 8),
                cy + radius * Math.sin((t * Math.PI) / 8),
              ];
              if (y < y1 || y > y1 + 3) continue;
              expect(span).not.toBeNull();
              expect(x).toBeGreaterThanOrEqual(span![0] - 1e-6);
              expect(x).toBeLessThanOrEqual(span![1] + 1e-6);
            }
          }
        },
      ),
    );
  });

  it('is exact for a disc: at its middle the diameter, beside it the chord', () => {
    const disc = { a: { x: 0, y: 0 }, b: { x: 0, y: 0 }, radius: 5 };
    expect(bandSpan(disc, -1, 1)).toEqual([-5, 5]);
    expect(bandSpan(disc, 3, 9)).toEqual([-4, 4]);
    expect(bandSpan(disc, 5.1, 9)).toBeNull();
  });
});

describe('the line along the setbacks', () => {
  const side = (ax: number, ay: number, bx: number, by: number, setback: number) => ({
    a: { x: ax, y: ay },
    b: { x: bx, y: by },
    setback,
  });

  it('keeps each side its own width', () => {
    const ring = innerRing([
      side(0, 0, 60, 0, 3),
      side(60, 0, 60, 40, 4),
      side(60, 40, 0, 40, 5),
      side(0, 40, 0, 0, 6),
    ]);
    expect(ring!.map(({ a }) => [a.x, a.y])).toEqual([
      [6, 3],
      [56, 3],
      [56, 35],
      [6, 35],
    ]);
  });

  it('steps over where two sides in one line keep different widths, clear of the wider one', () => {
    const ring = innerRing([
      side(0, 0, 60, 0, 3),
      side(60, 0, 60, 40, 3),
      side(60, 40, 30, 40, 3),
      side(30, 40, 0, 40, 2),
      side(0, 40, 0, 0, 3),
    ])!;
    expect(ring.map(({ a }) => [a.x, a.y])).toEqual([
      [3, 3],
      [57, 3],
      [57, 37],
      [27, 37],
      [27, 38],
      [3, 38],
    ]);
    expect(ring.filter((one) => one.side === -1)).toHaveLength(1);
  });

  it('is nothing when the setbacks meet', () => {
    expect(
      innerRing([side(0, 0, 60, 0, 3), side(60, 0, 60, 5, 3), side(60, 5, 0, 5, 3), side(0, 5, 0, 0, 3)]),
    ).toBeNull();
  });
});

describe('measuring a path', () => {
  it('finds how near runs come, not how near the cable is to itself along a bend', () => {
    const line = [place(0, 0), place(40, 0), place(40, 3), place(0, 3), place(0, 5.5), place(40, 5.5)];
    const found = closestRuns(samplePath(rounded(line, far), 0.1), 2.5, 6);
    expect(found).toBeCloseTo(2.5, 1);
    const single = samplePath(rounded([place(0, 0), place(40, 0), place(40, 30)], far), 0.1);
    expect(closestRuns(single, 3, 3)).toBe(Infinity);
  });

  it('sees a break in direction as no bend at all', () => {
    expect(
      tightestBend([
        { kind: 'straight', from: place(0, 0), to: place(5, 0) },
        { kind: 'straight', from: place(5, 0), to: place(5, 5) },
      ]),
    ).toBe(0);
  });

  it('cuts to the inch, in the middle of a bend too', () => {
    const pieces = rounded([place(0, 0), place(10, 0), place(10, 3), place(0, 3)], far);
    for (const over of [0.5, 9, 10.3, 12.9, 15]) {
      expect(pathLength(cutToLength(pieces, over))).toBeCloseTo(pathLength(pieces) - over, 9);
    }
  });
});
