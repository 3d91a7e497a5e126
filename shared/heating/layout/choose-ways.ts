import { direction, distance, distanceToLine, type Point } from '../../entry/geometry/point.js';
import { closestSpacing, type LayoutCable } from './cable.js';
import { crossings, type Crossing } from './crossings.js';
import type { Ringed } from './ringed.js';
import type { Field, FieldChain } from './field.js';
import { NoWayThrough } from './fields-of.js';
import type { FieldEnd, FieldWay } from './fill/field-way.js';
import { fillField, type Filling, type Taste } from './fill/fill-field.js';
import { SPARE } from './fill/field-menu.js';
import { piecesOf } from './fill/pieces-of.js';
import type { RingSide } from './inner-ring.js';
import type { LatticePlan } from './lattice/lattice-plan.js';
import { slantedPlan, type Gate } from './lattice/slanted-plan.js';
import { squarePlan } from './lattice/square-plan.js';

/** Ways through the fields up to one of them, and what they leave bare. */
interface Route {
  readonly ways: readonly (readonly FieldWay[])[];
  readonly lines: readonly Point[];
  readonly worth: number;
  readonly crossing: Crossing | null;
}

/** What a route chose: ways for every field, the best first, and where the cable crosses from one to the next. */
export interface Chosen {
  readonly ways: readonly (readonly FieldWay[])[];
  /** Places on the lines between fields. */
  readonly lines: readonly Point[];
  readonly taste: Taste;
}

/** Ends that are tried in the last field, the farthest from where the cable comes in first. */
const LAST_ENDS = 4;
const EXACT = 1e-3;

/** For every field the ways of filling it that, together with the others', leave least bare at a pitch. */
export function chooseWays(
  chain: FieldChain,
  fields: readonly Ringed[],
  penetration: Point,
  cable: LayoutCable,
  pitch: number,
  taste: Taste,
): Chosen {
  let routes: Route[] = [{ ways: [], lines: [], worth: 0, crossing: null }];
  fields.forEach((own, i) => {
    const passage = chain.passages[i];
    const outs = passage ? crossings(own, fields[i + 1]!, passage, closestSpacing(cable)) : [null];
    const next: Route[] = [];
    for (const out of outs) {
      const best = routes
        .map((route) => through(route, own, penetration, out, cable, pitch, taste))
        .filter((route) => route !== null)
        .sort((a, b) => a.worth - b.worth)[0];
      if (best) next.push(best);
    }
    if (next.length === 0) {
      throw new NoWayThrough(
        `no way for the cable through "${own.field.key}" between its setbacks and keep-outs; widen it, or move what stands in the way`,
      );
    }
    routes = next;
  });
  const { ways, lines } = routes.sort((a, b) => a.worth - b.worth)[0]!;
  return { ways, lines, taste };
}

/** A route carried on through one field to where it leaves it, or to where the cable ends; null when there is none. */
function through(
  route: Route,
  { field, ring, gap }: Ringed,
  penetration: Point,
  out: Crossing | null,
  cable: LayoutCable,
  pitch: number,
  taste: Taste,
): Route | null {
  const from: FieldEnd = route.crossing
    ? { at: route.crossing.to.at, reach: EXACT, beyond: route.crossing.line, goesOn: true }
    : { at: footOf(ring, penetration), reach: Infinity, beyond: penetration, goesOn: false };
  const ends: FieldEnd[] = out
    ? [{ at: out.from.at, reach: EXACT, beyond: out.line, goesOn: true }]
    : farCorners(ring, from.at).map((at) => ({ at, reach: Infinity, beyond: null, goesOn: false }));
  const gates: Gate[] = [...(route.crossing ? [route.crossing.to] : []), ...(out ? [out.from] : [])];
  const plan = planOf(field, ring, gates, cable);
  const ways = ends.flatMap((to) =>
    HANDS.flatMap((hand) => RUNS.map((runs): FieldWay => ({ plan, from, to, hand, runs }))),
  );
  const found = filled(ways, pitch, taste);
  const isEven = ({ way, filling }: Filled) =>
    gap(piecesOf(way, filling.line, filling.gap)) <= cable.greatestSpacing - SPARE;
  let even = found.find(isEven);
  // A way that leaves no gap too wide at a tighter pitch will be laid at that.
  const closest = closestSpacing(cable);
  for (let p = pitch; !even && p > closest;) {
    p = Math.max(closest, p * TIGHTER);
    even = filled(ways, p, taste).find(isEven);
  }
  const best = even ?? found[0];
  if (best === undefined) return null;
  // Where the cable ends is free: at other spacings another corner may be better.
  const others = out
    ? []
    : found.filter(
        ({ way: { to } }, i) => to !== best.way.to && found.findIndex((one) => one.way.to === to) === i,
      );
  return {
    ways: [...route.ways, [best, ...others].slice(0, ALTERNATIVES).map(({ way }) => way)],
    lines: out ? [...route.lines, out.line] : route.lines,
    worth: route.worth + best.filling.worth + (even ? 0 : UNEVEN),
    crossing: out,
  };
}

