import type { Finding } from '../../../shared/entry/rules/finding.js';
import type { CureAlarm, Prisma } from '../../generated/prisma/client.js';
import { findingOf } from '../../inspections/inspections.face.js';
import type { Change } from '../../platform/change/change.js';
import { type AlarmKind, noticeOf } from './alarm-kinds.js';

/** Something found at a placement, by its kind. */
export interface FoundAlarm {
  readonly kind: AlarmKind;
  readonly finding: Finding;
}

/** The placement whose alarms are looked at, with those that stand. */
export interface WatchedPlacement {
  readonly id: string;
  readonly jobId: string;
  readonly phase: { readonly name: string };
  readonly alarms: readonly CureAlarm[];
}

/**
 * Opens what is found anew, ends what is found no longer, and tells people once for each that opens. One that stands
 * keeps the words it was opened with: what people were told does not change behind their back.
 */
export async function syncAlarms(
  change: Change,
  placement: WatchedPlacement,
  found: readonly FoundAlarm[],
): Promise<void> {
  const standing = new Map(placement.alarms.map((alarm) => [alarm.kind, alarm]));
  const kinds = new Set<string>(found.map(({ kind }) => kind));
  for (const { kind, finding } of found)
    if (!standing.has(kind)) await open(change, placement, kind, finding);
  for (const alarm of placement.alarms) if (!kinds.has(alarm.kind)) await end(change, placement, alarm);
}

async function open(
  change: Change,
  placement: WatchedPlacement,
  kind: AlarmKind,
  finding: Finding,
): Promise<void> {
  const alarm = await change.tx.cureAlarm.create({
    data: {
      companyId: change.ctx.companyId,
      jobId: placement.jobId,
      placementId: placement.id,
      kind,
      finding: findingOf(finding) as unknown as Prisma.InputJsonObject,
      openedAt: change.now,
    },
  });
  await change.later(noticeOf(kind), { alarmId: alarm.id });
  tell(change, placement, alarm, 'cure alarm opened', finding.text);
}

async function end(change: Change, placement: WatchedPlacement, alarm: CureAlarm): Promise<void> {
  await change.tx.cureAlarm.update({ where: { id: alarm.id }, data: { clearedAt: change.now } });
  tell(change, placement, alarm, 'cure alarm ended', null);
}

function tell(
  change: Change,
  { jobId, phase }: WatchedPlacement,
  { placementId, kind }: CureAlarm,
  action: string,
  reason: string | null,
): void {
  change.record({
    action,
    subjectType: 'placement',
    subjectId: placementId,
    jobId,
    detail: { kind, phase: phase.name },
    reason,
  });
}
