import type { Job, Phase } from '../../generated/prisma/client.js';
import type { Change } from '../../platform/change/change.js';
import { localTime } from '../../platform/local-time.js';
import { refuseInput } from '../../platform/outcomes/demand-past.js';
import { Refused } from '../../platform/outcomes/refusal.js';
import { WrongState } from '../errors/wrong-state.js';
import { gatherFacts } from '../facts/gather-facts.js';
import { beforePredecessor } from '../obstacles/before-predecessor.js';
import { demandNoObstacle } from '../obstacles/obstacles.js';

type PhaseAtSite = Phase & { readonly job: Job & { readonly site: { readonly zone: string } } };

/**
 * Moves a start that is on record.
 *
 * @throws Refused where it would lie after what has followed from it, or before what must come first.
 */
export async function correctStart(change: Change, phase: PhaseAtSite, at: Date): Promise<void> {
  demandRunning(phase);
  const first = await change.tx.placement.findFirst({
    where: { companyId: change.ctx.companyId, phaseId: phase.id },
    orderBy: { placedAt: 'asc' },
  });
  const latest = [phase.actualFinish, first?.placedAt ?? null].find((moment) => moment && moment < at);
  if (latest) refuseLate(phase, latest, 'start');
  await demandAfterPredecessors(change, phase, { gate: 'start', at });
  await write(change, phase, { actualStart: at }, 'phase start corrected');
}

/**
 * Moves a finish that is on record.
 *
 * @throws Refused where it would lie before its start, or after the start of what waited for it.
 */
export async function correctFinish(change: Change, phase: PhaseAtSite, at: Date): Promise<void> {
  demandRunning(phase);
  if (phase.actualStart && at < phase.actualStart)
    refuseInput(
      'at',
      `${phase.name} started ${localTime(phase.actualStart, phase.job.site.zone)}; enter a later finish.`,
    );
  const followers = await change.tx.link.findMany({
    where: { companyId: change.ctx.companyId, fromId: phase.id, kind: 'finishStart', lagMinutes: { gte: 0 } },
    include: { to: true },
    orderBy: { id: 'asc' },
  });
  const early = followers.find(({ to }) => to.actualStart && to.actualStart < at)?.to.actualStart;
  if (early) refuseLate(phase, early, 'finish');
  await demandAfterPredecessors(change, phase, { gate: 'finish', at });
  await write(change, phase, { actualFinish: at }, 'phase finish corrected');
}

function demandRunning(phase: PhaseAtSite): void {
  if (phase.job.state === 'cancelled')
    throw new Refused(
      new WrongState('cancelled', `Job ${phase.job.number} is cancelled; nothing runs there.`),
    );
  if (phase.durationKind === 'elapsed')
    throw new Refused(
      new WrongState(phase.state, `${phase.name} starts and ends by itself; correct what comes before it.`),
    );
}

function refuseLate(phase: PhaseAtSite, bound: Date, what: string): never {
  const when = localTime(bound, phase.job.site.zone);
  return refuseInput(
    'at',
    `What followed the ${what} of ${phase.name} is on record for ${when}; enter that or an earlier time.`,
  );
}

async function demandAfterPredecessors(
  change: Change,
  phase: PhaseAtSite,
  moment: { readonly gate: 'start' | 'finish'; readonly at: Date },
): Promise<void> {
  const { companyId } = change.ctx;
  const all = await gatherFacts(change.tx, { companyId, phaseIds: [phase.id], at: moment.at });
  const facts = all.get(phase.id);
  if (!facts) throw new Error(`Phase ${phase.id} was found and then was not`);
  demandNoObstacle(facts, moment, [beforePredecessor]);
}

async function write(
  change: Change,
  phase: PhaseAtSite,
  data: { readonly actualStart: Date } | { readonly actualFinish: Date },
  action: string,
): Promise<void> {
  await change.tx.phase.update({ where: { id: phase.id }, data: { ...data, revision: { increment: 1 } } });
  const [[, at] = []] = Object.entries(data);
  change.record({
    action,
    subjectType: 'phase',
    subjectId: phase.id,
    jobId: phase.jobId,
    detail: { name: phase.name, at: (at as Date).toISOString() },
  });
}
