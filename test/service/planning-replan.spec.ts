import { afterAll, beforeAll, beforeEach, describe, expect, it } from '@jest/globals';
import { DEFAULT_MIXTURES } from '../../shared/cure/mixture.js';
import type { Phase, Prisma } from '../../src/generated/prisma/client.js';
import { computePlan } from '../../src/planning/replan/compute-plan.js';
import { planRows } from '../../src/planning/replan/plan-rows.js';
import { readRows } from '../../src/planning/gather/read-rows.js';
import type { PlanningRows } from '../../src/planning/gather/rows.js';
import { ChangeRunner } from '../../src/platform/change/change-runner.js';
import { startService, type TestService } from '../support/service.js';
import { type ChainedJob, get, makeWorld, type PlanningWorld } from './planning-world.js';

/* The clock stands at Monday 6 January 2031, 09:00 in New York; crews work 08:00 to 16:00 there (13:00Z to 21:00Z). */

describe('planning anew', () => {
  let service: TestService;
  let world: PlanningWorld;
  let house: ChainedJob;
  let block: Phase;
  let stone: Phase;

  beforeAll(async () => {
    service = await startService();
  });
  beforeEach(async () => {
    service.setClock('2031-01-06T14:00:00Z');
    world = await makeWorld(service);
    house = await world.chain('Larch', { block: {}, stone: {} });
    block = get(house.phases, 'block');
    stone = get(house.phases, 'stone');
    await world.replan();
  });
  afterAll(() => service.stop());

  it('gives every phase dates in the open hours of its crew, one after the other', async () => {
    expect(await world.dates(block)).toBe('06 14:00 – 06 18:00');
    expect(await world.dates(stone)).toBe('06 18:00 – 07 14:00');
    const row = await world.planned(stone);
    expect(row).toMatchObject({ crewId: world.masons, critical: true, totalFloatMinutes: 0 });
    const at = (iso: string) => Date.parse(iso);
    expect(row?.segments).toEqual([
      [at('2031-01-06T18:00:00Z'), at('2031-01-06T21:00:00Z')],
      [at('2031-01-07T13:00:00Z'), at('2031-01-07T14:00:00Z')],
    ]);
  });

  it('writes nothing when the plan is equal to the one in force', async () => {
    const number = await world.planNumber();
    await world.replan();
    await world.replan();
    expect(await world.planNumber()).toBe(number);
    expect(await world.db.plan.count({ where: { companyId: world.companyId } })).toBe(number);
  });

  it('writes only the rows that differ, under the number of the plan', async () => {
    const shed = await world.chain('Shed', { dig: { trade: 'labour' } });
    await world.replan();
    expect((await world.planned(block))?.planNumber).toBe(1);
    expect((await world.planned(get(shed.phases, 'dig')))?.planNumber).toBe(2);
    const plans = await world.db.plan.findMany({
      where: { companyId: world.companyId },
      orderBy: { number: 'asc' },
    });
    expect(plans.map(({ number, cause }) => [number, cause])).toEqual([
      [1, 'looked again'],
      [2, 'looked again'],
    ]);
    expect(
      plans.every(
        ({ inputHash, outputHash }) =>
          /^[0-9a-f]{64}$/.test(inputHash + outputHash) || inputHash !== outputHash,
      ),
    ).toBe(true);
  });

  it('tells the journal which jobs moved', async () => {
    const lines = await world.db.journalEntry.findMany({
      where: { companyId: world.companyId, action: 'plan moved' },
    });
    expect(lines.map(({ jobId, detail }) => [jobId, detail])).toEqual([
      [house.job.id, { planNumber: 1, phases: 2 }],
    ]);
  });

  it('is the same for the same rows in another order', async () => {
    await world.chain('Shed', { dig: { trade: 'labour' }, wall: {} }, { priority: 2 });
    const runner = service.app.get(ChangeRunner);
    const rows = await runner.runInternal(world.ctx, (change) => readRows(change));
    const now = Date.parse('2031-01-06T14:00:00Z');
    const turned = Object.fromEntries(
      Object.entries(rows).map(([key, value]) => [key, Array.isArray(value) ? value.toReversed() : value]),
    ) as unknown as PlanningRows;
    const one = planRows(computePlan(rows, now), rows);
    const two = planRows(computePlan(turned, now), turned);
    expect(JSON.stringify(two)).toBe(JSON.stringify(one));
  });

  it('goes around a day on which the crew is off', async () => {
    const data = { companyId: world.companyId, crewId: world.masons, reason: 'course' };
    await world.db.crewException.create({ data: { ...data, day: new Date('2031-01-06'), hours: [] } });
    await world.replan();
    expect(await world.dates(block)).toBe('07 13:00 – 07 17:00');
  });

  it('follows what happens on site: a start, work left, an early finish', async () => {
    service.setClock('2031-01-06T16:00:00Z');
    await world.db.phase.update({
      where: { id: block.id },
      data: { state: 'started', actualStart: new Date('2031-01-06T14:07:00Z'), actualCrewId: world.masons },
    });
    await world.replan();
    expect(await world.dates(block)).toBe('06 14:07 – 06 18:15');
    await world.db.phase.update({ where: { id: block.id }, data: { remainingMinutes: 30 } });
    await world.replan();
    expect(await world.dates(block)).toBe('06 14:07 – 06 16:30');
    await world.db.phase.update({
      where: { id: block.id },
      data: { state: 'done', actualFinish: new Date('2031-01-06T15:50:00Z') },
    });
    await world.replan();
    expect(await world.dates(block)).toBe('06 14:07 – 06 15:50');
    expect(await world.dates(stone)).toBe('06 16:00 – 06 20:00');
  });

  it('writes down the last phase of a job that is done with it', async () => {
    const times = { actualStart: new Date('2031-01-06T14:00:00Z'), actualCrewId: world.masons };
    service.setClock('2031-01-06T20:00:00Z');
    const done = { state: 'done', ...times, actualFinish: new Date('2031-01-06T15:00:00Z') } as const;
    await world.db.phase.updateMany({ where: { jobId: house.job.id }, data: done });
    await world.db.job.update({ where: { id: house.job.id }, data: { state: 'done' } });
    await world.replan();
    expect(await world.dates(stone)).toBe('06 14:00 – 06 15:00');
    expect((await world.planned(stone))?.critical).toBe(false);
  });

  it('counts all four kinds of link, lags by the clock and in open hours', async () => {
    const { phases } = await world.chain('Links', { a: { trade: 'labour' } });
    const a = get(phases, 'a');
    const b = get(
      (await world.chain('Other', { b: { trade: null, durationKind: 'elapsed', hours: 1 } })).phases,
      'b',
    );
    const tied = async (
      kind: 'finishStart' | 'startStart' | 'finishFinish' | 'startFinish',
      lagMinutes: number,
    ) => {
      await world.db.link.deleteMany({ where: { toId: b.id } });
      await world.link(a, b, { kind, lagMinutes });
      await world.replan();
      return world.dates(b);
    };
    expect(await tied('finishStart', 24 * 60)).toBe('07 18:00 – 07 19:00');
    expect(await tied('startStart', 60)).toBe('06 15:00 – 06 16:00');
    expect(await tied('finishFinish', 30)).toBe('06 17:30 – 06 18:30');
    expect(await tied('startFinish', 120)).toBe('06 15:00 – 06 16:00');
    await world.db.link.updateMany({
      where: { fromId: block.id, toId: stone.id },
      data: { lagMinutes: 240, lagIn: 'working' },
    });
    await world.replan();
    expect(await world.dates(stone)).toBe('07 14:00 – 07 18:00');
  });

  it('shares a crew between jobs by priority', async () => {
    const urgent = await world.chain('Urgent', { wall: { hours: 8 } }, { priority: 1 });
    await world.db.plannedPhase.deleteMany({ where: { companyId: world.companyId } });
    await world.replan();
    expect(await world.dates(get(urgent.phases, 'wall'))).toBe('06 14:00 – 07 14:00');
    expect(await world.dates(block)).toBe('07 14:00 – 07 18:00');
  });

  it('keeps equipment out until the phase that releases it is finished', async () => {
    const { companyId } = world;
    const pool = await world.db.equipmentPool.create({
      data: { companyId, kind: 'blanket', name: 'Blankets', unit: 'piece', quantity: 4 },
    });
    const cure = { trade: null, durationKind: 'elapsed', hours: 48 } as const;
    const one = await world.chain('One', { pour: { trade: 'labour', hours: 1 }, cure }, { priority: 1 });
    const two = await world.chain('Two', { pour: { trade: 'labour', hours: 1 }, cure }, { priority: 2 });
    for (const { phases } of [one, two])
      await world.db.equipmentHold.create({
        data: {
          companyId,
          poolId: pool.id,
          quantity: 3,
          fromPhaseId: get(phases, 'pour').id,
          untilPhaseId: get(phases, 'cure').id,
        },
      });
    await world.replan();
    expect(await world.dates(get(one.phases, 'cure'))).toBe('06 15:00 – 08 15:00');
    expect(await world.dates(get(two.phases, 'pour'))).toBe('08 15:00 – 08 16:00');
    const { explain } = await world.office.data<{ explain: { kind: string; text: string }[] }>(
      'query($id: ID!) { explain(phaseId: $id) { kind text } }',
      { id: get(two.phases, 'pour').id },
    );
    expect(explain.map(({ kind }) => kind)).toEqual(['equipment', 'link', 'now']);
    expect(explain[0]?.text).toBe(
      `pour waits for Blankets, out with pour (job ${one.job.number}, One), back with the end of cure (job ${one.job.number}, One) until Wed 8 Jan 10:00. That goes first: its job has the higher priority.`,
    );
  });

  it('waits for a clearance: as if asked for now, then as expected, then as given, and tells when it lapses too soon', async () => {
    const { companyId } = world;
    const clearance = await world.db.clearance.create({
      data: {
        companyId,
        jobId: house.job.id,
        key: 'markout',
        kind: 'markOut',
        title: 'Mark-out',
        leadMinutes: 2880,
      },
    });
    await world.db.holdPoint.create({
      data: {
        companyId,
        jobId: house.job.id,
        phaseId: block.id,
        key: 'markout',
        kind: 'clearance',
        gate: 'start',
        title: 'Mark-out valid',
        items: [],
        waivable: false,
        clearanceId: clearance.id,
      },
    });
    const become = async (data: object) => {
      await world.db.clearance.update({ where: { id: clearance.id }, data });
      await world.replan();
      return world.dates(block);
    };
    expect(await become({})).toBe('08 14:00 – 08 18:00');
    expect(await become({ state: 'requested', expectedAt: new Date('2031-01-09T13:00:00Z') })).toBe(
      '09 13:00 – 09 17:00',
    );
    const given = { state: 'cleared', clearedAt: new Date('2031-01-06T13:30:00Z') };
    expect(await become({ ...given, lapsesAt: new Date('2031-02-01T00:00:00Z') })).toBe(
      '06 14:00 – 06 18:00',
    );
    await become({ lapsesAt: new Date('2031-01-06T13:45:00Z') });
    const { planConflicts } = await world.office.data<{ planConflicts: { kind: string; text: string }[] }>(
      '{ planConflicts { kind text } }',
    );
    expect(planConflicts).toEqual([
      {
        kind: 'clearanceLapsed',
        text: 'Mark-out lapses Mon 6 Jan 08:45, before block starts Mon 6 Jan 09:00. Renew it in time.',
      },
    ]);
  });

  it('says of a clearance that should have come that nobody knows when it comes', async () => {
    const { companyId } = world;
    const clearance = await world.db.clearance.create({
      data: {
        companyId,
        jobId: house.job.id,
        key: 'stone',
        kind: 'material',
        title: 'Stone',
        leadMinutes: 60,
        state: 'requested',
        expectedAt: new Date('2031-01-05T13:00:00Z'),
      },
    });
    const point = { companyId, jobId: house.job.id, phaseId: block.id, key: 'stone', title: 'Stone here' };
    await world.db.holdPoint.create({
      data: {
        ...point,
        kind: 'clearance',
        gate: 'start',
        items: [],
        waivable: false,
        clearanceId: clearance.id,
      },
    });
    await world.replan();
    const { planConflicts } = await world.office.data<{ planConflicts: { kind: string; text: string }[] }>(
      '{ planConflicts { kind text } }',
    );
    expect(planConflicts.map(({ kind }) => kind)).toEqual(['gateUndated']);
    expect(planConflicts[0]?.text).toMatch(/Nobody knows when Stone comes, so block is planned as if/);
  });

  it('places the visit of an inspection in visiting hours, after notice, and the phase after it', async () => {
    const { companyId } = world;
    const authority = await world.db.authority.create({
      data: {
        companyId,
        name: 'Town',
        noticeHours: 24,
        visitMinutes: 30,
        zone: 'America/New_York',
        week: { tue: [['09:00', '11:00']], thu: [['09:00', '11:00']] },
        closedDays: { '2031-01-09': [] },
      },
    });
    const inspection = await world.db.inspection.create({
      data: {
        companyId,
        jobId: house.job.id,
        phaseId: stone.id,
        authorityId: authority.id,
        key: 'wall',
        title: 'Wall seen',
      },
    });
    await world.replan();
    // Notice is over on Tuesday 09:00, when the visiting hours begin; Thursday is a closed day.
    const visit = () => world.db.plannedVisit.findUniqueOrThrow({ where: { inspectionId: inspection.id } });
    expect(await visit()).toMatchObject({
      startAt: new Date('2031-01-07T14:00:00Z'),
      finishAt: new Date('2031-01-07T14:30:00Z'),
      requestBy: new Date('2031-01-06T14:00:00Z'),
    });
    expect(await world.dates(stone)).toBe('07 14:30 – 07 18:30');
    service.setClock('2031-01-06T17:00:00Z');
    await world.replan();
    expect((await visit()).startAt).toEqual(new Date('2031-01-14T14:00:00Z'));
    const booked = { state: 'booked', visitFrom: new Date('2031-01-08T15:00:00Z') } as const;
    await world.db.inspection.update({
      where: { id: inspection.id },
      data: {
        ...booked,
        visitTo: new Date('2031-01-08T16:00:00Z'),
        requestedAt: new Date('2031-01-06T16:30:00Z'),
      },
    });
    await world.replan();
    expect(await world.dates(stone)).toBe('08 16:00 – 08 20:00');
    expect((await visit()).requestBy).toEqual(new Date('2031-01-06T16:30:00Z'));
    await world.db.inspection.update({
      where: { id: inspection.id },
      data: { state: 'passed', resultAt: new Date('2031-01-06T16:45:00Z') },
    });
    await world.replan();
    expect(await world.db.plannedVisit.count({ where: { companyId } })).toBe(0);
    expect(await world.dates(stone)).toBe('07 13:00 – 07 17:00');
  });

  it('keeps a cure running until its placement is predicted to be strong enough, and ends it with the decision', async () => {
    const { companyId } = world;
    const cure = { trade: null, durationKind: 'elapsed', hours: 48 } as const;
    const { job, phases } = await world.chain('Footing', {
      pour: { trade: 'labour', hours: 1 },
      cure,
      wall: {},
    });
    const pour = get(phases, 'pour');
    const wait = get(phases, 'cure');
    const at = { actualStart: new Date('2031-01-06T13:00:00Z') };
    await world.db.phase.update({
      where: { id: pour.id },
      data: {
        state: 'done',
        ...at,
        actualFinish: new Date('2031-01-06T14:00:00Z'),
        actualCrewId: world.diggers,
      },
    });
    await world.db.phase.update({
      where: { id: wait.id },
      data: { state: 'started', actualStart: new Date('2031-01-06T14:00:00Z') },
    });
    const placement = await world.db.placement.create({
      data: {
        companyId,
        jobId: job.id,
        phaseId: pour.id,
        placedAt: new Date('2031-01-06T14:00:00Z'),
        material: 'concrete',
        sectionInches: 10,
        placedTempF: 60,
        mixture: DEFAULT_MIXTURES.concrete as unknown as Prisma.InputJsonObject,
        protection: [],
        requiredPsi: 1500,
      },
    });
    const point = await world.db.holdPoint.create({
      data: {
        companyId,
        jobId: job.id,
        phaseId: wait.id,
        placementPhaseId: pour.id,
        key: 'strength',
        kind: 'cure',
        gate: 'finish',
        title: 'Strength to start block',
        items: [],
        waivable: true,
      },
    });
    await world.replan();
    // Bare in air of 40 °F, which is assumed without a forecast, the default concrete takes a little over 80 h to 1,500 psi.
    expect(await world.dates(wait)).toBe('06 14:00 – 09 22:45');
    expect(await world.dates(get(phases, 'wall'))).toBe('10 13:00 – 10 17:00');
    const { explain } = await world.office.data<{ explain: { text: string }[] }>(
      'query($id: ID!) { explain(phaseId: $id) { text } }',
      { id: get(phases, 'wall').id },
    );
    expect(explain.map(({ text }) => text)).toEqual([
      'wall waits for cure (finish-start) until Thu 9 Jan 17:45.',
      'cure has started, Mon 6 Jan 09:00.',
      'cure waits for a strength of 1500 psi, predicted for Thu 9 Jan 17:38; only a measurement or a named person releases it.',
    ]);
    await world.db.placement.update({ where: { id: placement.id }, data: { predictedReleaseAt: null } });
    await world.replan();
    expect(await world.dates(wait)).toBe('06 14:00 – 08 14:00');
    await world.db.holdPoint.update({
      where: { id: point.id },
      data: { state: 'released', decidedAt: new Date('2031-01-07T14:00:00Z') },
    });
    service.setClock('2031-01-07T14:00:00Z');
    await world.replan();
    expect(await world.dates(wait)).toBe('06 14:00 – 07 14:00');
  });

  it('takes dropped phases and given-up jobs out of the plan', async () => {
    await world.db.phase.update({ where: { id: stone.id }, data: { state: 'dropped' } });
    await world.replan();
    expect(await world.dates(stone)).toBe('no place');
    await world.db.job.update({ where: { id: house.job.id }, data: { state: 'cancelled' } });
    await world.replan();
    expect(await world.dates(block)).toBe('no place');
    expect(await world.db.plannedPhase.count({ where: { companyId: world.companyId } })).toBe(0);
  });

  it('answers what cannot be had as conflicts, and drops them when they are mended', async () => {
    const roof = await world.chain('Roof', { slate: { trade: 'slater' }, ridge: {} });
    await world.db.job.update({
      where: { id: house.job.id },
      data: { dueAt: new Date('2031-01-06T20:00:00Z') },
    });
    await world.replan();
    const ask = '{ planConflicts { kind text phase { name } job { name } } }';
    const { planConflicts } = await world.office.data<{ planConflicts: object[] }>(ask);
    expect(planConflicts).toEqual([
      {
        kind: 'crewMissing',
        text: `No crew can do slate of job ${roof.job.number}, Roof (slater). Add a crew of that trade.`,
        phase: { name: 'slate' },
        job: { name: 'Roof' },
      },
      {
        kind: 'dueMissed',
        text: `Job ${house.job.number}, Larch is due Mon 6 Jan 15:00 and finishes Tue 7 Jan 09:00. Raise its priority, add a crew or agree another day.`,
        phase: null,
        job: { name: 'Larch' },
      },
    ]);
    const why = await world.office.data<{ explain: { text: string }[] }>(
      'query($id: ID!) { explain(phaseId: $id) { text } }',
      { id: get(roof.phases, 'ridge').id },
    );
    expect(why.explain.map(({ text }) => text)).toEqual([
      'ridge has no place in the plan, because slate has none.',
      'slate has no place in the plan: no crew can do it; add a crew of that trade.',
    ]);
    await world.crew('Slaters', ['slater']);
    await world.db.job.update({ where: { id: house.job.id }, data: { dueAt: null } });
    await world.replan();
    expect(await world.office.data(ask)).toEqual({ planConflicts: [] });
    expect(await world.dates(get(roof.phases, 'slate'))).toBe('06 14:00 – 06 18:00');
  });

  it('chains the reasons back to today, over jobs, in the time of the site', async () => {
    const later = await world.chain('Later', { wall: {}, cap: { trade: 'labour' } }, { priority: 9 });
    await world.replan();
    const { phase } = await world.office.data<{ phase: Record<string, unknown> }>(
      `query($id: ID!) { phase(id: $id) { planned { reason { kind text at phase { name } }
         reasons { kind text phase { name } crew { name } } } } }`,
      { id: get(later.phases, 'cap').id },
    );
    const number = house.job.number;
    expect(phase['planned']).toEqual({
      reason: {
        kind: 'link',
        text: 'cap waits for wall (finish-start) until Tue 7 Jan 13:00.',
        at: '2031-01-07T18:00:00.000Z',
        phase: { name: 'wall' },
      },
      reasons: [
        {
          kind: 'link',
          text: 'cap waits for wall (finish-start) until Tue 7 Jan 13:00.',
          phase: { name: 'wall' },
          crew: null,
        },
        {
          kind: 'crew',
          text: `wall waits for Masons, busy with stone (job ${number}, Larch) until Tue 7 Jan 09:00. That goes first: it stood before this one in the plan before.`,
          phase: { name: 'stone' },
          crew: { name: 'Masons' },
        },
        {
          kind: 'link',
          text: 'stone waits for block (finish-start) until Mon 6 Jan 13:00.',
          phase: { name: 'block' },
          crew: null,
        },
        {
          kind: 'now',
          text: 'Nothing holds block but the present: it can start at once.',
          phase: null,
          crew: null,
        },
      ],
    });
  });

  it('explains nothing of a phase that is missing or of another company', async () => {
    const other = await makeWorld(service);
    const ask = 'query($id: ID!) { explain(phaseId: $id) { text } }';
    for (const id of [block.id, '00000000-0000-4000-8000-000000000000', 'no id'])
      expect(await other.office.data(ask, { id })).toEqual({ explain: [] });
  });

  it('says when a job finishes as planned and as promised', async () => {
    await world.office.change('commitPhase', { phaseId: block.id });
    const { job } = await world.office.data<{ job: object }>(
      'query($id: ID!) { job(id: $id) { plannedFinish committedFinish } }',
      { id: house.job.id },
    );
    expect(job).toEqual({
      plannedFinish: '2031-01-07T14:00:00.000Z',
      committedFinish: '2031-01-06T18:00:00.000Z',
    });
  });
});
