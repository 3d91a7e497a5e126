import type { ApiClient } from './api-client.js';
import { ZONE } from './company.js';
import { must } from './hands.js';

/** A job of the demo as the office enters it. */
export interface DemoJob {
  readonly street: string;
  readonly house: number;
  readonly owner: string;
  readonly priority: number;
  readonly dueAt: Date | null;
  /** A measurement sheet; its frost depth is the site's. */
  readonly measurement: { readonly frost: { readonly depthInches: number; readonly source: string } };
}

/** Enters site and job; gives the ids of both. */
export async function enterJob(
  office: ApiClient,
  authorityId: string,
  job: DemoJob,
): Promise<{ jobId: string; siteId: string }> {
  const site = (await must(
    office,
    'createSite',
    {
      address: `${job.house} ${job.street}`,
      town: 'Alder Bend',
      zone: ZONE,
      frostDepthInches: job.measurement.frost.depthInches,
      frostSource: job.measurement.frost.source,
      authorityId,
    },
    '... on SiteChanged { site { id } }',
  )) as unknown as { site: { id: string } };
  const entered = (await must(
    office,
    'createJob',
    {
      siteId: site.site.id,
      name: job.street,
      ownerName: job.owner,
      priority: job.priority,
      dueAt: job.dueAt?.toISOString() ?? null,
      measurement: JSON.stringify(job.measurement),
    },
    '... on JobChanged { job { id } }',
  )) as unknown as { job: { id: string } };
  return { jobId: entered.job.id, siteId: site.site.id };
}
