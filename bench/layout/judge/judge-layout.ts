import { closestSpacing } from '../../../shared/heating/layout/cable.js';
import type { Field } from '../../../shared/heating/layout/field.js';
import type { CableLayout } from '../../../shared/heating/layout/lay-cable.js';
import type { Place } from '../../../shared/heating/layout/path.js';
import {
  between,
  distances,
  holder,
  isSimple,
  line,
  nearPairs,
  point,
  polygon,
  widened,
  without,
  type Flat,
  type Part,
  type Shape,
} from './geometry.js';
import { LARGEST_TURN, polyline, stretches } from './polyline.js';

/** Forgiven where the judge sees chords instead of bends, in. */
const FORGIVEN = 0.05;

/**
 * What is wrong with a layout, in words; empty when nothing is. Judged by a general-purpose geometry library from the
 * registry, from the pieces of the path and the measured surfaces alone.
 */
export function judgeLayout(layout: CableLayout): string[] {
  const points = polyline(layout.pieces);
  return [
    ...length(layout, points),
    ...oneLine(layout, points),
    ...crossing(points),
    ...bends(layout, points),
    ...apart(layout, points),
    ...layout.chain.fields.flatMap((field, i) => {
      // Cable beyond a joint or a bend warms this side of it too.
      const level = stretches(points, (p) => Math.abs(p.z - field.level) < 1e-6);
      return [
        ...clearance(layout, i, inField(field, points)),
        ...gaps(field, layout.cable.greatestSpacing, level),
      ];
    }),
    ...sensor(layout, points),
  ];
}

const dist = (a: Place, b: Place) => Math.hypot(a.x - b.x, a.y - b.y, a.z - b.z);

function length({ cable }: CableLayout, points: readonly Place[]): string[] {
  // The library measures in plan; what a step adds in height is added by hand.
  const rise = points.slice(1).reduce((sum, p, i) => {
    const q = points[i]!;
    return sum + dist(p, q) - Math.hypot(p.x - q.x, p.y - q.y);
  }, 0);
  const off = (line(points).getLength() + rise) / cable.length - 1;
  return Math.abs(off) < 0.005 ? [] : [`length off by ${(off * 100).toFixed(2)} %`];
}

function oneLine({ pieces, penetration }: CableLayout, points: readonly Place[]): string[] {
  const broken = pieces.some((piece, i) => i > 0 && dist(piece.from, pieces[i - 1]!.to) > 1e-3);
  const first = between(point(points[0]!), point(penetration));
  return [
    ...(broken ? ['the path has a break'] : []),
    ...(first > 12 ? [`begins ${first.toFixed(1)} in from the sleeve`] : []),
  ];
}

function crossing(points: readonly Place[]): string[] {
  const flat = points.filter(
    (p, i) => i === 0 || Math.hypot(p.x - points[i - 1]!.x, p.y - points[i - 1]!.y) > 1e-6,
  );
  return isSimple(line(flat)) ? [] : ['crosses itself'];
}

function bends({ cable }: CableLayout, points: readonly Place[]): string[] {
  for (let i = 2; i < points.length; i++) {
    const [a, b, c] = [points[i - 2]!, points[i - 1]!, points[i]!];
    const [u, v, w] = [dist(a, b), dist(b, c), dist(a, c)];
    if (u < 1e-6 || v < 1e-6) continue;
    const turn = Math.PI - Math.acos(Math.max(-1, Math.min(1, (u * u + v * v - w * w) / (2 * u * v))));
    if (turn > LARGEST_TURN) return [`a corner of ${((turn * 180) / Math.PI).toFixed(0)}°`];
    const half = (u + v + w) / 2;
    const area = Math.sqrt(Math.max(0, half * (half - u) * (half - v) * (half - w)));
    // Three places where a straight stretch meets a bend see only part of it: never a tighter one.
    if (turn > 1e-3 && (u * v * w) / (4 * area) < cable.leastBend - FORGIVEN)
      return [`a bend of ${((u * v * w) / (4 * area)).toFixed(2)} in`];
  }
  return [];
}

