import { randomUUID } from 'node:crypto';
import { afterAll, beforeAll, beforeEach, describe, expect, it } from '@jest/globals';
import type { Phase } from '../../src/generated/prisma/client.js';
import { isExclusionViolation, isUniqueViolation } from '../../src/platform/database/exclusion.js';
import { startService, type TestService } from '../support/service.js';
import { type ChainedJob, get, makeWorld, type PlanningWorld, short } from './planning-world.js';

/* Monday 6 January 2031, 09:00 in New York (14:00Z); crews work 13:00Z to 21:00Z. */

const COMMITTED =
  '... on CommitmentChanged { commitments { id startAt finishAt state crew { name } madeBy { role } } }';

interface Committed {
  readonly code?: string;
  readonly message?: string;
  readonly commitments?: readonly {
    startAt: string;
    finishAt: string;
    state: string;
    crew: { name: string } | null;
  }[];
}

describe('promising dates', () => {
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

  const commit = (input: Record<string, unknown>) =>
    world.office.change<Committed>('commitPhase', input, COMMITTED);
  const held = () =>
    world.db.commitment.findMany({
      where: { companyId: world.companyId, state: 'held' },
      orderBy: { startAt: 'asc' },
    });
  const stateOf = async (phase: Phase) =>
    (await world.db.commitment.findMany({ where: { phaseId: phase.id }, orderBy: { madeAt: 'asc' } })).map(
      ({ state }) => state,
    );

  it('promises a phase as planned, by name of who promised', async () => {
    expect(await commit({ phaseId: block.id })).toMatchObject({
      __typename: 'CommitmentChanged',
      commitments: [
        {
          startAt: '2031-01-06T14:00:00.000Z',
          finishAt: '2031-01-06T18:00:00.000Z',
          state: 'held',
          crew: { name: 'Masons' },
          madeBy: { role: 'office' },
        },
      ],
    });
    const { phase } = await world.office.data<{ phase: object }>(
      'query($id: ID!) { phase(id: $id) { commitment { state crew { name } } } }',
      { id: block.id },
    );
    expect(phase).toEqual({ commitment: { state: 'held', crew: { name: 'Masons' } } });
  });

  it('promises the rest of a job, and leaves what was promised before', async () => {
    await commit({ phaseId: block.id });
    const [first] = await held();
    const done = await world.office.change<Committed>('commitJob', { jobId: house.job.id }, COMMITTED);
    expect(done.commitments?.map(({ startAt }) => startAt)).toEqual(['2031-01-06T18:00:00.000Z']);
    expect((await held()).map(({ id }) => id)).toContain(first?.id);
    const again = await world.office.change<Committed>('commitJob', { jobId: house.job.id }, COMMITTED);
    expect(again.commitments).toEqual([]);
  });

  it('promises nothing of a job with a phase that has no place', async () => {
    const roof = await world.chain('Roof', { slate: { trade: 'slater' } });
    await world.replan();
    const refused = await world.office.change('commitJob', { jobId: roof.job.id });
    expect(refused).toMatchObject({
      code: 'WrongState',
      message: expect.stringMatching(/slate has no place/),
    });
    expect(await commit({ phaseId: get(roof.phases, 'slate').id })).toMatchObject({ code: 'WrongState' });
    expect(await held()).toEqual([]);
  });

  it('respects a promise inside the freeze window, whatever else comes', async () => {
    await commit({ phaseId: block.id, startAt: '2031-01-07T13:00:00Z', finishAt: '2031-01-07T17:00:00Z' });
    expect(await world.dates(block)).toBe('07 13:00 – 07 17:00');
    const urgent = await world.chain('Urgent', { wall: { hours: 8 } }, { priority: 1 });
    await world.replan();
    expect(await world.dates(block)).toBe('07 13:00 – 07 17:00');
    // A crew does one phase from start to finish, so eight hours find no room before the promise; the stone was planned earlier.
    expect(await world.dates(get(urgent.phases, 'wall'))).toBe('08 13:00 – 08 21:00');
    expect(await world.db.proposal.count({ where: { companyId: world.companyId } })).toBe(0);
  });

  it('respects a promise beyond the freeze window: nothing is pulled forward', async () => {
    await commit({ phaseId: block.id, startAt: '2031-01-20T13:00:00Z', finishAt: '2031-01-20T17:00:00Z' });
    expect(await world.dates(block)).toBe('20 13:00 – 20 17:00');
    expect(await world.dates(stone)).toBe('20 17:00 – 20 21:00');
    expect(await world.db.proposal.count({ where: { companyId: world.companyId } })).toBe(0);
    const { explain } = await world.office.data<{ explain: { text: string }[] }>(
      'query($id: ID!) { explain(phaseId: $id) { text } }',
      { id: block.id },
    );
    expect(explain[0]?.text).toBe('block is promised for Mon 20 Jan 08:00, so it does not start earlier.');
  });

  it('keeps the promised crew though another would be through sooner, and changes it only when that crew cannot come', async () => {
    const week = Object.fromEntries(
      ['mon', 'tue', 'wed', 'thu', 'fri'].map((day) => [day, [['08:00', '20:00']]]),
    );
    const wall = get((await world.chain('Wall', { wall: { hours: 10 } })).phases, 'wall');
    const times = { startAt: '2031-01-20T13:00:00Z', finishAt: '2031-01-21T15:00:00Z' };
    await commit({ phaseId: wall.id, crewId: world.masons, ...times });
    const late = await world.crew('Long days', ['mason'], { week });
    await world.replan();
    expect(await world.planned(wall)).toMatchObject({ crewId: world.masons });
    expect(await world.db.proposal.count({ where: { companyId: world.companyId } })).toBe(0);
    for (const day of ['2031-01-20', '2031-01-21'])
      await world.db.crewException.create({
        data: {
          companyId: world.companyId,
          crewId: world.masons,
          day: new Date(day),
          hours: [],
          reason: 'ill',
        },
      });
    await world.replan();
    expect(await world.planned(wall)).toMatchObject({ crewId: late, startAt: new Date(times.startAt) });
    const { proposals } = await world.office.data<{ proposals: { edges: object[] } }>(
      '{ proposals(state: open) { edges { node { differences { crewBefore { name } crewAfter { name } } } } } }',
    );
    expect(proposals.edges).toEqual([
      { node: { differences: [{ crewBefore: { name: 'Masons' }, crewAfter: { name: 'Long days' } }] } },
    ]);
  });

  it('refuses dates before what comes first, and names it', async () => {
    const times = { startAt: '2031-01-06T17:00:00Z', finishAt: '2031-01-06T21:00:00Z' };
    const refused = await world.office.change('commitPhase', { phaseId: stone.id, ...times });
    expect(refused).toMatchObject({
      code: 'BeforePredecessor',
      message: expect.stringMatching(/stone cannot be promised before block allows it, Mon 6 Jan 13:00/),
    });
    expect(await held()).toEqual([]);
  });

  it('refuses what is no date for a plan', async () => {
    const at = '2031-01-08T13:00:00Z';
    const cases: [Record<string, unknown>, RegExp][] = [
      [{ startAt: at }, /finishAt: is missing/],
      [{ finishAt: at }, /startAt: is missing/],
      [{ startAt: '2031-01-08T13:07:00Z', finishAt: at }, /quarter of an hour/],
      [{ startAt: '2031-01-05T13:00:00Z', finishAt: at }, /has passed/],
      [{ startAt: at, finishAt: '2031-01-08T12:00:00Z' }, /lies before the start/],
      [{ crewId: world.diggers }, /Diggers does not do mason/],
    ];
    for (const [input, message] of cases)
      expect(await commit({ phaseId: block.id, ...input })).toMatchObject({
        code: 'InvalidInput',
        message: expect.stringMatching(message),
      });
    await world.db.crew.update({ where: { id: world.masons }, data: { active: false } });
    expect(await commit({ phaseId: block.id, crewId: world.masons })).toMatchObject({
      message: expect.stringMatching(/out of use/),
    });
  });

  it('answers a missing phase and one of another company alike', async () => {
    const other = await makeWorld(service);
    const missing = '00000000-0000-4000-8000-000000000000';
    const mutations: [string, Record<string, unknown>][] = [
      ['commitPhase', {}],
      ['releaseCommitment', {}],
      ['pinPhase', { startAt: null }],
      ['assignCrew', {}],
    ];
    for (const [name, input] of mutations) {
      const foreign = await other.office.change(name, { ...input, phaseId: block.id });
      expect(foreign).toEqual(await other.office.change(name, { ...input, phaseId: missing }));
      expect(foreign).toEqual(await other.office.change(name, { ...input, phaseId: 'no id' }));
      expect(foreign).toMatchObject({ code: 'NotFound' });
    }
    const foreign = await other.office.change('commitJob', { jobId: house.job.id });
    expect(foreign).toMatchObject({ code: 'NotFound' });
  });

  it('promises one crew to one slot once, when twenty ask at the same time', async () => {
    const many = await Promise.all(
      Array.from({ length: 20 }, (_, i) => world.chain(`Job ${i}`, { wall: {} })),
    );
    const times = { startAt: '2031-01-13T13:00:00Z', finishAt: '2031-01-13T17:00:00Z' };
    const answers = await Promise.all(
      many.map(({ phases }) =>
        world.office.change<Record<string, unknown>>(
          'commitPhase',
          { phaseId: get(phases, 'wall').id, crewId: world.masons, ...times },
          '... on CrewBusy { from to phase { id } crew { id } }',
        ),
      ),
    );
    const won = answers.filter((answer) => answer['__typename'] === 'CommitmentChanged');
    const lost = answers.filter((answer) => answer['__typename'] === 'CrewBusy');
    expect([won.length, lost.length]).toEqual([1, 19]);
    const [only, ...rest] = await held();
    expect(rest).toEqual([]);
    expect(new Set(lost.map((answer) => JSON.stringify({ ...answer, message: '' })))).toEqual(
      new Set([
        JSON.stringify({
          __typename: 'CrewBusy',
          code: 'CrewBusy',
          message: '',
          from: '2031-01-13T13:00:00.000Z',
          to: '2031-01-13T17:00:00.000Z',
          phase: { id: only?.phaseId },
          crew: { id: world.masons },
        }),
      ]),
    );
    expect(lost[0]?.['message']).toMatch(/^Masons is busy with wall \(job \d+, Job \d+\)\./);
  });

  it('is refused by the database itself when a crew would be promised twice, or a phase', async () => {
    const { db, companyId, masons } = world;
    const row = (phase: Phase, from: string, to: string, crewId: string | null = masons) =>
      db.commitment.create({
        data: {
          companyId,
          phaseId: phase.id,
          crewId,
          startAt: new Date(`2031-01-14T${from}Z`),
          finishAt: new Date(`2031-01-14T${to}Z`),
          madeAt: new Date('2031-01-06T14:00:00Z'),
        },
      });
    const third = get((await world.chain('Third', { wall: {} })).phases, 'wall');
    await row(block, '13:00', '17:00');
    expect(isExclusionViolation(await row(stone, '16:00', '18:00').catch((error: unknown) => error))).toBe(
      true,
    );
    expect(isUniqueViolation(await row(block, '18:00', '19:00').catch((error: unknown) => error))).toBe(true);
    await row(stone, '17:00', '18:00');
    await row(third, '13:00', '17:00', null);
    expect(await held()).toHaveLength(3);
  });

  it('replaces a promise with a newer one, which may overlap the old', async () => {
    await commit({ phaseId: block.id });
    const times = { startAt: '2031-01-06T15:00:00Z', finishAt: '2031-01-06T19:00:00Z' };
    expect((await commit({ phaseId: block.id, ...times })).code).toBeUndefined();
    expect((await held()).map(({ startAt, finishAt }) => [short(startAt), short(finishAt)])).toEqual([
      ['06 15:00', '06 19:00'],
    ]);
    expect((await stateOf(block)).sort()).toEqual(['held', 'released']);
  });

  it('gives one answer to one key, however often it comes', async () => {
    const input = { clientKey: randomUUID(), phaseId: block.id };
    const answers = await Promise.all(Array.from({ length: 5 }, () => commit(input)));
    expect(new Set(answers.map((answer) => JSON.stringify(answer))).size).toBe(1);
    expect(await world.db.commitment.count({ where: { phaseId: block.id } })).toBe(1);
  });

  it('is kept by finishing the phase, stands while it runs, and is released with a dropped one', async () => {
    await commit({ phaseId: block.id });
    await commit({ phaseId: stone.id });
    await world.db.phase.update({
      where: { id: block.id },
      data: { state: 'started', actualStart: new Date('2031-01-06T14:00:00Z'), actualCrewId: world.masons },
    });
    await world.replan();
    expect(await stateOf(block)).toEqual(['held']);
    const finished = { state: 'done', actualFinish: new Date('2031-01-06T18:00:00Z') } as const;
    service.setClock('2031-01-06T18:00:00Z');
    await world.db.phase.update({ where: { id: block.id }, data: finished });
    await world.db.phase.update({ where: { id: stone.id }, data: { state: 'dropped' } });
    await world.replan();
    expect([await stateOf(block), await stateOf(stone)]).toEqual([['kept'], ['released']]);
    expect(await commit({ phaseId: block.id })).toMatchObject({ code: 'WrongState' });
  });

  it('is taken back by the office, once', async () => {
    await commit({ phaseId: block.id });
    const done = await world.office.change<Committed>('releaseCommitment', { phaseId: block.id }, COMMITTED);
    expect(done.commitments?.map(({ state }) => state)).toEqual(['released']);
    expect(await world.office.change('releaseCommitment', { phaseId: block.id })).toMatchObject({
      code: 'WrongState',
    });
  });

  it('is for the office alone', async () => {
    await expect(world.foreman.change('commitPhase', { phaseId: block.id })).rejects.toThrow(
      /needs the role office/,
    );
    await expect(world.foreman.change('pinPhase', { phaseId: block.id })).rejects.toThrow(
      /needs the role office/,
    );
  });
});

