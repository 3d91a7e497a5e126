import { describe, expect, it } from '@jest/globals';
import Coordinate from 'jsts/org/locationtech/jts/geom/Coordinate.js';
import GeometryFactory from 'jsts/org/locationtech/jts/geom/GeometryFactory.js';
import BufferOp from 'jsts/org/locationtech/jts/operation/buffer/BufferOp.js';
import DistanceOp from 'jsts/org/locationtech/jts/operation/distance/DistanceOp.js';
import IsSimpleOp from 'jsts/org/locationtech/jts/operation/IsSimpleOp.js';
import OverlayOp from 'jsts/org/locationtech/jts/operation/overlay/OverlayOp.js';
import RelateOp from 'jsts/org/locationtech/jts/operation/relate/RelateOp.js';
import { closestSpacing } from './cable.js';
import { chooseWays } from './choose-ways.js';
import { fieldsOf } from './fields-of.js';
import { layCable, type CableLayout } from './lay-cable.js';
import { samplePath, type Sample } from './measure/sample-path.js';
import { Layer } from './solve-length.js';
import { randomSite, seeded } from './testing/random-site.js';

/*
 * Layouts of random entries, judged by a general-purpose geometry library from the registry instead of by our own
 * measuring. The seeds are fixed; a failing one is printed in the name of its test.
 */

const SEEDS = [1, 13, 24];
const factory = new GeometryFactory();

interface Flat {
  readonly x: number;
  readonly y: number;
}
const line = (points: readonly Flat[]) =>
  factory.createLineString(points.map(({ x, y }) => new Coordinate(x, y)));
const polygon = (points: readonly Flat[]) =>
  factory.createPolygon(
    factory.createLinearRing([...points, points[0]!].map(({ x, y }) => new Coordinate(x, y))),
  );

/** Lays the random entry of a seed with a set as long as some spacing a little over the closest takes. */
function laidOut(seed: number): { layout: CableLayout; samples: Sample[] } {
  const { plan, areas, cable } = randomSite(seed);
  const probe = { ...cable, length: 1e6 };
  const chain = fieldsOf(plan, areas, probe);
  const spacing = closestSpacing(probe) * (1.08 + 0.2 * seeded(seed)());
  const length = new Layer(chain, chooseWays(chain, plan.penetration, probe, spacing), probe).lengthAt(
    spacing,
  );
  const outcome = layCable(plan, areas, { ...cable, length });
  if (!outcome.ok) throw new Error(outcome.message);
  return { layout: outcome.layout, samples: samplePath(outcome.layout.pieces, 0.2) };
}

