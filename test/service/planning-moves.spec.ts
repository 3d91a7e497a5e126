import { afterAll, beforeAll, beforeEach, describe, expect, it } from '@jest/globals';
import { moveChanges } from '../../shared/moves/move-phase.js';
import type { PlanInput } from '../../shared/schedule/model.js';
import { Planner } from '../../shared/schedule/planner.js';
import { slot } from '../../shared/schedule/slot.js';
import type { Phase } from '../../src/generated/prisma/client.js';
import { startService, type TestService } from '../support/service.js';
import { type ChainedJob, get, makeWorld, type PlanningWorld, short } from './planning-world.js';

/* Monday 6 January 2031, 09:00 in New York (14:00Z); crews work 13:00Z to 21:00Z. Dates are worked out by hand. */

interface Moved {
  readonly phase: { readonly name: string };
  readonly startBefore: string | null;
  readonly startAfter: string | null;
}

interface Move {
  readonly id: string;
  readonly state: string;
  readonly message: string | null;
  readonly phase: { readonly name: string };
  readonly proposal: {
    readonly id: string;
    readonly number: number;
    readonly state: string;
    readonly cause: string;
    readonly undoable: boolean;
    readonly differences: readonly Moved[];
    readonly moves: readonly Moved[];
    readonly jobEnds: readonly { readonly job: { readonly name: string }; readonly after: string | null }[];
  } | null;
}

const MOVED = '{ phase { name } startBefore startAfter }';
const MOVE = `{ id state message phase { name } proposal { id number state cause undoable differences ${MOVED} moves ${MOVED} jobEnds { job { name } after } } }`;

