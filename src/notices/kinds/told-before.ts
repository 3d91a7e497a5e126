import type { Delivery, Notice } from '../../generated/prisma/client.js';
import type { Transaction } from '../../platform/database/database.js';

/** People to whom an earlier notice went or goes; null when it was never written. */
export async function addressedBy(
  tx: Transaction,
  companyId: string,
  sourceKey: string,
): Promise<string[] | null> {
  const earlier = await tx.notice.findUnique({
    where: { companyId_sourceKey: { companyId, sourceKey } },
    include: { deliveries: { orderBy: { id: 'asc' } } },
  });
  return earlier && [...new Set(earlier.deliveries.map(({ recipientId }) => recipientId))];
}

/**
 * Whether the recipient of a withdrawal was sent the notice it withdraws: null when so, else why nothing is sent. A
 * notice just being sent is waited for.
 */
export async function neverTold(
  tx: Transaction,
  { notice, delivery }: { readonly notice: Notice; readonly delivery: Delivery },
  sourceKey: string,
): Promise<string | null> {
  const told = await tx.$queryRaw<{ state: string }[]>`
    select earlier.state::text as state from "Delivery" earlier join "Notice" notice on notice.id = earlier."noticeId"
    where notice."companyId" = ${notice.companyId}::uuid and notice."sourceKey" = ${sourceKey}
      and earlier."recipientId" = ${delivery.recipientId}::uuid
    for update of earlier`;
  return told.some(({ state }) => state === 'sent')
    ? null
    : 'not sent: the notice it withdraws was never sent';
}
