import { randomUUID } from 'node:crypto';
import { afterAll, beforeAll, beforeEach, describe, expect, it } from '@jest/globals';
import type { PhaseState } from '../../src/generated/prisma/client.js';
import { PHASE_STEPS, type PhaseStep, sayInstead, stateAfter } from '../../src/phases/phase-states.js';
import { confirmItem, RunningJob } from '../support/running-job.js';
import { startService, type TestService } from '../support/service.js';
import { statementsOf } from '../support/statements.js';

const NOW = '2031-01-06T14:00:00Z';

describe('the states of a phase', () => {
  const states: PhaseState[] = ['waiting', 'started', 'done', 'dropped'];

  it('lead only where the table says, and every other step is told what to do instead', () => {
    const table = (Object.keys(PHASE_STEPS) as PhaseStep[]).flatMap((step) =>
      states.map((state) => [step, state, stateAfter(step, state)]),
    );
    expect(table.filter(([, , to]) => to !== null)).toEqual([
      ['start', 'waiting', 'started'],
      ['finish', 'started', 'done'],
      ['putBack', 'started', 'waiting'],
      ['putBack', 'done', 'started'],
      ['progress', 'started', 'started'],
    ]);
    for (const state of states) expect(sayInstead('Dig', state)).toMatch(/^Dig .+\.$/);
  });

  it('reach done from waiting and can go back again', () => {
    let state: PhaseState | null = 'waiting';
    for (const step of ['start', 'finish', 'putBack', 'putBack'] as const)
      state = state && stateAfter(step, state);
    expect(state).toBe('waiting');
  });
});

