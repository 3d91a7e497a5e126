import { randomUUID } from 'node:crypto';
import { afterAll, beforeAll, beforeEach, describe, expect, it } from '@jest/globals';
import { MEASUREMENTS } from '../../prisma/demo/measurements.js';
import type { Phase } from '../../src/generated/prisma/client.js';
import type { ApiClient } from '../support/api-client.js';
import { makeCompany, TEST_PASSWORD } from '../support/company.js';
import { phonePicture } from '../support/pictures.js';
import { readPdf } from '../support/read-pdf.js';
import { RunningJob } from '../support/running-job.js';
import { startService, type TestService } from '../support/service.js';

const NOW = '2031-01-06T14:00:00Z';

describe('the closing record of a job', () => {
  let service: TestService;
  let job: RunningJob;
  let pour: Phase;

  beforeAll(async () => {
    service = await startService({ now: NOW });
  });
  beforeEach(async () => {
    service.setClock(NOW);
    job = await RunningJob.make(service);
    pour = await job.phase('footing-pour', { name: 'Footing pour' });
  });
  afterAll(() => service.stop());

  const get = (client: ApiClient, audience: string, number: string | number = 101, headers = {}) =>
    fetch(`${service.url}/files/records/${number}/${audience}.pdf`, {
      headers: { ...headers, ...(client.cookie && { cookie: client.cookie }) },
    });
  const bytesOf = async (audience = 'company', client = job.office): Promise<Buffer> => {
    const response = await get(client, audience);
    expect(response.status).toBe(200);
    return Buffer.from(await response.arrayBuffer());
  };
  const wordsOf = async (audience = 'company'): Promise<string> => {
    const { pages } = await readPdf(await bytesOf(audience));
    return flat(pages.map(({ text }) => text).join(' '));
  };
  const placeAndRead = async () => {
    await job.start(pour, { at: '2031-01-06T07:00:00Z' });
    const placed = await job.foreman.change<{ placement: { id: string } }>(
      'recordPlacement',
      {
        phaseId: pour.id,
        placedAt: '2031-01-06T08:00:00Z',
        material: 'concrete',
        sectionInches: 10,
        placedTempF: 62,
        protection: ['blanket'],
      },
      '... on PlacementChanged { placement { id } }',
    );
    for (const [at, concreteF] of [
      ['2031-01-06T10:00:00Z', 64.5],
      ['2031-01-06T13:00:00Z', 67],
    ])
      await job.foreman.change('recordTemperature', { placementId: placed.placement.id, at, concreteF });
    return placed.placement.id;
  };
  const sendPhoto = async (seed: number, caption: string): Promise<string> => {
    const query = { clientKey: randomUUID(), phaseId: pour.id, takenAt: NOW, caption };
    const response = await fetch(`${service.url}/files/photos?${new URLSearchParams(query)}`, {
      method: 'POST',
      headers: { 'content-type': 'image/jpeg', cookie: job.foreman.cookie ?? '' },
      body: new Uint8Array(await phonePicture({ seed })),
    });
    return ((await response.json()) as { photoId: string }).photoId;
  };

  it('tells readings, hold points, cure and waivers as they are on record', async () => {
    const set = await job.heatingSet();
    await job.foreman.change('recordCableReading', {
      heatingSetId: set.id,
      stage: 'received',
      at: '2031-01-06T12:00:00Z',
      ohms: 19.11,
      megaohms: 640,
      testVolts: 1000,
      cableTempF: 66,
    });
    const [kept, waived] = [await job.holdPoint(pour, 'Bars tied'), await job.holdPoint(pour, 'Bottom dry')];
    await job.foreman.change('releaseHoldPoint', {
      holdPointId: kept.id,
      values: [{ itemId: 'seen', confirmed: true }],
    });
    await job.office.change('waiveHoldPoint', {
      holdPointId: waived.id,
      reason: 'frozen hard, agreed on site',
    });
    await placeAndRead();
    const words = await wordsOf();
    for (const said of [
      'Closing record of job 101',
      '3000 W at 240 V, 19.2 Ω at 68 °F',
      '19.11',
      `Bars tied (before the start of Footing pour)`,
      `6 Jan 2031 09:00, ${job.people.foreman.name}`,
      'Waived: frozen hard, agreed on site.',
      '64.5 °F',
      'psi at the last reading',
      'hold point waived',
    ])
      expect(words).toContain(flat(said));
  });

  it('is the same to the byte until something of the job changes, whatever the clock and the forecast say', async () => {
    await placeAndRead();
    const first = await bytesOf();
    // An hour later nothing is missed yet; an alarm of the cure would be a line of the journal.
    service.setClock('2031-01-06T15:00:00Z');
    const forecast = await job.office.change<{ code?: string }>('uploadForecast', {
      siteId: job.site.id,
      source: 'file of a test',
      format: 'csv',
      text: 'issued_at,2031-01-06T14:30Z\nat,temperature_f\n2031-01-06T15:00Z,45\n2031-01-06T16:00Z,52',
    });
    expect(forecast.code).toBeUndefined();
    expect((await bytesOf()).equals(first)).toBe(true);
    await job.foreman.change('notePhase', { phaseId: pour.id, note: 'Rock at the north end' });
    expect((await bytesOf()).equals(first)).toBe(false);
  });

  it('has a drawing for each sheet of the design of its measurement', async () => {
    const measurement = MEASUREMENTS['Quarry Road'] as unknown as object;
    await service.database.job.update({ where: { id: job.job.id }, data: { measurement } });
    const { pages } = await readPdf(await bytesOf());
    for (const title of ['Cable plan of', 'Section through landing and steps'])
      expect(pages.filter(({ text }) => text.startsWith(title))).toHaveLength(1);
  });

  it('shows the owner of the house what the office has released, without journal and notes', async () => {
    const released = await sendPhoto(1, 'Bars in the trench');
    await sendPhoto(2, 'Broken hose');
    await job.office.change('releasePhoto', { photoId: released });
    await job.foreman.change('notePhase', { phaseId: pour.id, note: 'Rock at the north end' });
    const [owner, company] = [await wordsOf('owner'), await wordsOf('company')];
    for (const said of ['Broken hose', 'Rock at the north end', 'Journal', 'photo added']) {
      expect(owner).not.toContain(flat(said));
      expect(company).toContain(flat(said));
    }
    expect(owner).toContain(flat('Bars in the trench'));
    await job.office.change('takeBackPhoto', { photoId: released });
    expect(await wordsOf('owner')).toContain(flat('No photo was released to the owner.'));
  });

  it('comes as a file with a name and a validator', async () => {
    const response = await get(job.office, 'owner');
    expect(response.headers.get('content-type')).toBe('application/pdf');
    expect(response.headers.get('content-disposition')).toBe(
      'attachment; filename="closing-record-101-owner.pdf"',
    );
    expect(response.headers.get('x-content-type-options')).toBe('nosniff');
    const tag = response.headers.get('etag') ?? '';
    const again = await get(job.office, 'owner', 101, { 'if-none-match': tag });
    expect([again.status, await again.text()]).toEqual([304, '']);
  });

  it('is not found by another company, nor under a number that is none, and not without signing in', async () => {
    const { people } = await makeCompany(service.database, `Other ${randomUUID()}`);
    const other = await service.signIn(people.office.email, TEST_PASSWORD);
    const answers = await Promise.all([
      get(other, 'owner'),
      get(other, 'company'),
      get(other, 'company', 999_999),
      get(other, 'company', 'x'),
    ]);
    expect(answers.map(({ status }) => status)).toEqual([404, 404, 404, 404]);
    expect(new Set(await Promise.all(answers.map((answer) => answer.text()))).size).toBe(1);
    expect((await get(service.anonymous(), 'owner')).status).toBe(401);
    expect((await get(job.office, 'everybody')).status).toBe(404);
  });

  it('is made for several who ask at once', async () => {
    const files = await Promise.all([bytesOf('owner'), bytesOf('company'), bytesOf('owner')]);
    expect(files[0].equals(files[2])).toBe(true);
    expect(files[0].equals(files[1])).toBe(false);
  });
});

/** A text without its spaces: lines break anywhere between words. */
const flat = (text: string): string => text.replaceAll(/\s+/g, '');
