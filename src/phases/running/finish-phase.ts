import type { Change } from '../../platform/change/change.js';
import { demandPast, refuseInput } from '../../platform/outcomes/demand-past.js';
import { gatherFacts } from '../facts/gather-facts.js';
import { demandNoObstacle } from '../obstacles/obstacles.js';
import { demandStep } from './demand-phase.js';
import { markFinished } from './mark.js';

/** What a finish asks for. */
export interface FinishAsked {
  readonly phaseId: string;
  readonly revision?: number | null;
  readonly at?: Date | null;
}

/** Finishes a phase unless something stands in its way; what it held of the stock is free with it. */
export async function finishPhase(change: Change, asked: FinishAsked): Promise<{ phaseId: string }> {
  const at = demandPast(change, asked.at);
  const { phase } = await demandStep(change, asked, 'finish');
  if (phase.actualStart && at < phase.actualStart)
    refuseInput('at', `${phase.name} started at ${phase.actualStart.toISOString()}; enter a later finish.`);
  const all = await gatherFacts(change.tx, { companyId: change.ctx.companyId, phaseIds: [phase.id], at });
  const facts = all.get(phase.id);
  if (!facts) throw new Error(`Phase ${phase.id} was found and then was not`);
  demandNoObstacle(facts, { gate: 'finish', at });
  await markFinished(change, phase, { at });
  return { phaseId: phase.id };
}
