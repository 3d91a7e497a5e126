import type { Change } from '../../platform/change/change.js';
import { gatherFacts } from '../facts/gather-facts.js';
import type { PhaseFacts } from '../facts/phase-facts.js';
import { findObstacles, JOB_CHECKS } from '../obstacles/obstacles.js';
import { markFinished, markStarted } from '../running/mark.js';
import { finishOfItself, startOfItself } from './moments.js';
import { selfRunningPhases } from './self-running.js';

/** More passes than a chain of waits can have; a longer one is an endless loop. */
const MOST_PASSES = 50;

/**
 * Brings up to date what nobody starts or finishes by hand: a wait starts when what it waits for is done, and ends
 * with its time or the release of its hold points; a moment of the authority passes with its inspection; the phase of
 * a recorded hookup starts with the record. Runs until nothing moves, for one may follow another.
 */
export async function settleWaits(change: Change): Promise<void> {
  for (let pass = 0; pass < MOST_PASSES; pass += 1) {
    const phaseIds = await selfRunningPhases(change);
    if (phaseIds.length === 0) return;
    const { companyId } = change.ctx;
    const all = await gatherFacts(change.tx, { companyId, phaseIds, at: change.now });
    let moved = false;
    for (const id of phaseIds) {
      const facts = all.get(id);
      if (facts && (await settle(change, facts))) moved = true;
    }
    if (!moved) return;
  }
  throw new Error(`Waits of company ${change.ctx.companyId} did not settle in ${MOST_PASSES} passes`);
}

async function settle(change: Change, facts: PhaseFacts): Promise<boolean> {
  const { phase } = facts;
  const gate = phase.state === 'waiting' ? 'start' : 'finish';
  if (findObstacles(facts, { gate, at: change.now }, JOB_CHECKS).length > 0) return false;
  if (gate === 'start') {
    const at = startOfItself(facts, change.now);
    if (at === null) return false;
    await markStarted(change, phase, { at, byItself: true });
    return true;
  }
  const at = finishOfItself(facts);
  if (at === null) return false;
  await markFinished(change, phase, { at, byItself: true });
  return true;
}
