import { enterDemoCompany, ZONE } from '../../prisma/demo/company.js';
import { entryFixture, type Loose } from '../../shared/entry/testing/entry-fixture.js';
import type { ApiClient } from './api-client.js';
import { makeCompany, TEST_PASSWORD, type TestCompany } from './company.js';
import type { TestService } from './service.js';

/** An office ready to enter jobs: crews, equipment, an authority and a site are there. */
export interface Office extends TestCompany {
  readonly client: ApiClient;
  readonly siteId: string;
  readonly authorityId: string;
  /** Enters a job from the fixture's measurements and gives its id; throws with the refusal otherwise. */
  enterJob(name?: string, change?: (entry: Loose) => void): Promise<string>;
}

/** Makes a company with people and enters what a job needs, through the API. */
export async function makeOffice(
  service: Pick<TestService, 'database' | 'signIn'>,
  name = 'Larkspur Entries',
): Promise<Office> {
  const made = await makeCompany(service.database, name);
  const client = await service.signIn(made.people.office.email, TEST_PASSWORD);
  const authorityId = await enterDemoCompany(client);
  const site = await client.change<{ site: { id: string } }>(
    'createSite',
    {
      address: '12 Larch Street',
      town: 'Alder Mills',
      zone: ZONE,
      frostDepthInches: 48,
      frostSource: 'town rule',
      authorityId,
    },
    '... on SiteChanged { site { id } }',
  );
  const siteId = site.site.id;
  const enterJob: Office['enterJob'] = async (jobName = 'Larch Street', change = () => undefined) => {
    const entry = entryFixture();
    change(entry);
    const outcome = await client.change<{ message?: string; job?: { id: string } }>(
      'createJob',
      { siteId, name: jobName, ownerName: 'R. Alder', measurement: JSON.stringify(entry) },
      '... on JobChanged { job { id } }',
    );
    if (!outcome.job) throw new Error(outcome.message);
    return outcome.job.id;
  };
  return { ...made, client, siteId, authorityId, enterJob };
}