describe('running a phase', () => {
  let service: TestService;
  let job: RunningJob;

  beforeAll(async () => {
    service = await startService({ now: NOW });
  });
  beforeEach(async () => {
    service.setClock(NOW);
    job = await RunningJob.make(service);
  });
  afterAll(() => service.stop());

  const PHASE =
    '... on PhaseChanged { phase { id state actualStart actualFinish actualCrew { name } revision } }';

  describe('starts', () => {
    it('with its crew, and lets the job run', async () => {
      const mesh = await job.phase('mesh');
      const outcome = await job.start(
        mesh,
        { at: '2031-01-06T13:00:00Z' },
        '... on PhaseChanged { phase { state actualStart job { state } } }',
      );
      expect(outcome).toEqual({
        __typename: 'PhaseChanged',
        phase: { state: 'started', actualStart: '2031-01-06T13:00:00.000Z', job: { state: 'running' } },
      });
      expect(await job.phaseNow(mesh)).toMatchObject({ actualCrewId: job.mason.id });
    });

    it('at the present when no time is given', async () => {
      const mesh = await job.phase('mesh');
      await job.start(mesh);
      expect((await job.phaseNow(mesh)).actualStart?.toISOString()).toBe('2031-01-06T14:00:00.000Z');
    });

    it('with the required crew when none is named, and asks for one when none is known', async () => {
      const required = await job.phase('required', { requiredCrewId: job.mason.id });
      expect(await job.start(required, { crewId: null })).toMatchObject({ __typename: 'PhaseChanged' });
      expect(await job.phaseNow(required)).toMatchObject({ actualCrewId: job.mason.id });
      const open = await job.phase('open');
      expect(await job.start(open, { crewId: null })).toMatchObject({
        code: 'InvalidInput',
        message: expect.stringContaining('Masons'),
      });
    });

    it('without a crew where the company has none of the trade', async () => {
      const hookup = await job.phase('wiring', { trade: 'electrician' });
      expect(await job.start(hookup)).toMatchObject({ __typename: 'PhaseChanged' });
    });

    it('never with a crew of another trade, out of use, or of nobody', async () => {
      const mesh = await job.phase('mesh');
      expect(await job.start(mesh, { crewId: job.labour.id })).toMatchObject({
        code: 'InvalidInput',
        message: expect.stringContaining('needs mason'),
      });
      expect(await job.start(mesh, { crewId: randomUUID() })).toMatchObject({ code: 'NotFound' });
      expect(await job.start(mesh, { crewId: 'not an id' })).toMatchObject({ code: 'NotFound' });
      await service.database.crew.update({ where: { id: job.mason.id }, data: { active: false } });
      expect(await job.start(mesh)).toMatchObject({ code: 'InvalidInput' });
      expect(await job.phaseNow(mesh)).toMatchObject({ state: 'waiting', revision: 1 });
    });

    it('never in the future', async () => {
      const mesh = await job.phase('mesh');
      expect(await job.start(mesh, { at: '2031-01-06T14:00:01Z' })).toMatchObject({
        code: 'InvalidInput',
        message: expect.stringContaining('future'),
      });
    });

    it('once: a second start tells that it has started', async () => {
      const mesh = await job.phase('mesh');
      await job.start(mesh);
      expect(await job.start(mesh, {}, '... on WrongState { state }')).toMatchObject({
        code: 'WrongState',
        state: 'started',
      });
    });

    it('never in a cancelled job', async () => {
      const mesh = await job.phase('mesh');
      await service.database.job.update({ where: { id: job.job.id }, data: { state: 'cancelled' } });
      expect(await job.start(mesh)).toMatchObject({ code: 'WrongState' });
    });
  });

  describe('links', () => {
    it('hold a start until the predecessor finished, and never before that', async () => {
      const [dig, form] = [await job.phase('dig', { trade: 'labour' }), await job.phase('form')];
      await job.link(dig, form);
      const early = await job.start(form, {}, '... on PredecessorUnfinished { phases { key } }');
      expect(early).toMatchObject({ code: 'PredecessorUnfinished', phases: [{ key: 'dig' }] });
      await job.start(dig, { crewId: job.labour.id, at: '2031-01-06T08:00:00Z' });
      await job.finish(dig, { at: '2031-01-06T12:00:00Z' });
      const before = await job.start(
        form,
        { at: '2031-01-06T11:59:00Z' },
        '... on BeforePredecessor { phases { key } }',
      );
      expect(before).toMatchObject({ code: 'BeforePredecessor', phases: [{ key: 'dig' }] });
      expect(await job.start(form, { at: '2031-01-06T12:00:00Z' })).toMatchObject({
        __typename: 'PhaseChanged',
      });
    });

    it('count their lag by the clock', async () => {
      const [base, cable] = [await job.phase('base'), await job.phase('cable')];
      await job.link(base, cable, { lagMinutes: 24 * 60, lagIn: 'elapsed' });
      await job.run(base, '2031-01-05T12:00:00Z', '2031-01-05T15:00:00Z');
      expect(await job.start(cable)).toMatchObject({ code: 'BeforePredecessor' });
      service.setClock('2031-01-06T15:00:00Z');
      expect(await job.start(cable)).toMatchObject({ __typename: 'PhaseChanged' });
    });

    it('of start-start ask for a start only', async () => {
      const [one, two] = [await job.phase('one', { trade: 'labour' }), await job.phase('two')];
      await job.link(one, two, { kind: 'startStart' });
      expect(await job.start(two)).toMatchObject({ code: 'PredecessorUnfinished' });
      await job.start(one, { crewId: job.labour.id });
      expect(await job.start(two)).toMatchObject({ __typename: 'PhaseChanged' });
    });

    it('of finish-finish and start-finish hold the finish only', async () => {
      const [one, two] = [await job.phase('one', { trade: 'labour' }), await job.phase('two')];
      await job.link(one, two, { kind: 'finishFinish' });
      await job.link(one, two, { kind: 'startFinish' });
      await job.start(two, { at: '2031-01-06T10:00:00Z' });
      expect(await job.finish(two, {}, '... on PredecessorUnfinished { phases { key } }')).toMatchObject({
        code: 'PredecessorUnfinished',
        message: expect.stringContaining('finish'),
      });
      await job.start(one, { crewId: job.labour.id, at: '2031-01-06T11:00:00Z' });
      await job.finish(one, { at: '2031-01-06T12:00:00Z' });
      expect(await job.finish(two, { at: '2031-01-06T11:30:00Z' })).toMatchObject({
        code: 'BeforePredecessor',
      });
      expect(await job.finish(two, { at: '2031-01-06T12:00:00Z' })).toMatchObject({
        __typename: 'PhaseChanged',
      });
    });

    it('with a negative lag let the successor start once the predecessor has started', async () => {
      const [one, two] = [await job.phase('one', { trade: 'labour' }), await job.phase('two')];
      await job.link(one, two, { lagMinutes: -60 });
      expect(await job.start(two)).toMatchObject({ code: 'PredecessorUnfinished' });
      await job.start(one, { crewId: job.labour.id });
      expect(await job.start(two)).toMatchObject({ __typename: 'PhaseChanged' });
    });

    it('ask nothing of a dropped predecessor', async () => {
      const [one, two] = [await job.phase('one', { state: 'dropped' }), await job.phase('two')];
      await job.link(one, two);
      expect(await job.start(two)).toMatchObject({ __typename: 'PhaseChanged' });
    });
  });

  describe('gates', () => {
    it('keep a start shut until its hold points are released', async () => {
      const mesh = await job.phase('mesh');
      const point = await job.holdPoint(mesh, 'clean');
      const open = await job.start(mesh, {}, '... on HoldPointOpen { holdPoints { title state } }');
      expect(open).toMatchObject({ code: 'HoldPointOpen', holdPoints: [{ title: 'clean', state: 'open' }] });
      await job.foreman.change('releaseHoldPoint', {
        holdPointId: point.id,
        values: [{ itemId: 'seen', confirmed: true }],
      });
      expect(await job.start(mesh)).toMatchObject({ __typename: 'PhaseChanged' });
    });

    it('of the finish let the start through and keep the finish shut', async () => {
      const mesh = await job.phase('mesh');
      const point = await job.holdPoint(mesh, 'flat', { gate: 'finish' });
      expect(await job.start(mesh)).toMatchObject({ __typename: 'PhaseChanged' });
      expect(await job.finish(mesh)).toMatchObject({ code: 'HoldPointOpen' });
      await job.office.change('waiveHoldPoint', {
        holdPointId: point.id,
        reason: 'looked at by the engineer',
      });
      expect(await job.finish(mesh)).toMatchObject({ __typename: 'PhaseChanged' });
    });

    it('of an inspection open with a pass alone, from the moment it was given (IRC 2018 R109.1)', async () => {
      const pour = await job.phase('footing-pour');
      const { inspection } = await job.inspection(pour);
      const refused = await job.start(pour, {}, '... on InspectionOutstanding { inspections { key state } }');
      expect(refused).toMatchObject({
        code: 'InspectionOutstanding',
        inspections: [{ key: 'footing', state: 'needed' }],
      });
      await service.database.inspection.update({
        where: { id: inspection.id },
        data: { state: 'passed', resultAt: new Date('2031-01-06T13:00:00Z') },
      });
      await service.database.holdPoint.updateMany({
        where: { inspectionId: inspection.id },
        data: { state: 'released', decidedAt: new Date('2031-01-06T13:00:00Z') },
      });
      expect(await job.start(pour, { at: '2031-01-06T12:30:00Z' })).toMatchObject({
        code: 'InspectionOutstanding',
        message: expect.stringContaining('only at'),
      });
      expect(await job.start(pour)).toMatchObject({ __typename: 'PhaseChanged' });
    });

    it('of a mark-out want it given, and alive on the day', async () => {
      const dig = await job.phase('dig', { trade: 'labour' });
      const { clearance } = await job.clearance(dig);
      const start = (at = NOW) =>
        job.start(dig, { crewId: job.labour.id, at }, '... on ClearanceMissing { clearances { key } }');
      expect(await start()).toMatchObject({ code: 'ClearanceMissing', clearances: [{ key: 'mark-out' }] });
      await job.office.change('recordClearance', {
        clearanceId: clearance.id,
        clearedAt: '2031-01-05T14:00:00Z',
        lapsesAt: '2031-01-06T14:00:00Z',
      });
      expect(await start('2031-01-05T13:00:00Z')).toMatchObject({ code: 'ClearanceMissing' });
      // Valid until its last instant, and not at it.
      expect(await start()).toMatchObject({
        code: 'ClearanceMissing',
        message: expect.stringContaining('lapsed'),
      });
      expect(await start('2031-01-06T13:59:59Z')).toMatchObject({ __typename: 'PhaseChanged' });
    });

    it('of the weather shut under a hold of the site or of the phase, and open when it is lifted', async () => {
      const dig = await job.phase('dig', { trade: 'labour' });
      const hold = await service.database.weatherHold.create({
        data: {
          companyId: job.company.id,
          siteId: job.site.id,
          cause: 'called',
          startsAt: new Date('2031-01-06T12:00:00Z'),
          endsAt: null,
          reason: 'Ice on the boards',
        },
      });
      const start = () =>
        job.start(dig, { crewId: job.labour.id }, '... on WeatherHeld { holds { id reason } }');
      expect(await start()).toMatchObject({
        code: 'WeatherHeld',
        holds: [{ id: hold.id, reason: 'Ice on the boards' }],
      });
      await service.database.weatherHold.update({
        where: { id: hold.id },
        data: { liftedAt: new Date(NOW), liftedById: job.people.foreman.id, liftReason: 'Thawed' },
      });
      expect(await start()).toMatchObject({ __typename: 'PhaseChanged' });
    });

    it('of the weather do not hold a cure, nor another phase', async () => {
      const [dig, other] = [await job.phase('dig'), await job.phase('other', { trade: 'labour' })];
      await service.database.weatherHold.create({
        data: {
          companyId: job.company.id,
          siteId: job.site.id,
          phaseId: dig.id,
          cause: 'called',
          startsAt: new Date('2031-01-06T12:00:00Z'),
          reason: 'Trench full of water',
        },
      });
      expect(await job.start(dig)).toMatchObject({ code: 'WeatherHeld' });
      expect(await job.start(other, { crewId: job.labour.id })).toMatchObject({ __typename: 'PhaseChanged' });
    });

    it('of the weather shut while the newest forecast breaks a limit of the phase now', async () => {
      const seal = await job.phase('seal', { weatherLimitKey: 'sealant' });
      const hour = (temperature: number) => ({
        at: Date.parse(NOW),
        temperature,
        dewPoint: null,
        wind: null,
        gust: null,
        rainChance: 0,
        rainAmount: 0,
      });
      const forecast = (issuedAt: string, temperature: number) =>
        service.database.forecast.create({
          data: {
            companyId: job.company.id,
            siteId: job.site.id,
            source: 'file',
            issuedAt: new Date(issuedAt),
            receivedAt: new Date(NOW),
            hours: [hour(temperature)],
          },
        });
      // UFGS 07 92 00: sealant from 40 °F on.
      await forecast('2031-01-06T10:00:00Z', 38);
      expect(await job.start(seal)).toMatchObject({
        code: 'WeatherHeld',
        message: expect.stringContaining('38 °F'),
      });
      await forecast('2031-01-06T12:00:00Z', 40);
      expect(await job.start(seal)).toMatchObject({ __typename: 'PhaseChanged' });
    });

    it('keep a crew from two phases at once', async () => {
      const [one, two] = [await job.phase('one'), await job.phase('two')];
      await job.start(one, { at: '2031-01-06T10:00:00Z' });
      const busy = await job.start(
        two,
        {},
        '... on CrewBusy { crew { name } busyWith: phase { key } from to }',
      );
      expect(busy).toMatchObject({
        code: 'CrewBusy',
        crew: { name: 'Masons' },
        busyWith: { key: 'one' },
        from: '2031-01-06T10:00:00.000Z',
        to: null,
      });
      await job.finish(one, { at: '2031-01-06T12:00:00Z' });
      expect(await job.start(two, { at: '2031-01-06T11:00:00Z' })).toMatchObject({ code: 'CrewBusy' });
      expect(await job.start(two, { at: '2031-01-06T12:00:00Z' })).toMatchObject({
        __typename: 'PhaseChanged',
      });
    });

    it('keep blankets on one placement until what they are held for finishes', async () => {
      const [pour, cure] = [
        await job.phase('pour', { trade: 'labour' }),
        await job.phase('strip', { trade: 'labour' }),
      ];
      const stone = await job.phase('stone');
      await job.link(pour, cure);
      await job.equipment(10, [
        { from: pour, until: cure, quantity: 7 },
        { from: stone, until: stone, quantity: 4 },
      ]);
      await job.start(pour, { crewId: job.labour.id, at: '2031-01-06T09:00:00Z' });
      const out = await job.start(stone, {}, '... on EquipmentOut { pool { name } heldBy: phase { key } }');
      expect(out).toMatchObject({
        code: 'EquipmentOut',
        pool: { name: 'Blankets' },
        heldBy: { key: 'pour' },
      });
      await job.finish(pour, { at: '2031-01-06T10:00:00Z' });
      expect(await job.start(stone)).toMatchObject({ code: 'EquipmentOut' });
      await job.start(cure, { crewId: job.labour.id, at: '2031-01-06T11:00:00Z' });
      await job.finish(cure, { at: '2031-01-06T12:00:00Z' });
      expect(await job.start(stone)).toMatchObject({ __typename: 'PhaseChanged' });
    });

    it('are shown beforehand as what stands in the way, by the same checks', async () => {
      const [dig, pour] = [await job.phase('dig', { trade: 'labour' }), await job.phase('pour')];
      await job.link(dig, pour);
      const { inspection } = await job.inspection(pour);
      const point = await job.holdPoint(pour, 'forms');
      const ask = async () =>
        (
          await job.foreman.data<{ phase: { obstacles: Record<string, unknown>[] } }>(
            `query($id: ID!) { phase(id: $id) { obstacles {
              code message liftedBy phase { key } inspection { id } holdPoint { id } clearance { id }
            } } }`,
            { id: pour.id },
          )
        ).phase.obstacles;
      const found = await ask();
      expect(found.map(({ code, liftedBy }) => [code, liftedBy])).toEqual([
        ['PredecessorUnfinished', 'foreman'],
        ['InspectionOutstanding', 'office'],
        ['HoldPointOpen', 'foreman'],
      ]);
      expect(found[0]).toMatchObject({ phase: { key: 'dig' } });
      expect(found[1]).toMatchObject({ inspection: { id: inspection.id } });
      expect(found[2]).toMatchObject({ holdPoint: { id: point.id }, clearance: null });
      expect((await job.start(pour)).code).toBe(found[0]?.['code']);
      await service.database.phase.update({
        where: { id: pour.id },
        data: { state: 'done', actualStart: new Date(NOW), actualFinish: new Date(NOW) },
      });
      expect(await ask()).toEqual([]);
    });
  });

  it('asks the database as often about eight phases as about two', async () => {
    const add = async (key: string) => {
      const [before, phase] = [await job.phase(`${key}-before`), await job.phase(key)];
      await job.link(before, phase);
      await job.holdPoint(phase, 'seen');
      await job.inspection(phase, key);
    };
    const ask = () =>
      job.foreman.data(
        `query($id: ID!) { job(id: $id) { phases {
          obstacles { code message phase { key } holdPoint { key } inspection { key } }
          holdPoints { key phase { key } job { name } inspection { key authority { name } } }
        } } }`,
        { id: job.job.id },
      );
    await add('one');
    const few = await statementsOf(ask);
    for (const key of ['two', 'three', 'four']) await add(key);
    const many = await statementsOf(ask);
    expect(few.length).toBeGreaterThan(5);
    expect(many.length).toBe(few.length);
  });

  describe('finishes', () => {
    it('keep the commitment and end the job with its last phase', async () => {
      const mesh = await job.phase('mesh');
      await job.start(mesh, { at: '2031-01-06T10:00:00Z' });
      await service.database.commitment.create({
        data: {
          companyId: job.company.id,
          phaseId: mesh.id,
          crewId: job.mason.id,
          startAt: new Date('2031-01-06T10:00:00Z'),
          finishAt: new Date('2031-01-06T14:00:00Z'),
          madeAt: new Date(NOW),
        },
      });
      expect(await job.finish(mesh, { at: '2031-01-06T13:00:00Z' }, PHASE)).toMatchObject({
        phase: { state: 'done', actualFinish: '2031-01-06T13:00:00.000Z' },
      });
      const kept = await service.database.commitment.findFirstOrThrow({ where: { phaseId: mesh.id } });
      expect(kept.state).toBe('kept');
      const row = await service.database.job.findUniqueOrThrow({ where: { id: job.job.id } });
      expect(row.state).toBe('done');
    });

    it('come after their start, in the past, and only after a start', async () => {
      const mesh = await job.phase('mesh');
      expect(await job.finish(mesh, {}, '... on WrongState { state }')).toMatchObject({
        code: 'WrongState',
        state: 'waiting',
      });
      await job.start(mesh, { at: '2031-01-06T13:00:00Z' });
      expect(await job.finish(mesh, { at: '2031-01-06T12:00:00Z' })).toMatchObject({ code: 'InvalidInput' });
      expect(await job.finish(mesh, { at: '2031-01-06T15:00:00Z' })).toMatchObject({ code: 'InvalidInput' });
      expect(await job.finish(mesh)).toMatchObject({ __typename: 'PhaseChanged' });
    });
  });

  describe('put back', () => {
    it('takes a start away, then the phase may start again', async () => {
      const mesh = await job.phase('mesh');
      await job.start(mesh);
      const back = await job.foreman.change('putBackPhase', { phaseId: mesh.id, reason: 'wrong job' }, PHASE);
      expect(back).toMatchObject({ phase: { state: 'waiting', actualStart: null } });
      expect(await job.phaseNow(mesh)).toMatchObject({ note: 'wrong job', actualCrewId: null });
      expect(await job.start(mesh)).toMatchObject({ __typename: 'PhaseChanged' });
    });

    it('takes a finish away and lets the job run again', async () => {
      const mesh = await job.phase('mesh');
      await job.run(mesh, '2031-01-06T10:00:00Z', '2031-01-06T12:00:00Z');
      const back = await job.foreman.change(
        'putBackPhase',
        { phaseId: mesh.id, reason: 'not flat yet' },
        PHASE,
      );
      expect(back).toMatchObject({ phase: { state: 'started', actualFinish: null } });
      const row = await service.database.job.findUniqueOrThrow({ where: { id: job.job.id } });
      expect(row.state).toBe('running');
    });

    it('is refused while something was built on it, or the crew is elsewhere', async () => {
      const [one, two] = [await job.phase('one'), await job.phase('two')];
      await job.link(one, two);
      await job.run(one, '2031-01-06T10:00:00Z', '2031-01-06T11:00:00Z');
      await job.start(two, { at: '2031-01-06T11:00:00Z' });
      const putBack = (phaseId: string) =>
        job.foreman.change('putBackPhase', { phaseId, reason: 'not right' });
      expect(await putBack(one.id)).toMatchObject({
        code: 'WrongState',
        message: expect.stringContaining('two'),
      });
      await service.database.link.deleteMany({ where: { fromId: one.id } });
      expect(await putBack(one.id)).toMatchObject({ code: 'CrewBusy' });
      await putBack(two.id);
      expect(await putBack(one.id)).toMatchObject({ __typename: 'PhaseChanged' });
    });

    it('is refused for what has not started, without a reason, and for what holds a placement', async () => {
      const pour = await job.phase('pour');
      const putBack = (reason: string) => job.foreman.change('putBackPhase', { phaseId: pour.id, reason });
      expect(await putBack('not right')).toMatchObject({ code: 'WrongState' });
      await job.start(pour);
      expect(await putBack(' ')).toMatchObject({ code: 'InvalidInput' });
      await job.foreman.change('recordPlacement', {
        phaseId: pour.id,
        material: 'concrete',
        sectionInches: 10,
        placedTempF: 60,
        requiredPsi: 1000,
      });
      expect(await putBack('not right')).toMatchObject({
        code: 'WrongState',
        message: expect.stringContaining('placement'),
      });
    });
  });

  describe('progress', () => {
    it('is told of a started phase only', async () => {
      const mesh = await job.phase('mesh');
      const tell = (remainingMinutes: number) =>
        job.foreman.change('recordProgress', { phaseId: mesh.id, remainingMinutes });
      expect(await tell(60)).toMatchObject({ code: 'WrongState' });
      await job.start(mesh);
      expect(await tell(-1)).toMatchObject({ code: 'InvalidInput' });
      expect(await tell(60)).toMatchObject({ __typename: 'PhaseChanged' });
      expect(await job.phaseNow(mesh)).toMatchObject({ remainingMinutes: 60 });
      await job.finish(mesh);
      expect(await job.phaseNow(mesh)).toMatchObject({ remainingMinutes: null });
    });
  });

  describe('waits', () => {
    it('start by themselves with the finish before them, and end with their time', async () => {
      const [pour, cure, next] = [
        await job.phase('pour'),
        await job.wait('cure', 24),
        await job.phase('next'),
      ];
      await job.link(pour, cure);
      await job.link(cure, next);
      await job.run(pour, '2031-01-06T10:00:00Z', '2031-01-06T12:00:00Z');
      expect(await job.phaseNow(cure)).toMatchObject({
        state: 'started',
        actualStart: new Date('2031-01-06T12:00:00Z'),
      });
      expect(await job.start(next)).toMatchObject({ code: 'PredecessorUnfinished' });
      expect(await job.finish(cure)).toMatchObject({
        code: 'WrongState',
        message: expect.stringContaining('Tue 7 Jan 07:00'),
      });
      service.setClock('2031-01-07T13:00:00Z');
      expect(await job.start(next)).toMatchObject({ __typename: 'PhaseChanged' });
      expect(await job.phaseNow(cure)).toMatchObject({
        state: 'done',
        actualFinish: new Date('2031-01-07T12:00:00Z'),
      });
    });

    it('with a strength end with its hold point, not with time', async () => {
      const [pour, cure] = [await job.phase('pour'), await job.wait('cure', 24)];
      await job.link(pour, cure);
      const point = await job.holdPoint(cure, 'strength', {
        kind: 'cure',
        gate: 'finish',
        items: [],
        placementPhaseId: pour.id,
      });
      await job.run(pour, '2031-01-06T10:00:00Z', '2031-01-06T12:00:00Z');
      service.setClock('2031-01-09T12:00:00Z');
      expect(await job.finish(cure)).toMatchObject({ code: 'HoldPointOpen' });
      await job.foreman.change('waiveHoldPoint', {
        holdPointId: point.id,
        reason: 'cylinders broken at 2,100 psi by the laboratory',
      });
      expect(await job.phaseNow(cure)).toMatchObject({
        state: 'done',
        actualFinish: new Date('2031-01-09T12:00:00Z'),
      });
    });

    it('with a check need both their time and the check', async () => {
      const [bed, cure] = [await job.phase('bed'), await job.wait('bed-cure', 72)];
      await job.link(bed, cure);
      const point = await job.holdPoint(cure, 'kept-warm', { gate: 'finish', items: [confirmItem('warm')] });
      await job.run(bed, '2031-01-06T10:00:00Z', '2031-01-06T12:00:00Z');
      await job.foreman.change('releaseHoldPoint', {
        holdPointId: point.id,
        values: [{ itemId: 'warm', confirmed: true }],
      });
      expect(await job.phaseNow(cure)).toMatchObject({ state: 'started' });
      service.setClock('2031-01-09T12:00:00Z');
      expect(await job.finish(cure)).toMatchObject({ __typename: 'PhaseChanged' });
    });

    it('run one into the next', async () => {
      const [pour, one, two] = [await job.phase('pour'), await job.wait('one', 1), await job.wait('two', 1)];
      await job.link(pour, one);
      await job.link(one, two);
      await job.run(pour, '2031-01-06T10:00:00Z', '2031-01-06T11:00:00Z');
      expect(await job.phaseNow(one)).toMatchObject({
        state: 'done',
        actualFinish: new Date('2031-01-06T12:00:00Z'),
      });
      expect(await job.phaseNow(two)).toMatchObject({
        state: 'done',
        actualFinish: new Date('2031-01-06T13:00:00Z'),
      });
    });

    it('that their hold points ended go on when they are put back, and those that time ended cannot', async () => {
      const [pour, cure, plain] = [
        await job.phase('pour'),
        await job.wait('cure', 24),
        await job.wait('plain', 1),
      ];
      await job.link(pour, cure);
      await job.link(pour, plain);
      const point = await job.holdPoint(cure, 'strength', { kind: 'cure', gate: 'finish', items: [] });
      await job.run(pour, '2031-01-06T10:00:00Z', '2031-01-06T12:00:00Z');
      await job.office.change('waiveHoldPoint', { holdPointId: point.id, reason: 'cylinders were broken' });
      expect(await job.phaseNow(cure)).toMatchObject({ state: 'done' });
      const putBack = (phaseId: string) =>
        job.foreman.change('putBackPhase', { phaseId, reason: 'wrong cylinders' });
      expect(await putBack(plain.id)).toMatchObject({ code: 'WrongState' });
      expect(await putBack(cure.id)).toMatchObject({ __typename: 'PhaseChanged' });
      expect(await job.phaseNow(cure)).toMatchObject({ state: 'started', actualFinish: null });
      expect(await job.holdPointNow(point)).toMatchObject({ state: 'open' });
    });

    it('go back with what was put back before them', async () => {
      const [pour, cure] = [await job.phase('pour'), await job.wait('cure', 24)];
      await job.link(pour, cure);
      await job.run(pour, '2031-01-06T10:00:00Z', '2031-01-06T12:00:00Z');
      const putBack = (phaseId: string) =>
        job.foreman.change('putBackPhase', { phaseId, reason: 'pour goes on' });
      expect(await putBack(cure.id)).toMatchObject({
        code: 'WrongState',
        message: expect.stringContaining('itself'),
      });
      expect(await putBack(pour.id)).toMatchObject({ __typename: 'PhaseChanged' });
      expect(await job.phaseNow(cure)).toMatchObject({ state: 'waiting', actualStart: null });
    });
  });

  describe('answers', () => {
    it('once and alike to one key sent five times at once', async () => {
      const mesh = await job.phase('mesh');
      const clientKey = randomUUID();
      const answers = await Promise.all(
        Array.from({ length: 5 }, () => job.start(mesh, { clientKey }, PHASE)),
      );
      expect(new Set(answers.map((answer) => JSON.stringify(answer))).size).toBe(1);
      expect(answers[0]).toMatchObject({ __typename: 'PhaseChanged' });
      expect(await job.phaseNow(mesh)).toMatchObject({ state: 'started', revision: 2 });
      const lines = await service.database.journalEntry.count({ where: { subjectId: mesh.id } });
      expect(lines).toBe(1);
    });

    it('with the present revision to one that is stale', async () => {
      const mesh = await job.phase('mesh');
      const stale = await job.start(mesh, { revision: 7 }, '... on StaleRevision { currentRevision }');
      expect(stale).toMatchObject({ code: 'StaleRevision', currentRevision: 1 });
      expect(await job.start(mesh, { revision: 1 })).toMatchObject({ __typename: 'PhaseChanged' });
    });

    it('alike to a missing id, a malformed one and one of another company', async () => {
      const other = await RunningJob.make(service);
      const foreign = await other.phase('mesh');
      for (const step of ['startPhase', 'finishPhase']) {
        for (const phaseId of [foreign.id, randomUUID(), 'nothing']) {
          const outcome = await job.foreman.change(step, { phaseId });
          expect(outcome).toMatchObject({ code: 'NotFound', message: expect.stringContaining('phase') });
        }
      }
    });

    it('to the office and the foreman only', async () => {
      const mesh = await job.phase('mesh');
      const answer = await job.electrician.ask(
        'mutation($input: StartPhaseInput!) { startPhase(input: $input) { __typename } }',
        { input: { clientKey: randomUUID(), phaseId: mesh.id } },
      );
      expect(answer.errors?.[0]?.extensions?.code).toBe('not-allowed');
    });
  });
});
