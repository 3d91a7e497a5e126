import { inside } from '../../entry/geometry/outline.js';
import { turned, type Point } from '../../entry/geometry/point.js';
import type { KeepOut } from '../../entry/geometry/site-plan.js';
import { bandSpan, type Capsule, type Span } from './capsule.js';
import type { Field } from './field.js';

/** Where the cable's middle may lie in a field, turned so that its runs lie along x. */
export interface Zone {
  readonly outline: readonly Point[];
  readonly obstacles: readonly Capsule[];
  /** Keep-outs with corners, so that nothing is laid inside one. */
  readonly holes: readonly (readonly Point[])[];
}

/** Forgiven, so that a run may lie exactly on the line of a setback, in. */
const HAIR = 1e-6;

/** The zone of a field, turned by `angle`. Keep-outs are held off so far that runs ending on both hands keep their spacing. */
export function zoneOf(field: Field, angle: number, leastSpacing: number): Zone {
  return {
    outline: field.sides.map(({ a }) => turned(a, angle)),
    obstacles: [
      ...field.sides.map(({ a, b, setback }) => ({
        a: turned(a, angle),
        b: turned(b, angle),
        radius: setback - HAIR,
      })),
      ...field.keepOuts.flatMap((out) => keepOutCapsules(out, angle, leastSpacing)),
    ],
    holes: field.keepOuts.flatMap((out) =>
      out.kind === 'outline' ? [out.outline.map((p) => turned(p, angle))] : [],
    ),
  };
}

/** What a keep-out holds free, with no less than half the least spacing around it. */
export function keepOutCapsules(out: KeepOut, angle: number, leastSpacing: number): Capsule[] {
  const clear = Math.max(out.clearance, leastSpacing / 2) - HAIR;
  if (out.kind === 'round') {
    const centre = turned(out.centre, angle);
    return [{ a: centre, b: centre, radius: out.radius + clear }];
  }
  const corners = out.outline.map((p) => turned(p, angle));
  return corners.map((a, i) => ({ a, b: corners[(i + 1) % corners.length]!, radius: clear }));
}

/** The stretches of x along which the whole band from `y1` to `y2` is free of obstacles and inside the zone. */
export function freeSpans(zone: Zone, more: readonly Capsule[], y1: number, y2: number): Span[] {
  const taken: Span[] = [];
  for (const list of [zone.obstacles, more]) {
    for (const capsule of list) {
      const span = bandSpan(capsule, y1, y2);
      if (span) taken.push(span);
    }
  }
  taken.sort((p, q) => p[0] - q[0]);
  const free: Span[] = [];
  let reach = -Infinity;
  for (const [from, to] of taken) {
    if (from > reach && reach > -Infinity) {
      const probe = { x: (reach + from) / 2, y: (y1 + y2) / 2 };
      if (inside(zone.outline, probe) && !zone.holes.some((hole) => inside(hole, probe)))
        free.push([reach, from]);
    }
    reach = Math.max(reach, to);
  }
  return free;
}
