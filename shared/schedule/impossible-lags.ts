import { mostLagIn } from './greatest-lag.js';
import { fromFinish, toFinish } from './link-lag.js';
import type { Conflict } from './model.js';
import { edgeBinds, type Edge, type Node, type Problem } from './problem.js';

/** One end of a phase must come at least so much after another. */
interface Arc {
  readonly from: number;
  readonly to: number;
  readonly least: number;
  readonly edge: Edge | null;
  /** It stands for the greatest lag of its link. */
  readonly most: boolean;
}

/** Greatest lags that no plan can keep, whatever crews and equipment there are, and the circles that say so. */
export interface ImpossibleLags {
  readonly edges: ReadonlySet<Edge>;
  readonly conflicts: readonly Conflict[];
}

const NONE: ImpossibleLags = { edges: new Set(), conflicts: [] };

/** Rounds of lengthening between two looks for a circle. */
const ROUNDS = 24;

/**
 * Finds circles of links whose least lags and lengths exceed their greatest lags. Time is counted by the clock, and then once in each
 * calendar that a greatest lag is counted in; both times only with what is certain: open time is never more than the time of the clock, and
 * the lag of a phase that has begun is a fact. Of each circle found the greatest lags are left out, and the search goes on.
 *
 * @param onCycle phases that wait for each other: nothing is said of them
 *
 * Longest ways by repeated lengthening (Bellman 1958, Ford 1956); a circle of positive length is an impossible one, as in projects with
 * minimal and maximal time lags (Bartusch, Möhring and Radermacher 1988).
 */
export function impossibleLags(problem: Problem, onCycle: ReadonlySet<Node>): ImpossibleLags {
  if (!problem.nodes.some(({ mosts }) => mosts.length > 0)) return NONE;
  const limited = problem.nodes.flatMap((node) => node.mosts);
  const edges = new Set<Edge>();
  const conflicts: Conflict[] = [];
  const calendars = new Set(
    limited.filter(({ link }) => mostLagIn(link) === 'working').map(({ to }) => calendarOf(to)),
  );
  for (const calendar of [undefined, ...calendars]) {
    for (;;) {
      const circle = positiveCircle(problem, arcsOf(problem, onCycle, calendar, edges));
      const limits = circle?.filter(({ most }) => most) ?? [];
      if (!circle || limits.length === 0) break;
      conflicts.push(describe(circle));
      for (const { edge } of limits) edges.add(edge!);
    }
  }
  return { edges, conflicts };
}

/** The calendar that a phase runs by whichever crew does it; undefined when that depends on the crew, null for always open. */
function calendarOf(node: Node): string | null | undefined {
  const [first] = node.choices;
  if (!first) return undefined;
  const { calendarId } = first.hours;
  return node.choices.every(({ hours }) => hours.calendarId === calendarId) ? calendarId : undefined;
}

/**
 * What is certain, as arcs between the ends of phases: two points a phase, start and finish.
 * @param calendar count in its open time; undefined to count by the clock
 */
function arcsOf(
  problem: Problem,
  onCycle: ReadonlySet<Node>,
  calendar: string | null | undefined,
  left: ReadonlySet<Edge>,
): Arc[] {
  const arcs: Arc[] = [];
  const byClock = calendar === undefined;
  for (const node of problem.nodes) {
    const [start, finish] = [2 * node.index, 2 * node.index + 1];
    if (node.started || onCycle.has(node)) continue;
    const { duration } = node.phase;
    const counts = byClock || (duration.kind === 'work' && calendarOf(node) === calendar);
    arcs.push({ from: start, to: finish, least: counts ? node.length : 0, edge: null, most: false });
    const rigid = duration.kind === 'elapsed' || duration.mode === 'continuous';
    if (byClock ? rigid : counts)
      arcs.push({ from: finish, to: start, least: -node.length, edge: null, most: false });
    for (const edge of node.outs)
      if (edgeBinds(edge) && !edge.to.started && !onCycle.has(edge.to))
        arcs.push(...arcsOfLink(edge, calendar, left));
  }
  return arcs;
}

function arcsOfLink(edge: Edge, calendar: string | null | undefined, left: ReadonlySet<Edge>): Arc[] {
  const { link, from: before, to: after } = edge;
  const from = 2 * before.index + (fromFinish(link.kind) ? 1 : 0);
  const to = 2 * after.index + (toFinish(link.kind) ? 1 : 0);
  const own = calendar !== undefined && calendarOf(after) === calendar;
  const arcs: Arc[] = [];
  const least = leastOf(edge, calendar === undefined, own);
  if (least !== null) arcs.push({ from, to, least, edge, most: false });
  if (link.mostLag !== undefined && !left.has(edge)) {
    const working = mostLagIn(link) === 'working';
    // By the clock a working lag may last as long as the hours stay closed; in open time one of the clock is at most itself.
    if (calendar === undefined ? !working : !working || own) {
      arcs.push({ from: to, to: from, least: -link.mostLag, edge, most: true });
    }
  }
  return arcs;
}

/** The least lag as it counts; null when nothing is certain of it. */
function leastOf({ link }: Edge, byClock: boolean, own: boolean): number | null {
  if (link.lag === 0) return 0;
  if (link.lagIn === (byClock ? 'elapsed' : 'working') && (byClock || own)) return link.lag;
  if (link.lag > 0) return byClock ? link.lag : 0;
  return byClock ? null : link.lagIn === 'elapsed' ? link.lag : null;
}

/** Lengthens ways until nothing grows, or a circle shows. */
function positiveCircle(problem: Problem, arcs: readonly Arc[]): Arc[] | undefined {
  const count = 2 * problem.nodes.length;
  const length = new Float64Array(count);
  const by = new Array<Arc | undefined>(count).fill(undefined);
  for (let round = 1; ; round++) {
    let grew = false;
    for (const arc of arcs) {
      const reached = length[arc.from]! + arc.least;
      if (reached <= length[arc.to]!) continue;
      length[arc.to] = reached;
      by[arc.to] = arc;
      grew = true;
    }
    if (!grew) return undefined;
    if (round % ROUNDS !== 0 && round <= count) continue;
    const circle = circleIn(by, count);
    if (circle) return circle;
  }
}

/** A circle among the arcs that lengthened last. */
function circleIn(by: readonly (Arc | undefined)[], count: number): Arc[] | undefined {
  const seen = new Int32Array(count).fill(-1);
  for (let begin = 0; begin < count; begin++) {
    let at = begin;
    while (seen[at] === -1 && by[at]) {
      seen[at] = begin;
      at = by[at]!.from;
    }
    if (seen[at] !== begin || !by[at]) continue;
    const circle: Arc[] = [];
    const end = at;
    do {
      circle.push(by[at]!);
      at = by[at]!.from;
    } while (at !== end);
    return circle.reverse();
  }
  return undefined;
}

function describe(circle: readonly Arc[]): Conflict {
  const ids: string[] = [];
  const links = new Set<string>();
  let by = 0;
  for (const { edge, least, most } of circle) {
    by += least;
    if (!edge) continue;
    links.add(edge.link.id);
    for (const { id } of most ? [edge.to, edge.from] : [edge.from, edge.to]) {
      if (!ids.includes(id)) ids.push(id);
    }
  }
  return { code: 'lagCycle', phaseIds: ids, linkIds: [...links], by };
}
