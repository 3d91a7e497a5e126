import { gateBounds, readyBound, type Bound } from './lower-bounds.js';
import type { Crew } from './model.js';
import type { Node } from './problem.js';
import { findEarliest, type Found, type NotFound } from './search.js';
import type { State } from './state.js';

/**
 * The best place for a phase among crews: earliest start, then earliest finish, then the crew it had, then id order.
 *
 * @param floors earliest starts to respect after the gates, with their reasons
 */
export function bestPlace(
  state: State,
  node: Node,
  crews: readonly (Crew | null)[],
  floors: readonly Bound[],
): Found | NotFound {
  const bounds = [...gatesOf(state, node), ...floors];
  const preferred = preferredCrew(node);
  let best: Found | undefined;
  let failure: NotFound | undefined;
  for (const crew of crews) {
    const place = placeWith(state, node, crew, bounds, best?.start ?? Infinity);
    if (!place.found) failure ??= place;
    else if (!best || isBetter(place, best, preferred)) best = place;
  }
  return best ?? failure!;
}

/** Crews that come into question; one `null` for a phase that needs none. */
export function crewChoices(node: Node): readonly (Crew | null)[] {
  return node.needsCrew ? node.crews : [null];
}

/** The crew a phase was promised or last planned with. */
export function preferredCrew(node: Node): string | undefined {
  return node.phase.commitment?.crewId ?? node.phase.previous?.crewId;
}

/** Earliest starts by the phase's gates. */
export function gatesOf(state: State, node: Node): Bound[] {
  if (!node.phase.gates) return [];
  return gateBounds(node, (id) => state.visitOf(node.visits.find((v) => v.inspection.id === id)!));
}

function placeWith(
  state: State,
  node: Node,
  crew: Crew | null,
  floors: readonly Bound[],
  latest: number,
): Found | NotFound {
  const { problem } = state;
  const hours = problem.hoursOf(node, crew);
  const ready = readyBound(node, hours, state.outcomes, problem.input.now);
  if (!ready) {
    const { calendarId } = hours;
    return { found: false, reason: { kind: 'calendar', calendarId, until: problem.end }, poolId: null };
  }
  return findEarliest({
    node,
    crew,
    hours,
    ready,
    floors,
    timeline: crew && state.timeline(crew.id),
    stock: state.stock,
    nodes: problem.nodes,
    input: problem.input,
    horizon: problem.end,
    latest,
  });
}

function isBetter(a: Found, b: Found, preferred: string | undefined): boolean {
  if (a.start !== b.start) return a.start < b.start;
  if (a.finish !== b.finish) return a.finish < b.finish;
  return a.crew?.id === preferred && b.crew?.id !== preferred;
}