describe('fixing a start or a crew', () => {
  let service: TestService;
  let world: PlanningWorld;
  let block: Phase;
  let stone: Phase;

  beforeAll(async () => {
    service = await startService();
  });
  beforeEach(async () => {
    world = await makeWorld(service);
    const { phases } = await world.chain('Larch', { block: {}, stone: {} });
    block = get(phases, 'block');
    stone = get(phases, 'stone');
    await world.replan();
  });
  afterAll(() => service.stop());

  it('pins a start, shows what the pin breaks, and frees it', async () => {
    const pin = (startAt: string | null) =>
      world.office.change(
        'pinPhase',
        { phaseId: stone.id, startAt },
        '... on PhaseChanged { phase { pinnedStart } }',
      );
    expect(await pin('2031-01-08T15:00:00Z')).toMatchObject({
      phase: { pinnedStart: '2031-01-08T15:00:00.000Z' },
    });
    expect(await world.dates(stone)).toBe('08 15:00 – 08 19:00');
    await pin('2031-01-06T15:00:00Z');
    const { planConflicts } = await world.office.data<{ planConflicts: { kind: string; text: string }[] }>(
      '{ planConflicts { kind text } }',
    );
    expect(planConflicts.map(({ kind }) => kind)).toContain('pinBeforePredecessor');
    expect(planConflicts.find(({ kind }) => kind === 'pinBeforePredecessor')?.text).toMatch(
      /^The fixed start of stone, Mon 6 Jan 10:00, is too early; .* Move it or take it away\.$/,
    );
    await pin(null);
    expect(await world.dates(stone)).toBe('06 18:00 – 07 14:00');
    expect(await pin('2031-01-05T15:00:00Z')).toMatchObject({ code: 'InvalidInput' });
    expect(await pin('2031-01-08T15:05:00Z')).toMatchObject({ code: 'InvalidInput' });
  });

  it('requires a crew of the trade, and lets the plan choose again', async () => {
    const second = await world.crew('Second masons', ['mason']);
    const assign = (crewId: string | null) =>
      world.office.change('assignCrew', { phaseId: block.id, crewId });
    await assign(second);
    expect(await world.planned(block)).toMatchObject({ crewId: second });
    expect(await assign(world.diggers)).toMatchObject({ code: 'InvalidInput' });
    expect(await assign(randomUUID())).toMatchObject({
      code: 'NotFound',
      message: expect.stringMatching(/crew/),
    });
    await assign(null);
    expect((await world.db.phase.findUniqueOrThrow({ where: { id: block.id } })).requiredCrewId).toBeNull();
  });

  it('refuses a stale revision and a phase that has begun', async () => {
    await world.office.change('pinPhase', { phaseId: block.id, startAt: '2031-01-08T15:00:00Z' });
    expect(await world.office.change('pinPhase', { phaseId: block.id, revision: 1 })).toMatchObject({
      code: 'StaleRevision',
    });
    await world.db.phase.update({
      where: { id: block.id },
      data: { state: 'started', actualStart: new Date('2031-01-06T14:00:00Z') },
    });
    for (const name of ['pinPhase', 'assignCrew'])
      expect(await world.office.change(name, { phaseId: block.id })).toMatchObject({ code: 'WrongState' });
  });
});
