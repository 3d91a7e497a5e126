import { afterAll, beforeAll, beforeEach, describe, expect, it } from '@jest/globals';
import type { Phase } from '../../src/generated/prisma/client.js';
import { makeOffice, type Office } from '../support/office.js';
import { startService, type TestService } from '../support/service.js';

interface Outcome {
  __typename: string;
  message?: string;
  state?: string;
  what?: string;
  phase?: { id: string; state: string; origin: string; position: number };
  phases?: { id: string; key: string }[];
  holdPoints?: { key: string }[];
  link?: { id: string; kind: string; lagMinutes: number; lagIn: string; origin: string } | null;
  faults?: { path: string; message: string }[];
}

const COMMON =
  '... on InvalidInput { faults { path message } } ... on NotFound { what } ... on WrongState { state }';
const CYCLE = '... on LinkCycle { phases { id key } }';
const PHASE = '... on PhaseChanged { phase { id state origin position } }';
const LINK = '... on LinkChanged { job { id } link { id kind lagMinutes lagIn origin } }';
const SELECT: Record<string, string> = {
  addPhase: `${PHASE} ${CYCLE}`,
  dropPhase: `${PHASE} ... on HoldPointOpen { holdPoints { key } }`,
  addLink: `${LINK} ${CYCLE}`,
  removeLink: LINK,
};
const DRAIN = {
  key: 'drain',
  kind: 'drain',
  name: 'Drain beside the footing',
  hatch: 'earth',
  trade: 'labour',
  durationKind: 'work',
  durationMinutes: 240,
  continuity: 'interruptible',
};

