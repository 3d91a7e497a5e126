import { randomUUID } from 'node:crypto';
import { afterAll, beforeAll, beforeEach, describe, expect, it } from '@jest/globals';
import type { Phase } from '../../src/generated/prisma/client.js';
import { RunningJob } from '../support/running-job.js';
import { startService, type TestService } from '../support/service.js';

const NOW = '2031-01-06T14:00:00Z';

interface PostResult {
  readonly status: number;
  readonly retryAfter: string | null;
  readonly body: {
    readonly taken?: number;
    readonly known?: number;
    readonly refused?: { readonly index: number; readonly message: string }[];
    readonly code?: string;
    readonly message?: string;
  };
}

describe('a temperature logger', () => {
  let service: TestService;
  let job: RunningJob;
  let pour: Phase;
  let placementId: string;

  beforeAll(async () => {
    service = await startService({ now: NOW });
  });
  beforeEach(async () => {
    service.setClock(NOW);
    job = await RunningJob.make(service);
    pour = await job.phase('footing-pour');
    await job.start(pour, { at: '2031-01-06T07:00:00Z' });
    placementId = await place();
  });
  afterAll(() => service.stop());

  const place = async (): Promise<string> => {
    const outcome = await job.foreman.change<{ placement: { id: string } }>(
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
    return outcome.placement.id;
  };
  const register = async (more: object = {}) => {
    const outcome = await job.foreman.change<{
      code?: string;
      token: string;
      path: string;
      logger: { id: string; revision: number };
    }>(
      'registerLogger',
      { siteId: job.site.id, placementId, name: 'Probe 3', ...more },
      '... on LoggerRegistered { token path logger { id name revision revokedAt placement { id } } }',
    );
    return outcome;
  };
  const send = async (
    token: string | null,
    body: string | object,
    headers: Record<string, string> = {},
  ): Promise<PostResult> => {
    const answer = await fetch(`${service.url}/loggers/readings`, {
      method: 'POST',
      headers: {
        'content-type': 'application/json',
        ...(token ? { authorization: `Bearer ${token}` } : {}),
        ...headers,
      },
      body: typeof body === 'string' ? body : JSON.stringify(body),
    });
    const retryAfter = answer.headers.get('retry-after');
    return { status: answer.status, retryAfter, body: (await answer.json()) as PostResult['body'] };
  };
  const post = (token: string, ...readings: object[]) => send(token, { readings });
  const readings = () =>
    service.database.temperatureReading.findMany({ where: { placementId }, orderBy: { at: 'asc' } });

  it('posts what it read, in °F or °C, and the readings say who posted them', async () => {
    const { token, path, logger } = await register();
    expect(path).toBe('/loggers/readings');
    const answer = await post(
      token,
      { at: '2031-01-06T09:00:00Z', concreteF: 61.5, airF: 28 },
      { at: '2031-01-06T05:00-05:00', concreteC: 16 },
    );
    expect(answer).toEqual({ status: 200, retryAfter: null, body: { taken: 2, known: 0, refused: [] } });
    const { placement } = await job.office.data<{ placement: object }>(
      'query($id: ID!) { placement(id: $id) { readings { at concreteF airF by { name } logger { name } } strength { basis } } }',
      { id: placementId },
    );
    expect(placement).toEqual({
      readings: [
        { at: '2031-01-06T09:00:00.000Z', concreteF: 61.5, airF: 28, by: null, logger: { name: 'Probe 3' } },
        {
          at: '2031-01-06T10:00:00.000Z',
          concreteF: 60.8,
          airF: null,
          by: null,
          logger: { name: 'Probe 3' },
        },
      ],
      strength: { basis: 'measured' },
    });
    const journal = await service.database.journalEntry.findFirstOrThrow({
      where: { subjectId: placementId, action: 'temperatures logged' },
    });
    expect(journal).toMatchObject({ personId: null, detail: { logger: 'Probe 3', readings: 2 } });
    const row = await service.database.logger.findUniqueOrThrow({ where: { id: logger.id } });
    expect(row.lastPostAt?.toISOString()).toBe('2031-01-06T14:00:00.000Z');
  });

  it('may send the same post again, also at the same time: every reading is kept once', async () => {
    const { token } = await register();
    const batch = Array.from({ length: 12 }, (_, i) => ({
      at: new Date(Date.parse('2031-01-06T09:00:00Z') + i * 300_000).toISOString(),
      concreteF: 60 - i / 10,
    }));
    const answers = await Promise.all(Array.from({ length: 5 }, () => post(token, ...batch)));
    const sum = (name: 'taken' | 'known') =>
      answers.reduce((total, { body }) => total + (body[name] ?? 0), 0);
    expect([sum('taken'), sum('known')]).toEqual([12, 48]);
    expect(await readings()).toHaveLength(12);
    const journal = { subjectId: placementId, action: 'temperatures logged' };
    expect(await service.database.journalEntry.count({ where: journal })).toBe(1);
  });

  it('keeps the good readings of a post and says of each bad one what to do', async () => {
    const { token } = await register();
    await post(token, { at: '2031-01-06T09:00:00Z', concreteF: 61 });
    const answer = await post(
      token,
      { at: '2031-01-06T10:00:00Z', concreteF: 60 },
      { at: '2031-01-06T09:00:00Z', concreteF: 35 },
      { at: '2031-01-06T15:00:00Z', concreteF: 60 },
      { at: '2031-01-06T07:59:00Z', concreteF: 60 },
      { at: '2031-01-06T11:00:00Z', concreteF: 900 },
      { at: '2031-01-06T12:00:00Z', concreteF: 59, placementId: randomUUID() },
      { at: '2031-01-06T10:00:00Z', concreteF: 58 },
    );
    expect(answer.status).toBe(422);
    expect(answer.body).toMatchObject({ taken: 1, known: 0 });
    // Times are the site's: 09:00Z is four in the morning in New York.
    expect(answer.body.refused).toEqual([
      { index: 1, message: expect.stringMatching(/61 °F is recorded for Mon 6 Jan 04:00 already/) },
      { index: 2, message: expect.stringMatching(/Mon 6 Jan 10:00 lies in the future .* set the clock/) },
      { index: 3, message: expect.stringMatching(/placed only at Mon 6 Jan 03:00/) },
      { index: 4, message: expect.stringMatching(/check the sensor/) },
      { index: 5, message: expect.stringMatching(/may not post for that placement/) },
      { index: 6, message: expect.stringMatching(/60 °F is recorded/) },
    ]);
    expect((await readings()).map(({ concreteF }) => concreteF)).toEqual([61, 60]);
  });

  it('gets in by a token that is kept as a hash, shown once, and nowhere else', async () => {
    const clientKey = randomUUID();
    const first = await register({ clientKey });
    const again = await register({ clientKey });
    expect(first.token).toMatch(/^[\w-]{43}$/);
    expect(again).toMatchObject({ token: null, logger: { id: first.logger.id } });
    const row = await service.database.logger.findUniqueOrThrow({ where: { id: first.logger.id } });
    expect(JSON.stringify(row)).not.toContain(first.token);
    const answer = await service.database.idempotencyKey.findFirstOrThrow({ where: { key: clientKey } });
    expect(JSON.stringify(answer)).not.toContain(first.token);
    expect((await send(null, { readings: [] })).status).toBe(401);
    expect((await post('A'.repeat(43), { at: NOW, concreteF: 60 })).status).toBe(401);
    expect((await send(null, { readings: [] }, { cookie: job.foreman.cookie ?? '' })).status).toBe(401);
  });

  it('is shut out the moment its token is revoked; what it posted stays', async () => {
    const { token, logger } = await register();
    await post(token, { at: '2031-01-06T09:00:00Z', concreteF: 61 });
    const revoke = (more: object = {}) =>
      job.office.change(
        'revokeLogger',
        { loggerId: logger.id, ...more },
        '... on LoggerChanged { logger { revokedAt } }',
      );
    expect(await revoke({ revision: 9 })).toMatchObject({ code: 'StaleRevision' });
    expect(await revoke()).toMatchObject({ logger: { revokedAt: '2031-01-06T14:00:00.000Z' } });
    expect(await revoke()).toMatchObject({ code: 'WrongState' });
    expect(await post(token, { at: '2031-01-06T10:00:00Z', concreteF: 61 })).toMatchObject({
      status: 401,
      body: { code: 'unknown-logger', message: expect.stringContaining('registered again') },
    });
    expect(await readings()).toHaveLength(1);
    const { site } = await job.office.data<{ site: { loggers: object[] } }>(
      'query($id: ID!) { site(id: $id) { loggers { name revokedAt } } }',
      { id: job.site.id },
    );
    expect(site.loggers).toEqual([{ name: 'Probe 3', revokedAt: '2031-01-06T14:00:00.000Z' }]);
  });

  it('of a site names the placement, and reaches no other site and no other company', async () => {
    const other = await RunningJob.make(service);
    const { token } = await register({ placementId: null });
    const reading = { at: '2031-01-06T09:00:00Z', concreteF: 60 };
    expect((await post(token, reading)).body.refused?.[0]?.message).toMatch(/name the placement/);
    expect((await post(token, { ...reading, placementId })).body).toMatchObject({ taken: 1 });
    const foreign = await service.database.placement.create({
      data: {
        ...other.own,
        phaseId: (await other.phase('footing-pour')).id,
        placedAt: new Date('2031-01-06T08:00:00Z'),
        material: 'concrete',
        sectionInches: 10,
        placedTempF: 60,
        mixture: { name: 'Concrete', ultimatePsi: 4600, tauHours: 30, exponent: 0.8, accelerated: false },
        protection: [],
        requiredPsi: 1000,
      },
    });
    expect((await post(token, { ...reading, placementId: foreign.id })).status).toBe(422);
    expect(await service.database.temperatureReading.count({ where: { placementId: foreign.id } })).toBe(0);
    expect(await register({ placementId: foreign.id })).toMatchObject({ code: 'NotFound' });
  });

  it('bound to one placement reaches no second one of its site', async () => {
    const second = await place();
    const { token } = await register();
    const answer = await post(token, {
      at: '2031-01-06T09:00:00Z',
      concreteF: 60,
      placementId: second,
    });
    expect(answer.status).toBe(422);
    expect(await service.database.temperatureReading.count({ where: { placementId: second } })).toBe(0);
  });

  it('may post so often in a minute, and is told how long to wait', async () => {
    const { token } = await register();
    const statuses: number[] = [];
    for (let i = 0; i < 31; i += 1) statuses.push((await send(token, { readings: [] })).status);
    expect(statuses).toEqual([...Array<number>(30).fill(400), 429]);
    expect(await send(token, { readings: [] })).toMatchObject({
      status: 429,
      retryAfter: '60',
      body: { code: 'too-many-posts', message: expect.stringContaining('one post') },
    });
    service.setClock('2031-01-06T14:01:01Z');
    expect((await post(token, { at: '2031-01-06T09:00:00Z', concreteF: 61 })).status).toBe(200);
  });

  it('is told what is wrong with a body as a whole', async () => {
    const { token } = await register();
    expect(await send(token, 'no json')).toMatchObject({ status: 400 });
    expect(await send(token, 'a=1', { 'content-type': 'text/plain' })).toMatchObject({
      status: 415,
      body: { message: expect.stringContaining('application/json') },
    });
    expect(await send(token, `{"readings": "${'x'.repeat(70_000)}"}`)).toMatchObject({
      status: 413,
      body: { message: expect.stringContaining('fewer readings') },
    });
    expect(await readings()).toEqual([]);
  });

  it('is registered by office and foreman with a name, at a site of their own', async () => {
    expect(await register({ name: '  ' })).toMatchObject({ code: 'InvalidInput' });
    expect(await register({ siteId: randomUUID() })).toMatchObject({ code: 'NotFound' });
    const viewer = await service.signIn(job.people.viewer.email, 'granite under gravel');
    await expect(viewer.change('registerLogger', { siteId: job.site.id, name: 'Probe' })).rejects.toThrow(
      /not-allowed/,
    );
  });
});
