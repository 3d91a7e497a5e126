import type { Link, Phase } from '../../generated/prisma/client.js';
import type { Change } from '../../platform/change/change.js';
import { Refused } from '../../platform/outcomes/refusal.js';
import { CrewBusy } from '../errors/crew-busy.js';
import { WrongState } from '../errors/wrong-state.js';
import { demandStep } from './demand-phase.js';

/** What a put-back asks for. */
export interface PutBackAsked {
  readonly phaseId: string;
  readonly revision?: number | null;
  readonly reason: string;
}

type Successor = Link & { readonly to: Phase };

/**
 * Takes back a start or a finish that was wrong. What has been built on it stands in the way; a wait that only began
 * by itself goes back with it.
 */
export async function putBackPhase(change: Change, asked: PutBackAsked): Promise<{ phaseId: string }> {
  const { phase, to } = await demandStep(change, asked, 'putBack');
  const successors = await change.tx.link.findMany({
    where: { companyId: change.ctx.companyId, fromId: phase.id },
    include: { to: true },
    orderBy: { id: 'asc' },
  });
  const built = successors.filter((link) => (to === 'waiting' ? leansOnStart(link) : leansOnFinish(link)));
  const waits = built.filter(({ to: next }) => next.durationKind === 'elapsed' && next.state === 'started');
  demandNothingBuilt(
    phase,
    built.filter((link) => !waits.includes(link)),
  );
  if (to === 'waiting') await demandTakeable(change, phase);
  else if (await runsByItself(change, phase)) await reopenGates(change, phase);
  else await demandCrewFree(change, phase);
  for (const { to: wait } of waits) await unstart(change, wait);
  if (to === 'waiting') await unstart(change, phase, asked.reason);
  else await unfinish(change, phase, asked.reason);
  change.record({
    action: to === 'waiting' ? 'phase put back before its start' : 'phase put back to started',
    subjectType: 'phase',
    subjectId: phase.id,
    jobId: phase.jobId,
    detail: { name: phase.name },
    reason: asked.reason,
  });
  return { phaseId: phase.id };
}

function leansOnStart({ kind, to }: Successor): boolean {
  if (kind === 'startStart') return to.state === 'started' || to.state === 'done';
  return kind === 'startFinish' && to.state === 'done';
}

function leansOnFinish({ kind, to, lagMinutes }: Successor): boolean {
  if (lagMinutes < 0) return false;
  if (kind === 'finishStart') return to.state === 'started' || to.state === 'done';
  return kind === 'finishFinish' && to.state === 'done';
}

function demandNothingBuilt(phase: Phase, built: readonly Successor[]): void {
  const [first] = built;
  if (!first) return;
  const names = built.map(({ to }) => to.name).join(', ');
  const message = `${names} came after ${phase.name} and has ${first.to.state === 'done' ? 'finished' : 'started'}; put that back first.`;
  throw new Refused(new WrongState(phase.state, message));
}

/** A start cannot be taken back from a wait that would start again, a placement, or a recorded hookup. */
async function demandTakeable(change: Change, phase: Phase): Promise<void> {
  const refuse = (message: string): never => {
    throw new Refused(new WrongState(phase.state, message));
  };
  if (phase.durationKind === 'elapsed')
    refuse(`${phase.name} starts by itself; put back what comes before it.`);
  const where = { companyId: change.ctx.companyId, phaseId: phase.id };
  if ((await change.tx.placement.count({ where })) > 0)
    refuse(`${phase.name} has a placement on record; what is placed cannot be taken back.`);
  if ((await change.tx.hookup.count({ where: { ...where, doneAt: { not: null } } })) > 0)
    refuse(`${phase.name} is a recorded hookup; what is connected cannot be taken back.`);
}

/** Waits, and the phases of recorded hookups, finish by themselves once their hold points are released. */
async function runsByItself(change: Change, phase: Phase): Promise<boolean> {
  if (phase.durationKind === 'elapsed') return true;
  const where = { companyId: change.ctx.companyId, phaseId: phase.id, doneAt: { not: null } };
  return (await change.tx.hookup.count({ where })) > 0;
}

/** What finishes by itself goes on when its hold points are opened again; what only time has ended cannot. */
async function reopenGates(change: Change, phase: Phase): Promise<void> {
  const { count } = await change.tx.holdPoint.updateMany({
    where: { companyId: change.ctx.companyId, phaseId: phase.id, gate: 'finish' },
    data: { state: 'open', decidedAt: null, decidedById: null, reason: null, revision: { increment: 1 } },
  });
  if (count === 0)
    throw new Refused(
      new WrongState(phase.state, `${phase.name} has finished by itself; put back what comes before it.`),
    );
}

async function demandCrewFree(change: Change, phase: Phase): Promise<void> {
  if (!phase.actualCrewId) return;
  const other = await change.tx.phase.findFirst({
    where: { companyId: change.ctx.companyId, actualCrewId: phase.actualCrewId, state: 'started' },
    orderBy: { id: 'asc' },
  });
  if (!other?.actualStart) return;
  const crew = await change.tx.crew.findUniqueOrThrow({ where: { id: phase.actualCrewId } });
  throw new Refused(
    new CrewBusy({
      crewId: crew.id,
      crewName: crew.name,
      phaseId: other.id,
      phaseName: other.name,
      from: other.actualStart,
      to: null,
    }),
  );
}

async function unstart(change: Change, phase: Phase, note: string | null = null): Promise<void> {
  await change.tx.phase.update({
    where: { id: phase.id },
    data: {
      state: 'waiting',
      actualStart: null,
      actualFinish: null,
      actualCrewId: null,
      remainingMinutes: null,
      note,
      revision: { increment: 1 },
    },
  });
}

async function unfinish(change: Change, phase: Phase, note: string): Promise<void> {
  await change.tx.phase.update({
    where: { id: phase.id },
    data: { state: 'started', actualFinish: null, note, revision: { increment: 1 } },
  });
  await change.tx.job.updateMany({
    where: { id: phase.jobId, state: 'done' },
    data: { state: 'running', revision: { increment: 1 } },
  });
}