describe.each(SEEDS)('the layout of random entry %i', (seed) => {
  const { layout, samples } = laidOut(seed);
  const { chain, cable } = layout;
  const points = samples.map(({ at }) => at);

  it('is as long as the label within 0.5 %', () => {
    const rise = points.slice(1).reduce((sum, p, i) => {
      const q = points[i]!;
      return sum + Math.hypot(p.x - q.x, p.y - q.y, p.z - q.z) - Math.hypot(p.x - q.x, p.y - q.y);
    }, 0);
    expect(Math.abs((line(points).getLength() + rise) / cable.length - 1)).toBeLessThan(0.005);
  });

  it('never crosses itself in plan and hangs together', () => {
    const flat = points.filter(
      (p, i) => i === 0 || Math.hypot(p.x - points[i - 1]!.x, p.y - points[i - 1]!.y) > 1e-6,
    );
    expect(new IsSimpleOp(line(flat)).isSimple()).toBe(true);
    for (const [i, p] of points.slice(1).entries()) {
      const q = points[i]!;
      expect(Math.hypot(p.x - q.x, p.y - q.y, p.z - q.z)).toBeLessThan(0.21);
    }
  });

  it('stays inside the least setback of every field, but where it passes on', () => {
    for (const field of chain.fields) {
      const own = points.filter((p) => Math.abs(p.z - field.level) < 1e-9);
      const outline = polygon(field.sides.map(({ a }) => a));
      const kept = Math.min(...field.sides.map(({ setback }) => setback));
      const within = BufferOp.bufferOp(outline, -(kept - 0.05));
      for (const run of stretches(own)) {
        if (run.length < 2) continue;
        const outside = OverlayOp.difference(OverlayOp.intersection(line(run), outline), within);
        // Each passage takes no more than the setback on its side of the line.
        expect(outside.getLength()).toBeLessThan(
          2 * Math.max(...field.sides.map(({ setback }) => setback)) + 0.5,
        );
      }
      for (const out of field.keepOuts) {
        if (out.kind !== 'round') continue;
        const post = BufferOp.bufferOp(
          factory.createPoint(new Coordinate(out.centre.x, out.centre.y)),
          out.radius,
        );
        for (const run of stretches(own)) {
          if (run.length >= 2)
            expect(DistanceOp.distance(post, line(run))).toBeGreaterThan(out.clearance - 0.05);
        }
      }
    }
  });

  it('keeps its runs apart', () => {
    const halfTurn = (Math.PI / 2) * closestSpacing(cable);
    for (const field of chain.fields) {
      const own = samples.filter(({ at }) => Math.abs(at.z - field.level) < 1e-9);
      const chunk = 24;
      for (let i = 0; i + chunk < own.length; i += chunk) {
        const piece = own.slice(i, i + 2);
        const later = own.slice(i).filter(({ along }) => along - piece[1]!.along > halfTurn + 0.3);
        for (const run of stretches(later.map(({ at }) => at))) {
          if (run.length < 2) continue;
          expect(DistanceOp.distance(line(piece.map(({ at }) => at)), line(run))).toBeGreaterThan(
            closestSpacing(cable) - 0.1,
          );
        }
      }
    }
  });

  it('leaves no gap over the greatest spacing', () => {
    for (const field of chain.fields) {
      const kept = Math.max(...field.sides.map(({ setback }) => setback));
      const zone = BufferOp.bufferOp(polygon(field.sides.map(({ a }) => a)), -kept);
      const own = points.filter((p) => Math.abs(p.z - field.level) < 1e-9);
      const covered = stretches(own)
        .filter((run) => run.length >= 2)
        .map((run) =>
          BufferOp.bufferOp(
            line(run.filter((_, i) => i % 3 === 0 || i === run.length - 1)),
            cable.greatestSpacing / 2 + 0.3,
          ),
        );
      const bare = covered.reduce((rest, part) => OverlayOp.difference(rest, part), zone);
      const posts = field.keepOuts.length > 0 ? 40 : 0.5;
      expect(bare.getArea()).toBeLessThan(posts);
    }
  });

  it('bends no tighter than the cable may, by circles through three places', () => {
    for (let i = 2; i < points.length; i++) {
      const [a, b, c] = [points[i - 2]!, points[i - 1]!, points[i]!];
      const sides = [dist(a, b), dist(b, c), dist(a, c)] as const;
      const half = (sides[0] + sides[1] + sides[2]) / 2;
      const area = Math.sqrt(Math.max(0, half * (half - sides[0]) * (half - sides[1]) * (half - sides[2])));
      // Where a straight stretch meets a bend the three places see only part of it: never a tighter one.
      if (area > 1e-7)
        expect((sides[0] * sides[1] * sides[2]) / (4 * area)).toBeGreaterThan(cable.leastBend - 0.05);
    }
  });
});

it('a judge that sees faults: a line that crosses itself, and one outside its outline', () => {
  const bow = [
    { x: 0, y: 0 },
    { x: 2, y: 2 },
    { x: 2, y: 0 },
    { x: 0, y: 2 },
  ];
  expect(new IsSimpleOp(line(bow)).isSimple()).toBe(false);
  const square = polygon([
    { x: 0, y: 0 },
    { x: 1, y: 0 },
    { x: 1, y: 1 },
    { x: 0, y: 1 },
  ]);
  expect(RelateOp.contains(square, line(bow))).toBe(false);
});

type Spot = { readonly x: number; readonly y: number; readonly z: number };
const dist = (a: Spot, b: Spot) => Math.hypot(a.x - b.x, a.y - b.y, a.z - b.z);

/** Cut where places do not follow each other. */
function stretches(points: readonly Spot[]): Spot[][] {
  const out: Spot[][] = [];
  for (const p of points) {
    const last = out[out.length - 1];
    if (last && dist(last[last.length - 1]!, p) < 0.25) last.push(p);
    else out.push([p]);
  }
  return out;
}
