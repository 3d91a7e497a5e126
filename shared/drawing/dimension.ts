import {
  add,
  between,
  direction,
  distance,
  quarterTurn,
  scale,
  type Point,
} from '../entry/geometry/point.js';
import { element, label, num } from './svg.js';
import { sayInches } from './say-inches.js';

/**
 * A dimension from `a` to `b`: the line `off` inches aside (on the hand towards which x turns into y), strokes at both
 * ends, extension lines, and the length as a tape shows it, or another text.
 */
export function dimension(
  a: Point,
  b: Point,
  off: number,
  size: number,
  text = sayInches(distance(a, b)),
): string {
  const along = direction(a, b);
  const aside = scale(quarterTurn(along), off);
  const [p, q] = [add(a, aside), add(b, aside)];
  const past = scale(quarterTurn(along), Math.sign(off) * size * 0.4);
  const tick = scale(add(along, quarterTurn(along)), size * 0.3);
  const parts = [
    stroke(p, q),
    stroke(a, add(p, past)),
    stroke(b, add(q, past)),
    ...[p, q].map((end) => stroke(add(end, scale(tick, -1)), add(end, tick), 'cut')),
  ];
  const middle = between(p, q, 0.5);
  let angle = (Math.atan2(along.y, along.x) * 180) / Math.PI;
  if (angle > 90 || angle <= -90) angle += 180;
  return element(
    'g',
    { class: 'dimension' },
    parts.join('') +
      label(middle.x, middle.y, text, {
        'font-size': size,
        'text-anchor': 'middle',
        dy: -size * 0.35,
        transform: `rotate(${num(angle)} ${num(middle.x)} ${num(middle.y)})`,
      }),
  );
}

/** A straight line of a class. */
export const stroke = (a: Point, b: Point, kind = 'thin'): string =>
  element('line', { class: kind, x1: a.x, y1: a.y, x2: b.x, y2: b.y });

/** A closed line through places. */
export const closed = (points: readonly Point[], kind: string): string =>
  element('path', { class: kind, d: `M${points.map(({ x, y }) => `${num(x)} ${num(y)}`).join('L')}Z` });
