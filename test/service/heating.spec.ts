import { randomUUID } from 'node:crypto';
import { afterAll, beforeAll, beforeEach, describe, expect, it } from '@jest/globals';
import type { Area, HeatingSet, HoldPoint, Phase, ReadingStage } from '../../src/generated/prisma/client.js';
import { RunningJob, type StepOutcome } from '../support/running-job.js';
import { startService, type TestService } from '../support/service.js';

const NOW = '2031-01-06T14:00:00Z';

describe('a heating set', () => {
  let service: TestService;
  let job: RunningJob;
  let set: HeatingSet;
  let landing: Area;
  let steps: Area;
  let phases: Record<'test' | 'testSteps' | 'stone', Phase>;
  let points: Record<'received' | 'laid' | 'laidSteps' | 'covered', HoldPoint>;

  beforeAll(async () => {
    service = await startService({ now: NOW });
  });
  beforeEach(async () => {
    service.setClock(NOW);
    job = await RunningJob.make(service);
    set = await job.heatingSet();
    const area = (key: string, position: number) =>
      service.database.area.create({
        data: { ...job.own, key, kind: 'landing', name: key, position, heated: true, quantities: {} },
      });
    landing = await area('landing', 0);
    steps = await area('steps', 1);
    await service.database.heatingSetArea.createMany({
      data: [landing, steps].map(({ id }, position) => ({
        companyId: job.company.id,
        heatingSetId: set.id,
        areaId: id,
        position,
      })),
    });
    const [cable, test, testSteps, stone] = [
      await job.phase('cable', { areaId: landing.id }),
      await job.phase('cable-test.landing', { areaId: landing.id }),
      await job.phase('cable-test.steps', { areaId: steps.id }),
      await job.phase('stone.landing', { areaId: landing.id }),
    ];
    phases = { test, testSteps, stone };
    const point = (phase: Phase, stage: ReadingStage, gate: 'start' | 'finish') =>
      job.holdPoint(phase, `reading-${stage}`, {
        kind: 'reading',
        gate,
        waivable: false,
        items: [],
        heatingSetId: set.id,
        readingStage: stage,
      });
    points = {
      received: await point(cable, 'received', 'start'),
      laid: await point(test, 'laid', 'finish'),
      laidSteps: await point(testSteps, 'laid', 'finish'),
      covered: await point(stone, 'covered', 'finish'),
    };
  });
  afterAll(() => service.stop());

  const CHANGED = `... on HeatingSetChanged {
    heatingSet { key receivedAt ohms revision areas { key } }
    reading { id stage accepted area { key } findings { rule ok measured limit mark caution text } warnings forbids by { name } }
  }`;
  const read = (stage: ReadingStage, more: object = {}): Promise<StepOutcome> =>
    job.foreman.change(
      'recordCableReading',
      {
        heatingSetId: set.id,
        stage,
        ohms: 19.2,
        megaohms: 500,
        testVolts: 500,
        cableTempF: 68,
        ...more,
      },
      CHANGED,
    );
  const readingOf = (outcome: StepOutcome) => outcome['reading'] as Record<string, unknown>;
  const stateOf = async (point: HoldPoint) => (await job.holdPointNow(point)).state;
  const LABEL = { watts: 3000, volts: 240, ohms: 19.2, heatedFeet: 240, coldLeadFeet: 20 };
  const receive = (more: object = {}): Promise<StepOutcome> =>
    job.foreman.change('receiveHeatingSet', { jobId: job.job.id, key: 'set-1', ...LABEL, ...more }, CHANGED);

  describe('is received', () => {
    it('with its label, before anything is read of it', async () => {
      await service.database.heatingSet.update({
        where: { id: set.id },
        data: { receivedAt: null, ohms: 20 },
      });
      expect(await read('received')).toMatchObject({
        code: 'WrongState',
        message: expect.stringContaining('received'),
      });
      expect(await receive({ receivedAt: '2031-01-06T13:00:00Z' })).toMatchObject({
        heatingSet: {
          ohms: 19.2,
          receivedAt: '2031-01-06T13:00:00.000Z',
          areas: [{ key: 'landing' }, { key: 'steps' }],
        },
        reading: null,
      });
      expect(await read('received')).toMatchObject({ reading: { accepted: true } });
    });

    it('never with a label that contradicts itself: P = V²/R', async () => {
      expect(await receive({ ohms: 25 })).toMatchObject({
        code: 'InvalidInput',
        message: expect.stringContaining('19.20 Ω'),
      });
      expect(await receive({ watts: -1 })).toMatchObject({ code: 'InvalidInput' });
      expect(await receive({ receivedAt: '2031-01-07T13:00:00Z' })).toMatchObject({ code: 'InvalidInput' });
      expect(await receive({ key: 'set-9' })).toMatchObject({ code: 'NotFound' });
    });

    it('again when the label was misread, and its readings are held against the new one', async () => {
      await read('received', { ohms: 21.12 });
      expect(await stateOf(points.received)).toBe('released');
      await receive({ watts: 3200, ohms: 18 });
      expect(await stateOf(points.received)).toBe('refused');
      const rows = await service.database.cableReading.findMany({ where: { heatingSetId: set.id } });
      expect(rows.map(({ accepted }) => accepted)).toEqual([false]);
    });
  });

  describe('is read', () => {
    it('within −5/+10 % of its label [from memory, IEC 60800] and with at least 20 MΩ', async () => {
      const cases: [number, number, boolean][] = [
        [18.24, 20, true],
        [21.12, 20, true],
        [18.23, 20, false],
        [21.13, 20, false],
        [19.2, 19.9, false],
      ];
      for (const [ohms, megaohms, accepted] of cases) {
        const outcome = await read('received', { ohms, megaohms });
        expect([ohms, megaohms, readingOf(outcome)['accepted']]).toEqual([ohms, megaohms, accepted]);
      }
    });

    it('and a failing reading is kept with what is wrong and what it forbids', async () => {
      const outcome = await read('laid', { areaId: landing.id, megaohms: 5 });
      expect(readingOf(outcome)).toMatchObject({
        accepted: false,
        area: { key: 'landing' },
        by: { name: job.people.foreman.name },
        forbids: 'covering the cable',
        findings: [
          { rule: expect.any(String), ok: true, mark: 'M' },
          {
            rule: 'insulation',
            ok: false,
            measured: '5 MΩ at 500 V',
            limit: 'at least 20 MΩ at 500 V or more',
            caution: expect.stringContaining('can hurt'),
          },
        ],
      });
      expect(await stateOf(points.laid)).toBe('refused');
    });

    it('too low a test voltage proves nothing', async () => {
      expect(readingOf(await read('received', { testVolts: 100 }))).toMatchObject({ accepted: false });
    });

    it('and a fall of a decade is a warning though it passes', async () => {
      await read('received', { megaohms: 1000, at: '2031-01-06T10:00:00Z' });
      expect(readingOf(await read('laid', { areaId: landing.id, megaohms: 100 }))).toMatchObject({
        accepted: true,
        warnings: [expect.stringContaining('decade')],
      });
    });

    it('of the area that was laid or covered, and of no area otherwise', async () => {
      expect(await read('laid')).toMatchObject({
        code: 'InvalidInput',
        message: expect.stringContaining('landing, steps'),
      });
      expect(await read('laid', { areaId: randomUUID() })).toMatchObject({ code: 'InvalidInput' });
      expect(await read('received', { areaId: landing.id })).toMatchObject({ code: 'InvalidInput' });
    });

    it('never in the future nor before it came', async () => {
      expect(await read('received', { at: '2031-01-06T15:00:00Z' })).toMatchObject({ code: 'InvalidInput' });
      expect(await read('received', { at: '2031-01-01T15:00:00Z' })).toMatchObject({ code: 'InvalidInput' });
    });
  });

  describe('gates', () => {
    it('releases the hold point of its own stage and area in the same change', async () => {
      await read('laid', { areaId: landing.id, at: '2031-01-06T13:00:00Z' });
      expect(await job.holdPointNow(points.laid)).toMatchObject({
        state: 'released',
        decidedAt: new Date('2031-01-06T13:00:00Z'),
        decidedById: job.people.foreman.id,
      });
      for (const point of [points.received, points.laidSteps, points.covered])
        expect(await stateOf(point)).toBe('open');
    });

    it('shuts again with a failing reading, forbids what covers it, and opens with a good one', async () => {
      await job.link(phases.test, phases.stone);
      await read('laid', { areaId: landing.id, at: '2031-01-06T09:00:00Z' });
      await job.run(phases.test, '2031-01-06T09:00:00Z', '2031-01-06T10:00:00Z');
      await read('laid', { areaId: landing.id, ohms: 1000, at: '2031-01-06T11:00:00Z' });
      expect(await stateOf(points.laid)).toBe('refused');
      const refused = await job.start(
        phases.stone,
        {},
        '... on ReadingMissing { stage heatingSet { key } area { key } }',
      );
      expect(refused).toMatchObject({
        code: 'ReadingMissing',
        heatingSet: { key: 'set-1' },
        message: expect.stringContaining('outside its limits'),
      });
      await read('laid', { areaId: landing.id, at: '2031-01-06T12:00:00Z' });
      expect(await stateOf(points.laid)).toBe('released');
      expect(await job.start(phases.stone)).toMatchObject({ __typename: 'PhaseChanged' });
      expect(await job.finish(phases.stone)).toMatchObject({ code: 'ReadingMissing' });
      await read('covered', { areaId: landing.id });
      expect(await job.finish(phases.stone)).toMatchObject({ __typename: 'PhaseChanged' });
    });

    it('is not opened by a good reading that is older than a bad one', async () => {
      await read('laid', { areaId: landing.id, ohms: 1000, at: '2031-01-06T12:00:00Z' });
      await read('laid', { areaId: landing.id, at: '2031-01-06T11:00:00Z' });
      expect(await stateOf(points.laid)).toBe('refused');
    });

    it('is not passed earlier than the reading was taken', async () => {
      await job.start(phases.test, { at: '2031-01-06T09:00:00Z' });
      await read('laid', { areaId: landing.id, at: '2031-01-06T12:00:00Z' });
      expect(await job.finish(phases.test, { at: '2031-01-06T11:00:00Z' })).toMatchObject({
        code: 'ReadingMissing',
        message: expect.stringContaining('only at'),
      });
      expect(await job.finish(phases.test, { at: '2031-01-06T12:00:00Z' })).toMatchObject({
        __typename: 'PhaseChanged',
      });
    });
  });

  it('is shown with its readings and cautions', async () => {
    await read('received');
    const { heatingSet } = await job.foreman.data<{ heatingSet: Record<string, unknown> }>(
      'query($id: ID!) { heatingSet(id: $id) { key cautions readings { stage accepted } hookup { id } } }',
      { id: set.id },
    );
    expect(heatingSet).toEqual({
      key: 'set-1',
      cautions: expect.arrayContaining([expect.stringContaining('coiled')]),
      readings: [{ stage: 'received', accepted: true }],
      hookup: null,
    });
  });

  it('answers one key sent five times at once alike, a stale revision, and foreign ids like missing ones', async () => {
    const clientKey = randomUUID();
    const answers = await Promise.all(Array.from({ length: 5 }, () => read('received', { clientKey })));
    expect(new Set(answers.map((answer) => JSON.stringify(answer))).size).toBe(1);
    expect(await service.database.cableReading.count({ where: { heatingSetId: set.id } })).toBe(1);
    expect(await read('received', { revision: 9 })).toMatchObject({ code: 'StaleRevision' });
    const other = await RunningJob.make(service);
    for (const heatingSetId of [set.id, randomUUID(), 'x']) {
      const outcome = await other.foreman.change('recordCableReading', {
        heatingSetId,
        stage: 'received',
        ohms: 19.2,
        megaohms: 500,
        testVolts: 500,
        cableTempF: 68,
      });
      expect(outcome).toMatchObject({ code: 'NotFound' });
    }
    expect(
      await other.foreman.change('receiveHeatingSet', { jobId: job.job.id, key: 'set-1', ...LABEL }),
    ).toMatchObject({
      code: 'NotFound',
    });
  });
});
