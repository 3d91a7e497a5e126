import type { Outline } from './outline.js';
import { add, between, direction, distance, dot, quarterTurn, scale, subtract, type Point } from './point.js';
import type { WalkSurface } from './site-plan.js';

type Station = WalkSurface['line'][number];

/**
 * The straight legs of a walk, each cut off at the line that halves a bend. Corners in turn: left and right where one
 * comes in, right and left where one goes out. A movement joint cuts a leg straight across.
 */
export function walkLegs({ line, joints }: WalkSurface): Outline[] {
  const stations = withJoints(line, joints);
  const ends = stations.map((_, i) => crossLine(stations, i));
  return ends.slice(1).map(([left, right], i) => [ends[i]![0], ends[i]![1], right, left]);
}

/** Stations with one more for each joint. */
function withJoints(line: readonly Station[], joints: readonly number[]): Station[] {
  const out: Station[] = [line[0]!];
  let gone = 0;
  line.slice(1).forEach((to, i) => {
    const from = line[i]!;
    const length = distance(from.at, to.at);
    for (const joint of [...joints].sort((a, b) => a - b)) {
      const part = (joint - gone) / length;
      if (part > 0 && part < 1)
        out.push({ at: between(from.at, to.at, part), width: from.width + (to.width - from.width) * part });
    }
    out.push(to);
    gone += length;
  });
  return out;
}

/** Both ends of the line across a station: square to the walk, and at a bend along the line that halves it. */
function crossLine(stations: readonly Station[], i: number): readonly [Point, Point] {
  const { at, width } = stations[i]!;
  const before = i > 0 ? direction(stations[i - 1]!.at, at) : null;
  const after = i < stations.length - 1 ? direction(at, stations[i + 1]!.at) : null;
  const into = before ?? after!;
  const mean = add(into, after ?? into);
  const along = scale(mean, 1 / Math.hypot(mean.x, mean.y));
  const half = scale(quarterTurn(along), width / 2 / dot(along, into));
  return [subtract(at, half), add(at, half)];
}
