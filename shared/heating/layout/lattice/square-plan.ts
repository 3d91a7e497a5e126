import { turned, type Point } from '../../../entry/geometry/point.js';
import type { Span } from '../capsule.js';
import type { Field } from '../field.js';
import type { RingSide } from '../inner-ring.js';
import { freeSpans, zoneOf, type Zone } from '../zone.js';
import type { LatticePlan } from './lattice-plan.js';
import { cutsOf, type LineFamily } from './lines.js';

const apart = (one: number, other: number): number => Math.abs(one - other);
const HAIR = 1e-5;

/**
 * Lines square to each other, turned so that rows lie along `angle`. Every straight side of the ring along either
 * direction gets a line of its own, and every place where the cable comes in or leaves one of each.
 */
export function squarePlan(
  field: Field,
  ring: readonly RingSide[],
  gates: readonly Point[],
  angle: number,
  closest: number,
): LatticePlan {
  const level = zoneOf(field, -angle, closest);
  const upright = zoneOf(field, Math.PI / 2 - angle, closest);
  const corners = ring.map(({ a, b }) => ({ a: turned(a, -angle), b: turned(b, -angle) }));
  const own = gates.map((p) => turned(p, -angle));
  const family = (pick: (p: Point) => number, other: (p: Point) => number): LineFamily => {
    const all = corners.flatMap(({ a, b }) => [pick(a), pick(b)]);
    const along = corners
      .filter(({ a, b }) => Math.abs(pick(a) - pick(b)) < HAIR)
      .sort((s, t) => Math.abs(other(t.a) - other(t.b)) - Math.abs(other(s.a) - other(s.b)))
      .map(({ a }) => pick(a));
    const wanted = [...own.map(pick), Math.min(...all), Math.max(...all), ...along];
    return { cuts: cutsOf(wanted, apart, closest), apart };
  };
  const build: LatticePlan['build'] = (ys, xs) => {
    const [rows, columns] = [ys.length, xs.length];
    const [across, down] = [turned({ x: 1, y: 0 }, angle), turned({ x: 0, y: 1 }, angle)];
    const x = new Float64Array(rows * columns);
    const y = new Float64Array(rows * columns);
    for (let node = 0; node < x.length; node++) {
      const [u, v] = [xs[node % columns]!, ys[Math.floor(node / columns)]!];
      x[node] = u * across.x + v * down.x;
      y[node] = u * across.y + v * down.y;
    }
    const free = new Uint8Array(rows * columns);
    const alongRow = new Uint8Array(rows * columns);
    const alongColumn = new Uint8Array(rows * columns);
    ys.forEach((at, row) => {
      const held = holding(level, at, xs);
      for (let column = 0; column < columns; column++) {
        const node = row * columns + column;
        if (held[column]! >= 0) free[node] = 1;
        if (held[column]! >= 0 && held[column] === held[column + 1]) alongRow[node] = 1;
      }
    });
    // Turned by a quarter more, columns lie level and heights run backwards.
    const back = ys.map((at) => -at);
    xs.forEach((at, column) => {
      const held = holding(upright, at, back);
      for (let row = 0; row < rows; row++) {
        const node = row * columns + column;
        if (held[row]! < 0) free[node] = 0;
        else if (held[row] === held[row + 1]) alongColumn[node] = 1;
      }
    });
    for (let node = 0; node < free.length; node++) {
      if (alongRow[node] && !(free[node] && free[node + 1])) alongRow[node] = 0;
      if (alongColumn[node] && !(free[node] && free[node + columns])) alongColumn[node] = 0;
    }
    const [rowGap, columnGap] = [widest(ys), widest(xs)];
    return { rows, columns, x, y, free, alongRow, alongColumn, rowGap, columnGap, bend: 0 };
  };
  return {
    rows: family(
      (p) => p.y,
      (p) => p.x,
    ),
    columns: family(
      (p) => p.x,
      (p) => p.y,
    ),
    build,
  };
}

/** For each place along a level line the number of the free stretch that holds it, or -1. */
function holding(zone: Zone, y: number, xs: readonly number[]): number[] {
  const spans: Span[] = freeSpans(zone, [], y, y);
  return xs.map((x) => spans.findIndex(([from, to]) => x >= from - HAIR && x <= to + HAIR));
}

const widest = (lines: readonly number[]): number =>
  lines.slice(1).reduce((most, at, i) => Math.max(most, at - lines[i]!), 0);
