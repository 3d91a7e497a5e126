import { describe, expect, it } from '@jest/globals';
import fc from 'fast-check';
import { distance, turned, type Point } from '../../../entry/geometry/point.js';
import type { KeptSide } from '../../../entry/geometry/split-at-joint.js';
import type { Field } from '../field.js';
import { innerRing } from '../inner-ring.js';
import { mayLie } from '../measure/room.js';
import { nearestNode, neighbour, placeOf, type Lattice } from './lattice.js';
import { cutsOf, divide } from './lines.js';
import { slantedPlan } from './slanted-plan.js';
import { squarePlan } from './square-plan.js';

const at = (x: number, y: number): Point => ({ x, y });
const field = (corners: readonly Point[], setback: number, keepOuts: Field['keepOuts'] = []): Field => ({
  key: 'landing',
  areaKey: 'landing',
  kind: 'landing',
  sides: corners.map((a, i): KeptSide => ({ a, b: corners[(i + 1) % corners.length]!, setback })),
  keepOuts,
  level: 0,
});
const post: Field['keepOuts'][number] = {
  kind: 'round',
  name: 'post',
  centre: at(30, 24),
  radius: 2,
  clearance: 2,
};
const L = [at(0, 0), at(60, 0), at(60, 30), at(33, 30), at(33, 66), at(0, 66)];

describe('lines across a field', () => {
  const family = { cuts: [0, 30, 50], apart: (a: number, b: number) => Math.abs(a - b) };
  it('lie evenly between cuts, as close as asked and no closer', () => {
    expect(divide(family, { pitch: 9, fewer: 0 })).toEqual([0, 10, 20, 30, 40, 50]);
    expect(divide(family, { pitch: 10.01, fewer: 0 })).toEqual([0, 15, 30, 50]);
    expect(divide(family, { pitch: 99, fewer: 0 })).toEqual([0, 30, 50]);
  });
  it('are one fewer in each stretch that is named', () => {
    expect(divide(family, { pitch: 9, fewer: 1 })).toEqual([0, 15, 30, 40, 50]);
    expect(divide(family, { pitch: 9, fewer: 2 })).toEqual([0, 10, 20, 30, 50]);
  });
  it('keep of two cuts too close to each other the one named first', () => {
    expect(cutsOf([4, 3, 57, 30, 31], family.apart, 3)).toEqual([4, 30, 57]);
  });
});

/** Every node and every way between two lies where the cable may, held against the measure's own reckoning. */
function checked(lattice: Lattice, one: Field, closest: number): void {
  for (let node = 0; node < lattice.free.length; node++) {
    if (!lattice.free[node]) continue;
    // On the line itself is not too near.
    const inset = {
      ...one,
      sides: one.sides.map((side) => ({ ...side, setback: side.setback - 1e-4 })),
      keepOuts: one.keepOuts.map((out) => ({ ...out, clearance: out.clearance - 1e-4 })),
    };
    expect(mayLie(inset, placeOf(lattice, node), closest / 2 - 1e-4)).toBe(true);
    for (const heading of [0, 1] as const) {
      const next = neighbour(lattice, node, heading);
      if (next < 0) continue;
      expect(distance(placeOf(lattice, node), placeOf(lattice, next))).toBeGreaterThan(closest - 1e-4);
    }
  }
}

describe('square lines', () => {
  it('lie along every side of an L and leave out what is outside', () => {
    const one = field(L, 3);
    const plan = squarePlan(one, innerRing(one.sides)!, [], 0, 3);
    expect(plan.rows.cuts).toEqual([3, 27, 63]);
    expect(plan.columns.cuts).toEqual([3, 30, 57]);
    const lattice = plan.build(plan.rows.cuts, plan.columns.cuts);
    expect([...lattice.free]).toEqual([1, 1, 1, 1, 1, 1, 1, 1, 0]);
    checked(lattice, one, 3);
  });

  it('stay clear of a post, in whatever direction the field lies', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -3, max: 3, noNaN: true }),
        fc.double({ min: 3, max: 9, noNaN: true }),
        (angle, pitch) => {
          const spun = field(
            L.map((p) => turned(p, angle)),
            3,
            [{ ...post, centre: turned(at(30, 14), angle) }],
          );
          const plan = squarePlan(spun, innerRing(spun.sides)!, [], angle, 3);
          checked(
            plan.build(divide(plan.rows, { pitch, fewer: 0 }), divide(plan.columns, { pitch, fewer: 0 })),
            spun,
            3,
          );
        },
      ),
      { numRuns: 30 },
    );
  });

  it('have one where the cable comes in, instead of one too close beside it', () => {
    const one = field(L, 3);
    const plan = squarePlan(one, innerRing(one.sides)!, [at(5, 3)], 0, 3);
    expect(plan.columns.cuts).toEqual([5, 30, 57]);
  });
});

describe('slanted lines', () => {
  const leg = [at(0, 0), at(48, 0), at(60, 90), at(0, 60)];
  it('fan out from side to side and stay clear of a post', () => {
    fc.assert(
      fc.property(fc.double({ min: 3, max: 8, noNaN: true }), (pitch) => {
        const one = field(leg, 3, [post]);
        const plan = slantedPlan(one, innerRing(one.sides)!, [], 3, 1)!;
        const lattice = plan.build(
          divide(plan.rows, { pitch, fewer: 0 }),
          divide(plan.columns, { pitch, fewer: 0 }),
        );
        checked(lattice, one, 3);
        expect(nearestNode(lattice, innerRing(one.sides)![2]!.a, 1e-6)).toBe(lattice.free.length - 1);
      }),
      { numRuns: 20 },
    );
  });

  it('begin where the cable comes in, at a corner or between two', () => {
    const one = field(leg, 3);
    const ring = innerRing(one.sides)!;
    for (const x of [4, 20]) {
      const plan = slantedPlan(one, ring, [{ at: at(x, 3), on: 0 }], 3, 1)!;
      const lattice = plan.build(plan.rows.cuts, plan.columns.cuts);
      expect(nearestNode(lattice, at(x, 3), 1e-6)).toBeGreaterThanOrEqual(0);
    }
  });

  it('are not for a field that is hollow or has other than four sides', () => {
    const bent = field([at(0, 0), at(60, 0), at(30, 20), at(30, 60)], 2);
    expect(slantedPlan(bent, innerRing(bent.sides)!, [], 3, 1)).toBeNull();
    const one = field(L, 3);
    expect(slantedPlan(one, innerRing(one.sides)!, [], 3, 1)).toBeNull();
  });
});
