import type { Send } from '../../sends/send.js';
import type { SitePhase } from '../day-sections.js';

type SiteOfPhase = SitePhase['job']['site'];
type Hold = SiteOfPhase['weatherHolds'][number];

/** The weather holds of a site with those laid over them that this phone has still to call or to lift. */
export function pendingHolds(site: SiteOfPhase, oldestFirst: readonly Send[]): Hold[] {
  return oldestFirst
    .filter(({ state }) => state === 'unsent' || state === 'sending')
    .reduce<Hold[]>((holds, send) => lay(holds, send, site.id), [...site.weatherHolds]);
}

function lay(holds: Hold[], { key, change, input }: Send, siteId: string): Hold[] {
  if (change === 'liftWeatherHold') return holds.filter(({ id }) => id !== input['weatherHoldId']);
  if (change !== 'callWeatherHold' || input['siteId'] !== siteId) return holds;
  const called = {
    id: key,
    cause: 'called' as const,
    startsAt: String(input['startsAt']),
    endsAt: (input['endsAt'] as string | null) ?? null,
    reason: String(input['reason']),
    revision: 0,
    phase: null,
  };
  return [...holds, called];
}

/** Whether a hold is only on this phone yet: it has no revision, and cannot be lifted before it is sent. */
export const isPendingHold = ({ revision }: Pick<Hold, 'revision'>): boolean => revision === 0;
