import { afterAll, beforeAll, beforeEach, describe, expect, it } from '@jest/globals';
import type { Phase } from '../../src/generated/prisma/client.js';
import { isUniqueViolation } from '../../src/platform/database/exclusion.js';
import { startService, type TestService } from '../support/service.js';
import { type ChainedJob, get, makeWorld, type PlanningWorld, short } from './planning-world.js';

/* Monday 6 January 2031, 09:00 in New York (14:00Z); crews work 13:00Z to 21:00Z. */

interface ProposalAnswer {
  readonly id: string;
  readonly number: number;
  readonly state: string;
  readonly cause: string;
  readonly revision: number;
}

const FIELDS = 'id number state cause revision';

describe('a proposal', () => {
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
    await world.office.change('commitJob', { jobId: house.job.id });
  });
  afterAll(() => service.stop());

  const all = async (state?: string): Promise<ProposalAnswer[]> => {
    const { proposals } = await world.office.data<{ proposals: { edges: { node: ProposalAnswer }[] } }>(
      `query($state: ProposalState) { proposals(state: $state) { edges { node { ${FIELDS} } } } }`,
      state ? { state } : {},
    );
    return proposals.edges.map(({ node }) => node);
  };
  const open = async (): Promise<ProposalAnswer> => {
    const [only, ...rest] = await all('open');
    expect(rest).toEqual([]);
    if (!only) throw new Error('No proposal is open');
    return only;
  };
  const hold = async (startsAt: string, endsAt: string, phaseId?: string): Promise<string> => {
    const done = await world.foreman.change<{ weatherHold: { id: string } }>(
      'callWeatherHold',
      { siteId: world.siteId, phaseId, startsAt, endsAt, reason: 'sleet' },
      '... on WeatherHoldChanged { weatherHold { id } }',
    );
    return done.weatherHold.id;
  };
  const promised = async (phase: Phase): Promise<string> => {
    const row = await world.db.commitment.findFirst({ where: { phaseId: phase.id, state: 'held' } });
    return row ? `${short(row.startAt)} – ${short(row.finishAt)}` : 'nothing';
  };

  it('is not opened while the plan keeps the promises', async () => {
    await world.replan();
    expect(await all()).toEqual([]);
  });

  it('opens when an event moves a promised phase, and leaves the promises alone', async () => {
    await hold('2031-01-06T14:00:00Z', '2031-01-06T16:00:00Z');
    const { proposals } = await world.office.data<{ proposals: object }>(
      `{ proposals(state: open) { edges { node { number cause state decidedAt
          differences { phase { name } startBefore startAfter finishBefore finishAfter crewBefore { name } crewAfter { name } reason { kind text } }
          jobFinishes { job { name } before after } } } } }`,
    );
    const crew = { name: 'Masons' };
    expect(proposals).toEqual({
      edges: [
        {
          node: {
            number: 1,
            cause: 'weather hold called',
            state: 'open',
            decidedAt: null,
            differences: expect.arrayContaining([
              {
                phase: { name: 'block' },
                startBefore: '2031-01-06T14:00:00.000Z',
                startAfter: '2031-01-06T16:00:00.000Z',
                finishBefore: '2031-01-06T18:00:00.000Z',
                finishAfter: '2031-01-06T20:00:00.000Z',
                crewBefore: crew,
                crewAfter: crew,
                reason: {
                  kind: 'weather',
                  text: 'block waits for the weather hold "sleet" until Mon 6 Jan 11:00.',
                },
              },
              expect.objectContaining({ phase: { name: 'stone' }, startAfter: '2031-01-06T20:00:00.000Z' }),
            ]),
            jobFinishes: [
              {
                job: { name: 'Larch' },
                before: '2031-01-07T14:00:00.000Z',
                after: '2031-01-07T16:00:00.000Z',
              },
            ],
          },
        },
      ],
    });
    expect(await promised(block)).toBe('06 14:00 – 06 18:00');
    expect(await world.dates(block)).toBe('06 16:00 – 06 20:00');
    const { planConflicts } = await world.office.data<{ planConflicts: { kind: string; text: string }[] }>(
      '{ planConflicts { kind text } }',
    );
    expect(planConflicts.map(({ text }) => text)).toContain(
      'block was promised for Mon 6 Jan 09:00 and cannot start before Mon 6 Jan 11:00. block waits for the weather hold "sleet" until Mon 6 Jan 11:00. Tell people, or lift what holds it.',
    );
  });

  it('stays the same proposal while it says the same', async () => {
    await hold('2031-01-06T14:00:00Z', '2031-01-06T16:00:00Z');
    const first = await open();
    await world.replan();
    expect(await open()).toEqual(first);
  });

  it('is superseded when the plan differs otherwise, and closed when nothing is left', async () => {
    const one = await hold('2031-01-06T14:00:00Z', '2031-01-06T16:00:00Z');
    const two = await hold('2031-01-06T14:00:00Z', '2031-01-06T17:00:00Z');
    expect((await all()).map(({ number, state }) => [number, state])).toEqual([
      [1, 'superseded'],
      [2, 'open'],
    ]);
    for (const weatherHoldId of [two, one])
      await world.foreman.change('liftWeatherHold', { weatherHoldId, reason: 'sun is out' });
    expect((await all()).map(({ number, state }) => [number, state])).toEqual([
      [1, 'superseded'],
      [2, 'superseded'],
      [3, 'superseded'],
    ]);
  });

  it('moves all its promises at once when it is accepted, though new dates overlap old ones', async () => {
    await hold('2031-01-06T14:00:00Z', '2031-01-06T16:00:00Z');
    const { id } = await open();
    const done = await world.office.change(
      'acceptProposal',
      { proposalId: id },
      '... on ProposalDecided { proposal { state decidedAt decidedBy { role } } }',
    );
    expect(done).toMatchObject({
      __typename: 'ProposalDecided',
      proposal: { state: 'accepted', decidedAt: '2031-01-06T14:00:00.000Z', decidedBy: { role: 'office' } },
    });
    expect([await promised(block), await promised(stone)]).toEqual([
      '06 16:00 – 06 20:00',
      '06 20:00 – 07 16:00',
    ]);
    expect((await all()).map(({ state }) => state)).toEqual(['accepted']);
    expect(await world.office.data('{ planConflicts { kind } }')).toEqual({ planConflicts: [] });
  });

  it('lets two promises of one crew change places', async () => {
    const other = await world.chain('Birch', { wall: {} });
    const wall = get(other.phases, 'wall');
    const commit = (phase: Phase, startAt: string, finishAt: string) =>
      world.office.change('commitPhase', { phaseId: phase.id, startAt, finishAt });
    await commit(stone, '2031-01-20T13:00:00Z', '2031-01-20T17:00:00Z');
    await commit(wall, '2031-01-20T17:00:00Z', '2031-01-20T21:00:00Z');
    expect(await all('open')).toEqual([]);
    // A hold until 17:00Z moves the stone; the wall is pinned to where the stone was.
    await hold('2031-01-20T13:00:00Z', '2031-01-20T17:00:00Z', stone.id);
    await world.office.change('pinPhase', { phaseId: wall.id, startAt: '2031-01-20T13:00:00Z' });
    expect([await world.dates(wall), await world.dates(stone)]).toEqual([
      '20 13:00 – 20 17:00',
      '20 17:00 – 20 21:00',
    ]);
    const { id } = await open();
    expect(await world.office.change('acceptProposal', { proposalId: id })).toMatchObject({
      __typename: 'ProposalDecided',
    });
    expect([await promised(wall), await promised(stone)]).toEqual([
      '20 13:00 – 20 17:00',
      '20 17:00 – 20 21:00',
    ]);
  });

  it('keeps the promises when it is dropped, and asks again only when something else differs', async () => {
    await hold('2031-01-06T14:00:00Z', '2031-01-06T16:00:00Z');
    const { id } = await open();
    await world.office.change('dropProposal', { proposalId: id });
    await world.replan();
    expect((await all()).map(({ state }) => state)).toEqual(['dropped']);
    expect(await promised(block)).toBe('06 14:00 – 06 18:00');
    await hold('2031-01-06T14:00:00Z', '2031-01-06T17:00:00Z');
    expect((await all()).map(({ state }) => state)).toEqual(['dropped', 'open']);
  });

  it('takes a promise back when its phase has no place any more', async () => {
    await world.db.crew.update({ where: { id: world.masons }, data: { active: false } });
    await world.replan();
    const { id } = await open();
    const { proposal } = await world.office.data<{ proposal: { jobFinishes: object[] } }>(
      'query($id: ID!) { proposal(id: $id) { jobFinishes { after } differences { startAfter reason { kind } } } }',
      { id },
    );
    expect(proposal).toEqual({
      jobFinishes: [{ after: null }],
      differences: [
        { startAfter: null, reason: { kind: 'unplanned' } },
        { startAfter: null, reason: { kind: 'unplanned' } },
      ],
    });
    await world.office.change('acceptProposal', { proposalId: id });
    expect([await promised(block), await promised(stone)]).toEqual(['nothing', 'nothing']);
  });

  it('sees no difference in the start of a phase that has begun, but in its finish', async () => {
    service.setClock('2031-01-06T15:00:00Z');
    await world.db.phase.update({
      where: { id: block.id },
      data: {
        state: 'started',
        actualStart: new Date('2031-01-06T14:05:00Z'),
        actualCrewId: world.masons,
        remainingMinutes: 180,
      },
    });
    await world.replan();
    expect(await all('open')).toEqual([]);
    await world.db.phase.update({ where: { id: block.id }, data: { remainingMinutes: 300 } });
    await world.replan();
    const { id } = await open();
    await world.office.change('acceptProposal', { proposalId: id });
    expect(await promised(block)).toBe('06 14:05 – 06 20:00');
    expect(await all('open')).toEqual([]);
  });

  it('refuses to be decided twice, in an old revision, by another company, or by another role', async () => {
    await hold('2031-01-06T14:00:00Z', '2031-01-06T16:00:00Z');
    const { id, revision } = await open();
    const other = await makeWorld(service);
    for (const name of ['acceptProposal', 'dropProposal']) {
      expect(await world.office.change(name, { proposalId: id, revision: revision + 1 })).toMatchObject({
        code: 'StaleRevision',
      });
      expect(await other.office.change(name, { proposalId: id })).toMatchObject({ code: 'NotFound' });
      await expect(world.foreman.change(name, { proposalId: id })).rejects.toThrow(/needs the role office/);
    }
    await world.office.change('acceptProposal', { proposalId: id });
    for (const name of ['acceptProposal', 'dropProposal'])
      expect(await world.office.change(name, { proposalId: id })).toMatchObject({ code: 'ProposalOutdated' });
    expect(await other.office.data('query($id: ID!) { proposal(id: $id) { id } }', { id })).toEqual({
      proposal: null,
    });
  });

  it('is the only open one: the database itself refuses a second', async () => {
    await hold('2031-01-06T14:00:00Z', '2031-01-06T16:00:00Z');
    const second = world.db.proposal.create({
      data: {
        companyId: world.companyId,
        number: 99,
        planNumber: 1,
        cause: 'x',
        differences: {},
        createdAt: new Date('2031-01-06T14:00:00Z'),
      },
    });
    expect(isUniqueViolation(await second.catch((error: unknown) => error))).toBe(true);
  });

  it('stands on the board', async () => {
    await hold('2031-01-06T14:00:00Z', '2031-01-06T16:00:00Z');
    const { board } = await world.office.data<{ board: object }>(
      '{ board(from: "2031-01-06T00:00:00Z", to: "2031-01-10T00:00:00Z") { openProposal { number } conflicts { kind } } }',
    );
    expect(board).toEqual({
      openProposal: { number: 1 },
      conflicts: [{ kind: 'commitmentBroken' }, { kind: 'commitmentBroken' }],
    });
  });
});
