import type { Link, Phase } from '../../generated/prisma/client.js';
import { BeforePredecessor } from '../../phases/phases.face.js';
import type { Change } from '../../platform/change/change.js';
import { Refused } from '../../platform/outcomes/refusal.js';
import { localTime } from '../../platform/local-time.js';

const MINUTE_MS = 60_000;

interface Dates {
  readonly startAt: Date;
  readonly finishAt: Date;
}

/**
 * Checks dates against the phases before: their actual, else planned, else promised ends, with the lags that count by the clock. A lag of open time is
 * left to the plan, which knows the hours.
 *
 * @throws Refused with BeforePredecessor naming every phase that ends too late.
 */
export async function demandAfterPredecessors(change: Change, phase: Phase, dates: Dates): Promise<void> {
  const links = await change.tx.link.findMany({
    where: { companyId: change.ctx.companyId, toId: phase.id, from: { state: { not: 'dropped' } } },
    include: { from: { include: { planned: true, commitments: { where: { state: 'held' } } } } },
    orderBy: { id: 'asc' },
  });
  const broken = links.flatMap((link) => {
    const { planned, commitments, actualStart, actualFinish, name, id } = link.from;
    const told = planned ?? commitments[0];
    const start = actualStart ?? told?.startAt;
    const finish = actualFinish ?? told?.finishAt;
    const bound = boundOf(link, start, finish);
    const end = link.kind === 'finishStart' || link.kind === 'startStart' ? dates.startAt : dates.finishAt;
    return bound !== null && end.getTime() < bound ? [{ id, name, bound }] : [];
  });
  if (broken.length === 0) return;
  const job = await change.tx.job.findUniqueOrThrow({ where: { id: phase.jobId }, include: { site: true } });
  const latest = broken.reduce((most, one) => (one.bound > most.bound ? one : most));
  const names = broken.map(({ name }) => name).join(', ');
  const message = `${phase.name} cannot be promised before ${names} allows it, ${localTime(new Date(latest.bound), job.site.zone)} at the earliest. Choose a later time or move what comes before.`;
  throw new Refused(new BeforePredecessor([...new Set(broken.map(({ id }) => id))], message));
}

function boundOf(link: Link, start: Date | undefined, finish: Date | undefined): number | null {
  const from = link.kind === 'finishStart' || link.kind === 'finishFinish' ? finish : start;
  if (!from) return null;
  if (link.lagIn === 'working' && link.lagMinutes !== 0) return link.lagMinutes > 0 ? from.getTime() : null;
  return from.getTime() + link.lagMinutes * MINUTE_MS;
}
