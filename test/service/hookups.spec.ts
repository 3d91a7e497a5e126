import { randomUUID } from 'node:crypto';
import { afterAll, beforeAll, beforeEach, describe, expect, it } from '@jest/globals';
import type {
  Area,
  HeatingSet,
  Hookup,
  HoldPoint,
  Phase,
  ReadingStage,
} from '../../src/generated/prisma/client.js';
import { circuitOf } from '../../src/hookups/circuit-of.js';
import { RunningJob, type StepOutcome } from '../support/running-job.js';
import { startService, type TestService } from '../support/service.js';

const NOW = '2031-01-06T14:00:00Z';
const DAY = 24 * 60 * 60 * 1000;

describe('a circuit', () => {
  it('carries its load as a continuous one: 12 A count as 15 A (EC&M code quiz 57)', () => {
    expect(circuitOf({ watts: 2880, volts: 240 })).toMatchObject({ amperes: 12, breakerAmperes: 15 });
    // 3,000 W at 240 V draw 12.5 A, 15.6 A as a continuous load: computed from NEC 426.4.
    expect(circuitOf({ watts: 3000, volts: 240 })).toMatchObject({ amperes: 12.5, breakerAmperes: 20 });
  });

  it('past the tables is left to an electrician', () => {
    const circuit = circuitOf({ watts: 20_000, volts: 120 });
    expect(circuit.breakerAmperes).toBeNull();
    expect(circuit.text).toContain('electrician designs');
  });
});

