import { canDo } from '../can-do.js';
import { CompiledCalendar } from '../compiled-calendar.js';
import { fromFinish, toFinish } from '../link-lag.js';
import type { Link, Phase, PlanInput } from '../model.js';
import type { SlotCount } from '../slot.js';
import { leastClock } from './open-time.js';

/** The least time of the clock between the ends of phases, by their lengths, hours and links alone. */
export class LeastSpans {
  private readonly calendars: ReadonlyMap<string, CompiledCalendar>;
  private readonly phases: ReadonlyMap<string, Phase>;
  private readonly links = new Map<string, Link[]>();
  private readonly known = new Map<string, SlotCount>();

  constructor(private readonly input: PlanInput) {
    this.calendars = new Map(input.calendars.map(({ id, open }) => [id, CompiledCalendar.of(open)]));
    this.phases = new Map(input.phases.map((phase) => [phase.id, phase]));
    for (const link of input.links) {
      const list = this.links.get(link.to);
      if (list) list.push(link);
      else this.links.set(link.to, [link]);
    }
  }

  /** From the start of a phase to its finish. */
  of(phase: Phase): SlotCount {
    const { slots, kind } = phase.duration;
    return kind === 'elapsed' || slots === 0 ? slots : this.clock(phase, slots);
  }

  /** From the start of one phase to the finish of another, as far as links lead there; −Infinity where they do not. */
  toFinish(from: Phase, to: Phase): SlotCount {
    const seen = new Map<string, SlotCount>();
    const finish = (phase: Phase): SlotCount =>
      remember(seen, `finish ${phase.id}`, () => {
        const links = this.into(phase).filter(({ kind }) => toFinish(kind));
        return Math.max(start(phase) + this.of(phase), ...links.map(across));
      });
    const start = (phase: Phase): SlotCount =>
      remember(seen, `start ${phase.id}`, () => {
        if (phase === from) return 0;
        return Math.max(
          -Infinity,
          ...this.into(phase)
            .filter(({ kind }) => !toFinish(kind))
            .map(across),
        );
      });
    const across = (link: Link): SlotCount => {
      const before = this.phases.get(link.from)!;
      return (fromFinish(link.kind) ? finish(before) : start(before)) + this.lag(link);
    };
    return finish(to);
  }

  /** Links that a phase keeps: facts and pins keep none. */
  private into(phase: Phase): readonly Link[] {
    const { actualStart, pinnedStart } = phase.facts ?? {};
    if (actualStart !== undefined || pinnedStart !== undefined) return [];
    return this.links.get(phase.id) ?? [];
  }

  /** A lead counted in working time may go back over any closed time: nothing is known of it. */
  private lag({ lag, lagIn, to }: Link): SlotCount {
    if (lagIn === 'elapsed' || lag === 0) return lag;
    return lag < 0 ? -Infinity : this.clock(this.phases.get(to)!, lag);
  }

  /** The least time of the clock for so many open slots in the hours of any crew that may do a phase, or in its own. */
  private clock(phase: Phase, slots: SlotCount): SlotCount {
    const crewed = phase.duration.slots > 0 && (phase.trade !== undefined || phase.crewId !== undefined);
    if (!crewed && phase.calendarId === undefined) return slots;
    const ids = crewed
      ? this.input.crews.filter((crew) => canDo(crew, phase)).map(({ calendarId }) => calendarId)
      : [phase.calendarId!];
    const least = Math.min(
      ...ids.map((id) =>
        remember(this.known, `${slots} ${id}`, () => leastClock(this.calendars.get(id)!, slots)),
      ),
    );
    return Number.isFinite(least) ? least : slots;
  }
}

/** Works a value out once; what asks for itself on the way, in a circle of links, learns nothing. */
function remember(known: Map<string, SlotCount>, key: string, work: () => SlotCount): SlotCount {
  const before = known.get(key);
  if (before !== undefined) return before;
  known.set(key, -Infinity);
  const value = work();
  known.set(key, value);
  return value;
}
