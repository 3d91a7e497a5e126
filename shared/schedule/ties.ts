import { bestPlace } from './best-place.js';
import { CompiledCalendar } from './compiled-calendar.js';
import type { Bound } from './lower-bounds.js';
import type { Gate, Reason, WeatherHold } from './model.js';
import type { Placement } from './outcome.js';
import { hoursUnder, type Choice, type Node } from './problem.js';
import { Reads } from './reads.js';
import type { State } from './state.js';
import { WeatherCover } from './weather-cover.js';

/** So many causes at one instant are listed at most. */
const AT_MOST = 12;

/**
 * What else holds a phase at the very instant at which its reason does: with the reason alone out of the way it would start no earlier; only
 * when all of these give way as well. Each is found by leaving out what is known already and searching again.
 *
 * @param state everything placed before the phase, and not the phase itself
 * @param floors earliest starts that equipment or a greatest lag has asked for
 * @returns none when the reason alone holds it, or when nothing could give way: what has happened, what a person has fixed
 */
export function tiesOf(state: State, node: Node, placed: Placement, floors: readonly Bound[]): Reason[] {
  const ties: Reason[] = [];
  if (placed.state !== 'planned' || node.pinned || node.frozen) return ties;
  const left = [placed.reason];
  while (left.length <= AT_MOST && !IMMOVABLE.has(left.at(-1)!.kind)) {
    const place = withoutCauses(state, node, left, floors);
    if (!place || place.start < placed.start) break;
    ties.push(place.reason);
    left.push(place.reason);
  }
  return ties;
}

/** Nothing can be taken out of the way. */
const IMMOVABLE: ReadonlySet<Reason['kind']> = new Set(['now', 'actual', 'pin', 'commitment', 'unplanned']);

function isSame(a: Reason, b: Reason): boolean {
  return JSON.stringify(a) === JSON.stringify(b);
}

/** The place a phase would find without some causes; undefined for none. */
function withoutCauses(
  state: State,
  node: Node,
  causes: readonly Reason[],
  floors: readonly Bound[],
): { start: number; reason: Reason } | undefined {
  const putBack = causes.flatMap((cause) => takeOut(state, cause));
  const free = causes.reduce((shadow, cause) => freed(state, shadow, cause), node);
  const others = floors.filter(({ reason }) => !causes.some((cause) => isSame(cause, reason)));
  const place = bestPlace(state, free, free.choices, others, new Reads(state.outcomes.length));
  for (const undo of putBack.reverse()) undo();
  return place.placed ? place : undefined;
}

/** Frees the crew or the equipment that a phase has; returns how to take it again. */
function takeOut(state: State, cause: Reason): (() => void)[] {
  if (cause.kind !== 'crew' && cause.kind !== 'equipment') return [];
  const { problem, stock } = state;
  const holder = problem.node(cause.phaseId);
  if (cause.kind === 'equipment') {
    const pool = problem.pools.find(({ pool: { id } }) => id === cause.poolId)!;
    const loans = stock.loansOf(pool).filter((loan) => loan.node === holder);
    for (const loan of loans) stock.takeBack(loan);
    return [() => loans.forEach((loan) => stock.lendAgain(loan))];
  }
  const crew = problem.crews.findIndex(({ id }) => id === cause.crewId);
  const timeline = state.timeline(crew);
  const taken = timeline.all().filter(({ owner }) => owner === holder.index);
  for (const { from, to } of taken) timeline.release(from, to, holder.index);
  return taken.map(
    ({ from, to }) =>
      () =>
        void timeline.take(from, to, holder.index),
  );
}

/** The phase as if a cause of its own did not hold it. */
function freed(state: State, node: Node, cause: Reason): Node {
  switch (cause.kind) {
    case 'link':
      return { ...node, ins: node.ins.filter(({ link }) => link.id !== cause.linkId) };
    case 'clearance':
    case 'cure':
    case 'notBefore':
    case 'inspection': {
      const gates = node.phase.gates!.filter((gate) => !isGateOf(gate, cause));
      return { ...node, phase: { ...node.phase, gates } };
    }
    case 'weather': {
      const sets = node.weather!.sets.map((set) => ({
        ...set,
        holds: set.holds.filter((hold) => set.id !== cause.weatherId || !closesUntil(hold, cause)),
      }));
      return under(node, new WeatherCover(sets));
    }
    case 'calendar':
      return alwaysOpen(state, node);
    default:
      return node;
  }
}

/** Whether a gate is the one that a reason speaks of. */
function isGateOf(gate: Gate, cause: Extract<Reason, { kind: Gate['kind'] }>): boolean {
  return gate.kind === 'inspection'
    ? cause.kind === 'inspection' && gate.inspectionId === cause.inspectionId
    : cause.kind !== 'inspection' && gate.id === cause.id;
}

/** Whether a hold is the one that a reason speaks of. */
function closesUntil(hold: WeatherHold, { until, cause }: Extract<Reason, { kind: 'weather' }>): boolean {
  return hold.to === until && JSON.stringify(hold.cause) === JSON.stringify(cause);
}

function under(node: Node, weather: WeatherCover): Node {
  const choices = node.choices.map((choice): Choice => {
    const { calendarId, own } = choice.hours;
    return { ...choice, hours: hoursUnder(calendarId, own, weather) };
  });
  return { ...node, weather, choices };
}

function alwaysOpen({ problem }: State, node: Node): Node {
  const hours = hoursUnder(null, CompiledCalendar.always(problem.end), node.weather);
  return { ...node, choices: node.choices.map((choice): Choice => ({ ...choice, hours })) };
}
