import { compareIds, sortedById } from './by-id.js';
import { canDo } from './can-do.js';
import { CompiledCalendar } from './compiled-calendar.js';
import type { Crew, EquipmentHold, Inspection, Job, Link, Phase, PlanInput, Pool, Reason } from './model.js';
import type { Patch } from './problem-patch.js';
import { slot, type Slot, type SlotCount } from './slot.js';
import { WeatherCover } from './weather-cover.js';

/** Open hours as one phase meets them. */
export interface Hours {
  /** Null for "always open". */
  readonly calendarId: string | null;
  /** Hours of the crew, or of the phase itself when it has no crew. */
  readonly own: CompiledCalendar;
  /** The same less closing weather. */
  readonly workable: CompiledCalendar;
}

/** A crew that may do a phase (null for one that needs none), with the hours it would run in. */
export interface Choice {
  readonly crew: Crew | null;
  /** Place of the crew in id order; -1 for none. */
  readonly crewIndex: number;
  readonly hours: Hours;
}

/** A link between compiled phases. */
export interface Edge {
  readonly link: Link;
  readonly from: Node;
  readonly to: Node;
  /** It binds the start of its successor. */
  readonly reason: Reason;
}

/** An inspection with the phases around it. */
export interface Visit {
  readonly index: number;
  readonly inspection: Inspection;
  readonly after: readonly Node[];
  readonly hours: CompiledCalendar;
  /** Phases that wait for it. */
  readonly gated: readonly Node[];
}

/** What a phase takes from one pool, all its holds together. */
export interface Need {
  readonly pool: CompiledPool;
  readonly quantity: number;
}

/** One hold of a phase. */
export interface Hold {
  readonly holder: Node;
  readonly hold: EquipmentHold;
  readonly pool: CompiledPool;
  /** Phase at whose finish it comes back; the holder itself where none is named. */
  readonly releaser: Node;
}

/** A pool by its place in id order. */
export interface CompiledPool {
  readonly index: number;
  readonly pool: Pool;
}

/** A phase compiled for planning: what is asked of it again and again is worked out once. */
export interface Node {
  readonly index: number;
  readonly id: string;
  readonly phase: Phase;
  readonly job: Job;
  /** Place of the job in id order. */
  readonly jobIndex: number;
  readonly length: SlotCount;
  /** It has begun. */
  readonly started: boolean;
  /** It is finished. */
  readonly finished: boolean;
  /** A person has fixed the start. */
  readonly pinned: boolean;
  /** The start is promised inside the freeze window. */
  readonly frozen: boolean;
  /** Crews that may do it, in id order; empty when it needs none or none exists. */
  readonly crews: readonly Crew[];
  readonly needsCrew: boolean;
  /** The crew it was promised or last planned with comes first, the others in id order; one without a crew for a phase that needs none. */
  readonly choices: readonly Choice[];
  /** One object for all phases under the same weather sets. */
  readonly weather: WeatherCover | null;
  readonly holds: readonly Hold[];
  readonly needs: readonly Need[];
  /** Holds of other phases that end with this one. */
  readonly releases: Hold[];
  readonly ins: Edge[];
  readonly outs: Edge[];
  readonly visits: Visit[];
  /** Visits that wait for this phase. */
  readonly visitsAfter: Visit[];
  /** Phases that must be placed before this one, once for every link or inspection that says so. */
  readonly prerequisites: readonly Node[];
  /** Phases that this one must be placed before; mirrors `prerequisites`. */
  readonly dependents: readonly Node[];
  /** Links to phases that must come within a greatest lag of this one. */
  readonly mosts: readonly Edge[];
}

/** A node while it is made. */
export type NodeInMaking = { -readonly [Key in keyof Node]: Node[Key] };

const NONE: readonly never[] = [];

