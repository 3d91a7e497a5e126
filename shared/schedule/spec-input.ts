import type { Interval, Link, LinkKind, Phase, PlanInput } from './model.js';
import { slot, type SlotCount } from './slot.js';

/** Days of 96 slots, open from 07:00 to 15:00: eight hours, 32 slots. Made for specs. */
export function workdays(days: number, first = 0): Interval[] {
  return Array.from({ length: days }, (_, i) => ({
    from: slot((first + i) * 96 + 28),
    to: slot((first + i) * 96 + 60),
  }));
}

/** An input with one mason crew on workdays, to be filled by a spec. */
export function inputWith(part: Partial<PlanInput>): PlanInput {
  return {
    horizon: 96 * 30,
    now: slot(0),
    freezeUntil: slot(0),
    calendars: [{ id: 'workdays', open: workdays(30) }],
    crews: [{ id: 'masons', trades: ['mason'], calendarId: 'workdays' }],
    pools: [],
    weather: [],
    inspections: [],
    jobs: [{ id: 'job', priority: 0 }],
    phases: [],
    links: [],
    ...part,
  };
}

/** Interruptible work for the mason. */
export function work(id: string, slots: SlotCount, part: Partial<Phase> = {}): Phase {
  return {
    id,
    jobId: 'job',
    trade: 'mason',
    duration: { kind: 'work', slots, mode: 'interruptible' },
    ...part,
  };
}

/** Continuous work for the mason. */
export function pour(id: string, slots: SlotCount, part: Partial<Phase> = {}): Phase {
  return work(id, slots, { duration: { kind: 'work', slots, mode: 'continuous' }, ...part });
}

/** A wait by the clock. */
export function cure(id: string, slots: SlotCount, part: Partial<Phase> = {}): Phase {
  return { id, jobId: 'job', duration: { kind: 'elapsed', slots }, ...part };
}

/** A link without lag unless given. */
export function link(
  from: string,
  to: string,
  kind: LinkKind = 'FS',
  lag = 0,
  lagIn: Link['lagIn'] = 'elapsed',
): Link {
  return { id: `${from}>${to}${kind}`, from, to, kind, lag, lagIn };
}
