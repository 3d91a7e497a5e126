import { distance, distanceToLine, type Point } from '../../entry/geometry/point.js';
import { closestSpacing, type LayoutCable } from './cable.js';
import { pathOf } from './cable-path.js';
import { crossings, type Crossing } from './crossings.js';
import { NoWayThrough } from './fields-of.js';
import type { Field, FieldChain } from './field.js';
import { innerRing, type RingSide } from './inner-ring.js';
import { fieldLine, layField, type FieldWay, type LaidField } from './lay-field.js';
import { tightestBend } from './measure/bend-radius.js';
import { closestRuns } from './measure/run-spacing.js';
import { samplePath } from './measure/sample-path.js';
import { bareness } from './score.js';
import { acrossFrom, aroundObstacles, isClear, waysAround, type RingPlace } from './spine.js';
import { zoneOf } from './zone.js';

/** A loop that is not tied straight to the spine is worse to lay; one that nothing reaches, much worse. */
const TIED_ASIDE = 0.1;
const LOST = 2;
/** A way with a bend or a spacing outside the limits is taken only when there is no other. */
const BROKEN = 100;

interface Candidate {
  readonly way: FieldWay;
  readonly crossing: Crossing | null;
  readonly score: number;
}

/** For every field in turn the way of filling it that leaves least bare at the spacing given. */
export function chooseWays(
  chain: FieldChain,
  penetration: Point,
  cable: LayoutCable,
  spacing: number,
): FieldWay[] {
  const rings = chain.fields.map((field) => ringOf(field));
  const ways: FieldWay[] = [];
  let start = startPlace(chain.fields[0]!, rings[0]!, penetration, cable);
  let stub: Point[] = [];
  chain.fields.forEach((field, i) => {
    const passage = chain.passages[i];
    const ends: (Crossing | RingPlace)[] = passage
      ? crossings(field, rings[i]!, rings[i + 1]!, passage, cable.leastBend)
      : farCorners(rings[i]!, start.at);
    const best = candidates(field, rings[i]!, start, stub, ends, cable, spacing)
      .filter(({ score }) => Number.isFinite(score))
      .sort((a, b) => a.score - b.score)[0];
    if (!best) {
      throw new NoWayThrough(
        `no way for the cable through "${field.key}" between its setbacks and keep-outs; widen it, or move what stands in the way`,
      );
    }
    ways.push(best.way);
    if (best.crossing) {
      start = best.crossing.to;
      stub = [best.crossing.line];
    }
  });
  return ways;
}

function ringOf(field: Field): RingSide[] {
  const ring = innerRing(field.sides);
  if (!ring) throw new NoWayThrough(`the setbacks leave nothing of "${field.key}"; it is too narrow to heat`);
  return ring;
}

/** Where the heated length begins: straight in from the sleeve. */
function startPlace(field: Field, ring: readonly RingSide[], p: Point, cable: LayoutCable): RingPlace {
  const nearest = field.sides
    .map((side, i) => ({ i, away: distanceToLine(p, side.a, side.b) }))
    .sort((a, b) => a.away - b.away);
  for (const { i } of nearest) {
    const place = acrossFrom(ring, i, p, closestSpacing(cable));
    if (place) return place;
  }
  throw new NoWayThrough(`the setbacks leave nothing of "${field.key}"; it is too narrow to heat`);
}

/** Corners of the ring, the farther ones first: where a cable that goes nowhere else may end. */
const farCorners = (ring: readonly RingSide[], from: Point): RingPlace[] =>
  ring
    .map(({ a }, on) => ({ at: a, on }))
    .sort((p, q) => distance(q.at, from) - distance(p.at, from))
    .slice(0, 3);

function candidates(
  field: Field,
  ring: readonly RingSide[],
  start: RingPlace,
  stub: readonly Point[],
  ends: readonly (Crossing | RingPlace)[],
  cable: LayoutCable,
  spacing: number,
): Candidate[] {
  const least = closestSpacing(cable);
  const obstacles = zoneOf(field, 0, least).obstacles;
  const keepOuts = obstacles.slice(field.sides.length);
  const angles = runDirections(field);
  return ends.flatMap((end) => {
    const crossing = 'line' in end ? end : null;
    const place = 'line' in end ? end.from : end;
    return waysAround(ring, start, place).flatMap((way, hand) => {
      const spine = aroundObstacles(way, hand === 0 ? 1 : -1, keepOuts, cable.leastBend);
      if (!isClear(spine, obstacles)) return [];
      const full = [...stub, ...spine, ...(crossing ? [crossing.line] : [])];
      return angles.map((angle): Candidate => {
        const choice: FieldWay = { spine: full, angle };
        const laid = layField(field, choice, spacing, least, cable.greatestSpacing);
        const aside = laid.weave.ties.filter((tie) => !('hanging' in tie)).length;
        const score = bareness(field, fieldLine(laid, 0), spacing, least);
        const broken = breaksLimits(field, laid, cable, spacing) ? BROKEN : 0;
        return { way: choice, crossing, score: broken + score + TIED_ASIDE * aside + LOST * laid.weave.lost };
      });
    });
  });
}

/** Whether the cable of a field alone bends too tightly or comes too near to itself. */
function breaksLimits(field: Field, laid: LaidField, cable: LayoutCable, spacing: number): boolean {
  const pieces = pathOf({ fields: [field], passages: [] }, [laid], [0], cable, spacing);
  if (tightestBend(pieces) < cable.leastBend - 0.02) return true;
  const close = closestRuns(samplePath(pieces, 0.5), cable.leastSpacing, 2 * cable.leastSpacing);
  return close !== null && close.apart < closestSpacing(cable) - 0.02;
}

/** Runs along the longest side, or square to it. */
function runDirections({ sides }: Field): number[] {
  const longest = sides.reduce((best, side) =>
    distance(side.a, side.b) > distance(best.a, best.b) ? side : best,
  );
  const angle = -Math.atan2(longest.b.y - longest.a.y, longest.b.x - longest.a.x);
  return [angle, angle + Math.PI / 2];
}
