import type { Crew, Link, Phase, PlanInput } from '../../shared/schedule/model.js';

/**
 * Every order of a few phases, each placed slot by slot: a judge that shares no code with the planning engine or its search. It knows crews by
 * trade, hours, weather, the three kinds of length, the four kinds of link with lags either way of counting, and equipment held while a phase
 * runs; no gates, facts, inspections or equipment held over.
 */
export class EveryOrder {
  private readonly open = new Map<string, boolean[]>();
  private readonly lost: Map<string, boolean[]>;

  constructor(private readonly input: PlanInput) {
    for (const { id, open } of input.calendars) this.open.set(id, this.table(open));
    this.lost = new Map(
      input.weather.map(({ id, holds }) => [
        id,
        this.table(holds.filter(({ cause }) => cause.kind !== 'unknown')),
      ]),
    );
  }

  /** The least objective over all orders, and how many there were. */
  best(objective: (dates: ReadonlyMap<string, Dates>) => number): { least: number; orders: number } {
    let least = Infinity;
    let orders = 0;
    const place = (left: readonly Phase[], placed: readonly Dates[]): void => {
      if (left.length === 0) {
        orders++;
        least = Math.min(least, objective(new Map(placed.map((one) => [one.phase.id, one]))));
      }
      for (const phase of left) {
        const before = this.input.links.filter(({ to }) => to === phase.id).map(({ from }) => from);
        if (left.some(({ id }) => before.includes(id))) continue;
        const dates = this.place(phase, placed);
        place(
          left.filter((one) => one !== phase),
          [...placed, dates],
        );
      }
    };
    place(this.input.phases, []);
    return { least, orders };
  }

  private table(stretches: readonly { from: number; to: number }[]): boolean[] {
    return Array.from({ length: this.input.horizon }, (_, t) =>
      stretches.some(({ from, to }) => from <= t && t < to),
    );
  }

  private place(phase: Phase, placed: readonly Dates[]): Dates {
    const none = { phase, crew: null, start: null, finish: null };
    const links = this.input.links.filter(({ to }) => to === phase.id);
    if (links.some(({ from }) => placed.find((one) => one.phase.id === from)?.start === null)) return none;
    const crews: (Crew | null)[] =
      phase.trade === undefined || phase.duration.slots === 0
        ? [null]
        : this.input.crews
            .filter(({ trades }) => trades.includes(phase.trade!))
            .sort((a, b) => (a.id < b.id ? -1 : 1));
    let best: Dates = none;
    for (const crew of crews) {
      for (let start: number = this.input.now; start <= this.input.horizon; start++) {
        if (best.start !== null && start > best.start) break;
        const finish = this.finish(phase, crew, start);
        if (finish === null || !this.allowed(phase, crew, start, finish, links, placed)) continue;
        if (best.start === null || start < best.start || finish < best.finish!)
          best = { phase, crew, start, finish };
        break;
      }
    }
    return best;
  }

  private isOpen(phase: Phase, crew: Crew | null, t: number): boolean {
    if (t < 0 || t >= this.input.horizon) return false;
    const id = crew?.calendarId ?? phase.calendarId;
    return id === undefined || this.open.get(id)![t]!;
  }

  private isFair(phase: Phase, t: number): boolean {
    return (phase.weatherIds ?? []).every((id) => !this.lost.get(id)![t]);
  }

  /** When it would finish from a start; null where it cannot start. */
  private finish(phase: Phase, crew: Crew | null, start: number): number | null {
    const { duration } = phase;
    const open = (t: number): boolean => this.isOpen(phase, crew, t);
    const workable = (t: number): boolean => open(t) && this.isFair(phase, t);
    if (duration.slots === 0) return workable(start) || workable(start - 1) ? start : null;
    const straight = Array.from({ length: duration.slots }, (_, i) => start + i);
    const end = start + duration.slots;
    if (end > this.input.horizon) return null;
    if (duration.kind === 'elapsed') {
      return open(start) && straight.every((t) => this.isFair(phase, t)) ? end : null;
    }
    if (duration.mode === 'continuous') return straight.every(workable) ? end : null;
    if (!workable(start)) return null;
    let left = duration.slots;
    for (let t = start; t < this.input.horizon; t++) if (workable(t) && --left === 0) return t + 1;
    return null;
  }

  private allowed(
    phase: Phase,
    crew: Crew | null,
    start: number,
    finish: number,
    links: readonly Link[],
    placed: readonly Dates[],
  ): boolean {
    for (const link of links) {
      const before = placed.find((one) => one.phase.id === link.from)!;
      const from = link.kind === 'FS' || link.kind === 'FF' ? before.finish! : before.start!;
      const to = link.kind === 'FS' || link.kind === 'SS' ? start : finish;
      if (link.lagIn === 'elapsed' || link.lag === 0) {
        if (to < from + link.lag) return false;
      } else if (this.worked(phase, crew, to) - this.worked(phase, crew, from) < link.lag) return false;
    }
    const meets = (one: Dates): boolean => one.start !== null && one.start < finish && start < one.finish!;
    if (crew && placed.some((one) => one.crew === crew && meets(one))) return false;
    for (const { id, quantity } of this.input.pools) {
      for (let t = start; t < finish; t++) {
        const out = placed.filter((one) => one.start !== null && one.start <= t && t < one.finish!);
        const all = [phase, ...out.map((one) => one.phase)].flatMap(({ holds }) => holds ?? []);
        const taken = all.reduce((sum, hold) => sum + (hold.poolId === id ? hold.quantity : 0), 0);
        if (taken > quantity && (phase.holds ?? []).some(({ poolId }) => poolId === id)) return false;
      }
    }
    return true;
  }

  /** Open slots before an instant; time always open begins long ago. */
  private worked(phase: Phase, crew: Crew | null, t: number): number {
    if ((crew?.calendarId ?? phase.calendarId) === undefined) return Math.min(t, this.input.horizon);
    let sum = 0;
    for (let u = 0; u < t; u++) if (this.isOpen(phase, crew, u)) sum++;
    return sum;
  }
}

/** Where one order puts a phase. */
export interface Dates {
  readonly phase: Phase;
  readonly crew: Crew | null;
  readonly start: number | null;
  readonly finish: number | null;
}
