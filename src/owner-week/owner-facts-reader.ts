import { Injectable } from '@nestjs/common';
import type { OwnerHeat, OwnerHold, OwnerPhase } from '../../shared/owner-week/owner-facts.js';
import type { WeatherHold } from '../generated/prisma/client.js';
import { Database } from '../platform/database/database.js';
import { storedCauses } from '../weather/weather.face.js';
import { type PhaseWithDates, stretchesOf } from './stretches-of.js';

/** What the owner's page is made of. */
export interface OwnerFacts {
  readonly phases: readonly OwnerPhase[];
  readonly holds: readonly OwnerHold[];
  readonly heat: OwnerHeat;
}

/** Reads what the owner's page is made of, of one job. */
@Injectable()
export class OwnerFactsReader {
  constructor(private readonly database: Database) {}

  async of(companyId: string, jobId: string): Promise<OwnerFacts> {
    const job = await this.database.job.findFirstOrThrow({
      where: { id: jobId, companyId },
      include: {
        hookups: true,
        phases: {
          where: { state: { not: 'dropped' } },
          orderBy: { position: 'asc' },
          include: { planned: true, commitments: { where: { state: { not: 'released' } } } },
        },
      },
    });
    const holds = await this.database.weatherHold.findMany({
      where: {
        companyId,
        siteId: job.siteId,
        liftedAt: null,
        OR: [{ phaseId: null }, { phase: { jobId, state: { in: ['waiting', 'started'] } } }],
      },
      orderBy: { startsAt: 'asc' },
    });
    return {
      phases: job.phases.map(asOwnerPhase),
      holds: holds.map(asOwnerHold),
      heat: heatOf(job.hookups, job.phases),
    };
  }
}

const asOwnerPhase = (phase: PhaseWithDates): OwnerPhase => ({
  kind: phase.kind,
  state: phase.state === 'done' || phase.state === 'started' ? phase.state : 'waiting',
  ...stretchesOf(phase),
});

/** What a person wrote of a hold is for the crew; what the forecast says is for everybody. */
const asOwnerHold = ({ startsAt, endsAt, detail }: WeatherHold): OwnerHold => ({
  from: startsAt.getTime(),
  until: endsAt?.getTime() ?? Number.POSITIVE_INFINITY,
  why: storedCauses(detail)[0]?.text ?? null,
});

function heatOf(
  hookups: readonly { readonly energisedAt: Date | null; readonly energiseAllowedAt: Date | null }[],
  phases: readonly PhaseWithDates[],
): OwnerHeat {
  const open = hookups.filter(({ energisedAt }) => !energisedAt);
  const allowed = open.flatMap(({ energiseAllowedAt }) => energiseAllowedAt?.getTime() ?? []);
  const planned = phases
    .filter(({ kind }) => kind === 'energise')
    .flatMap((phase) => stretchesOf(phase).stretches.map(({ from }) => from));
  return {
    sets: hookups.length,
    energised: hookups.length - open.length,
    allowedAt: open.length > 0 && allowed.length === open.length ? Math.max(...allowed) : null,
    plannedAt: planned.length > 0 ? Math.max(...planned) : null,
  };
}
