import { Injectable } from '@nestjs/common';
import { z } from 'zod';
import { zoneName } from '../crews/crews.face.js';
import type { Change } from '../platform/change/change.js';
import { ChangeRunner } from '../platform/change/change-runner.js';
import type { Context } from '../platform/context.js';
import { given } from '../platform/given.js';
import { demandFound, demandRevision } from '../platform/outcomes/demand.js';
import { orLeftOut } from '../platform/outcomes/left-out.js';
import { parseInput } from '../platform/outcomes/parse-input.js';
import { isRowId } from '../platform/row-id.js';
import { feedFromNothing } from './feed-from-nothing.js';
import { latitude, longitude } from './place-schema.js';
import type { CreateSiteInput, UpdateSiteInput } from './sites.inputs.js';

const text = z
  .string()
  .trim()
  .min(1, { error: 'must not be empty' })
  .max(200, { error: 'has at most 200 letters' });
const frost = z
  .number()
  .min(0, { error: 'must be 0 or more inches' })
  .max(120, { error: 'must be at most 120 inches; give inches, not feet' });

const newSite = z.object({
  address: text,
  town: text,
  zone: zoneName,
  frostDepthInches: frost,
  frostSource: text,
  latitude: orLeftOut(latitude),
  longitude: orLeftOut(longitude),
});

const changedSite = z.object({
  address: orLeftOut(text),
  town: orLeftOut(text),
  zone: orLeftOut(zoneName),
  frostDepthInches: orLeftOut(frost),
  frostSource: orLeftOut(text),
  latitude: orLeftOut(latitude),
  longitude: orLeftOut(longitude),
});

/** Enters and changes sites. */
@Injectable()
export class SitesService {
  constructor(private readonly changes: ChangeRunner) {}

  /** Adds a site. */
  create(ctx: Context, input: CreateSiteInput) {
    return this.changes.run(ctx, { operation: 'createSite', input }, async (change) => {
      const data = given(parseInput(newSite, input));
      const authorityId = await knownAuthority(change, input.authorityId);
      const site = await change.tx.site.create({
        data: { companyId: ctx.companyId, ...data, authorityId: authorityId ?? null },
      });
      change.record({
        action: 'site added',
        subjectType: 'site',
        subjectId: site.id,
        detail: { address: site.address, town: site.town },
      });
      return { siteId: site.id };
    });
  }

  /** Changes what is given. A new authority takes over the inspections nobody has asked for yet; at a new place the forecast is fetched anew. */
  update(ctx: Context, input: UpdateSiteInput) {
    return this.changes.run(ctx, { operation: 'updateSite', input }, async (change) => {
      const site = await demandSite(change, input.siteId);
      demandRevision(site, input.revision, 'site');
      const authorityId = await knownAuthority(change, input.authorityId);
      const data = given({ ...parseInput(changedSite, input), authorityId });
      await change.tx.site.update({ where: { id: site.id }, data: { ...data, revision: { increment: 1 } } });
      if (authorityId !== undefined && authorityId !== site.authorityId) {
        await change.tx.inspection.updateMany({
          where: { companyId: ctx.companyId, job: { siteId: site.id }, state: 'needed' },
          data: { authorityId, revision: { increment: 1 } },
        });
      }
      const moved =
        (data.latitude ?? site.latitude) !== site.latitude ||
        (data.longitude ?? site.longitude) !== site.longitude;
      if (moved) {
        await change.tx.forecastFeed.updateMany({
          where: { siteId: site.id },
          data: { ...feedFromNothing(change.now), generation: { increment: 1 } },
        });
      }
      change.record({ action: 'site changed', subjectType: 'site', subjectId: site.id, detail: data });
      return { siteId: site.id };
    });
  }
}

/** The site inside a change. @throws Refused with NotFound when the company has none of that id. */
async function demandSite({ ctx, tx }: Change, id: string) {
  const site = isRowId(id) ? await tx.site.findFirst({ where: { companyId: ctx.companyId, id } }) : null;
  return demandFound(site, 'site');
}

async function knownAuthority(
  { ctx, tx }: Change,
  id: string | null | undefined,
): Promise<string | undefined> {
  if (id === null || id === undefined) return undefined;
  const row = isRowId(id) ? await tx.authority.findFirst({ where: { companyId: ctx.companyId, id } }) : null;
  return demandFound(row, 'authority').id;
}
