import { randomUUID } from 'node:crypto';
import { afterAll, beforeAll, beforeEach, describe, expect, it } from '@jest/globals';
import { ImproverModule } from '../../src/planning/improver.module.js';
import { Improver } from '../../src/planning/planning.face.js';
import { startService, type TestService } from '../support/service.js';
import { type ChainedJob, get, makeWorld, type PlanningWorld } from './planning-world.js';

/*
 * Monday 6 January 2031, 09:00 in New York. One mason crew; a long job of the first priority stands before a short one that is due sooner.
 * Serving the short one first is better by every part of the objective, and the ranking rule does not find it.
 */

const RUN = `id state seconds schedules stopping message attemptsLeft: revision progress { total seconds withinPercent }
  outcome { withinPercent proved factsMoved before { latenessHours finishHours crewMoves unplanned total } after { latenessHours finishHours total } }
  proposal { id number state cause moves { phase { name } startBefore startAfter crewBefore { name } reason { text } } jobEnds { job { name } before after } differences { phase { name } } }`;

interface Run {
  readonly id: string;
  readonly state: string;
  readonly schedules: number;
  readonly message: string | null;
  readonly outcome: {
    readonly withinPercent: number | null;
    readonly proved: boolean;
    readonly factsMoved: boolean;
    readonly before: { readonly latenessHours: number; readonly total: number };
    readonly after: { readonly latenessHours: number; readonly total: number };
  } | null;
  readonly proposal: {
    readonly id: string;
    readonly number: number;
    readonly state: string;
    readonly moves: { readonly phase: { readonly name: string } }[];
    readonly jobEnds: { readonly job: { readonly name: string } }[];
  } | null;
}

