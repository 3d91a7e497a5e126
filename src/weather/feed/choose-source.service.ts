import { Injectable } from '@nestjs/common';
import { z } from 'zod';
import type { Site } from '../../generated/prisma/client.js';
import type { Change } from '../../platform/change/change.js';
import { ChangeRunner } from '../../platform/change/change-runner.js';
import type { Context } from '../../platform/context.js';
import { companyRow } from '../../platform/database/company-row.js';
import { demandFound, demandRevision } from '../../platform/outcomes/demand.js';
import { InvalidInput } from '../../platform/outcomes/invalid-input.js';
import { orLeftOut } from '../../platform/outcomes/left-out.js';
import { parseInput } from '../../platform/outcomes/parse-input.js';
import { Refused } from '../../platform/outcomes/refusal.js';
import { feedFromNothing, latitude, longitude } from '../../sites/sites.face.js';
import type { ChooseForecastSourceInput } from './choose-source.input.js';

const place = z.object({ latitude: orLeftOut(latitude), longitude: orLeftOut(longitude) });

/** Lets the office choose where the forecasts of a site come from. */
@Injectable()
export class ChooseSourceService {
  constructor(private readonly changes: ChangeRunner) {}

  /**
   * Another source or place is fetched at once; until its first answer the forecast in use stays. What stands already
   * changes nothing.
   */
  choose(ctx: Context, input: ChooseForecastSourceInput) {
    return this.changes.run(ctx, { operation: 'chooseForecastSource', input }, async (change) => {
      const site = demandFound(
        await change.tx.site.findFirst({ where: companyRow(change, input.siteId) }),
        'site',
      );
      demandRevision(site, input.revision, 'site');
      const given = parseInput(place, input);
      const wanted = {
        forecastSource: input.source,
        latitude: given.latitude ?? site.latitude,
        longitude: given.longitude ?? site.longitude,
      };
      if (wanted.forecastSource !== 'uploaded') demandPlace(wanted);
      if (isAsItStands(site, wanted)) return { siteId: site.id };
      await change.tx.site.update({
        where: { id: site.id },
        data: { ...wanted, revision: { increment: 1 } },
      });
      await startAnew(change, site.id);
      change.record({
        action: 'forecast source chosen',
        subjectType: 'site',
        subjectId: site.id,
        detail: { source: input.source, latitude: wanted.latitude, longitude: wanted.longitude },
      });
      return { siteId: site.id };
    });
  }
}

type Wanted = Pick<Site, 'forecastSource' | 'latitude' | 'longitude'>;

const isAsItStands = (site: Site, wanted: Wanted): boolean =>
  site.forecastSource === wanted.forecastSource &&
  site.latitude === wanted.latitude &&
  site.longitude === wanted.longitude;

function demandPlace(wanted: Wanted): void {
  const missing = (['latitude', 'longitude'] as const).filter((name) => wanted[name] === null);
  if (missing.length === 0) return;
  const faults = missing.map((path) => ({
    path,
    message: `is not known of this site; give it in degrees, so that a forecast can be fetched for where it lies`,
  }));
  throw new Refused(new InvalidInput(faults));
}

async function startAnew({ ctx, tx, now }: Change, siteId: string): Promise<void> {
  const anew = feedFromNothing(now);
  await tx.forecastFeed.upsert({
    where: { siteId },
    create: { siteId, companyId: ctx.companyId, ...anew },
    update: { ...anew, generation: { increment: 1 } },
  });
}