/** A field filled along a way. */
interface Filled {
  readonly way: FieldWay;
  readonly filling: Filling;
}

/** A field filled along each of some ways that lead through it, the best first. */
const filled = (ways: readonly FieldWay[], pitch: number, taste: Taste): Filled[] =>
  ways
    .flatMap((way) => {
      const filling = fillField(way, pitch, taste);
      return filling ? [{ way, filling }] : [];
    })
    .sort((p, q) => p.filling.worth - q.filling.worth);

const HANDS = [1, -1] as const;
const RUNS = ['rows', 'columns'] as const;
/** Each trial of a tighter pitch, as a factor. */
const TIGHTER = 0.9;
/** So many ways of ending the cable are kept. */
const ALTERNATIVES = 3;
/** A field with a gap too wide is worse than any number of bare nodes. */
const UNEVEN = 1e4;

function planOf(
  field: Field,
  ring: readonly RingSide[],
  gates: readonly Gate[],
  cable: LayoutCable,
): LatticePlan {
  const closest = closestSpacing(cable);
  const square = ring.every(({ a, b }, i) => {
    const next = ring[(i + 1) % ring.length]!;
    const [u, v] = [direction(a, b), direction(next.a, next.b)];
    return Math.abs(u.x * v.x + u.y * v.y) < 1e-9 || Math.abs(u.x * v.y - u.y * v.x) < 1e-9;
  });
  const slanted = square ? null : slantedPlan(field, ring, gates, closest, cable.leastBend);
  if (slanted) return slanted;
  const along = gates[gates.length - 1]?.on ?? longest(ring);
  const { a, b } = ring[along]!;
  const angle = Math.atan2(b.y - a.y, b.x - a.x);
  const places = gates.map(({ at }) => at);
  const plan = squarePlan(field, ring, places, angle, closest);
  return plan.columns.cuts.length > 1 ? plan : squarePlan(field, ring, places, angle + Math.PI / 2, closest);
}

const longest = (ring: readonly RingSide[]): number =>
  ring.reduce((best, { a, b }, i) => (distance(a, b) > distance(ring[best]!.a, ring[best]!.b) ? i : best), 0);

/** The place of the ring nearest to the sleeve. */
function footOf(ring: readonly RingSide[], p: Point): Point {
  let best: { at: Point; away: number } | null = null;
  for (const { a, b } of ring) {
    const away = distanceToLine(p, a, b);
    if (best && away >= best.away) continue;
    const u = direction(a, b);
    const part = Math.min(distance(a, b), Math.max(0, (p.x - a.x) * u.x + (p.y - a.y) * u.y));
    best = { at: { x: a.x + u.x * part, y: a.y + u.y * part }, away };
  }
  return best!.at;
}

/** Corners of the ring, the farther ones first: where a cable that goes nowhere else may end. */
const farCorners = (ring: readonly RingSide[], from: Point): Point[] =>
  ring
    .map(({ a }) => a)
    .sort((p, q) => distance(q, from) - distance(p, from))
    .slice(0, LAST_ENDS);
