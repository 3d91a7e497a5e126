import type { Delivery, Notice } from '../generated/prisma/client.js';
import type { Transaction } from '../platform/database/database.js';
import type { Message } from './message.js';

/** Every kind of notice there is. The boot demands exactly one handler for each. */
export const NOTICE_KINDS = [
  'hookup-ready',
  'hookup-withdrawn',
  'energising-allowed',
  'energising-withdrawn',
  'inspection-to-request',
  'visit-today',
  'hold-point-pending',
  'mark-out-lapsing',
  'equipment-due-tomorrow',
  'cure-release-predicted',
  'reading-due',
  'proposal-waiting',
  'cure-freezing',
  'cure-alarm',
  'protection-may-come-off',
  'weather-hold',
  'weather-hold-soon',
  'weather-hold-lifted',
] as const;
export type NoticeKindName = (typeof NOTICE_KINDS)[number];

/** What happened: the company and the ids the outbox row or the reminder carries. */
export interface Happening {
  readonly companyId: string;
  /** The moment at which it is looked at. */
  readonly now: Date;
  readonly ids: Readonly<Record<string, unknown>>;
}

/** A notice about to be written. */
export interface Announcement {
  /** Names the happening: the same one is announced once, whatever is retried. */
  readonly sourceKey: string;
  readonly jobId: string | null;
  readonly subjectType: string;
  readonly subjectId: string;
  readonly recipientIds: readonly string[];
  readonly message: Message;
  /** After this it is not sent any more; null when it stays useful. */
  readonly usefulUntil: Date | null;
}

/** A delivery about to be sent. */
export interface Sending {
  readonly notice: Notice;
  readonly delivery: Delivery;
  readonly now: Date;
}

/** Handles one kind of notice. */
export interface NoticeKind {
  readonly kind: NoticeKindName;
  /** Sent in quiet hours too. */
  readonly urgent: boolean;
  /** Reads the rows as they are now; null when the happening no longer holds and nobody is to be told. */
  announce(tx: Transaction, happening: Happening): Promise<Announcement | null>;
  /** Asked again right before each sending: why it is not to be sent any more, or null to send. */
  overtaken?(tx: Transaction, sending: Sending): Promise<string | null>;
}
