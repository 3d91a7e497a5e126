import type { Interval } from '../../shared/schedule/model.js';
import { slot, type Slot } from '../../shared/schedule/slot.js';

/** How far a key moves a phase: to the next open slot, by a day or by a week of the clock. */
export type Step = 'slot' | 'day' | 'week';

/** Within what it may be moved. */
export interface StepBounds {
  readonly now: Slot;
  readonly horizon: number;
  readonly slotsOfDay: number;
}

const DAYS = { day: 1, week: 7 } as const;

/**
 * Where a step leads from a slot: `slot` to the next slot that is open in the given hours (to the next at all where there are none), the others by the
 * clock. It stays between the present and the end of what is planned.
 */
export function stepFrom(
  at: Slot,
  step: Step,
  direction: 1 | -1,
  open: readonly Interval[] | null,
  { now, horizon, slotsOfDay }: StepBounds,
): Slot {
  const clamp = (to: number): Slot => slot(Math.min(Math.max(to, now), horizon - 1));
  if (step !== 'slot') return clamp(at + direction * DAYS[step] * slotsOfDay);
  const next = clamp(at + direction);
  if (!open) return next;
  return direction > 0 ? clamp(openFrom(next, open) ?? next) : clamp(openBefore(next, open) ?? next);
}

/** The first open slot at or after one. */
function openFrom(at: Slot, open: readonly Interval[]): Slot | null {
  const after = open.filter(({ to }) => to > at).map(({ from }) => Math.max(from, at));
  return after.length > 0 ? slot(Math.min(...after)) : null;
}

/** The last open slot at or before one. */
function openBefore(at: Slot, open: readonly Interval[]): Slot | null {
  const before = open.filter(({ from }) => from <= at).map(({ to }) => Math.min(to - 1, at));
  return before.length > 0 ? slot(Math.max(...before)) : null;
}

/** The step that a key asks for while a phase is picked up; null when it means nothing. */
export function stepOfKey(key: string, shift: boolean): { step: Step; direction: 1 | -1 } | null {
  switch (key) {
    case 'ArrowRight':
    case 'ArrowLeft':
      return { step: shift ? 'day' : 'slot', direction: key === 'ArrowRight' ? 1 : -1 };
    case 'PageDown':
    case 'PageUp':
      return { step: 'week', direction: key === 'PageDown' ? 1 : -1 };
    default:
      return null;
  }
}
