import type { Phase, PlanInput, WeatherSet } from './model.js';
import type { Node, Problem } from './problem.js';

/** A change of the input that leaves the network, the crews, the hours and the facts as they are. */
export interface Patch {
  readonly phases: ReadonlyMap<Node, Phase>;
  readonly weather: readonly WeatherSet[];
}

/**
 * What has changed between the input that a problem was made of and another one.
 * @returns undefined when the problem has to be made anew
 */
export function patchFor(problem: Problem, next: PlanInput): Patch | undefined {
  const { input } = problem;
  const same =
    input.horizon === next.horizon &&
    input.now === next.now &&
    input.freezeUntil === next.freezeUntil &&
    input.order === next.order &&
    sameList(input.calendars, next.calendars) &&
    sameList(input.crews, next.crews) &&
    sameList(input.pools, next.pools) &&
    sameList(input.inspections, next.inspections) &&
    sameList(input.jobs, next.jobs) &&
    sameList(input.links, next.links);
  if (!same || input.phases.length !== next.phases.length || input.weather.length !== next.weather.length)
    return undefined;
  const phases = new Map<Node, Phase>();
  for (let i = 0; i < next.phases.length; i++) {
    const [was, is] = [input.phases[i]!, next.phases[i]!];
    if (was === is) continue;
    if (!keepsItsPlaceInTheNetwork(was, is)) return undefined;
    const node = problem.node(is.id);
    if (node.frozen) return undefined;
    phases.set(node, is);
  }
  const weather: WeatherSet[] = [];
  for (let i = 0; i < next.weather.length; i++) {
    const [was, is] = [input.weather[i]!, next.weather[i]!];
    if (was === is) continue;
    if (was.id !== is.id) return undefined;
    weather.push(is);
  }
  return { phases, weather };
}

function sameList<T>(a: readonly T[], b: readonly T[]): boolean {
  return a === b || (a.length === b.length && a.every((one, i) => one === b[i]));
}

function keepsItsPlaceInTheNetwork(was: Phase, is: Phase): boolean {
  return (
    was.id === is.id &&
    was.jobId === is.jobId &&
    was.trade === is.trade &&
    was.crewId === is.crewId &&
    was.calendarId === is.calendarId &&
    sameData(was.weatherIds, is.weatherIds) &&
    sameData(was.holds, is.holds) &&
    sameData(was.commitment, is.commitment) &&
    sameData(visitsOf(was), visitsOf(is)) &&
    isOpen(was) &&
    isOpen(is)
  );
}

function sameData(a: unknown, b: unknown): boolean {
  return a === b || JSON.stringify(a) === JSON.stringify(b);
}

function visitsOf({ gates }: Phase): string[] {
  return (gates ?? []).flatMap((gate) => (gate.kind === 'inspection' ? [gate.inspectionId] : []));
}

/** Nothing has happened to it yet; it may be pinned. */
function isOpen({ facts }: Phase): boolean {
  if (!facts) return true;
  const { actualStart, actualFinish, crewId, remaining } = facts;
  return [actualStart, actualFinish, crewId, remaining].every((fact) => fact === undefined);
}
