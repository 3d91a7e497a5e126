import { randomUUID } from 'node:crypto';
import { afterAll, beforeAll, beforeEach, describe, expect, it } from '@jest/globals';
import { INSPECTION_STEPS } from '../../src/inspections/inspection-states.js';
import { VisitingHours } from '../../src/inspections/visiting-hours.js';
import { RunningJob, type StepOutcome } from '../support/running-job.js';
import { startService, type TestService } from '../support/service.js';

/** Monday 6 January 2031, 09:00 in New York; the authority of the test visits 08:00 to 16:00 on weekdays. */
const NOW = '2031-01-06T14:00:00Z';

describe('an inspection', () => {
  let service: TestService;
  let job: RunningJob;
  let inspectionId: string;
  let holdPointId: string;

  beforeAll(async () => {
    service = await startService({ now: NOW });
  });
  beforeEach(async () => {
    service.setClock(NOW);
    job = await RunningJob.make(service);
    const made = await job.inspection(await job.phase('footing-pour'));
    inspectionId = made.inspection.id;
    holdPointId = made.holdPoint.id;
  });
  afterAll(() => service.stop());

  const CHANGED = `... on InspectionChanged {
    inspection { id state attempt requestedAt earliestVisit visitFrom visitTo resultAt inspector note revision }
    next { id state attempt previous { id } key phase { key } authority { name } }
  }`;
  const BOOKING = '... on NoticeTooShort { earliest } ... on OutsideVisitingHours { nextWindow }';
  const change = (name: string, input: object = {}): Promise<StepOutcome> =>
    job.office.change(
      name,
      { inspectionId, ...input },
      `${CHANGED} ... on WrongState { state } ${name === 'bookInspection' ? BOOKING : ''}`,
    );
  const window = (from: string, to: string) => ({ visitFrom: from, visitTo: to });
  const request = (at = NOW) => change('requestInspection', { at });
  const book = (from = '2031-01-07T15:00:00Z', to = '2031-01-07T16:00:00Z') =>
    change('bookInspection', window(from, to));
  const pass = (input: object = {}) => change('passInspection', { inspector: 'N. Elm', ...input });
  const fail = (input: object = {}) =>
    change('failInspection', { inspector: 'N. Elm', note: 'Bars lie on the ground', ...input });

  it('takes only the steps of its table', () => {
    expect(Object.entries(INSPECTION_STEPS).map(([step, { from }]) => [step, from])).toEqual([
      ['request', ['needed']],
      ['book', ['requested', 'booked']],
      ['pass', ['booked']],
      ['fail', ['booked']],
    ]);
  });

  it('is requested, booked and passed, and its pass opens the gate', async () => {
    expect(await request()).toMatchObject({
      inspection: {
        state: 'requested',
        requestedAt: '2031-01-06T14:00:00.000Z',
        earliestVisit: '2031-01-07T14:00:00.000Z',
      },
    });
    expect(await book()).toMatchObject({
      inspection: {
        state: 'booked',
        visitFrom: '2031-01-07T15:00:00.000Z',
        visitTo: '2031-01-07T16:00:00.000Z',
      },
    });
    service.setClock('2031-01-07T15:40:00Z');
    expect(await pass({ at: '2031-01-07T15:20:00Z', note: 'Good work' })).toMatchObject({
      inspection: {
        state: 'passed',
        resultAt: '2031-01-07T15:20:00.000Z',
        inspector: 'N. Elm',
        note: 'Good work',
        revision: 4,
      },
      next: null,
    });
    expect(await job.holdPointNow({ id: holdPointId })).toMatchObject({
      state: 'released',
      decidedAt: new Date('2031-01-07T15:20:00Z'),
    });
    const lines = await service.database.journalEntry.findMany({
      where: { subjectId: inspectionId },
      orderBy: { id: 'asc' },
    });
    expect(lines.map(({ action }) => action)).toEqual([
      'inspection requested',
      'inspection booked',
      'inspection passed',
    ]);
  });

  it('that fails is followed by a re-inspection which alone opens the gate', async () => {
    await request();
    await book();
    service.setClock('2031-01-07T15:40:00Z');
    const failed = await fail();
    expect(failed).toMatchObject({
      inspection: { state: 'failed', note: 'Bars lie on the ground' },
      next: {
        state: 'needed',
        attempt: 2,
        key: 'footing',
        previous: { id: inspectionId },
        phase: { key: 'footing-pour' },
        authority: { name: 'Building office' },
      },
    });
    const next = (failed['next'] as { id: string }).id;
    expect(await job.holdPointNow({ id: holdPointId })).toMatchObject({
      state: 'refused',
      inspectionId: next,
      reason: 'Bars lie on the ground',
    });
    expect(await pass()).toMatchObject({ code: 'WrongState', state: 'failed' });
    inspectionId = next;
    await request('2031-01-07T15:40:00Z');
    await book('2031-01-09T15:00:00Z', '2031-01-09T16:00:00Z');
    service.setClock('2031-01-09T15:30:00Z');
    expect(await pass()).toMatchObject({ inspection: { state: 'passed', attempt: 2 } });
    expect(await job.holdPointNow({ id: holdPointId })).toMatchObject({ state: 'released' });
  });

  describe('is refused', () => {
    it('each step that its state does not allow', async () => {
      for (const step of [book, pass, fail])
        expect(await step()).toMatchObject({ code: 'WrongState', state: 'needed' });
      await request();
      for (const step of [request, pass, fail])
        expect(await step()).toMatchObject({ code: 'WrongState', state: 'requested' });
    });

    it('a window inside the notice, and says the earliest that keeps notice and hours', async () => {
      // Asked Friday at noon: 24 hours later it is Saturday, so the first visit is on Monday at 08:00.
      service.setClock('2031-01-10T17:00:00Z');
      await request('2031-01-10T17:00:00Z');
      expect(await book('2031-01-11T16:00:00Z', '2031-01-11T17:00:00Z')).toMatchObject({
        code: 'NoticeTooShort',
        earliest: '2031-01-13T13:00:00.000Z',
      });
      expect(await book('2031-01-13T13:00:00Z', '2031-01-13T13:30:00Z')).toMatchObject({
        inspection: { state: 'booked' },
      });
    });

    it('a window outside the visiting hours, and says the next', async () => {
      await request();
      expect(await book('2031-01-08T20:30:00Z', '2031-01-08T21:30:00Z')).toMatchObject({
        code: 'OutsideVisitingHours',
        nextWindow: '2031-01-08T20:30:00.000Z',
      });
      expect(await book('2031-01-11T15:00:00Z', '2031-01-11T16:00:00Z')).toMatchObject({
        code: 'OutsideVisitingHours',
        nextWindow: '2031-01-13T13:00:00.000Z',
      });
    });

    it('a closed day of the authority', async () => {
      await service.database.authority.update({
        where: { id: job.authority.id },
        data: { closedDays: { '2031-01-09': [] } },
      });
      await request();
      expect(await book('2031-01-09T15:00:00Z', '2031-01-09T16:00:00Z')).toMatchObject({
        code: 'OutsideVisitingHours',
        nextWindow: '2031-01-10T13:00:00.000Z',
      });
    });

    it('a window that is shorter than a visit or ends before it begins', async () => {
      await request();
      expect(await book('2031-01-08T15:00:00Z', '2031-01-08T15:20:00Z')).toMatchObject({
        code: 'InvalidInput',
      });
      expect(await book('2031-01-08T15:00:00Z', '2031-01-08T14:00:00Z')).toMatchObject({
        code: 'InvalidInput',
      });
    });

    it('a result of the future, of before the window, of nobody, and a failure without a finding', async () => {
      await request();
      await book();
      expect(await pass({ at: '2031-01-07T15:20:00Z' })).toMatchObject({ code: 'InvalidInput' });
      service.setClock('2031-01-07T15:40:00Z');
      expect(await pass({ at: '2031-01-07T14:59:00Z' })).toMatchObject({ code: 'InvalidInput' });
      expect(await pass({ inspector: ' ' })).toMatchObject({ code: 'InvalidInput' });
      expect(await fail({ note: ' ' })).toMatchObject({ code: 'InvalidInput' });
      expect(await request('2031-01-08T14:00:00Z')).toMatchObject({ code: 'WrongState' });
    });

    it('a request dated in the future', async () => {
      expect(await request('2031-01-06T15:00:00Z')).toMatchObject({ code: 'InvalidInput' });
    });

    it('anything in a cancelled job', async () => {
      await service.database.job.update({ where: { id: job.job.id }, data: { state: 'cancelled' } });
      expect(await request()).toMatchObject({ code: 'WrongState', state: 'cancelled' });
    });
  });

  it('may be booked again when the authority moves its window', async () => {
    await request();
    await book();
    expect(await book('2031-01-08T15:00:00Z', '2031-01-08T16:00:00Z')).toMatchObject({
      inspection: { state: 'booked', visitFrom: '2031-01-08T15:00:00.000Z' },
    });
  });

  it('without an authority is booked at any time', async () => {
    await service.database.inspection.update({ where: { id: inspectionId }, data: { authorityId: null } });
    await request();
    expect(await book('2031-01-06T23:00:00Z', '2031-01-06T23:05:00Z')).toMatchObject({
      inspection: { state: 'booked' },
    });
  });

  it('lets a moment of the authority pass with it', async () => {
    const [wiring, moment] = [
      await job.phase('wiring'),
      await job.phase('rough-inspection', {
        trade: 'authority',
        durationKind: 'elapsed',
        durationMinutes: 0,
      }),
    ];
    await job.link(wiring, moment);
    const rough = await job.inspection(moment, 'rough');
    await job.run(wiring, '2031-01-06T10:00:00Z', '2031-01-06T12:00:00Z');
    expect(await job.phaseNow(moment)).toMatchObject({ state: 'waiting' });
    inspectionId = rough.inspection.id;
    await request();
    await book();
    service.setClock('2031-01-07T15:40:00Z');
    await pass({ at: '2031-01-07T15:20:00Z' });
    expect(await job.phaseNow(moment)).toMatchObject({
      state: 'done',
      actualStart: new Date('2031-01-07T15:20:00Z'),
      actualFinish: new Date('2031-01-07T15:20:00Z'),
    });
  });

  it('is listed by page and state', async () => {
    const rows = async (state: string) =>
      (
        await job.office.data<{ inspections: { edges: { node: { key: string } }[] } }>(
          'query($state: InspectionState) { inspections(first: 10, state: $state) { edges { node { key job { name } } } } }',
          { state },
        )
      ).inspections.edges.map(({ node }) => node.key);
    expect(await rows('needed')).toEqual(['footing']);
    await request();
    expect(await rows('needed')).toEqual([]);
    expect(await rows('requested')).toEqual(['footing']);
  });

  it('answers one key sent five times at once alike, and makes one re-inspection', async () => {
    await request();
    await book();
    service.setClock('2031-01-07T15:40:00Z');
    const clientKey = randomUUID();
    const answers = await Promise.all(Array.from({ length: 5 }, () => fail({ clientKey })));
    expect(new Set(answers.map((answer) => JSON.stringify(answer))).size).toBe(1);
    expect(await service.database.inspection.count({ where: { jobId: job.job.id } })).toBe(2);
  });

  it('answers a stale revision, and a foreign id like a missing one', async () => {
    expect(
      await job.office.change(
        'requestInspection',
        { inspectionId, revision: 5 },
        '... on StaleRevision { currentRevision }',
      ),
    ).toMatchObject({ code: 'StaleRevision', currentRevision: 1 });
    const other = await RunningJob.make(service);
    const foreign = await other.inspection(await other.phase('pour'));
    for (const id of [foreign.inspection.id, randomUUID(), 'x']) {
      inspectionId = id;
      expect(await request()).toMatchObject({ code: 'NotFound' });
      expect(await job.office.data('query($id: ID!) { inspection(id: $id) { id } }', { id })).toEqual({
        inspection: null,
      });
    }
  });

  it('counts visiting hours in the zone of the authority across a change of clocks', () => {
    // 9 March 2031: clocks go forward in New York; 08:00 there is 13:00Z on Friday and 12:00Z on Monday (IANA).
    const hours = new VisitingHours(job.authority, new Date('2031-03-07T00:00:00Z'));
    expect(hours.nextVisit(new Date('2031-03-07T10:00:00Z'))?.toISOString()).toBe('2031-03-07T13:00:00.000Z');
    expect(hours.nextVisit(new Date('2031-03-08T10:00:00Z'))?.toISOString()).toBe('2031-03-10T12:00:00.000Z');
  });
});
