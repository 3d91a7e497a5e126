import { describe, expect, it } from '@jest/globals';
import { inside, isSimple, sides, signedArea } from './outline.js';
import { distance, distanceToLine } from './point.js';
import type { FlightSurface, WalkSurface } from './site-plan.js';
import { sharedStretch, splitAtJoint } from './split-at-joint.js';
import { treads, wayDown } from './treads.js';
import { walkLegs } from './walk-legs.js';

const at = (x: number, y: number) => ({ x, y });
const L_SHAPE = [at(0, 0), at(60, 0), at(60, 24), at(24, 24), at(24, 60), at(0, 60)];

describe('an outline', () => {
  it('has its area, with the sign of its turn', () => {
    expect(signedArea(L_SHAPE)).toBe(60 * 24 + 24 * 36);
    expect(signedArea([...L_SHAPE].reverse())).toBe(-(60 * 24 + 24 * 36));
  });

  it('knows what is inside', () => {
    expect(inside(L_SHAPE, at(12, 50))).toBe(true);
    expect(inside(L_SHAPE, at(40, 50))).toBe(false);
  });

  it('is simple unless its sides cross or touch', () => {
    expect(isSimple(L_SHAPE)).toBe(true);
    expect(isSimple([at(0, 0), at(2, 2), at(2, 0), at(0, 2)])).toBe(false);
    expect(isSimple([at(0, 0), at(4, 0), at(4, 4), at(2, 0), at(0, 4)])).toBe(false);
  });
});

describe('a flight of steps', () => {
  const flight: FlightSurface = {
    kind: 'flight',
    key: 'steps',
    name: 'Steps',
    top: [at(0, 60), at(48, 60)],
    riserCount: 4,
    riser: 7,
    tread: 11,
    nosing: 1,
    setback: 3,
    frontSetback: 3,
    keepOuts: [],
  };

  it('goes down away from where one comes from, with one tread fewer than risers', () => {
    expect(wayDown(flight, at(20, 0)).y).toBeCloseTo(1, 9);
    expect(wayDown(flight, at(20, 99)).y).toBeCloseTo(-1, 9);
    const [first, , last] = treads(flight, at(20, 0));
    expect(first!.map(({ y }) => y)).toEqual([60, 60, 71, 71]);
    expect(last!.map(({ y }) => y)).toEqual([82, 82, 93, 93]);
  });

  it('does not mind which end of its top was measured first', () => {
    const turned: FlightSurface = { ...flight, top: [at(48, 60), at(0, 60)] };
    expect(Math.max(...treads(turned, at(20, 0))[2]!.map(({ y }) => y))).toBe(93);
  });
});

describe('a walk', () => {
  const walk = (line: WalkSurface['line'], joints: readonly number[] = []): WalkSurface => ({
    kind: 'walk',
    key: 'walk',
    name: 'Walk',
    line,
    joints,
    setback: 3,
    keepOuts: [],
  });

  it('keeps its width through a bend: the legs meet on the line that halves it', () => {
    const bent = walk([
      { at: at(0, 0), width: 48 },
      { at: at(0, 100), width: 48 },
      { at: at(100, 100), width: 48 },
    ]);
    const legs = walkLegs(bent);
    expect(legs).toHaveLength(2);
    // Two legs of 100 by 48; what the outer corner gains the inner one loses.
    expect(legs.reduce((sum, leg) => sum + Math.abs(signedArea(leg)), 0)).toBeCloseTo(2 * 100 * 48, 6);
    const [a, b] = [legs[0]![2]!, legs[0]![3]!];
    expect(distance(a, b)).toBeCloseTo(48 * Math.SQRT2, 6);
    for (const side of sides(legs[1]!).slice(1, 2))
      expect(distanceToLine(at(50, 100), side[0], side[1])).toBeCloseTo(24, 6);
  });

  it('flares evenly from one width to another', () => {
    const [leg] = walkLegs(
      walk([
        { at: at(0, 0), width: 36 },
        { at: at(0, 120), width: 60 },
      ]),
    );
    expect(Math.abs(signedArea(leg!))).toBeCloseTo(120 * 48, 6);
  });

  it('is cut straight across at movement joints, at the width it has there', () => {
    const legs = walkLegs(
      walk(
        [
          { at: at(0, 0), width: 36 },
          { at: at(0, 120), width: 60 },
        ],
        [60],
      ),
    );
    expect(legs).toHaveLength(2);
    expect(distance(legs[0]![2]!, legs[0]![3]!)).toBeCloseTo(48, 6);
  });
});

describe('a movement joint', () => {
  const kept = sides([at(0, 0), at(60, 0), at(60, 40), at(0, 40)]).map(([a, b]) => ({ a, b, setback: 3 }));

  it('makes two parts that share it', () => {
    const [one, other] = splitAtJoint(kept, [at(60, 15), at(0, 15)], 2)!;
    const area = (part: typeof one) => Math.abs(signedArea(part.map(({ a }) => a)));
    expect([area(one), area(other)].sort((a, b) => a - b)).toEqual([60 * 15, 60 * 25]);
    for (const part of [one, other]) expect(part.filter(({ setback }) => setback === 2)).toHaveLength(1);
  });

  it('is none when it ends inside, or on the side where it began', () => {
    expect(splitAtJoint(kept, [at(60, 15), at(30, 15)], 2)).toBeNull();
    expect(splitAtJoint(kept, [at(10, 0), at(50, 0)], 2)).toBeNull();
  });
});

describe('a shared side', () => {
  const side = (a: ReturnType<typeof at>, b: ReturnType<typeof at>) => ({ a, b, setback: 3 });
  it('is the stretch that both have', () => {
    const found = sharedStretch(side(at(0, 60), at(100, 60)), side(at(80, 60), at(20, 60)), 6)!;
    expect(found.map(({ x }) => x).sort((p, q) => p - q)).toEqual([20, 80]);
  });
  it('is none beside it or when too short', () => {
    expect(sharedStretch(side(at(0, 60), at(100, 60)), side(at(80, 61), at(20, 61)), 6)).toBeNull();
    expect(sharedStretch(side(at(0, 60), at(100, 60)), side(at(97, 60), at(140, 60)), 6)).toBeNull();
  });
});
