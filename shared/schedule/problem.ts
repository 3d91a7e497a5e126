import { compareIds, sortedById } from './by-id.js';
import { canDo } from './can-do.js';
import { CompiledCalendar } from './compiled-calendar.js';
import type { Crew, Inspection, Job, Link, Phase, PlanInput } from './model.js';
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

/** A link between compiled phases. */
export interface Edge {
  readonly link: Link;
  readonly from: Node;
  readonly to: Node;
}

/** An inspection with the phases around it. */
export interface Visit {
  readonly index: number;
  readonly inspection: Inspection;
  readonly after: readonly Node[];
  readonly hours: CompiledCalendar;
}

/** A phase compiled for planning. */
export interface Node {
  readonly index: number;
  readonly id: string;
  readonly phase: Phase;
  readonly job: Job;
  readonly length: SlotCount;
  /** Crews that may do it, in id order; empty when it needs none or none exists. */
  readonly crews: readonly Crew[];
  readonly needsCrew: boolean;
  /** One object for all phases under the same weather sets. */
  readonly weather: WeatherCover | null;
  readonly ins: Edge[];
  readonly outs: Edge[];
  readonly visits: Visit[];
  /** Visits that wait for this phase. */
  readonly visitsAfter: Visit[];
  /** Phases that wait for those visits, unless they are passed; once a visit. */
  readonly gated: Node[];
}

/** The input in id order, with references resolved and calendars compiled on demand. */
export class Problem {
  readonly nodes: readonly Node[];
  readonly visits: readonly Visit[];
  readonly jobs: readonly Job[];
  readonly crews: readonly Crew[];
  private readonly byId = new Map<string, Node>();
  private readonly calendars = new Map<string, CompiledCalendar>();
  private readonly covers = new Map<string, WeatherCover>();
  private readonly hours = new Map<WeatherCover | null, Map<string | null, Hours>>();
  private readonly always: CompiledCalendar;
  /** First slot of the horizon. */
  readonly begin = slot(0);
  /** End of the horizon. */
  readonly end: Slot;

  constructor(readonly input: PlanInput) {
    this.end = slot(input.horizon);
    this.always = CompiledCalendar.always(input.horizon);
    for (const calendar of input.calendars) {
      const inside = calendar.open.map((i) => ({ from: i.from, to: slot(Math.min(i.to, input.horizon)) }));
      this.calendars.set(calendar.id, CompiledCalendar.of(inside));
    }
    this.jobs = sortedById(input.jobs);
    this.crews = sortedById(input.crews);
    const jobs = new Map(this.jobs.map((job) => [job.id, job]));
    this.nodes = sortedById(input.phases).map((phase, index) => this.compile(phase, index, jobs));
    for (const node of this.nodes) this.byId.set(node.id, node);
    for (const link of sortedById(input.links)) {
      const edge = { link, from: this.node(link.from), to: this.node(link.to) };
      edge.from.outs.push(edge);
      edge.to.ins.push(edge);
    }
    this.visits = sortedById(input.inspections).map((inspection, index) => ({
      index,
      inspection,
      after: [...new Set(inspection.after)].sort(compareIds).map((id) => this.node(id)),
      hours: this.calendars.get(inspection.calendarId)!,
    }));
    this.joinVisits();
  }

  /** A phase by its id. */
  node(id: string): Node {
    return this.byId.get(id)!;
  }

  /** A calendar by its id. */
  calendar(id: string): CompiledCalendar {
    return this.calendars.get(id)!;
  }

  /** Open hours of a phase when done by `crew`. */
  hoursOf(node: Node, crew: Crew | null): Hours {
    const calendarId = (crew && node.length > 0 ? crew.calendarId : node.phase.calendarId) ?? null;
    let byCalendar = this.hours.get(node.weather);
    if (!byCalendar) this.hours.set(node.weather, (byCalendar = new Map<string | null, Hours>()));
    let hours = byCalendar.get(calendarId);
    if (!hours) {
      const own = calendarId === null ? this.always : this.calendar(calendarId);
      hours = { calendarId, own, workable: own.without(node.weather?.closed ?? []) };
      byCalendar.set(calendarId, hours);
    }
    return hours;
  }

  private compile(phase: Phase, index: number, jobs: ReadonlyMap<string, Job>): Node {
    const needsCrew = phase.duration.slots > 0 && (phase.trade !== undefined || phase.crewId !== undefined);
    return {
      index,
      id: phase.id,
      phase,
      job: jobs.get(phase.jobId)!,
      length: phase.duration.slots,
      needsCrew,
      crews: needsCrew ? this.crews.filter((crew) => canDo(crew, phase)) : [],
      weather: this.coverOf(phase),
      ins: [],
      outs: [],
      visits: [],
      visitsAfter: [],
      gated: [],
    };
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

  private joinVisits(): void {
    const visits = new Map(this.visits.map((visit) => [visit.inspection.id, visit]));
    for (const visit of this.visits) for (const node of visit.after) node.visitsAfter.push(visit);
    for (const node of this.nodes) {
      const ids = (node.phase.gates ?? []).flatMap((g) => (g.kind === 'inspection' ? [g.inspectionId] : []));
      for (const id of [...new Set(ids)].sort(compareIds)) {
        const visit = visits.get(id)!;
        node.visits.push(visit);
        if (visit.inspection.state.kind === 'passed') continue;
        for (const before of visit.after) before.gated.push(node);
      }
    }
  }
}

function weatherKey(phase: Phase): string {
  const ids = phase.weatherIds;
  if (!ids || ids.length === 0) return '';
  return ids.length === 1 ? ids[0]! : JSON.stringify([...new Set(ids)].sort(compareIds));
}