/** The input in id order, with references resolved and calendars compiled on demand. */
export class Problem {
  readonly nodes: readonly Node[];
  readonly visits: readonly Visit[];
  readonly jobs: readonly Job[];
  readonly crews: readonly Crew[];
  readonly pools: readonly CompiledPool[];
  private readonly byId = new Map<string, Node>();
  private readonly jobIndexes: ReadonlyMap<string, number>;
  private readonly crewIndexes = new Map<Crew, number>();
  private readonly poolById = new Map<string, CompiledPool>();
  private readonly calendars = new Map<string, CompiledCalendar>();
  private readonly covers = new Map<string, WeatherCover>();
  private readonly hours = new Map<WeatherCover | null, Map<string | null, Hours>>();
  private readonly always: CompiledCalendar;
  private readonly teams = new Map<string, readonly Crew[]>();
  private readonly choicesUnder = new Map<WeatherCover | null, Map<string, readonly Choice[]>>();
  /** Phases of each job, by the place of the job. */
  readonly phasesOf: readonly (readonly Node[])[];
  /** Phases with gates, promises inside the freeze window, or greatest lags: those that conflicts can show on once all have their place. */
  watched: readonly Node[];
  /** First slot of the horizon. */
  readonly begin = slot(0);
  /** End of the horizon. */
  readonly end: Slot;

  /** What it is made of. */
  input: PlanInput;

  constructor(input: PlanInput) {
    this.input = input;
    this.end = slot(input.horizon);
    this.always = CompiledCalendar.always(input.horizon);
    for (const calendar of input.calendars) {
      const inside = calendar.open.map((i) => ({ from: i.from, to: slot(Math.min(i.to, input.horizon)) }));
      this.calendars.set(calendar.id, CompiledCalendar.of(inside));
    }
    this.jobs = sortedById(input.jobs);
    this.crews = sortedById(input.crews);
    this.pools = sortedById(input.pools).map((pool, index) => ({ index, pool }));
    this.crews.forEach((crew, index) => this.crewIndexes.set(crew, index));
    for (const pool of this.pools) this.poolById.set(pool.pool.id, pool);
    this.jobIndexes = new Map(this.jobs.map((job, index) => [job.id, index]));
    const nodes = sortedById(input.phases).map((phase, index) => blank(phase, index));
    this.nodes = nodes;
    for (const node of nodes) this.byId.set(node.id, node);
    for (const node of nodes) {
      this.fill(node, node.phase);
      this.equip(node);
    }
    for (const link of sortedById(input.links)) {
      const edge = { link, from: this.node(link.from), to: this.node(link.to), reason: reasonOf(link) };
      edge.from.outs.push(edge);
      edge.to.ins.push(edge);
    }
    this.visits = this.compileVisits(nodes);
    for (const node of nodes) this.join(node);
    const phasesOf = this.jobs.map((): Node[] => []);
    for (const node of nodes) phasesOf[node.jobIndex]!.push(node);
    this.phasesOf = phasesOf;
    this.watched = watchedOf(nodes);
    for (const node of nodes) {
      for (const hold of node.holds) if (hold.releaser !== node) hold.releaser.releases.push(hold);
    }
  }

  /** A phase by its id. */
  node(id: string): Node {
    return this.byId.get(id)!;
  }

  /** A calendar by its id. */
  calendar(id: string): CompiledCalendar {
    return this.calendars.get(id)!;
  }

  /** Place of a crew in id order; -1 for none. */
  crewIndex(crew: Crew | null): number {
    return crew === null ? -1 : this.crewIndexes.get(crew)!;
  }

  /** Open hours of a phase when done by `crew`. */
  hoursOf(node: Node, crew: Crew | null): Hours {
    const calendarId = (crew && node.length > 0 ? crew.calendarId : node.phase.calendarId) ?? null;
    let byCalendar = this.hours.get(node.weather);
    if (!byCalendar) this.hours.set(node.weather, (byCalendar = new Map<string | null, Hours>()));
    let hours = byCalendar.get(calendarId);
    if (!hours) {
      const own = calendarId === null ? this.always : this.calendar(calendarId);
      hours = hoursUnder(calendarId, own, node.weather);
      byCalendar.set(calendarId, hours);
    }
    return hours;
  }

