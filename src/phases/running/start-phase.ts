import type { Change } from '../../platform/change/change.js';
import { demandPast } from '../../platform/outcomes/demand-past.js';
import { gatherFacts } from '../facts/gather-facts.js';
import { demandNoObstacle } from '../obstacles/obstacles.js';
import { settleWaits } from '../waits/settle-waits.js';
import { chooseCrew } from './choose-crew.js';
import { demandStep } from './demand-phase.js';
import { markStarted } from './mark.js';

/** What a start asks for. */
export interface StartAsked {
  readonly phaseId: string;
  readonly revision?: number | null;
  readonly at?: Date | null;
  readonly crewId?: string | null;
}

/** Starts a phase unless something stands in its way. Waits whose time is over are brought up to date first. */
export async function startPhase(change: Change, asked: StartAsked): Promise<{ phaseId: string }> {
  const at = demandPast(change, asked.at);
  const { phase } = await demandStep(change, asked, 'start');
  await settleWaits(change);
  const all = await gatherFacts(change.tx, {
    companyId: change.ctx.companyId,
    phaseIds: [phase.id],
    at,
    crewId: asked.crewId ?? null,
  });
  const facts = all.get(phase.id);
  if (!facts) throw new Error(`Phase ${phase.id} was found and then was not`);
  // A wait that settling has just started needs no second start.
  if (facts.phase.state !== 'waiting') return { phaseId: phase.id };
  const crew = await chooseCrew(change, facts, asked.crewId);
  demandNoObstacle(facts, { gate: 'start', at });
  await markStarted(change, phase, { at, crewId: crew?.id ?? null });
  return { phaseId: phase.id };
}