describe('a hookup', () => {
  let service: TestService;
  let job: RunningJob;
  let set: HeatingSet;
  let area: Area;
  let hookup: Hookup;
  let phases: Record<'test' | 'stone' | 'hookup' | 'final', Phase>;
  let gate: HoldPoint;

  beforeAll(async () => {
    service = await startService({ now: NOW });
  });
  beforeEach(async () => {
    service.setClock(NOW);
    job = await RunningJob.make(service);
    set = await job.heatingSet({ cureDays: 7 });
    area = await service.database.area.create({
      data: {
        ...job.own,
        key: 'landing',
        kind: 'landing',
        name: 'landing',
        position: 0,
        heated: true,
        quantities: {},
      },
    });
    await service.database.heatingSetArea.create({
      data: { companyId: job.company.id, heatingSetId: set.id, areaId: area.id, position: 0 },
    });
    const [test, stone, connect, final] = [
      await job.phase('cable-test', { areaId: area.id }),
      await job.phase('stone', { areaId: area.id }),
      await job.phase('hookup', { trade: 'electrician' }),
      await job.phase('final-inspection', {
        trade: 'authority',
        durationKind: 'elapsed',
        durationMinutes: 0,
      }),
    ];
    phases = { test, stone, hookup: connect, final };
    await job.link(test, stone);
    await job.link(test, connect);
    await job.link(connect, final);
    const reading = (phase: Phase, stage: ReadingStage, at: 'start' | 'finish') =>
      job.holdPoint(phase, `reading-${stage}`, {
        kind: 'reading',
        gate: at,
        waivable: false,
        items: [],
        heatingSetId: set.id,
        readingStage: stage,
      });
    await reading(test, 'laid', 'finish');
    await reading(stone, 'covered', 'finish');
    await reading(connect, 'beforeHookup', 'start');
    gate = await job.holdPoint(connect, 'connection', { gate: 'finish', waivable: false });
    hookup = await service.database.hookup.create({
      data: { ...job.own, heatingSetId: set.id, phaseId: connect.id },
    });
  });
  afterAll(() => service.stop());

  const CHANGED =
    '... on HookupChanged { hookup { id state readyAt readyCount bookedFor doneAt energisedAt } }';
  const NEEDS = '... on NeedsMissing { needs { id met text } }';
  const LEADS = { coldLeadThrough: true, coldLeadFreeInches: 9, sensorThrough: true, leadsLabelled: true };
  const leads = (more: object = {}): Promise<StepOutcome> =>
    job.foreman.change('recordLeads', { hookupId: hookup.id, ...LEADS, ...more }, CHANGED);
  const read = (stage: ReadingStage, more: object = {}): Promise<StepOutcome> =>
    job.foreman.change('recordCableReading', {
      heatingSetId: set.id,
      stage,
      ohms: 19.2,
      megaohms: 500,
      testVolts: 500,
      cableTempF: 40,
      ...more,
    });
  const book = (day = '2031-01-08T13:00:00Z'): Promise<StepOutcome> =>
    job.electrician.change('bookHookup', { hookupId: hookup.id, day }, `${CHANGED} ${NEEDS}`);
  const connect = (more: object = {}): Promise<StepOutcome> =>
    job.electrician.change(
      'recordHookup',
      { hookupId: hookup.id, breakerAmperes: 20, disconnect: true, groundFault: true, ...more },
      `${CHANGED} ${NEEDS} ... on LimitExceeded { findings { rule ok } } ... on PredecessorUnfinished { phases { key } }`,
    );
  const energise = (more: object = {}): Promise<StepOutcome> =>
    job.electrician.change('recordEnergised', { hookupId: hookup.id, ...more }, `${CHANGED} ${NEEDS}`);
  const row = () => service.database.hookup.findUniqueOrThrow({ where: { id: hookup.id } });
  const told = async () =>
    (
      await service.database.outbox.findMany({
        where: {
          companyId: job.company.id,
          topic: { in: ['hookup-ready', 'hookup-withdrawn', 'energising-allowed'] },
        },
        orderBy: { id: 'asc' },
      })
    ).map(({ topic, payload, dueAt }) => ({ topic, payload, dueAt: dueAt.toISOString() }));
  const unmet = (outcome: StepOutcome) =>
    (outcome['needs'] as { id: string; met: boolean }[]).filter(({ met }) => !met).map(({ id }) => id);

  /** Everything up to a tested cable with its leads through the wall. */
  const makeReady = async () => {
    await read('laid', { at: '2031-01-06T10:00:00Z' });
    await job.run(phases.test, '2031-01-06T09:00:00Z', '2031-01-06T10:30:00Z');
    await leads();
  };
  /** Everything up to a connection and the stone over the cable. */
  const makeConnected = async () => {
    await makeReady();
    await job.start(phases.stone, { at: '2031-01-06T10:30:00Z' });
    await read('covered', { at: '2031-01-06T12:00:00Z' });
    await job.finish(phases.stone, { at: '2031-01-06T12:00:00Z' });
    await read('beforeHookup', { at: '2031-01-06T13:00:00Z' });
    await connect({ at: '2031-01-06T13:30:00Z' });
  };
  const makeFinal = async () => {
    const { inspection } = await job.inspection(phases.final, 'final');
    await job.foreman.change('releaseHoldPoint', {
      holdPointId: gate.id,
      values: [{ itemId: 'seen', confirmed: true }],
    });
    await job.office.change('requestInspection', { inspectionId: inspection.id });
    await job.office.change('bookInspection', {
      inspectionId: inspection.id,
      visitFrom: '2031-01-07T15:00:00Z',
      visitTo: '2031-01-07T16:00:00Z',
    });
    service.setClock('2031-01-07T15:30:00Z');
    return job.office.change('passInspection', { inspectionId: inspection.id, inspector: 'N. Elm' });
  };

  describe('becomes ready', () => {
    it('once, in the change that meets its last need, and tells the electrician once', async () => {
      await leads();
      expect(await row()).toMatchObject({ state: 'waiting', readyCount: 0 });
      expect(await told()).toEqual([]);
      await read('laid', { at: '2031-01-06T10:00:00Z' });
      expect(await row()).toMatchObject({ state: 'ready', readyCount: 1, readyAt: new Date(NOW) });
      await leads({ coldLeadFreeInches: 10 });
      await job.run(phases.test, '2031-01-06T09:00:00Z', '2031-01-06T10:30:00Z');
      expect(await told()).toEqual([
        {
          topic: 'hookup-ready',
          payload: { hookupId: hookup.id, readyCount: 1 },
          dueAt: '2031-01-06T14:00:00.000Z',
        },
      ]);
    });

    it('only with each of its needs', async () => {
      await read('laid', { at: '2031-01-06T10:00:00Z' });
      const short: [object, string][] = [
        [{ coldLeadThrough: false }, 'cold-lead-through'],
        [{ coldLeadFreeInches: 5.9 }, 'cold-lead-length'],
        [{ coldLeadFreeInches: null }, 'cold-lead-length'],
        [{ sensorThrough: false }, 'sensor-lead-through'],
        [{ leadsLabelled: false }, 'leads-labelled'],
      ];
      for (const [more, need] of short) {
        await leads(more);
        expect(await row()).toMatchObject({ state: 'waiting' });
        expect(unmet(await book())).toEqual([need]);
      }
      await leads();
      expect(await row()).toMatchObject({ state: 'ready', readyCount: 1 });
    });

    it('not with a reading that was not accepted', async () => {
      await read('laid', { ohms: 1000, at: '2031-01-06T10:00:00Z' });
      await leads();
      expect(await row()).toMatchObject({ state: 'waiting' });
      const refused = await book();
      expect(refused.code).toBe('NeedsMissing');
      expect(unmet(refused)).toEqual(['reading-laid', 'latest-reading']);
    });

    it('again after a need was withdrawn: a withdrawal, then a second notice under the next number', async () => {
      await makeReady();
      await book();
      await read('laid', { ohms: 1000, at: '2031-01-06T11:00:00Z' });
      expect(await row()).toMatchObject({ state: 'waiting', readyAt: null, bookedFor: null, readyCount: 1 });
      await read('laid', { at: '2031-01-06T12:00:00Z' });
      expect(await row()).toMatchObject({ state: 'ready', readyCount: 2 });
      expect((await told()).map(({ topic, payload }) => [topic, payload])).toEqual([
        ['hookup-ready', { hookupId: hookup.id, readyCount: 1 }],
        ['hookup-withdrawn', { hookupId: hookup.id, readyCount: 1 }],
        ['hookup-ready', { hookupId: hookup.id, readyCount: 2 }],
      ]);
    });

    it('and says nothing when the change is refused', async () => {
      await leads();
      await read('laid', { at: '2031-01-06T10:00:00Z', megaohms: -1 });
      expect(await told()).toEqual([]);
    });
  });

  it('takes no leads through a wall for a set that has not come', async () => {
    await service.database.heatingSet.update({ where: { id: set.id }, data: { receivedAt: null } });
    expect(await leads()).toMatchObject({
      code: 'WrongState',
      message: expect.stringContaining('not received'),
    });
    expect(await leads({ coldLeadFreeInches: -1 })).toMatchObject({ code: 'InvalidInput' });
  });

  it('shows needs, circuit and cautions', async () => {
    await leads();
    const { hookup: shown } = await job.electrician.data<{ hookup: Record<string, unknown> }>(
      `query($id: ID!) { hookup(id: $id) {
        needs { id met text } energisingNeeds { id met }
        circuit { watts volts amperes breakerAmperes text source } cautions
        heatingSet { key } phase { key } job { name } electrician { name }
      } }`,
      { id: hookup.id },
    );
    expect(shown).toMatchObject({
      circuit: {
        watts: 3000,
        volts: 240,
        amperes: 12.5,
        breakerAmperes: 20,
        source: expect.stringContaining('NEC 426.4'),
      },
      heatingSet: { key: 'set-1' },
      phase: { key: 'hookup' },
      job: { name: 'Larch Street' },
      electrician: null,
    });
    expect(shown['cautions']).toEqual(
      expect.arrayContaining([
        expect.stringContaining('licensed electrician'),
        expect.stringContaining('not shock protection for people'),
      ]),
    );
    expect((shown['energisingNeeds'] as { met: boolean }[]).every(({ met }) => !met)).toBe(true);
  });

  describe('is booked', () => {
    it('by the electrician, for today or a day ahead, and may be booked anew', async () => {
      await makeReady();
      expect(await book('2031-01-05T13:00:00Z')).toMatchObject({ code: 'InvalidInput' });
      expect(await book()).toMatchObject({
        hookup: { state: 'booked', bookedFor: '2031-01-08T13:00:00.000Z' },
      });
      expect(await row()).toMatchObject({ electricianId: job.people.electrician.id });
      expect(await book('2031-01-09T13:00:00Z')).toMatchObject({
        hookup: { bookedFor: '2031-01-09T13:00:00.000Z' },
      });
    });

    it('by nobody but electrician and office', async () => {
      const answer = await job.foreman.ask(
        'mutation($input: BookHookupInput!) { bookHookup(input: $input) { __typename } }',
        { input: { clientKey: randomUUID(), hookupId: hookup.id, day: NOW } },
      );
      expect(answer.errors?.[0]?.extensions?.code).toBe('not-allowed');
    });
  });

  describe('is recorded', () => {
    it('never before its needs, its last reading, or what comes before it', async () => {
      expect(await connect()).toMatchObject({ code: 'NeedsMissing' });
      await read('laid', { at: '2031-01-06T10:00:00Z' });
      await leads();
      expect(await connect()).toMatchObject({
        code: 'PredecessorUnfinished',
        phases: [{ key: 'cable-test' }],
      });
      await job.run(phases.test, '2031-01-06T09:00:00Z', '2031-01-06T10:30:00Z');
      expect(await connect()).toMatchObject({ code: 'ReadingMissing' });
      await read('beforeHookup', { at: '2031-01-06T13:00:00Z' });
      expect(await connect({ at: '2031-01-06T12:00:00Z' })).toMatchObject({ code: 'ReadingMissing' });
      expect(await connect({ at: '2031-01-06T15:00:00Z' })).toMatchObject({ code: 'InvalidInput' });
      expect(await connect()).toMatchObject({
        hookup: { state: 'done', doneAt: '2031-01-06T14:00:00.000Z' },
      });
    });

    it('never without disconnect, ground-fault protection and a breaker for the continuous load', async () => {
      await makeReady();
      await read('beforeHookup', { at: '2031-01-06T13:00:00Z' });
      for (const [more, rule] of [
        [{ breakerAmperes: 15 }, 'breaker'],
        [{ disconnect: false }, 'disconnect'],
        [{ groundFault: false }, 'ground-fault'],
      ] as const) {
        const outcome = await connect(more);
        expect(outcome.code).toBe('LimitExceeded');
        expect((outcome['findings'] as { rule: string; ok: boolean }[]).filter(({ ok }) => !ok)).toEqual([
          { rule, ok: false },
        ]);
      }
      expect(await row()).toMatchObject({ state: 'ready', doneAt: null });
    });

    it('never with 16 A on a 15 A breaker: rule, value, limit and source are told (NEC 426.4: a continuous load counts 125 %)', async () => {
      await makeReady();
      await read('beforeHookup', { at: '2031-01-06T13:00:00Z' });
      await service.database.heatingSet.update({ where: { id: set.id }, data: { watts: 3840, volts: 240 } });
      const outcome = await job.electrician.change(
        'recordHookup',
        { hookupId: hookup.id, breakerAmperes: 15, disconnect: true, groundFault: true },
        `... on LimitExceeded { code findings { rule ok measured limit source caution } }`,
      );
      expect(outcome.code).toBe('LimitExceeded');
      const broken = (outcome['findings'] as unknown as Record<string, unknown>[]).filter(
        ({ ok }) => ok === false,
      );
      expect(broken).toEqual([
        expect.objectContaining({
          rule: 'breaker',
          measured: expect.stringContaining('15 A'),
          limit: expect.stringContaining('20.0 A'),
          source: expect.stringContaining('426.4'),
          caution: expect.stringMatching(/electrician/i),
        }),
      ]);
    });

    it('once, and starts its phase, which its last hold point then finishes', async () => {
      await job.inspection(phases.final, 'final');
      await makeConnected();
      expect(await job.phaseNow(phases.hookup)).toMatchObject({
        state: 'started',
        actualStart: new Date('2031-01-06T13:30:00Z'),
      });
      expect(await connect()).toMatchObject({ code: 'WrongState' });
      expect(await leads()).toMatchObject({ code: 'WrongState' });
      expect(await book()).toMatchObject({ code: 'WrongState' });
      await job.foreman.change('releaseHoldPoint', {
        holdPointId: gate.id,
        values: [{ itemId: 'seen', confirmed: true }],
      });
      expect(await job.phaseNow(phases.hookup)).toMatchObject({ state: 'done' });
      const putBack = await job.foreman.change('putBackPhase', {
        phaseId: phases.hookup.id,
        reason: 'wrong disconnect confirmed',
      });
      expect(putBack).toMatchObject({ __typename: 'PhaseChanged' });
      expect(await job.phaseNow(phases.hookup)).toMatchObject({ state: 'started' });
      expect(await job.holdPointNow(gate)).toMatchObject({ state: 'open' });
    });

    it('never by starting its phase before its needs', async () => {
      await read('beforeHookup', { at: '2031-01-06T13:00:00Z' });
      await read('laid', { at: '2031-01-06T13:10:00Z' });
      await job.run(phases.test, '2031-01-06T09:00:00Z', '2031-01-06T13:30:00Z');
      const outcome = await job.start(phases.hookup, {}, NEEDS);
      expect(outcome.code).toBe('NeedsMissing');
      expect(unmet(outcome)).toEqual([
        'cold-lead-through',
        'cold-lead-length',
        'sensor-lead-through',
        'leads-labelled',
      ]);
    });
  });

  describe('is energised', () => {
    it('never before hookup, final inspection, last reading and the cure of the bed', async () => {
      const refused = await energise();
      expect(refused.code).toBe('NeedsMissing');
      expect(unmet(refused)).toEqual([
        'hookup-recorded',
        'final-passed',
        'reading-before-hookup',
        'bed-cured',
        'latest-reading',
      ]);
      await makeConnected();
      expect(unmet(await energise())).toEqual(['final-passed', 'bed-cured']);
      await makeFinal();
      expect(unmet(await energise())).toEqual(['bed-cured']);
      // Stone finished on 6 January at 12:00Z, seven days of cure by the instructions of the set.
      service.setClock('2031-01-13T11:59:00Z');
      expect(unmet(await energise())).toEqual(['bed-cured']);
      service.setClock('2031-01-13T12:00:00Z');
      expect(await energise({ at: '2031-01-13T11:00:00Z' })).toMatchObject({ code: 'NeedsMissing' });
      expect(await energise()).toMatchObject({ hookup: { energisedAt: '2031-01-13T12:00:00.000Z' } });
      expect(await energise()).toMatchObject({ code: 'WrongState' });
    });

    it('with the leave dated ahead when time alone is left, told once at that date', async () => {
      await makeConnected();
      expect((await row()).energiseAllowedAt).toBeNull();
      await makeFinal();
      const cured = new Date(Date.parse('2031-01-06T12:00:00Z') + 7 * DAY);
      expect(await row()).toMatchObject({ energiseAllowedAt: cured });
      service.setClock('2031-01-14T12:00:00Z');
      await job.office.change('callWeatherHold', {
        siteId: job.site.id,
        startsAt: '2031-01-14T12:00:00Z',
        endsAt: '2031-01-14T18:00:00Z',
        reason: 'Ice on the walk',
      });
      expect(await row()).toMatchObject({ energiseAllowedAt: cured });
      expect((await told()).filter(({ topic }) => topic === 'energising-allowed')).toEqual([
        {
          topic: 'energising-allowed',
          payload: { hookupId: hookup.id, readyCount: 1 },
          dueAt: cured.toISOString(),
        },
      ]);
    });

    it('no more after a reading that fails, until a good one stands', async () => {
      await makeConnected();
      await makeFinal();
      await read('beforeHookup', { megaohms: 1 });
      expect((await row()).energiseAllowedAt).toBeNull();
      service.setClock('2031-01-14T12:00:00Z');
      expect(unmet(await energise())).toEqual(['reading-before-hookup', 'latest-reading']);
      await read('beforeHookup');
      expect(await row()).toMatchObject({ energiseAllowedAt: new Date('2031-01-14T12:00:00Z') });
      expect(await energise()).toMatchObject({ hookup: { energisedAt: '2031-01-14T12:00:00.000Z' } });
    });
  });

  it('answers one key sent five times at once alike, a stale revision, and foreign ids like missing ones', async () => {
    await makeReady();
    const clientKey = randomUUID();
    const day = '2031-01-08T13:00:00Z';
    const answers = await Promise.all(
      Array.from({ length: 5 }, () =>
        job.electrician.change('bookHookup', { hookupId: hookup.id, day, clientKey }, CHANGED),
      ),
    );
    expect(new Set(answers.map((answer) => JSON.stringify(answer))).size).toBe(1);
    const lines = await service.database.journalEntry.count({
      where: { subjectId: hookup.id, action: 'hookup booked' },
    });
    expect(lines).toBe(1);
    expect(await leads({ revision: 1 })).toMatchObject({ code: 'StaleRevision' });
    const other = await RunningJob.make(service);
    for (const hookupId of [hookup.id, randomUUID(), 'x']) {
      expect(await other.foreman.change('recordLeads', { hookupId, ...LEADS })).toMatchObject({
        code: 'NotFound',
      });
      expect(
        await other.electrician.data('query($id: ID!) { hookup(id: $id) { id } }', { id: hookupId }),
      ).toEqual({ hookup: null });
    }
    const { hookups } = await job.electrician.data<{ hookups: { edges: { node: { id: string } }[] } }>(
      '{ hookups(first: 10, state: booked) { edges { node { id } } } }',
    );
    expect(hookups.edges.map(({ node }) => node.id)).toEqual([hookup.id]);
  });
});