  /** Works out everything about a phase that its record alone decides. */
  private fill(node: NodeInMaking, phase: Phase): void {
    const { facts, commitment } = phase;
    node.phase = phase;
    node.jobIndex = this.jobIndexes.get(phase.jobId)!;
    node.job = this.jobs[node.jobIndex]!;
    node.length = phase.duration.slots;
    node.started = facts?.actualStart !== undefined;
    node.finished = facts?.actualFinish !== undefined;
    node.pinned = facts?.pinnedStart !== undefined && !node.started;
    node.frozen = commitment !== undefined && commitment.start < this.input.freezeUntil && !node.started;
    node.needsCrew = phase.duration.slots > 0 && (phase.trade !== undefined || phase.crewId !== undefined);
    node.crews = node.needsCrew ? this.team(phase) : NONE;
    node.weather = this.coverOf(phase);
    node.choices = this.choices(node);
  }

  private equip(node: NodeInMaking): void {
    const { holds } = node.phase;
    if (!holds || holds.length === 0) return;
    node.holds = holds.map((hold) => ({
      holder: node,
      hold,
      pool: this.poolById.get(hold.poolId)!,
      releaser: hold.untilPhaseId === undefined ? node : this.node(hold.untilPhaseId),
    }));
    node.needs = needsOf(node.holds);
  }

  /**
   * Takes over a change that leaves the network as it is.
   * @returns phases that have changed, or run under weather that has
   */
  apply(next: PlanInput, { phases, weather }: Patch): Set<Node> {
    this.input = next;
    const changed = new Set<Node>();
    const ids = new Set(weather.map(({ id }) => id));
    const covers = [...this.covers].filter(([, { sets }]) => sets.some(({ id }) => ids.has(id)));
    for (const [key, cover] of covers) {
      this.covers.delete(key);
      this.hours.delete(cover);
      this.choicesUnder.delete(cover);
      for (const node of this.nodes) if (node.weather === cover) changed.add(node);
    }
    for (const node of phases.keys()) changed.add(node);
    for (const node of changed) this.fill(node, phases.get(node) ?? node.phase);
    this.watched = watchedOf(this.nodes);
    return changed;
  }

  /** Works out what a phase waits for and what waits for it. */
  private join(node: NodeInMaking): void {
    const before = node.ins.filter((edge) => edgeBinds(edge)).map((edge) => edge.from);
    const after = node.outs.filter((edge) => edgeBinds(edge)).map((edge) => edge.to);
    if (!node.started) for (const visit of node.visits) if (isOpen(visit)) before.push(...visit.after);
    for (const visit of node.visitsAfter) {
      if (isOpen(visit)) for (const gated of visit.gated) if (!gated.started) after.push(gated);
    }
    node.prerequisites = before;
    node.dependents = after;
    node.mosts = node.outs.some(({ link }) => link.mostLag !== undefined)
      ? node.outs.filter((edge) => edge.link.mostLag !== undefined && edgeBinds(edge))
      : NONE;
  }

  private team(phase: Phase): readonly Crew[] {
    const key = teamKey(phase);
    let team = this.teams.get(key);
    if (!team) this.teams.set(key, (team = this.crews.filter((crew) => canDo(crew, phase))));
    return team;
  }

  private choices(node: Node): readonly Choice[] {
    const wanted = node.needsCrew ? preferredCrew(node) : undefined;
    const { phase, weather } = node;
    const key = node.needsCrew ? `${teamKey(phase)}\n${wanted ?? ''}` : `\n\n\n${phase.calendarId ?? ''}`;
    let known = this.choicesUnder.get(weather);
    if (!known) this.choicesUnder.set(weather, (known = new Map<string, readonly Choice[]>()));
    let choices = known.get(key);
    if (!choices) {
      const crews = node.needsCrew ? node.crews : [null];
      const first = crews.filter((crew) => wanted !== undefined && crew?.id === wanted);
      choices = [...first, ...crews.filter((crew) => crew !== first[0])].map((crew) => ({
        crew,
        crewIndex: this.crewIndex(crew),
        hours: this.hoursOf(node, crew),
      }));
      known.set(key, choices);
    }
    return choices;
  }