/** Runs that are farther from each other along the cable than a half turn lie no closer than they may. */
function apart({ cable }: CableLayout, points: readonly Place[]): string[] {
  const closest = closestSpacing(cable);
  const parts: Part<{ from: number; to: number; z: number }>[] = [];
  let along = 0;
  points.slice(1).forEach((b, i) => {
    const a = points[i]!;
    parts.push({ a, b, of: { from: along, to: (along += dist(a, b)), z: a.z } });
  });
  let least = Infinity;
  for (const [one, other, away] of nearPairs(parts, closest)) {
    if (other.from - one.to < (Math.PI / 2) * closest - FORGIVEN || Math.abs(one.z - other.z) > closest)
      continue;
    least = Math.min(least, away);
  }
  return least < closest - FORGIVEN ? [`runs ${least.toFixed(2)} in apart`] : [];
}

/** The parts of the cable that lie on a field. */
function inField({ sides, level }: Field, points: readonly Place[]): Place[][] {
  const holds = holder(polygon(sides.map(({ a }) => a)));
  return stretches(points, (p) => Math.abs(p.z - level) < 1e-6 && holds(p));
}

function clearance({ chain }: CableLayout, i: number, own: readonly Place[][]): string[] {
  const field = chain.fields[i]!;
  const meets = new Set([chain.passages[i]?.fromSide, chain.passages[i - 1]?.toSide]);
  const faults: string[] = [];
  for (const stretch of own) {
    const run = line(stretch);
    for (const [k, { a, b, setback }] of field.sides.entries()) {
      if (meets.has(k)) continue;
      const away = between(line([a, b]), run);
      if (away < setback - FORGIVEN) faults.push(`${away.toFixed(2)} in from a side of ${field.key}`);
    }
    for (const out of field.keepOuts) {
      const away = between(shapeOf(out), run);
      if (away < out.clearance - FORGIVEN)
        faults.push(`${away.toFixed(2)} in from ${out.name} in ${field.key}`);
    }
  }
  return faults;
}

type KeepOut = Field['keepOuts'][number];
const shapeOf = (out: KeepOut): Shape =>
  out.kind === 'round' ? widened(point(out.centre), out.radius) : polygon(out.outline);

/** Places inside the setbacks, two inches apart, and along their edges: none is farther from the cable than half the greatest spacing. */
function gaps(field: Field, greatest: number, own: readonly Place[][]): string[] {
  const outline = polygon(field.sides.map(({ a }) => a));
  const kept = [
    ...field.sides.map(({ a, b, setback }) => widened(line([a, b]), setback)),
    ...field.keepOuts.map((out) => widened(shapeOf(out), Math.max(out.clearance, 1.5))),
  ];
  const zone = kept.reduce((rest, part) => without(rest, part), outline);
  if (zone.isEmpty()) return [];
  if (own.length === 0) return [`no cable in ${field.key}`];
  const cables = own.map((stretch) => distances(line(stretch)));
  const holds = holder(zone);
  const xs = field.sides.map(({ a }) => a.x);
  const ys = field.sides.map(({ a }) => a.y);
  let widest = 0;
  const look = (p: Flat) => {
    widest = Math.max(widest, 2 * Math.min(...cables.map((away) => away(p))));
  };
  for (let x = Math.min(...xs); x <= Math.max(...xs); x += 2) {
    for (let y = Math.min(...ys); y <= Math.max(...ys); y += 2) if (holds({ x, y })) look({ x, y });
  }
  for (const p of zone.getCoordinates()) look(p);
  return widest > greatest + FORGIVEN ? [`a gap of ${widest.toFixed(2)} in in ${field.key}`] : [];
}

function sensor({ sensor: place, chain, cable }: CableLayout, points: readonly Place[]): string[] {
  const field = chain.fields[0]!;
  if (!place) return ['no sensor'];
  const at = point(place.at);
  const outline = polygon(field.sides.map(({ a }) => a));
  const toEdge = Math.min(...field.sides.map(({ a, b }) => between(at, line([a, b]))));
  const toRun = Math.min(...inField(field, points).map((stretch) => between(at, line(stretch))));
  return [
    ...(between(at, outline) > 0 ? ['the sensor lies outside'] : []),
    ...(toEdge < 8 ? [`the sensor lies ${toEdge.toFixed(1)} in from an edge`] : []),
    ...(toRun < 0.4 * closestSpacing(cable) || toRun > cable.greatestSpacing / 2
      ? [`the sensor lies ${toRun.toFixed(2)} in from the next run`]
      : []),
  ];
}
