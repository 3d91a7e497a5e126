import type { Message, NoticeKindName } from '../notices/notices.face.js';
import type { ReminderFacts } from './facts.js';

/** Every kind of reminder there is. The boot demands exactly one derivation for each. */
export const REMINDER_KINDS = [
  'inspection-to-request',
  'visit-today',
  'hold-point-pending',
  'mark-out-lapsing',
  'equipment-due-tomorrow',
  'cure-release-predicted',
  'reading-due',
  'proposal-waiting',
] as const satisfies readonly NoticeKindName[];
export type ReminderKindName = (typeof REMINDER_KINDS)[number];

/** Who is reminded. */
export type Audience = 'office' | 'foremen' | 'office and foremen';

/** A reminder as it follows from the rows now. */
export interface Wanted {
  readonly subjectType: string;
  readonly subjectId: string;
  /** Null when it is about the company and no job. */
  readonly jobId: string | null;
  readonly dueAt: Date;
  /** After this it is of no use and is marked too late. */
  readonly usefulUntil: Date;
  readonly detail: ReminderDetail;
}

/** What a reminder says and to whom, stored with it. */
export interface ReminderDetail {
  /** The crew whose foremen are meant; null for all foremen. */
  readonly crewId: string | null;
  readonly message: Message;
}

/** Derives the reminders of one kind. */
export interface ReminderKind {
  readonly kind: ReminderKindName;
  readonly audience: Audience;
  /** Sent in quiet hours too. */
  readonly urgent: boolean;
  /** Pure: equal facts give equal reminders, at most one for each subject. */
  readonly derive: (facts: ReminderFacts) => readonly Wanted[];
}
