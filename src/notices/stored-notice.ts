import type { Notice, Prisma } from '../generated/prisma/client.js';
import type { Announcement } from './notice-kind.js';
import type { Message } from './message.js';

/** What the column `detail` of a notice holds. */
export interface StoredNotice {
  readonly message: Message;
  readonly usefulUntil: string | null;
}

/** The detail to store for an announcement. */
export function toStored({ message, usefulUntil }: Announcement): Prisma.InputJsonObject {
  const stored: StoredNotice = { message, usefulUntil: usefulUntil?.toISOString() ?? null };
  return JSON.parse(JSON.stringify(stored)) as Prisma.InputJsonObject;
}

/** The detail of a notice as it was stored. */
export function storedOf(notice: Pick<Notice, 'detail'>): StoredNotice {
  return notice.detail as unknown as StoredNotice;
}
