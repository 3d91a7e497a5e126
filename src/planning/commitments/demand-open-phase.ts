import type { Crew, Phase } from '../../generated/prisma/client.js';
import { WrongState } from '../../phases/phases.face.js';
import type { Change } from '../../platform/change/change.js';
import { companyRow } from '../../platform/database/company-row.js';
import { demandFound, demandRevision } from '../../platform/outcomes/demand.js';
import { refuseInput } from '../../platform/outcomes/demand-past.js';
import { Refused } from '../../platform/outcomes/refusal.js';

const QUARTER_MS = 15 * 60_000;

/** The phase of the company. @throws Refused with NotFound or StaleRevision. */
export async function demandPhase(
  change: Change,
  input: { readonly phaseId: string; readonly revision?: number | null },
): Promise<Phase> {
  const phase = demandFound(
    await change.tx.phase.findFirst({ where: companyRow(change, input.phaseId) }),
    'phase',
  );
  demandRevision(phase, input.revision, 'phase');
  return phase;
}

/** A phase that has not begun. @throws Refused with WrongState as well. */
export async function demandOpenPhase(
  change: Change,
  input: { readonly phaseId: string; readonly revision?: number | null },
): Promise<Phase> {
  const phase = await demandPhase(change, input);
  if (phase.state === 'waiting') return phase;
  const message = `${phase.name} is ${phase.state}; only a phase that has not begun can be scheduled.`;
  throw new Refused(new WrongState(phase.state, message));
}

/** The crew, when it may do the phase. @throws Refused with NotFound or InvalidInput. */
export async function demandCrewFor(change: Change, phase: Phase, crewId: string): Promise<Crew> {
  const crew = demandFound(await change.tx.crew.findFirst({ where: companyRow(change, crewId) }), 'crew');
  if (phase.trade === null || phase.trade === 'authority')
    refuseInput('crewId', `${phase.name} is done by no crew; leave the crew out.`);
  if (!crew.active) refuseInput('crewId', `${crew.name} is out of use; choose another crew.`);
  if (!crew.trades.includes(phase.trade))
    refuseInput('crewId', `${crew.name} does not do ${phase.trade}; choose a crew that does.`);
  return crew;
}

/** @throws Refused with InvalidInput when an instant is not on a quarter of an hour, or has passed. */
export function demandPlannable({ now }: Change, path: string, at: Date): void {
  if (at.getTime() % QUARTER_MS !== 0)
    refuseInput(path, 'must be on a quarter of an hour, as 08:00 or 08:15; the plan knows no finer step.');
  if (at < now) refuseInput(path, 'has passed; choose a time to come.');
}
