import type { Conflict, ConflictCode, Phase, Plan, PlanInput, PlannedPhase } from '../model.js';
import { OpenSlots } from './open-slots.js';

/** Input and plan side by side, looked up by id. */
export class Book {
  readonly phases: ReadonlyMap<string, Phase>;
  readonly planned: ReadonlyMap<string, PlannedPhase>;
  private readonly first: number;
  private readonly cache = new Map<string, OpenSlots>();

  constructor(
    readonly input: PlanInput,
    readonly plan: Plan,
  ) {
    this.phases = new Map(input.phases.map((phase) => [phase.id, phase]));
    this.planned = new Map(plan.phases.map((phase) => [phase.id, phase]));
    this.first = Math.min(0, ...plan.phases.map((phase) => phase.start ?? 0), input.now) - 1;
  }

  /** Phases that have a place, with what was asked. */
  *placed(): Generator<{ phase: Phase; at: PlannedPhase & { start: number; finish: number } }> {
    for (const at of this.plan.phases) {
      const phase = this.phases.get(at.id);
      if (phase && at.start !== null && at.finish !== null) {
        yield { phase, at: { ...at, start: at.start, finish: at.finish } };
      }
    }
  }

  /** Whether the plan owns up to a conflict of this kind. */
  says<C extends ConflictCode>(
    code: C,
    fits: (conflict: Extract<Conflict, { code: C }>) => boolean,
  ): boolean {
    return this.plan.conflicts.some((c) => c.code === code && fits(c as Extract<Conflict, { code: C }>));
  }

  /** Calendar that a phase runs by: its crew's, else its own; null for always open. */
  calendarIdOf(phase: Phase, crewId: string | null): string | null {
    const crew = this.input.crews.find(({ id }) => id === crewId);
    return (phase.duration.slots > 0 ? crew?.calendarId : undefined) ?? phase.calendarId ?? null;
  }

  /** Open slots of a calendar, less the closing weather of a phase when one is given. */
  hours(calendarId: string | null, weatherOf?: Phase): OpenSlots {
    const weatherIds = [...(weatherOf?.weatherIds ?? [])].sort();
    const key = JSON.stringify([calendarId, weatherIds]);
    let hours = this.cache.get(key);
    if (!hours) {
      const end = Math.max(this.input.horizon, ...this.plan.phases.map((phase) => phase.finish ?? 0)) + 1;
      const always = [{ from: this.first, to: end } as never];
      const open =
        calendarId === null ? always : this.input.calendars.find(({ id }) => id === calendarId)!.open;
      const closed = this.input.weather
        .filter((set) => weatherIds.includes(set.id))
        .flatMap((set) => set.holds.filter((hold) => hold.cause.kind !== 'unknown'));
      hours = new OpenSlots(open, closed, this.first, end);
      this.cache.set(key, hours);
    }
    return hours;
  }
}
