import type { Crew } from '../../generated/prisma/client.js';
import type { Change } from '../../platform/change/change.js';
import { demandFound } from '../../platform/outcomes/demand.js';
import { refuseInput } from '../../platform/outcomes/demand-past.js';
import type { PhaseFacts } from '../facts/phase-facts.js';

/** Trades that come from outside or have no crew. */
const WITHOUT_CREW = new Set(['office', 'authority']);

/**
 * The crew that starts a phase: the one named, else the one required, committed or planned. A trade of which the
 * company has no crew (an electrician of his own firm) starts without one.
 *
 * @throws Refused with NotFound for a crew that is not there, or InvalidInput for one that is out of use, of another
 * trade, or wanted and not named.
 */
export async function chooseCrew(
  change: Change,
  { phase, crew }: PhaseFacts,
  named: string | null | undefined,
): Promise<Crew | null> {
  if (named && crew?.id !== named) return demandFound(null, 'crew');
  const { trade, name } = phase;
  if (trade === null || (WITHOUT_CREW.has(trade) && !crew)) return named ? noCrew(name) : null;
  if (!crew) {
    const able = await change.tx.crew.findMany({
      where: { companyId: change.ctx.companyId, active: true, trades: { has: trade } },
      orderBy: { name: 'asc' },
    });
    if (able.length === 0) return null;
    return refuseInput('crewId', `Say which crew starts ${name}: ${able.map((one) => one.name).join(', ')}.`);
  }
  if (!crew.active) refuseInput('crewId', `${crew.name} is out of use; choose another crew.`);
  if (!crew.trades.includes(trade))
    refuseInput('crewId', `${crew.name} does ${crew.trades.join(', ')}; ${name} needs ${trade}.`);
  return crew;
}

function noCrew(name: string): never {
  return refuseInput('crewId', `${name} is a wait and has no crew; leave the crew out.`);
}
