import { afterAll, beforeAll, beforeEach, describe, expect, it } from '@jest/globals';
import { makeOffice, type Office } from '../support/office.js';
import { startService, type TestService } from '../support/service.js';

interface Outcome {
  __typename: string;
  message?: string;
  state?: string;
  what?: string;
  clearance?: {
    state: string;
    requestedAt: string | null;
    expectedAt: string | null;
    clearedAt: string | null;
    lapsesAt: string | null;
    reference: string | null;
  };
  faults?: { path: string; message: string }[];
}

const SELECT =
  '... on ClearanceChanged { clearance { state requestedAt expectedAt clearedAt lapsesAt reference job { id } } } ... on InvalidInput { faults { path message } } ... on WrongState { state } ... on NotFound { what }';
const NOW = '2031-01-06T14:00:00Z';

describe('clearances', () => {
  let service: TestService;
  let mine: Office;
  let theirs: Office;
  let jobId: string;

  beforeAll(async () => {
    service = await startService({ now: NOW });
    mine = await makeOffice(service);
    theirs = await makeOffice(service, 'Tamarack Stone');
  });
  afterAll(() => service.stop());

  beforeEach(async () => {
    service.setClock(NOW);
    await service.database.job.updateMany({
      where: { companyId: mine.company.id },
      data: { state: 'cancelled' },
    });
    jobId = await mine.enterJob();
  });

  const idOf = async (key: string) =>
    (await service.database.clearance.findFirstOrThrow({ where: { jobId, key } })).id;
  const change = (name: string, input: object) =>
    mine.client.change<Outcome>(name, input as Record<string, unknown>, SELECT);
  const gates = async (clearanceId: string) =>
    (await service.database.holdPoint.findMany({ where: { clearanceId } })).map(({ state }) => state);

  it('are expected their lead time after they are requested', async () => {
    const { clearance } = await change('requestClearance', { clearanceId: await idOf('mark-out') });
    // The default template's mark-out takes four days by the clock.
    expect(clearance).toMatchObject({
      state: 'requested',
      requestedAt: '2031-01-06T14:00:00.000Z',
      expectedAt: '2031-01-10T14:00:00.000Z',
    });
  });

  it('release their gates when recorded, and lapse after their life', async () => {
    const clearanceId = await idOf('mark-out');
    await change('requestClearance', { clearanceId });
    service.setClock('2031-01-09T15:00:00Z');
    expect(await gates(clearanceId)).toEqual(['open']);
    const { clearance } = await change('recordClearance', { clearanceId, reference: 'ticket 4471' });
    expect(clearance).toMatchObject({
      state: 'cleared',
      clearedAt: '2031-01-09T15:00:00.000Z',
      lapsesAt: '2031-02-08T15:00:00.000Z',
      reference: 'ticket 4471',
    });
    expect(await gates(clearanceId)).toEqual(['released']);
  });

  it('lapse on the day that the paper says, when it says one', async () => {
    const { clearance } = await change('recordClearance', {
      clearanceId: await idOf('permit'),
      clearedAt: '2031-01-05T12:00:00Z',
      lapsesAt: '2031-03-01T05:00:00Z',
    });
    expect(clearance).toMatchObject({
      clearedAt: '2031-01-05T12:00:00.000Z',
      lapsesAt: '2031-03-01T05:00:00.000Z',
    });
  });

  it('do not lapse when they are material on site', async () => {
    const { clearance } = await change('recordClearance', { clearanceId: await idOf('stone') });
    expect(clearance).toMatchObject({ state: 'cleared', lapsesAt: null });
  });

  it('go on standing while a renewal is asked for before they lapse', async () => {
    const clearanceId = await idOf('mark-out');
    await change('recordClearance', { clearanceId });
    service.setClock('2031-02-01T14:00:00Z');
    const { clearance } = await change('requestClearance', { clearanceId });
    expect(clearance).toMatchObject({
      state: 'cleared',
      expectedAt: '2031-02-05T14:00:00.000Z',
      lapsesAt: '2031-02-05T14:00:00.000Z',
    });
    expect(await gates(clearanceId)).toEqual(['released']);
  });

  it('close their gates again when asked for after they lapsed', async () => {
    const clearanceId = await idOf('mark-out');
    await service.database.clearance.update({ where: { id: clearanceId }, data: { lifeDays: 10 } });
    await change('recordClearance', { clearanceId });
    service.setClock('2031-01-16T14:00:00Z');
    const { clearance } = await change('requestClearance', { clearanceId });
    expect(clearance).toMatchObject({ state: 'requested', clearedAt: null, lapsesAt: null });
    expect(await gates(clearanceId)).toEqual(['open']);
  });

  it('move the plan: the dig waits for the mark-out', async () => {
    const clearanceId = await idOf('mark-out');
    await service.database.clearance.update({
      where: { id: clearanceId },
      data: { leadMinutes: 60 * 24 * 60 },
    });
    await change('requestClearance', { clearanceId });
    const dig = await service.database.plannedPhase.findFirstOrThrow({
      where: { phase: { jobId, key: 'dig' } },
    });
    expect(dig.startAt.getTime()).toBeGreaterThanOrEqual(Date.parse('2031-03-07T14:00:00Z'));
  });

  it('are not requested twice, nor when they stand for good', async () => {
    const clearanceId = await idOf('stone');
    await change('requestClearance', { clearanceId });
    expect(await change('requestClearance', { clearanceId })).toMatchObject({
      __typename: 'WrongState',
      state: 'requested',
    });
    await change('recordClearance', { clearanceId });
    expect(await change('requestClearance', { clearanceId })).toMatchObject({
      __typename: 'WrongState',
      state: 'cleared',
    });
  });

  it('refuse dates that cannot be', async () => {
    const clearanceId = await idOf('permit');
    const ahead = await change('recordClearance', { clearanceId, clearedAt: '2031-02-01T12:00:00Z' });
    expect(ahead.faults).toMatchObject([{ path: 'clearedAt' }]);
    const backwards = await change('recordClearance', { clearanceId, lapsesAt: '2031-01-01T12:00:00Z' });
    expect(backwards.faults).toMatchObject([{ path: 'lapsesAt' }]);
    expect(await gates(clearanceId)).not.toContain('released');
  });

  it('of another company are answered like missing ones', async () => {
    const foreign = await service.database.clearance.findFirstOrThrow({
      where: { jobId: await theirs.enterJob() },
    });
    for (const id of [foreign.id, '019b0000-0000-7000-8000-000000000000', '?']) {
      const data = await mine.client.data<{ clearance: null }>(
        'query($id: ID!) { clearance(id: $id) { id } }',
        { id },
      );
      expect(data.clearance).toBeNull();
      expect(await change('requestClearance', { clearanceId: id })).toMatchObject({
        __typename: 'NotFound',
        what: 'clearance',
      });
      expect(await change('recordClearance', { clearanceId: id })).toMatchObject({
        __typename: 'NotFound',
        what: 'clearance',
      });
    }
  });
});