describe('a move of a phase', () => {
  let service: TestService;
  let world: PlanningWorld;
  let house: ChainedJob;
  let other: ChainedJob;
  let block: Phase;
  let stone: Phase;
  let wall: Phase;

  beforeAll(async () => {
    service = await startService();
  });
  beforeEach(async () => {
    service.setClock('2031-01-06T14:00:00Z');
    world = await makeWorld(service);
    house = await world.chain('Larch', { block: {}, stone: {} });
    other = await world.chain('Birch', { wall: {} });
    block = get(house.phases, 'block');
    stone = get(house.phases, 'stone');
    wall = get(other.phases, 'wall');
    await world.replan();
    expect(await dates()).toEqual(['06 14:00 – 06 18:00', '06 18:00 – 07 14:00', '07 14:00 – 07 18:00']);
  });
  afterAll(() => service.stop());

  const dates = async () => [await world.dates(block), await world.dates(stone), await world.dates(wall)];
  const propose = (phase: Phase, startAt: string, more: object = {}) =>
    world.office.change<{ code?: string; message?: string; move?: Move }>(
      'proposeMove',
      { phaseId: phase.id, startAt, ...more },
      `... on MoveProposed { move ${MOVE} }`,
    );
  const newest = async (): Promise<Move> => {
    const { newestMove } = await world.office.data<{ newestMove: Move }>(`{ newestMove ${MOVE} }`);
    return newestMove;
  };
  const decide = async (name: 'acceptProposal' | 'dropProposal' | 'undoProposal') =>
    world.office.change(name, { proposalId: (await newest()).proposal?.id });
  const promised = async (phase: Phase): Promise<string> => {
    const row = await world.db.commitment.findFirst({ where: { phaseId: phase.id, state: 'held' } });
    return row ? `${short(row.startAt)} – ${short(row.finishAt)}` : 'nothing';
  };
  const places = (moved: readonly Moved[]) =>
    Object.fromEntries(moved.map(({ phase, startAfter }) => [phase.name, short(new Date(startAfter ?? 0))]));
  const commit = ({ job }: ChainedJob) => world.office.change('commitJob', { jobId: job.id });
  const hold = (startsAt: string, endsAt: string) =>
    world.foreman.change('callWeatherHold', { siteId: world.siteId, startsAt, endsAt, reason: 'sleet' });

  it('waits as a proposal that says what would move and which ends change, and moves nothing', async () => {
    const { move } = await propose(block, '2031-01-07T13:00:00Z');
    expect(move).toMatchObject({
      state: 'offered',
      proposal: {
        number: 1,
        state: 'open',
        cause: 'trying 101 block no earlier than Tue 7 Jan 08:00',
        undoable: false,
        differences: [],
      },
    });
    expect(places(move?.proposal?.moves ?? [])).toEqual({
      block: '07 13:00',
      stone: '07 17:00',
      wall: '06 14:00',
    });
    expect(
      Object.fromEntries((move?.proposal?.jobEnds ?? []).map(({ job, after }) => [job.name, after])),
    ).toEqual({ Larch: '2031-01-07T21:00:00.000Z', Birch: '2031-01-06T18:00:00.000Z' });
    expect(await dates()).toEqual(['06 14:00 – 06 18:00', '06 18:00 – 07 14:00', '07 14:00 – 07 18:00']);
  });

  it('is offered exactly as the page previews it with the same engine', async () => {
    await commit(house);
    const { planInput } = await world.office.data<{ planInput: { json: string; startsAt: string } }>(
      '{ planInput { json startsAt } }',
    );
    const planner = Planner.of(JSON.parse(planInput.json) as PlanInput);
    const startAt = '2031-01-08T15:00:00Z';
    const at = slot((Date.parse(startAt) - Date.parse(planInput.startsAt)) / 900_000);
    const preview = planner.preview(moveChanges(planner.input, { phaseId: block.id, way: 'notBefore', at }));
    const { move } = await propose(block, startAt);
    const offered = [...(move?.proposal?.differences ?? []), ...(move?.proposal?.moves ?? [])];
    expect(offered).toHaveLength(3);
    for (const [phase, name] of [
      [block, 'block'],
      [stone, 'stone'],
      [wall, 'wall'],
    ] as const) {
      const start = preview.phases.find(({ id }) => id === phase.id)?.start ?? 0;
      const previewed = new Date(Date.parse(planInput.startsAt) + start * 900_000);
      expect(places(offered)[name]).toBe(short(previewed));
    }
  });

  it('moves the plan as it was offered, and nothing else, when it is accepted', async () => {
    await propose(block, '2031-01-07T13:00:00Z');
    expect(await decide('acceptProposal')).toMatchObject({ __typename: 'ProposalDecided' });
    expect(await newest()).toMatchObject({
      state: 'accepted',
      proposal: { state: 'accepted', undoable: true },
    });
    const after = ['07 13:00 – 07 17:00', '07 17:00 – 07 21:00', '06 14:00 – 06 18:00'];
    expect(await dates()).toEqual(after);
    await world.replan();
    expect(await dates()).toEqual(after);
    const { explain } = await world.office.data<{ explain: { text: string }[] }>(
      'query($phaseId: ID!) { explain(phaseId: $phaseId) { text } }',
      { phaseId: block.id },
    );
    expect(explain[0]?.text).toBe('The office has set that block starts no earlier than Tue 7 Jan 08:00.');
  });

  it('moves the promises with it, and says which', async () => {
    await commit(house);
    const { move } = await propose(block, '2031-01-07T13:00:00Z');
    expect(places(move?.proposal?.differences ?? [])).toEqual({ block: '07 13:00', stone: '07 17:00' });
    expect(await promised(block)).toBe('06 14:00 – 06 18:00');
    await decide('acceptProposal');
    expect([await promised(block), await promised(stone)]).toEqual([
      '07 13:00 – 07 17:00',
      '07 17:00 – 07 21:00',
    ]);
    expect(await dates()).toEqual(['07 13:00 – 07 17:00', '07 17:00 – 07 21:00', '06 14:00 – 06 18:00']);
    const open = await world.office.data('{ proposals(state: open) { edges { node { number } } } }');
    expect(open).toEqual({ proposals: { edges: [] } });
  });

  it('pulls a promised phase forward, which the plan never does by itself', async () => {
    await world.office.change('commitPhase', {
      phaseId: wall.id,
      startAt: '2031-01-09T13:00:00Z',
      finishAt: '2031-01-09T17:00:00Z',
    });
    expect(await world.dates(wall)).toBe('09 13:00 – 09 17:00');
    await propose(wall, '2031-01-07T15:00:00Z');
    await decide('acceptProposal');
    expect([await world.dates(wall), await promised(wall)]).toEqual([
      '07 15:00 – 07 19:00',
      '07 15:00 – 07 19:00',
    ]);
  });

  it('may fix the start: others go round it', async () => {
    await propose(wall, '2031-01-06T14:00:00Z', { way: 'fixed' });
    await decide('acceptProposal');
    expect(await dates()).toEqual(['06 18:00 – 07 14:00', '07 14:00 – 07 18:00', '06 14:00 – 06 18:00']);
    const row = await world.db.phase.findUniqueOrThrow({ where: { id: wall.id } });
    expect([row.pinnedStart?.toISOString(), row.notBefore]).toEqual(['2031-01-06T14:00:00.000Z', null]);
  });

  it('may give the phase to another crew', async () => {
    const crewId = await world.crew('Setters', ['mason']);
    await propose(wall, '2031-01-07T13:00:00Z', { crewId });
    await decide('acceptProposal');
    expect(await world.planned(wall)).toMatchObject({ crewId });
    expect(await world.dates(wall)).toBe('07 13:00 – 07 17:00');
  });

  it('ends at once, with a word, when it moves nothing', async () => {
    const { move } = await propose(wall, '2031-01-06T15:00:00Z');
    expect(move).toMatchObject({ state: 'offered' });
    const { move: none } = await propose(stone, '2031-01-06T14:00:00Z');
    expect(none).toMatchObject({
      state: 'unchanged',
      message:
        'stone stays where it is: what binds it there is stronger, or it starts no earlier than that already.',
      proposal: null,
    });
  });

  it('gives way to the next one that is tried', async () => {
    const { move: first } = await propose(block, '2031-01-07T13:00:00Z');
    await propose(block, '2031-01-08T13:00:00Z');
    const { proposedMove } = await world.office.data<{ proposedMove: Move }>(
      `query($id: ID!) { proposedMove(id: $id) ${MOVE} }`,
      { id: first?.id },
    );
    expect(proposedMove).toMatchObject({
      state: 'dropped',
      message: 'Another move was tried in its place.',
      proposal: { number: 1, state: 'superseded' },
    });
    expect(await newest()).toMatchObject({ state: 'offered', proposal: { number: 2, state: 'open' } });
  });

  it('stays in step with the facts, and ends when it can no longer be made', async () => {
    await propose(block, '2031-01-07T13:00:00Z');
    await world.replan();
    expect((await newest()).proposal?.number).toBe(1);
    await hold('2031-01-07T13:00:00Z', '2031-01-07T15:00:00Z');
    const again = await newest();
    expect(again.proposal).toMatchObject({ number: 2, state: 'open' });
    expect(places(again.proposal?.moves ?? [])['block']).toBe('07 15:00');
    service.setClock('2031-01-07T16:00:00Z');
    await world.replan();
    expect(await newest()).toMatchObject({
      state: 'outdated',
      message: 'The start that was tried has passed. Try another one.',
      proposal: { state: 'superseded' },
    });
  });

  it('ends when its phase begins', async () => {
    await propose(stone, '2031-01-08T13:00:00Z');
    await world.db.phase.update({
      where: { id: stone.id },
      data: {
        state: 'started',
        actualStart: new Date('2031-01-06T14:00:00Z'),
        actualCrewId: world.masons,
      },
    });
    await world.replan();
    expect(await newest()).toMatchObject({ state: 'outdated', message: expect.stringMatching(/is started/) });
  });

  it('changes nothing when it is dropped', async () => {
    await propose(block, '2031-01-07T13:00:00Z');
    await decide('dropProposal');
    expect(await newest()).toMatchObject({ state: 'dropped', proposal: { state: 'dropped' } });
    expect(await dates()).toEqual(['06 14:00 – 06 18:00', '06 18:00 – 07 14:00', '07 14:00 – 07 18:00']);
  });

  it('stands beside the proposal that follows the plan, which is decided by itself', async () => {
    await commit(house);
    await hold('2031-01-06T14:00:00Z', '2031-01-06T16:00:00Z');
    await propose(wall, '2031-01-08T13:00:00Z');
    const { board } = await world.office.data<{ board: { openProposal: { cause: string } } }>(
      '{ board(from: "2031-01-06T00:00:00Z", to: "2031-01-10T00:00:00Z") { openProposal { cause } } }',
    );
    expect(board.openProposal.cause).toBe('weather hold called');
    expect(await newest()).toMatchObject({ state: 'offered', proposal: { state: 'open' } });
  });

  describe('once accepted', () => {
    const before = ['06 14:00 – 06 18:00', '06 18:00 – 07 14:00', '07 14:00 – 07 18:00'];

    it('is undone: the plan and the promises are as before, and promised anew', async () => {
      await commit(house);
      await propose(block, '2031-01-07T13:00:00Z');
      await decide('acceptProposal');
      expect(await decide('undoProposal')).toMatchObject({ __typename: 'ProposalDecided' });
      expect(await dates()).toEqual(before);
      expect([await promised(block), await promised(stone), await promised(wall)]).toEqual([
        '06 14:00 – 06 18:00',
        '06 18:00 – 07 14:00',
        'nothing',
      ]);
      expect(await newest()).toMatchObject({
        state: 'undone',
        proposal: { state: 'undone', undoable: false },
      });
      const row = await world.db.phase.findUniqueOrThrow({ where: { id: block.id } });
      expect(row.notBefore).toBeNull();
      expect(await world.db.commitment.count({ where: { phaseId: block.id, state: 'released' } })).toBe(2);
      expect(await decide('undoProposal')).toMatchObject({ code: 'UndoRefused' });
    });

    it('is not undone after the plan has gone on', async () => {
      await propose(block, '2031-01-07T13:00:00Z');
      await decide('acceptProposal');
      await hold('2031-01-07T13:00:00Z', '2031-01-07T15:00:00Z');
      expect((await newest()).proposal?.undoable).toBe(false);
      expect(await decide('undoProposal')).toMatchObject({
        code: 'UndoRefused',
        message: 'The plan or its promises have gone on since. Try another move instead.',
      });
      expect(await world.dates(block)).toBe('07 15:00 – 07 19:00');
    });

    it('is not undone after something was promised, a promise was taken back, or its start has passed', async () => {
      await commit(house);
      await propose(block, '2031-01-07T13:00:00Z');
      await decide('acceptProposal');
      await world.office.change('releaseCommitment', { phaseId: stone.id });
      expect(await decide('undoProposal')).toMatchObject({ code: 'UndoRefused' });

      await world.office.change('commitPhase', { phaseId: stone.id });
      await propose(block, '2031-01-08T13:00:00Z');
      await decide('acceptProposal');
      service.setClock('2031-01-06T14:15:00Z');
      await commit(other);
      expect(await decide('undoProposal')).toMatchObject({ code: 'UndoRefused' });
      service.setClock('2031-01-06T14:00:00Z');
    });

    it('is not undone when that would promise a start that has passed', async () => {
      await commit(house);
      await propose(block, '2031-01-07T13:00:00Z');
      await decide('acceptProposal');
      service.setClock('2031-01-06T14:05:00Z');
      expect(await decide('undoProposal')).toMatchObject({
        code: 'UndoRefused',
        message: expect.stringMatching(/has passed|have gone on/),
      });
    });
  });

  it('of the promises that followed the plan can be undone as well', async () => {
    await commit(house);
    await hold('2031-01-06T14:00:00Z', '2031-01-06T16:00:00Z');
    const open = await world.office.data<{ proposals: { edges: { node: { id: string } }[] } }>(
      '{ proposals(state: open) { edges { node { id } } } }',
    );
    const proposalId = open.proposals.edges[0]?.node.id;
    await world.office.change('acceptProposal', { proposalId });
    expect(await promised(block)).toBe('06 16:00 – 06 20:00');
    expect(await world.office.change('undoProposal', { proposalId })).toMatchObject({
      __typename: 'ProposalDecided',
    });
    expect(await promised(block)).toBe('06 14:00 – 06 18:00');
    expect(await world.dates(block)).toBe('06 16:00 – 06 20:00');
  });

  it('is refused for what has begun, off the quarter hour, in the past, by an old revision, by others', async () => {
    const stranger = await makeWorld(service);
    expect(await propose(block, '2031-01-07T13:05:00Z')).toMatchObject({ code: 'InvalidInput' });
    expect(await propose(block, '2031-01-06T13:00:00Z')).toMatchObject({ code: 'InvalidInput' });
    expect(await propose(block, '2031-01-07T13:00:00Z', { crewId: world.diggers })).toMatchObject({
      code: 'InvalidInput',
    });
    expect(await propose(block, '2031-01-07T13:00:00Z', { revision: 99 })).toMatchObject({
      code: 'StaleRevision',
    });
    const input = { phaseId: block.id, startAt: '2031-01-07T13:00:00Z' };
    expect(await stranger.office.change('proposeMove', input)).toMatchObject({ code: 'NotFound' });
    await expect(world.foreman.change('proposeMove', input)).rejects.toThrow(/needs the role office/);
    await world.db.phase.update({
      where: { id: block.id },
      data: { state: 'started', actualStart: new Date() },
    });
    expect(await propose(block, '2031-01-07T13:00:00Z')).toMatchObject({ code: 'WrongState' });
  });
});