describe('a search for a better plan', () => {
  let service: TestService;
  let improver: Improver;
  let world: PlanningWorld;
  let long: ChainedJob;
  let short: ChainedJob;

  beforeAll(async () => {
    service = await startService();
    improver = service.app.select(ImproverModule).get(Improver);
  });
  beforeEach(async () => {
    service.setClock('2031-01-06T14:00:00Z');
    world = await makeWorld(service);
    long = await world.chain('Long', { block: { hours: 40 }, stone: { hours: 24 } }, { priority: 1 });
    short = await world.chain(
      'Short',
      { step: { hours: 4 } },
      { priority: 5, dueAt: new Date('2031-01-07T21:00:00Z') },
    );
    await world.replan();
  });
  afterAll(() => service.stop());

  const start = (input: object = {}) =>
    world.office.change<{ improvement?: Run; code?: string; message?: string; improvementId?: string }>(
      'startImprovement',
      { seconds: 1, seed: 7, ...input },
      `... on ImprovementChanged { improvement { ${RUN} } } ... on ImprovementRunning { improvementId }`,
    );
  const run = async (id: string): Promise<Run> => {
    const { improvement } = await world.office.data<{ improvement: Run }>(
      `query($id: ID!) { improvement(id: $id) { ${RUN} } }`,
      { id },
    );
    return improvement;
  };
  /** Starts a search and does what a worker does when the queue names it. */
  const searched = async (meanwhile?: () => Promise<unknown>): Promise<Run> => {
    const { improvement } = await start();
    if (!improvement) throw new Error('It was not started');
    await improver.begin(improvement.id);
    await meanwhile?.();
    await improver.settled();
    return run(improvement.id);
  };
  const accept = (proposalId: string) =>
    world.office.change<{ code?: string }>(
      'acceptProposal',
      { proposalId },
      '... on ProposalDecided { proposal { state } }',
    );
  const allDates = async () => {
    const phases = [...Object.values(long.phases), ...Object.values(short.phases)];
    return Promise.all(phases.map((phase) => world.dates(phase)));
  };

  /** So many phases that not every order can be tried: the search goes on until it is stopped. */
  const makeLonger = async () => {
    await world.chain('Many', Object.fromEntries([...'abcdefgh'].map((key) => [key, { hours: 3 }])));
    await world.replan();
  };
  /** Waits until a search has told that it has looked at some plans. */
  const hasLooked = async (id: string) => {
    while ((await run(id)).schedules < 30) await new Promise((done) => setTimeout(done, 100));
  };

  it('waits for a worker, and changes nothing by itself', async () => {
    const before = await allDates();
    const { improvement } = await start();
    expect(improvement).toMatchObject({
      state: 'waiting',
      seconds: 1,
      stopping: false,
      proposal: null,
      outcome: null,
    });
    expect(await allDates()).toEqual(before);
  });

  it('ends as a proposal that says what moves, whose end changes and what is better, and leaves the plan alone', async () => {
    const before = await allDates();
    const found = await searched();
    expect(found).toMatchObject({ state: 'offered', outcome: { factsMoved: false } });
    expect(found.schedules).toBeGreaterThan(1);
    expect(found.outcome?.after.total).toBeLessThan(found.outcome?.before.total ?? 0);
    expect(found.outcome?.before.latenessHours).toBeGreaterThan(0);
    expect(found.outcome?.after.latenessHours).toBe(0);
    expect(found.proposal?.state).toBe('open');
    expect(found.proposal?.moves.map(({ phase }) => phase.name)).toContain('step');
    expect(found.proposal?.jobEnds.map(({ job }) => job.name)).toContain('Short');
    expect(await allDates()).toEqual(before);
  });

  it('claims no optimum that is not proved', async () => {
    const { outcome } = await searched();
    expect(outcome?.proved === true && outcome.withinPercent !== 0).toBe(false);
  });

  it('is followed by the plan once its proposal is accepted, and by every plan after that', async () => {
    const found = await searched();
    await accept(found.proposal?.id ?? '');
    const after = await allDates();
    expect(await world.dates(get(short.phases, 'step'))).toBe('06 14:00 – 06 18:00');
    expect(await run(found.id)).toMatchObject({ state: 'accepted', proposal: { state: 'accepted' } });
    for (let turn = 0; turn < 3; turn++) {
      await world.replan();
      expect(await allDates()).toEqual(after);
    }
    await world.chain('New', { wall: { hours: 8 } }, { priority: 9 });
    await world.replan();
    expect(await allDates()).toEqual(after);
  });

  it('moves the promises of what was promised when it is accepted', async () => {
    await world.office.change('commitJob', { jobId: short.job.id });
    service.setClock('2031-01-06T14:00:00Z');
    const found = await searched();
    const promised = () =>
      world.db.commitment.findFirst({ where: { phaseId: get(short.phases, 'step').id, state: 'held' } });
    const before = await promised();
    await accept(found.proposal?.id ?? '');
    const after = await promised();
    expect(Number(after?.startAt)).toBeLessThan(Number(before?.startAt));
    const open = await world.db.proposal.count({ where: { companyId: world.companyId, state: 'open' } });
    expect(open).toBe(0);
  });

  it('is planned anew on facts that moved while it searched', async () => {
    const found = await searched(async () => {
      await world.chain('Meanwhile', { wall: { hours: 8 } }, { priority: 9 });
      await world.replan();
    });
    expect(found).toMatchObject({
      state: 'offered',
      outcome: { factsMoved: true, withinPercent: null, proved: false },
    });
  });

  it('ends when facts make its plan no better than the one in force', async () => {
    const found = await searched();
    await world.office.change('pinPhase', {
      phaseId: get(short.phases, 'step').id,
      startAt: '2031-01-06T14:00:00Z',
    });
    expect(await run(found.id)).toMatchObject({ state: 'outdated', proposal: { state: 'superseded' } });
    expect((await accept(found.proposal?.id ?? '')).code).toBe('ProposalOutdated');
  });

  it('ends without a proposal when nothing is better', async () => {
    await accept((await searched()).proposal?.id ?? '');
    const again = await searched();
    expect(again).toMatchObject({ state: 'unchanged', proposal: null });
    expect(again.message).toMatch('no plan that is better');
  });

  it('is dropped with its proposal, and the plan stays', async () => {
    const before = await allDates();
    const found = await searched();
    await world.office.change('dropProposal', { proposalId: found.proposal?.id });
    await world.replan();
    expect(await run(found.id)).toMatchObject({ state: 'dropped', proposal: { state: 'dropped' } });
    expect(await allDates()).toEqual(before);
  });

  it('is refused while another is at work, naming that one', async () => {
    const { improvement } = await start();
    expect(await start()).toMatchObject({ code: 'ImprovementRunning', improvementId: improvement?.id });
    const two = await Promise.all([randomUUID(), randomUUID()].map((clientKey) => start({ clientKey })));
    expect(two.map(({ code }) => code)).toEqual(['ImprovementRunning', 'ImprovementRunning']);
  });

  it('is started once by a key that is sent twice', async () => {
    const clientKey = randomUUID();
    const [one, two] = [await start({ clientKey }), await start({ clientKey })];
    expect(two.improvement?.id).toBe(one.improvement?.id);
  });

  it.each([
    [{ seconds: 0 }, 'seconds'],
    [{ seconds: 601 }, 'seconds'],
    [{ seed: -1 }, 'seed'],
    [{ weights: { lateness: -1 } }, 'weights.lateness'],
    [{ weights: { lateness: 0, finish: 0, disturbance: 0, crewMoves: 0 } }, 'weights'],
  ])('is refused with what cannot be: %j', async (input, path) => {
    const answer = await start(input);
    expect(answer.code).toBe('InvalidInput');
    expect(answer.message).toContain(path);
  });

  it('stops at once while it waits, and cannot be stopped again', async () => {
    const { improvement } = await start();
    const stop = () =>
      world.office.change<{ code?: string; improvement?: Run }>(
        'stopImprovement',
        { improvementId: improvement?.id },
        '... on ImprovementChanged { improvement { state } }',
      );
    expect(await stop()).toMatchObject({ improvement: { state: 'stopped' } });
    expect(await stop()).toMatchObject({ code: 'WrongState' });
    await improver.begin(improvement?.id ?? '');
    expect(await run(improvement?.id ?? '')).toMatchObject({ state: 'stopped', schedules: 0 });
  });

  it.each([
    ['keep', 'offered'],
    ['discard', 'stopped'],
  ])('stopped while it runs to %s what it has found is %s', async (how, state) => {
    await makeLonger();
    const { improvement } = await start({ seconds: 600 });
    const id = improvement?.id ?? '';
    await improver.begin(id);
    await hasLooked(id);
    expect(await run(id)).toMatchObject({ state: 'running' });
    await world.office.change('stopImprovement', { improvementId: id, how });
    await improver.settled();
    expect(await run(id)).toMatchObject({ state });
  });

  it('goes back to waiting when its worker is stopped, and another does it', async () => {
    await makeLonger();
    const { improvement } = await start({ seconds: 600 });
    const id = improvement?.id ?? '';
    await improver.begin(id);
    await improver.close();
    expect(await run(id)).toMatchObject({ state: 'waiting' });
    await improver.begin(id);
    await hasLooked(id);
    await world.office.change('stopImprovement', { improvementId: id });
    await improver.settled();
    expect(await run(id)).toMatchObject({ state: 'offered' });
  });

  it('is taken up from a worker that has fallen silent, and from no other; three deaths end it', async () => {
    const { improvement } = await start();
    const where = { id: improvement?.id ?? '' };
    const silent = (aliveAt: string, attempts: number) =>
      world.db.improvement.update({
        where,
        data: { state: 'running', workerId: randomUUID(), aliveAt: new Date(aliveAt), attempts },
      });
    await silent('2031-01-06T13:59:50Z', 1);
    await improver.begin(where.id);
    await improver.settled();
    expect(await run(where.id)).toMatchObject({ state: 'running' });
    await silent('2031-01-06T13:59:00Z', 3);
    await improver.begin(where.id);
    expect(await run(where.id)).toMatchObject({
      state: 'failed',
      message: expect.stringContaining('died 3 times'),
    });
    const next = await start();
    await world.db.improvement.update({
      where: { id: next.improvement?.id ?? '' },
      data: {
        state: 'running',
        workerId: randomUUID(),
        aliveAt: new Date('2031-01-06T13:59:00Z'),
        attempts: 2,
      },
    });
    await improver.begin(next.improvement?.id ?? '');
    await improver.settled();
    expect(await run(next.improvement?.id ?? '')).toMatchObject({ state: 'offered' });
  });

  it('says how far it is while it runs', async () => {
    await makeLonger();
    const hints = service.app
      .get((await import('../../src/platform/hints/hint-bus.js')).HintBus)
      .listen(world.companyId);
    const { improvement } = await start({ seconds: 600 });
    const id = improvement?.id ?? '';
    await improver.begin(id);
    let hint = await hints.next();
    while (!hint.done && hint.value.improvementId !== id) hint = await hints.next();
    expect((await run(id)).schedules).toBeGreaterThan(0);
    await world.office.change('stopImprovement', { improvementId: id });
    await improver.settled();
    hints.end();
  });
});
