import { direction, distance, dot } from '../geometry/point.js';
import type { WalkSurface } from '../geometry/site-plan.js';
import type { Fault } from '../read/fault.js';
import type { WalkArea } from './area.js';
import { lengthFault } from './check-landing-surface.js';

/** Cosine of the sharpest bend that a walk is drawn round: a right angle, with a hair for the tape. */
const SHARPEST = -0.02;

/** Faults of a walk as drawn: its line and widths against its measures, its bends, its joints. */
export function checkWalkSurface({ line, joints }: WalkSurface, area: WalkArea): Fault[] {
  const legs = line.slice(1).map((to, i) => ({ from: line[i]!, to, length: distance(line[i]!.at, to.at) }));
  const standing = legs.findIndex(({ length }) => length === 0);
  if (standing >= 0)
    return [{ path: `line[${standing + 1}].atInches`, message: 'is the place before it; leave one out' }];
  const length = legs.reduce((sum, leg) => sum + leg.length, 0);
  const width =
    legs.reduce((sum, leg) => sum + (leg.length * (leg.from.width + leg.to.width)) / 2, 0) / length;
  return [
    ...lengthFault('line', 'along its middle', length, area.length * 12, 'lengthFeet'),
    ...lengthFault('line', 'wide on the average', width, area.width, 'widthInches'),
    ...legs.slice(1).flatMap((leg, i) => {
      const turn = dot(direction(legs[i]!.from.at, legs[i]!.to.at), direction(leg.from.at, leg.to.at));
      return turn < SHARPEST
        ? [
            {
              path: `line[${i + 1}]`,
              message: 'turns back by more than a right angle; measure it as two walks',
            },
          ]
        : [];
    }),
    ...joints.flatMap((at, i) =>
      at > 0 && at < length
        ? []
        : [
            {
              path: `jointsAtInches[${i}]`,
              message: `must lie on the walk, 0 to ${Math.round(length)} in along it, got ${at}`,
            },
          ],
    ),
  ];
}