describe('custom phases and links', () => {
  let service: TestService;
  let mine: Office;
  let theirs: Office;
  let jobId: string;
  let phases: Record<string, Phase>;

  beforeAll(async () => {
    service = await startService();
    mine = await makeOffice(service);
    theirs = await makeOffice(service, 'Tamarack Stone');
  });
  afterAll(() => service.stop());

  beforeEach(async () => {
    await service.database.job.updateMany({
      where: { companyId: mine.company.id },
      data: { state: 'cancelled' },
    });
    jobId = await mine.enterJob();
    phases = await phasesByKey();
  });

  const change = (name: string, input: object) =>
    mine.client.change<Outcome>(name, input as Record<string, unknown>, `${SELECT[name]} ${COMMON}`);
  const phasesByKey = async (): Promise<Record<string, Phase>> =>
    Object.fromEntries(
      (await service.database.phase.findMany({ where: { jobId } })).map((row) => [row.key, row]),
    );
  const id = (key: string): string => phases[key]?.id ?? `no phase ${key}`;
  const linksOf = async () => {
    const rows = await service.database.link.findMany({
      where: { jobId },
      include: { from: true, to: true },
    });
    return rows.map((row) => `${row.from.key} ${row.kind} ${row.to.key}`);
  };

  it('puts a phase between others, with finish-start links on both sides', async () => {
    const outcome = await change('addPhase', {
      jobId,
      ...DRAIN,
      after: [id('dig')],
      before: [id('footing-form')],
    });
    expect(outcome.phase).toMatchObject({ state: 'waiting', origin: 'custom' });
    expect(await linksOf()).toEqual(
      expect.arrayContaining(['dig finishStart drain', 'drain finishStart footing-form']),
    );
    const after = await phasesByKey();
    const order = Object.values(after)
      .sort((a, b) => a.position - b.position)
      .map(({ key }) => key);
    expect(order.slice(order.indexOf('dig'), order.indexOf('dig') + 3)).toEqual([
      'dig',
      'drain',
      'footing-form',
    ]);
  });

  it('moves the plan: what comes after the added phase starts after it', async () => {
    const { phase } = await change('addPhase', {
      jobId,
      ...DRAIN,
      after: [id('dig')],
      before: [id('footing-form')],
    });
    const planned = await service.database.plannedPhase.findMany({
      where: { phaseId: { in: [phase?.id ?? '', id('dig'), id('footing-form')] } },
    });
    const of = (phaseId: string | undefined) => planned.find((row) => row.phaseId === phaseId);
    expect(of(phase?.id)?.startAt.getTime()).toBeGreaterThanOrEqual(
      of(id('dig'))?.finishAt.getTime() ?? Infinity,
    );
    expect(of(id('footing-form'))?.startAt.getTime()).toBeGreaterThanOrEqual(
      of(phase?.id)?.finishAt.getTime() ?? Infinity,
    );
  });

  it('refuses a phase that would close a circle, naming the phases in it, and adds nothing', async () => {
    const outcome = await change('addPhase', {
      jobId,
      ...DRAIN,
      after: [id('footing-pour')],
      before: [id('dig')],
    });
    expect(outcome.__typename).toBe('LinkCycle');
    expect(outcome.phases?.map(({ key }) => key)).toEqual(['dig', 'footing-form', 'footing-pour']);
    expect(outcome.message).toContain('Drain beside the footing');
    expect((await phasesByKey())['drain']).toBeUndefined();
  });

  it.each([
    ['a key that is taken', { key: 'dig' }, 'key', 'already'],
    ['an unknown hatch', { hatch: 'tartan' }, 'hatch', 'earth'],
    ['work that nobody does', { trade: null }, 'trade', 'who does it'],
    ['a wait that somebody does', { durationKind: 'elapsed' }, 'trade', 'nobody'],
    ['minutes off the quarter', { durationMinutes: 50 }, 'durationMinutes', '15 minutes'],
    ['unknown weather limits', { weatherLimitKey: 'sunshine' }, 'weatherLimitKey', 'concrete'],
  ])('refuses %s, saying what to enter', async (_what, odd, path, hint) => {
    const outcome = await change('addPhase', { jobId, ...DRAIN, ...odd });
    expect(outcome.faults).toMatchObject([{ path, message: expect.stringContaining(hint) }]);
  });

  it('refuses to put a phase before one that has started', async () => {
    await service.database.phase.update({
      where: { id: id('demo') },
      data: { state: 'started', actualStart: new Date('2031-01-06T13:00:00Z') },
    });
    const outcome = await change('addPhase', { jobId, ...DRAIN, before: [id('demo')] });
    expect(outcome).toMatchObject({ __typename: 'WrongState', state: 'started' });
  });

  it('adds a link with a lag and removes it again', async () => {
    const added = await change('addLink', {
      fromId: id('demo'),
      toId: id('hand-over'),
      kind: 'finishStart',
      lagMinutes: 1440,
      lagIn: 'elapsed',
    });
    expect(added.link).toMatchObject({
      kind: 'finishStart',
      lagMinutes: 1440,
      lagIn: 'elapsed',
      origin: 'custom',
    });
    const removed = await change('removeLink', { linkId: added.link?.id });
    expect(removed).toMatchObject({ __typename: 'LinkChanged', link: null });
    expect(await linksOf()).not.toContain('demo finishStart hand-over');
  });

  it.each(['finishStart', 'startStart', 'finishFinish', 'startFinish'])(
    'refuses a %s link that closes a circle, naming the phases',
    async (kind) => {
      const outcome = await change('addLink', { fromId: id('footing-pour'), toId: id('dig'), kind });
      expect(outcome.__typename).toBe('LinkCycle');
      expect(outcome.phases?.map(({ key }) => key)).toEqual(['dig', 'footing-form', 'footing-pour']);
      expect(outcome.message).toContain('Dig to frost depth');
    },
  );

  it('refuses a link of a phase to itself, to another job, and one that is there already', async () => {
    const other = await service.database.phase.findFirstOrThrow({
      where: { jobId: await mine.enterJob('Second entry'), key: 'dig' },
    });
    for (const [fromId, toId] of [
      [id('dig'), id('dig')],
      [id('dig'), other.id],
    ]) {
      const outcome = await change('addLink', { fromId, toId, kind: 'finishStart' });
      expect(outcome.faults).toMatchObject([{ path: 'toId' }]);
    }
    const twice = await change('addLink', {
      fromId: id('dig'),
      toId: id('footing-form'),
      kind: 'finishStart',
    });
    expect(twice.faults).toMatchObject([{ path: 'kind', message: expect.stringContaining('already') }]);
  });

  it('drops a phase and lets what waited for it wait for what it waited for', async () => {
    await change('addPhase', { jobId, ...DRAIN, after: [id('dig')], before: [id('footing-form')] });
    const { link } = await change('addLink', {
      fromId: id('demo'),
      toId: (await phasesByKey())['drain']?.id,
      kind: 'startStart',
      lagMinutes: 60,
    });
    expect(link).toBeTruthy();
    const drain = (await phasesByKey())['drain'];
    const outcome = await change('dropPhase', { phaseId: drain?.id, reason: 'the ground drains by itself' });
    expect(outcome.phase?.state).toBe('dropped');
    const links = await linksOf();
    expect(links.filter((text) => text.includes('drain'))).toEqual([]);
    expect(links).toEqual(
      expect.arrayContaining(['dig finishStart footing-form', 'demo startStart footing-form']),
    );
    expect(await service.database.plannedPhase.count({ where: { phaseId: drain?.id ?? '' } })).toBe(0);
  });

  it('keeps equipment that was to stay until a dropped phase no longer than the phase that took it', async () => {
    const before = await service.database.equipmentHold.findFirstOrThrow({
      where: { from: { jobId, key: 'footing-pour' } },
      include: { until: true },
    });
    await service.database.holdPoint.deleteMany({ where: { phaseId: before.untilPhaseId } });
    const outcome = await change('dropPhase', {
      phaseId: before.untilPhaseId,
      reason: 'precast footing instead',
    });
    expect(outcome.phase?.state).toBe('dropped');
    expect(await service.database.equipmentHold.findUnique({ where: { id: before.id } })).toMatchObject({
      untilPhaseId: before.fromPhaseId,
    });
  });

  it('never drops a phase that carries an inspection or a cable reading', async () => {
    const inspected = await service.database.holdPoint.findMany({
      where: { jobId, kind: { in: ['inspection', 'reading'] } },
      include: { phase: true },
    });
    const carrying = [
      ...new Set(inspected.filter(({ phase }) => phase.kind !== 'hookup').map(({ phaseId }) => phaseId)),
    ];
    expect(carrying.length).toBeGreaterThan(3);
    for (const phaseId of carrying.slice(0, 4)) {
      const outcome = await change('dropPhase', { phaseId, reason: 'in a hurry' });
      expect(outcome.__typename).toBe('HoldPointOpen');
      expect(outcome.holdPoints?.length).toBeGreaterThan(0);
      expect(await service.database.phase.findUnique({ where: { id: phaseId } })).toMatchObject({
        state: 'waiting',
      });
    }
  });

  it('does not drop a phase under way, nor the hookup of a set', async () => {
    const hookup = await service.database.hookup.findFirstOrThrow({ where: { jobId } });
    expect(await change('dropPhase', { phaseId: hookup.phaseId, reason: 'no power' })).toMatchObject({
      __typename: 'WrongState',
    });
    await service.database.phase.update({
      where: { id: id('demo') },
      data: { state: 'started', actualStart: new Date('2031-01-06T13:00:00Z') },
    });
    expect(await change('dropPhase', { phaseId: id('demo'), reason: 'too late' })).toMatchObject({
      __typename: 'WrongState',
      state: 'started',
    });
  });

  it("answers another company's phases and links like missing ones", async () => {
    const foreignJob = await theirs.enterJob('Their entry');
    const phase = await service.database.phase.findFirstOrThrow({ where: { jobId: foreignJob, key: 'dig' } });
    const link = await service.database.link.findFirstOrThrow({ where: { jobId: foreignJob } });
    for (const foreign of [phase.id, '019b0000-0000-7000-8000-000000000000', 'nothing']) {
      const data = await mine.client.data<{ phase: null }>('query($id: ID!) { phase(id: $id) { id } }', {
        id: foreign,
      });
      expect(data.phase).toBeNull();
      expect(await change('dropPhase', { phaseId: foreign, reason: 'not ours' })).toMatchObject({
        __typename: 'NotFound',
      });
      expect(
        await change('addLink', { fromId: foreign, toId: id('dig'), kind: 'finishStart' }),
      ).toMatchObject({ __typename: 'NotFound' });
      expect(await change('addPhase', { jobId, ...DRAIN, after: [foreign] })).toMatchObject({
        __typename: 'NotFound',
      });
    }
    for (const foreign of [link.id, '019b0000-0000-7000-8000-000000000000', 'nothing']) {
      expect(await change('removeLink', { linkId: foreign })).toMatchObject({
        __typename: 'NotFound',
        what: 'link',
      });
    }
    expect(await service.database.link.findUnique({ where: { id: link.id } })).toEqual(link);
  });
});
