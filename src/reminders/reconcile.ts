import type { Reminder } from '../generated/prisma/client.js';
import type { ReminderKindName, Wanted } from './reminder-kind.js';

/** A reminder as it follows from the rows, with its kind. */
export type WantedReminder = Wanted & { readonly kind: ReminderKindName };

/** What is to be written so that the stored reminders are the wanted ones. */
export interface Reconciliation {
  /** New ones. */
  readonly create: readonly WantedReminder[];
  /** Due anew, at another time: the generation goes up and older queue entries become outdated. */
  readonly move: readonly { readonly id: string; readonly wanted: WantedReminder }[];
  /** Due at the same time with other words. */
  readonly reword: readonly { readonly id: string; readonly wanted: WantedReminder }[];
  /** Ids of those no longer wanted. */
  readonly cancel: readonly string[];
}

/** What was told already is told again only when its time moved by this much: predictions shift with every reading. */
const WORTH_TELLING_AGAIN = 12 * 3_600_000;

/** Compares the stored reminders of a company with the wanted ones. */
export function reconcile(
  stored: readonly Reminder[],
  wanted: readonly WantedReminder[],
  now: Date,
): Reconciliation {
  const byKey = new Map(stored.map((reminder) => [keyOf(reminder), reminder]));
  const keys = new Set(wanted.map(keyOf));
  const create: WantedReminder[] = [];
  const move: { id: string; wanted: WantedReminder }[] = [];
  const reword: { id: string; wanted: WantedReminder }[] = [];
  for (const one of wanted) {
    const reminder = byKey.get(keyOf(one));
    if (!reminder) {
      if (one.usefulUntil > now) create.push(one);
    } else if (isDueAnew(reminder, one, now)) {
      move.push({ id: reminder.id, wanted: one });
    } else if (reminder.state === 'pending' && !isSameText(reminder, one)) {
      reword.push({ id: reminder.id, wanted: one });
    }
  }
  const cancel = stored
    .filter((reminder) => reminder.state === 'pending' && !keys.has(keyOf(reminder)))
    .map(({ id }) => id);
  return { create, move, reword, cancel };
}

/**
 * Whether a stored reminder must fire at the wanted time although it stood otherwise: a pending one that moved, a
 * cancelled one that is wanted again, and a sent or missed one whose time moved to half a day later or more.
 */
function isDueAnew(reminder: Reminder, wanted: WantedReminder, now: Date): boolean {
  const moved = reminder.dueAt.getTime() !== wanted.dueAt.getTime();
  const useful = wanted.usefulUntil > now;
  switch (reminder.state) {
    case 'pending':
      return moved;
    case 'cancelled':
      return useful;
    case 'sent':
    case 'tooLate':
      return useful && wanted.dueAt.getTime() - reminder.dueAt.getTime() >= WORTH_TELLING_AGAIN;
  }
}

function isSameText(reminder: Reminder, wanted: WantedReminder): boolean {
  return (
    reminder.usefulUntil.getTime() === wanted.usefulUntil.getTime() &&
    JSON.stringify(sorted(reminder.detail)) === JSON.stringify(sorted(wanted.detail))
  );
}

/** A value with the keys of its objects in order: the database gives them back in its own. */
function sorted(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(sorted);
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(
    Object.entries(value)
      .sort(([a], [b]) => (a < b ? -1 : 1))
      .map(([key, inner]) => [key, sorted(inner)]),
  );
}

const keyOf = ({ kind, subjectId }: { kind: string; subjectId: string }): string => `${kind} ${subjectId}`;
