import { randomUUID } from 'node:crypto';
import { afterAll, beforeAll, beforeEach, describe, expect, it } from '@jest/globals';
import type { HoldPoint, Phase } from '../../src/generated/prisma/client.js';
import { RunningJob, type StepOutcome } from '../support/running-job.js';
import { startService, type TestService } from '../support/service.js';

const NOW = '2031-01-06T14:00:00Z';

/*
 * The default concrete tends to 4,600 psi with τ 30 h and a 0.8 (S = Sᵤ·exp[−(τ/t)ᵃ]); kept at 68 °F (20 °C) an hour
 * counts for an hour by both methods. By hand from that formula: 122 psi at 6 h, 574 at 12 h, 1,021 at 18 h.
 */

/** What a strength by measured temperatures is told with: the method of the default mixture. */
const METHOD = {
  limit: 'at least 1000 psi by measured temperatures',
  mark: 'M',
  source: expect.stringContaining('ASTM C1074'),
  caution: expect.stringContaining('estimate from temperature'),
};

describe('a placement', () => {
  let service: TestService;
  let job: RunningJob;
  let pour: Phase;
  let cure: Phase;
  let strength: HoldPoint;

  beforeAll(async () => {
    service = await startService({ now: NOW });
  });
  beforeEach(async () => {
    service.setClock(NOW);
    job = await RunningJob.make(service);
    pour = await job.phase('footing-pour');
    cure = await job.wait('footing-cure', 48);
    await job.link(pour, cure);
    strength = await job.strength(cure, pour);
  });
  afterAll(() => service.stop());

  const CHANGED = `... on PlacementChanged { placement {
    id material requiredPsi protection predictedReleaseAt cautions revision phase { key }
    readings { at concreteF airF by { name } }
    strength { psi requiredPsi basis equivalentAgeHours method mark caution releaseAt lowestF }
  } }`;
  const place = (more: object = {}): Promise<StepOutcome> =>
    job.foreman.change(
      'recordPlacement',
      {
        phaseId: pour.id,
        placedAt: '2031-01-06T08:00:00Z',
        material: 'concrete',
        sectionInches: 10,
        placedTempF: 68,
        protection: ['blanket'],
        ...more,
      },
      CHANGED,
    );
  const read = (
    placementId: string,
    at: string,
    concreteF: number,
    more: object = {},
  ): Promise<StepOutcome> =>
    job.foreman.change('recordTemperature', { placementId, at, concreteF, ...more }, CHANGED);
  const startPour = () => job.start(pour, { at: '2031-01-06T07:00:00Z' });
  const placed = async (more: object = {}): Promise<string> => {
    await startPour();
    const outcome = await place(more);
    await job.finish(pour, { at: '2031-01-06T09:00:00Z' });
    return placementOf(outcome)['id'] as string;
  };
  const placementOf = (outcome: StepOutcome) => outcome['placement'] as Record<string, unknown>;
  const strengthOf = (outcome: StepOutcome) => placementOf(outcome)['strength'] as Record<string, never>;
  const release = (): Promise<StepOutcome> =>
    job.foreman.change(
      'releaseHoldPoint',
      { holdPointId: strength.id, values: [] },
      `... on CureNotReached { strengthPsi requiredPsi finding { measured limit mark source caution } }
        ... on LimitExceeded { findings { rule ok measured } }
        ... on HoldPointChanged { holdPoint { findings { rule ok measured limit mark source caution } } }`,
    );

  it('is recorded of a phase that has started, with the strength its hold point asks for', async () => {
    expect(await place()).toMatchObject({
      code: 'WrongState',
      message: expect.stringContaining('not started'),
    });
    await startPour();
    expect(await place()).toMatchObject({
      placement: {
        material: 'concrete',
        requiredPsi: 1000,
        protection: ['blanket'],
        phase: { key: 'footing-pour' },
        readings: [],
      },
    });
  });

  it('has a predicted strength and date while nothing was read, marked as such', async () => {
    await startPour();
    const outcome = await place();
    expect(strengthOf(outcome)).toMatchObject({
      basis: 'predicted',
      requiredPsi: 1000,
      lowestF: null,
      mark: 'M',
      method: expect.stringMatching(
        /Nurse–Saul.*conduction through the section.*air at 40 °F where none is forecast/,
      ),
      caution: expect.stringContaining('estimate'),
    });
    const date = placementOf(outcome)['predictedReleaseAt'] as string;
    expect(strengthOf(outcome)['releaseAt']).toBe(date);
    // It was placed at 68 °F and cools from there, so the 17.7 h of a steady 68 °F are the least it can take.
    expect(Date.parse(date)).toBeGreaterThan(Date.parse('2031-01-07T01:42:00Z'));
  });

  it('is dated anew by each reading, and its measured strength is told apart', async () => {
    const id = await placed();
    const before = await service.database.placement.findUniqueOrThrow({ where: { id } });
    const outcome = await read(id, '2031-01-06T14:00:00Z', 68, { airF: 30 });
    expect(placementOf(outcome)).toMatchObject({
      readings: [{ concreteF: 68, airF: 30, by: { name: job.people.foreman.name } }],
    });
    expect(strengthOf(outcome)).toMatchObject({ basis: 'measured', releaseAt: null, lowestF: 68 });
    expect(strengthOf(outcome)['psi']).toBeCloseTo(122.6, 0);
    const after = placementOf(outcome)['predictedReleaseAt'] as string;
    expect(Date.parse(after)).toBeLessThan(before.predictedReleaseAt?.getTime() ?? 0);
  });

  it('releases its cure on measured strength alone, with the numbers when it falls short', async () => {
    expect(await release()).toMatchObject({ code: 'CureNotReached', strengthPsi: null, requiredPsi: 1000 });
    const id = await placed();
    // The prediction would be long over by then; it releases nothing.
    service.setClock('2031-01-20T08:00:00Z');
    expect(await release()).toMatchObject({
      code: 'CureNotReached',
      strengthPsi: null,
      requiredPsi: 1000,
      finding: { measured: 'no temperature read', ...METHOD },
    });
    await read(id, '2031-01-06T14:00:00Z', 68);
    await read(id, '2031-01-06T20:00:00Z', 68);
    const short = await release();
    expect(short).toMatchObject({ code: 'CureNotReached', requiredPsi: 1000 });
    expect(short['strengthPsi']).toBeCloseTo(574, 0);
    expect(short['finding']).toMatchObject({ measured: expect.stringMatching(/^57\d psi by /), ...METHOD });
    const reached = await read(id, '2031-01-07T02:00:00Z', 68);
    expect(strengthOf(reached)).toMatchObject({ basis: 'measured', releaseAt: '2031-01-07T02:00:00.000Z' });
    expect(strengthOf(reached)['psi']).toBeCloseTo(1021, 0);
    // What it was released on stays with the hold point: method, source and caution too.
    expect(await release()).toMatchObject({
      __typename: 'HoldPointChanged',
      holdPoint: {
        findings: [
          {
            rule: 'measured-release',
            ok: true,
            measured: expect.stringMatching(/^102\d psi by /),
            ...METHOD,
          },
          { rule: 'first-freeze', ok: true, mark: 'P', caution: expect.stringContaining('estimate') },
        ],
      },
    });
    expect(await job.phaseNow(cure)).toMatchObject({ state: 'done' });
  });

  it('needs what the hold point asks for, even where less was entered with it', async () => {
    const id = await placed({ requiredPsi: 100 });
    service.setClock('2031-01-07T14:00:00Z');
    await read(id, '2031-01-06T14:00:00Z', 68);
    await read(id, '2031-01-06T20:00:00Z', 68);
    expect(await release()).toMatchObject({ code: 'CureNotReached', requiredPsi: 1000 });
  });

  it('needs every placement of its phase', async () => {
    const first = await placed();
    await service.database.placement.create({
      data: {
        ...job.own,
        phaseId: pour.id,
        placedAt: new Date('2031-01-06T08:30:00Z'),
        material: 'concrete',
        sectionInches: 10,
        placedTempF: 60,
        mixture: { name: 'Concrete', ultimatePsi: 4600, tauHours: 30, exponent: 0.8, accelerated: false },
        protection: [],
        requiredPsi: 1000,
      },
    });
    service.setClock('2031-01-07T14:00:00Z');
    for (const at of ['2031-01-06T14:00:00Z', '2031-01-06T20:00:00Z', '2031-01-07T02:00:00Z'])
      await read(first, at, 68);
    expect(await release()).toMatchObject({ code: 'CureNotReached', strengthPsi: null });
  });

  it('that froze before 500 psi is not released by a strength it shows later (ACI 306.1-90 in Beall 2004)', async () => {
    const id = await placed();
    service.setClock('2031-01-09T14:00:00Z');
    await read(id, '2031-01-06T14:00:00Z', 31);
    for (let hour = 18; hour < 18 + 40; hour += 4)
      await read(id, new Date(Date.parse('2031-01-06T00:00:00Z') + hour * 3_600_000).toISOString(), 75);
    expect(await release()).toMatchObject({
      code: 'LimitExceeded',
      findings: [{ rule: 'first-freeze', ok: false, measured: expect.stringContaining('psi') }],
    });
  });

  it('may be decided about by name and reason instead', async () => {
    await placed();
    const outcome = await job.foreman.change('waiveHoldPoint', {
      holdPointId: strength.id,
      reason: 'cylinders broken at 1,400 psi by the laboratory',
    });
    expect(outcome).toMatchObject({ __typename: 'HoldPointChanged' });
    expect(await job.phaseNow(cure)).toMatchObject({ state: 'done' });
  });

  it('warns of what is in it and of what keeps it warm', async () => {
    await startPour();
    const plain = await place();
    expect(placementOf(plain)['cautions']).toHaveLength(1);
    const warm = await place({ accelerated: true, protection: ['blanket', 'enclosure', 'heater'] });
    expect(placementOf(warm)['cautions']).toEqual([
      expect.stringContaining('estimate'),
      expect.stringContaining('Calcium chloride'),
      expect.stringContaining('carbon monoxide'),
    ]);
  });

  it('refuses what cannot be', async () => {
    await startPour();
    for (const more of [
      { material: 'snow' },
      { sectionInches: 0 },
      { placedTempF: 20 },
      { protection: ['straw'] },
      { placedAt: '2031-01-06T15:00:00Z' },
      { placedAt: '2031-01-06T06:00:00Z' },
      { requiredPsi: -1 },
    ])
      expect([more, (await place(more)).code]).toEqual([more, 'InvalidInput']);
    const id = placementOf(await place())['id'] as string;
    await read(id, '2031-01-06T10:00:00Z', 60);
    for (const [at, concreteF] of [
      ['2031-01-06T15:00:00Z', 60],
      ['2031-01-06T07:00:00Z', 60],
      ['2031-01-06T10:00:00Z', 61],
      ['2031-01-06T11:00:00Z', 400],
    ] as const)
      expect([at, concreteF, (await read(id, at, concreteF)).code]).toEqual([at, concreteF, 'InvalidInput']);
    expect(await service.database.temperatureReading.count({ where: { placementId: id } })).toBe(1);
  });

  it('answers one key sent five times at once alike, a stale revision, and foreign ids like missing ones', async () => {
    await startPour();
    const clientKey = randomUUID();
    const answers = await Promise.all(Array.from({ length: 5 }, () => place({ clientKey })));
    expect(new Set(answers.map((answer) => JSON.stringify(answer))).size).toBe(1);
    expect(await service.database.placement.count({ where: { jobId: job.job.id } })).toBe(1);
    const id = placementOf(answers[0]!)['id'] as string;
    expect(
      await job.foreman.change('recordTemperature', { placementId: id, concreteF: 60, revision: 9 }),
    ).toMatchObject({ code: 'StaleRevision' });
    const other = await RunningJob.make(service);
    expect(await other.foreman.data('query($id: ID!) { placement(id: $id) { id } }', { id })).toEqual({
      placement: null,
    });
    expect(await other.foreman.change('recordTemperature', { placementId: id, concreteF: 60 })).toMatchObject(
      { code: 'NotFound' },
    );
    expect(
      await other.foreman.change('recordTemperature', { placementId: 'x', concreteF: 60 }),
    ).toMatchObject({
      code: 'NotFound',
    });
  });
});
