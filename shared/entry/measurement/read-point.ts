import type { Point } from '../geometry/point.js';
import type { Reader } from '../read/reader.js';

/** How far from the door a plan may reach, in: a figure beyond it is feet typed as inches, or a slip. */
const FARTHEST = 6000;

/** Reads a place on the plan, written as [x, y] in inches. */
export function readPoint(reader: Reader): Point {
  const [x, y, ...more] = reader.list();
  if (!x || !y || more.length > 0) {
    if (Array.isArray(reader.value)) reader.fault('must be two numbers, [x, y] in inches');
    return { x: 0, y: 0 };
  }
  const limits = { min: -FARTHEST, max: FARTHEST, unit: 'in' };
  return { x: x.number(limits), y: y.number(limits) };
}

/** Reads a straight line, written as its two ends. */
export function readLine(reader: Reader): readonly [Point, Point] {
  const ends = reader.list();
  if (ends.length !== 2) {
    if (Array.isArray(reader.value)) reader.fault(`must be two places, got ${ends.length}`);
    return [
      { x: 0, y: 0 },
      { x: 1, y: 0 },
    ];
  }
  const line = [readPoint(ends[0]!), readPoint(ends[1]!)] as const;
  if (line[0].x === line[1].x && line[0].y === line[1].y)
    reader.fault('starts and ends at the same place; measure both ends');
  return line;
}
