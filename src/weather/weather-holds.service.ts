import { Injectable } from '@nestjs/common';
import { z } from 'zod';
import type { Change } from '../platform/change/change.js';
import { ChangeRunner } from '../platform/change/change-runner.js';
import type { Context } from '../platform/context.js';
import { companyRow } from '../platform/database/company-row.js';
import { demandFound, demandRevision } from '../platform/outcomes/demand.js';
import { refuseInput } from '../platform/outcomes/demand-past.js';
import { parseInput } from '../platform/outcomes/parse-input.js';
import { Refused } from '../platform/outcomes/refusal.js';
import { WrongState } from '../phases/phases.face.js';
import { tellHolds, tellLifted, toTell } from './holds/tell-holds.js';
import type { CallWeatherHoldInput, LiftWeatherHoldInput } from './weather.inputs.js';

const why = z.object({
  reason: z
    .string()
    .trim()
    .min(3, { error: 'must say why in a few words' })
    .max(500, { error: 'has at most 500 letters' }),
});

/** Calls weather holds and lifts them; the plan goes around them at once, and whoever is affected is told. */
@Injectable()
export class WeatherHoldsService {
  constructor(private readonly changes: ChangeRunner) {}

  /** Holds a site, or one phase of it. */
  call(ctx: Context, input: CallWeatherHoldInput) {
    return this.changes.run(ctx, { operation: 'callWeatherHold', input }, async (change) => {
      const { reason } = parseInput(why, input);
      const site = demandFound(
        await change.tx.site.findFirst({ where: companyRow(change, input.siteId) }),
        'site',
      );
      const phase = await phaseOnSite(change, site.id, input.phaseId);
      const startsAt = input.startsAt ?? change.now;
      const endsAt = input.endsAt ?? null;
      if (endsAt && endsAt <= startsAt) refuseInput('endsAt', 'must lie after the begin of the hold.');
      if (endsAt && endsAt <= change.now)
        refuseInput('endsAt', 'has passed already; give an end to come, or none.');
      const hold = await change.tx.weatherHold.create({
        data: {
          companyId: ctx.companyId,
          siteId: site.id,
          phaseId: phase?.id ?? null,
          cause: 'called',
          startsAt,
          endsAt,
          reason,
          openedAt: change.now,
          told: toTell(startsAt, endsAt),
          tellings: 1,
          calledById: ctx.personId || null,
        },
      });
      change.record({
        action: 'weather hold called',
        subjectType: 'weatherHold',
        subjectId: hold.id,
        jobId: phase?.jobId ?? null,
        detail: { site: site.address, phase: phase?.name ?? null, startsAt: startsAt.toISOString() },
        reason,
      });
      await tellHolds(change, [{ id: hold.id, startsAt, telling: 1 }]);
      return { weatherHoldId: hold.id };
    });
  }

  /** Ends a hold now. One that the forecast opened may be lifted too: a person on site knows better. */
  lift(ctx: Context, input: LiftWeatherHoldInput) {
    return this.changes.run(ctx, { operation: 'liftWeatherHold', input }, async (change) => {
      const { reason } = parseInput(why, input);
      const hold = demandFound(
        await change.tx.weatherHold.findFirst({
          where: companyRow(change, input.weatherHoldId),
          include: { phase: true },
        }),
        'weather hold',
      );
      demandRevision(hold, input.revision, 'weather hold');
      if (hold.liftedAt)
        throw new Refused(new WrongState('lifted', 'This hold is lifted already; nothing more is needed.'));
      await change.tx.weatherHold.update({
        where: { id: hold.id },
        data: {
          liftedAt: change.now,
          liftedById: ctx.personId || null,
          liftReason: reason,
          revision: { increment: 1 },
        },
      });
      change.record({
        action: 'weather hold lifted',
        subjectType: 'weatherHold',
        subjectId: hold.id,
        jobId: hold.phase?.jobId ?? null,
        reason,
      });
      if (hold.tellings > 0) await tellLifted(change, [hold.id]);
      return { weatherHoldId: hold.id };
    });
  }
}

async function phaseOnSite(change: Change, siteId: string, phaseId: string | null | undefined) {
  if (phaseId === null || phaseId === undefined) return null;
  const where = { ...companyRow(change, phaseId), job: { siteId } };
  const phase = demandFound(await change.tx.phase.findFirst({ where }), 'phase');
  if (phase.state === 'waiting' || phase.state === 'started') return phase;
  const message = `${phase.name} is ${phase.state}; there is nothing left to hold.`;
  throw new Refused(new WrongState(phase.state, message));
}
