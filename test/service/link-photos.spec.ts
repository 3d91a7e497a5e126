import { randomUUID } from 'node:crypto';
import { afterAll, beforeAll, beforeEach, describe, expect, it } from '@jest/globals';
import type { Phase } from '../../src/generated/prisma/client.js';
import { LinkBrowser } from '../support/link-browser.js';
import { RunningJob } from '../support/running-job.js';
import { startService, type TestService } from '../support/service.js';

/*
 * The photos on the pages that links open: the owner sees what the office released, the electrician what shows cable and
 * leads, and nobody else any of it.
 */

describe('the photos of a link', () => {
  let service: TestService;
  let job: RunningJob;
  let demo: Phase;
  let cable: Phase;

  beforeAll(async () => {
    service = await startService({ now: '2031-01-06T14:00:00Z' });
  });
  beforeEach(async () => {
    job = await RunningJob.make(service);
    demo = await job.phase('demo');
    cable = await job.phase('cable');
  });
  afterAll(() => service.stop());

  const photo = async (phase: Phase, caption: string, released: boolean) => {
    const { companyId, jobId } = phase;
    const hash = randomUUID();
    const bytes = new TextEncoder().encode(caption);
    await service.database.photoFile.create({
      data: { companyId, hash, bytes, small: bytes.slice(0, 2), width: 4, height: 3 },
    });
    const at = new Date('2031-01-06T13:00:00Z');
    return service.database.photo.create({
      data: {
        companyId,
        jobId,
        phaseId: phase.id,
        sentHash: hash,
        fileHash: hash,
        caption,
        takenAt: at,
        addedAt: at,
        releasedAt: released ? at : null,
      },
    });
  };
  const holder = async (purpose: 'hookup' | 'ownerWeek', of = job) => {
    const made = await of.office.change<Record<string, unknown>>(
      'makeSignedLink',
      { jobId: of.job.id, purpose, recipient: 'R. Alder' },
      '... on SignedLinkMade { address }',
    );
    const browser = new LinkBrowser(service.url);
    await browser.press(String(made['address']));
    return browser;
  };
  interface Shown {
    readonly caption: string;
    readonly path: string;
    readonly smallPath: string;
  }
  const photosOf = async (browser: LinkBrowser, page: 'hookupSheet' | 'ownerWeek') => {
    const { data } = await browser.ask<Record<string, { photos: Shown[] }>>(
      `{ ${page} { photos { caption path smallPath width height takenAt } } }`,
    );
    return data?.[page]?.photos ?? [];
  };

  it('are for the owner those that the office released', async () => {
    await photo(demo, 'kept', false);
    await photo(demo, 'released', true);
    const owner = await holder('ownerWeek');
    const [shown, ...more] = await photosOf(owner, 'ownerWeek');
    expect({ caption: shown?.caption, more }).toEqual({ caption: 'released', more: [] });
    const large = await owner.look(String(shown?.path));
    expect({ status: large.status, text: large.text }).toEqual({ status: 200, text: 'released' });
    expect(large.headers.get('content-type')).toBe('image/jpeg');
    expect((await owner.look(String(shown?.smallPath))).text).toBe('re');
  });

  it('are for the electrician those of cable and leads', async () => {
    await photo(demo, 'of the tear-out', true);
    await photo(cable, 'of the cable', false);
    const electrician = await holder('hookup');
    expect((await photosOf(electrician, 'hookupSheet')).map(({ caption }) => caption)).toEqual([
      'of the cable',
    ]);
  });

  it('are no others: not one kept, not of another job, and not after it is taken back', async () => {
    const kept = await photo(demo, 'kept', false);
    const released = await photo(demo, 'released', true);
    const other = await RunningJob.make(service);
    const foreign = await photo(await other.phase('demo'), 'foreign', true);
    const owner = await holder('ownerWeek');
    const at = (id: string) => `${owner.page}/photos/${id}`;
    for (const id of [kept.id, foreign.id, randomUUID(), 'no-id'])
      for (const path of [at(id), `${at(id)}/small`]) expect((await owner.look(path)).status).toBe(404);
    expect((await owner.look(at(released.id))).status).toBe(200);
    await service.database.photo.update({ where: { id: released.id }, data: { releasedAt: null } });
    expect((await owner.look(at(released.id))).status).toBe(404);
  });

  it('are shown in the browser of the link alone, for as long as it lasts', async () => {
    const { id } = await photo(demo, 'released', true);
    const owner = await holder('ownerWeek');
    const path = `${owner.page}/photos/${id}`;
    expect((await new LinkBrowser(service.url).look(path)).status).toBe(403);
    expect((await owner.look(`/files/photos/${id}`)).status).toBe(401);
    const { id: linkId } = await service.database.signedLink.findFirstOrThrow({
      where: { jobId: job.job.id },
    });
    await job.office.change('revokeSignedLink', { signedLinkId: linkId });
    expect((await owner.look(path)).status).toBe(403);
  });
});
