import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import ExifReader from 'exifreader';
import type { Page } from 'playwright-core';
import { enterDemoCompany } from '../../prisma/demo/company.js';
import { enterJob } from '../../prisma/demo/enter-job.js';
import { must } from '../../prisma/demo/hands.js';
import { MEASUREMENTS } from '../../prisma/demo/measurements.js';
import { phonePicture } from '../support/pictures.js';
import { until } from '../support/until.js';
import { findings } from './support/accessibility.js';
import { PRESENT } from './support/demo-database.js';
import { demoStage } from './support/demo-stage.js';
import { peopleDatabase } from './support/people-database.js';
import { DESK, freshPage, keepScreen, openPage, PHONE, signInAs } from './support/pages.js';

interface TodayPhase {
  readonly id: string;
  readonly name: string;
  readonly state: string;
  readonly job: { readonly number: number };
  readonly photos: readonly { readonly caption: string | null; readonly path: string }[];
}

/* A foreman takes photos where there is no signal; each test goes on where the one before stopped. */

describe('photos from the phone', () => {
  const stage = demoStage(peopleDatabase);
  let phone: Page;
  let phase: TodayPhase;

  const today = async (): Promise<TodayPhase[]> => {
    const foreman = await stage.service.client('foreman');
    const query = '{ today { id name state job { number } photos { caption path } } }';
    return (await foreman.data<{ today: TodayPhase[] }>(query)).today;
  };
  const onRecord = async () => (await today()).find(({ id }) => id === phase.id)?.photos ?? [];
  const summary = () => phone.locator('summary', { hasText: /Photos: |Take a photo of this phase/ });
  const sheet = () => phone.locator('details', { has: summary() });
  const open = async () => {
    await summary().waitFor();
    await sheet().evaluate((element: HTMLDetailsElement) => (element.open = true));
  };
  const take = async (button: 'Take a photo' | 'Choose photos', files: { name: string; buffer: Buffer }[]) =>
    sheet()
      .getByLabel(button)
      .setInputFiles(files.map((file) => ({ mimeType: 'image/jpeg', ...file })));
  const signal = async (there: boolean) => {
    await phone.context().setOffline(!there);
    await phone
      .getByRole('status')
      .getByText(there ? 'Live.' : 'Not connected.')
      .waitFor();
  };
  const clean = async (page: Page, screen: string) => {
    await keepScreen(page, screen, true);
    expect(await findings(page)).toEqual([]);
    expect(await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)).toBe(0);
  };

  /** A job with one phase of our own that has begun. */
  const startedPhase = async (): Promise<TodayPhase> => {
    const office = await stage.service.client('office');
    const street = 'Quarry Road';
    const measurement = MEASUREMENTS[street];
    if (!measurement) throw new Error(`There is no sheet of ${street}`);
    const authorityId = await enterDemoCompany(office);
    const job = { street, house: 3, owner: 'R. Alder', priority: 5, dueAt: null, measurement };
    const { jobId } = await enterJob(office, authorityId, job);
    await must(office, 'addPhase', {
      jobId,
      name: 'Probe trench',
      key: 'probe-trench',
      kind: 'probe-trench',
      hatch: 'earth',
      trade: 'labour',
      durationKind: 'work',
      durationMinutes: 120,
      continuity: 'interruptible',
    });
    const query = `query ($id: ID!) { job(id: $id) { phases { id name } } }`;
    const { job: entered } = await office.data<{ job: { phases: { id: string; name: string }[] } }>(query, {
      id: jobId,
    });
    const phaseId = entered.phases.find(({ name }) => name === 'Probe trench')?.id ?? '';
    await must(office, 'markPhase', { phaseId, mark: 'start', at: PRESENT });
    const found = (await today()).find(({ id }) => id === phaseId);
    if (!found) throw new Error('The phase is not on the sheet of the day.');
    return found;
  };

  beforeAll(async () => {
    phase = await startedPhase();
    phone = await freshPage(stage.browser, PHONE, 'allow');
    await signInAs(phone, stage.service.url, 'foreman');
    await phone.evaluate(() => navigator.serviceWorker.ready.then(() => undefined));
  });
  afterAll(() => phone.context().close());

  it('are kept on the phone without a signal, upright, small, and without their place', async () => {
    await openPage(phone, `${stage.service.url}/site?phase=${phase.id}`);
    await signal(false);
    await open();
    await sheet().getByLabel('What it shows').fill('North end, 50 in deep');
    const buffer = await phonePicture({ width: 4000, height: 3000, orientation: 6 });
    expect(ExifReader.load(buffer, { expanded: true }).gps?.Longitude).toBeDefined();
    await take('Take a photo', [{ name: 'taken.jpg', buffer }]);
    await phone.getByRole('button', { name: '1 unsent' }).waitFor();
    await phone.getByText('Photos: 1 not sent yet').waitFor();
    const [kept] = await filesOf(phone);
    const tags = ExifReader.load(kept!, { expanded: true });
    expect([tags.gps, tags.exif]).toEqual([undefined, undefined]);
    expect([tags.file?.['Image Width']?.value, tags.file?.['Image Height']?.value]).toEqual([1200, 1600]);
    await clean(phone, 'phone-photo-unsent');
  });

  it('several at a time, beside those that this phone cannot read', async () => {
    const files = await Promise.all(
      [2, 3].map(async (seed) => ({ name: `${seed}.jpg`, buffer: await phonePicture({ seed }) })),
    );
    await take('Choose photos', [...files, { name: 'list.jpg', buffer: Buffer.from('no picture') }]);
    await sheet().getByText('list.jpg cannot be read as a picture here. Take it with the camera').waitFor();
    await phone.getByRole('button', { name: '3 unsent' }).waitFor();
    expect(await filesOf(phone)).toHaveLength(3);
  });

  it('survive a page that is killed, and are sent by themselves when the signal is back', async () => {
    await openPage(phone, `${stage.service.url}/site?phase=${phase.id}`);
    await phone.getByRole('button', { name: '3 unsent' }).waitFor();
    expect(await onRecord()).toEqual([]);
    await signal(true);
    await phone.getByRole('button', { name: 'All sent' }).waitFor();
    expect((await onRecord()).map(({ caption }) => caption).sort()).toEqual([
      'North end, 50 in deep',
      null,
      null,
    ]);
    expect(await filesOf(phone)).toEqual([]);
  });

  it('then stand on the site sheet as pictures', async () => {
    await phone.getByText('Photos: 3', { exact: true }).waitFor();
    await open();
    const first = sheet().getByRole('img', { name: /^North end, 50 in deep \(/ });
    await first.scrollIntoViewIfNeeded();
    await until('the picture is drawn', () =>
      first.evaluate((one: HTMLImageElement) => one.naturalWidth === 240),
    );
    await clean(phone, 'phone-photos');
  });

  it('and on the page of the job, where the office releases them to the owner and takes them back', async () => {
    const desk = await stage.pageOf('office', DESK, `/jobs/${phase.job.number}`);
    const photo = desk.locator('figure.photo', { hasText: 'North end, 50 in deep' });
    await photo.scrollIntoViewIfNeeded();
    const picture = photo.getByRole('img', { name: new RegExp(`North end, 50 in deep \\(${phase.name}`) });
    await until('the picture is drawn', () =>
      picture.evaluate((one: HTMLImageElement) => one.naturalHeight === 320),
    );
    await photo.getByText('Not released to the owner').waitFor();
    await photo.getByRole('button', { name: 'Release to the owner' }).click();
    await photo.getByText(/^Released to the owner/).waitFor();
    await clean(desk, 'desk-job-photos');
    await photo.getByRole('button', { name: 'Take back' }).click();
    await photo.getByText('Not released to the owner').waitFor();
    await desk.context().close();
  });

  it('come with the strictest of headers beside the pages of the client', async () => {
    const [photo] = await onRecord();
    const headers = await phone.evaluate(
      async (path) => Object.fromEntries((await fetch(path)).headers),
      photo!.path,
    );
    expect(headers).toMatchObject({
      'content-type': 'image/jpeg',
      'content-security-policy': "default-src 'none'; sandbox",
      'x-content-type-options': 'nosniff',
    });
  });
});

/** The pictures that the device keeps for sending. */
async function filesOf(page: Page): Promise<Buffer[]> {
  const texts = await page.evaluate(async () => {
    const opened = await new Promise<IDBDatabase>((resolve, reject) => {
      const request = indexedDB.open('flagway');
      request.onsuccess = () => resolve(request.result);
      request.onerror = () => reject(new Error('The device gives nothing.'));
    });
    const files = await new Promise<ArrayBuffer[]>((resolve) => {
      const request = opened.transaction('files').objectStore('files').getAll() as IDBRequest<ArrayBuffer[]>;
      request.onsuccess = () => resolve(request.result);
    });
    opened.close();
    return files.map((bytes) =>
      Array.from(new Uint8Array(bytes), (byte) => String.fromCharCode(byte)).join(''),
    );
  });
  return texts.map((text) => Buffer.from(text, 'latin1'));
}