  private coverOf(phase: Phase): WeatherCover | null {
    const key = weatherKey(phase);
    if (key === '') return null;
    let cover = this.covers.get(key);
    if (!cover) {
      const ids = new Set(phase.weatherIds);
      cover = new WeatherCover(sortedById(this.input.weather.filter((set) => ids.has(set.id))));
      this.covers.set(key, cover);
    }
    return cover;
  }

  private compileVisits(nodes: readonly NodeInMaking[]): Visit[] {
    const gated = new Map<string, Node[]>(this.input.inspections.map(({ id }) => [id, []]));
    const visits = sortedById(this.input.inspections).map((inspection, index) => ({
      index,
      inspection,
      after: [...new Set(inspection.after)].sort(compareIds).map((id) => this.node(id)),
      hours: this.calendars.get(inspection.calendarId)!,
      gated: gated.get(inspection.id)!,
    }));
    const byId = new Map(visits.map((visit) => [visit.inspection.id, visit]));
    for (const visit of visits) for (const node of visit.after) node.visitsAfter.push(visit);
    for (const node of nodes) {
      const ids = (node.phase.gates ?? []).flatMap((g) => (g.kind === 'inspection' ? [g.inspectionId] : []));
      for (const id of [...new Set(ids)].sort(compareIds)) {
        node.visits.push(byId.get(id)!);
        gated.get(id)!.push(node);
      }
    }
    return visits;
  }
}

/** The crew a phase was promised or last planned with. */
export function preferredCrew(node: Node): string | undefined {
  return node.phase.commitment?.crewId ?? node.phase.previous?.crewId;
}

/** Whether a person, a promise or what has happened decides where a phase starts. */
export function isFixed({ started, pinned, frozen }: Node): boolean {
  return started || pinned || frozen;
}

/** Open hours under some weather. */
export function hoursUnder(
  calendarId: string | null,
  own: CompiledCalendar,
  weather: WeatherCover | null,
): Hours {
  return { calendarId, own, workable: own.without(weather?.closed ?? []) };
}

/** Whether a link still has a say in where its successor sits. */
export function edgeBinds({ link, to }: Edge): boolean {
  if (to.finished) return false;
  return !to.started || link.kind === 'FF' || link.kind === 'SF';
}

function reasonOf({ id, from, kind }: Link): Reason {
  return { kind: 'link', linkId: id, phaseId: from, linkKind: kind };
}

function teamKey({ crewId, trade }: Phase): string {
  return `${crewId ?? ''}\n${trade ?? ''}`;
}

function watchedOf(nodes: readonly Node[]): Node[] {
  return nodes.filter(({ phase, frozen, mosts }) => phase.gates !== undefined || frozen || mosts.length > 0);
}

function isOpen({ inspection }: Visit): boolean {
  return inspection.state.kind !== 'passed';
}

function blank(phase: Phase, index: number): NodeInMaking {
  return {
    index,
    id: phase.id,
    phase,
    job: undefined as never,
    jobIndex: -1,
    length: 0,
    started: false,
    finished: false,
    pinned: false,
    frozen: false,
    crews: NONE,
    needsCrew: false,
    choices: NONE,
    weather: null,
    holds: NONE,
    needs: NONE,
    releases: [],
    ins: [],
    outs: [],
    visits: [],
    visitsAfter: [],
    prerequisites: NONE,
    dependents: NONE,
    mosts: NONE,
  };
}

function needsOf(holds: readonly Hold[]): readonly Need[] {
  const sums = new Map<CompiledPool, number>();
  for (const { hold, pool } of holds) sums.set(pool, (sums.get(pool) ?? 0) + hold.quantity);
  return [...sums].map(([pool, quantity]) => ({ pool, quantity }));
}

function weatherKey(phase: Phase): string {
  const ids = phase.weatherIds;
  if (!ids || ids.length === 0) return '';
  return ids.length === 1 ? ids[0]! : JSON.stringify([...new Set(ids)].sort(compareIds));
}
