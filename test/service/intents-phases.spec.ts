import { randomUUID } from 'node:crypto';
import { afterAll, beforeAll, beforeEach, describe, expect, it } from '@jest/globals';
import type { Phase } from '../../src/generated/prisma/client.js';
import type { ApiClient } from '../support/api-client.js';
import { RunningJob, type StepOutcome } from '../support/running-job.js';
import { startService, type TestService } from '../support/service.js';

/* Intents about single fields of a phase: applied, already applied, in conflict with both values, or refused. */

const NOW = '2031-01-06T20:00:00Z';
const EIGHT = '2031-01-06T13:00:00.000Z';
const TEN_PAST = '2031-01-06T13:10:00.000Z';
const NOON = '2031-01-06T17:00:00.000Z';
const BOTH = '... on FieldConflict { field theirs mine standing changedBy changedAt currentRevision }';
const SETTLED = '... on PhaseSettled { answer phase { state revision } }';

describe('an intent about a phase', () => {
  let service: TestService;
  let job: RunningJob;
  let dig: Phase;

  beforeAll(async () => {
    service = await startService({ now: NOW });
  });
  beforeEach(async () => {
    service.setClock(NOW);
    job = await RunningJob.make(service);
    dig = await job.phase('Dig', { requiredCrewId: job.mason.id });
  });
  afterAll(() => service.stop());

  const sent = (name: string, input: object, who: ApiClient = job.foreman): Promise<StepOutcome> =>
    who.change(name, { fromOutbox: true, ...input }, `${SETTLED} ${BOTH}`);
  const mark = (what: 'start' | 'finish', at: string, more: object = {}, who?: ApiClient) =>
    sent('markPhase', { phaseId: dig.id, mark: what, at, revision: 1, ...more }, who);
  const note = (text: string | null, more: object = {}, who?: ApiClient) =>
    sent('notePhase', { phaseId: dig.id, note: text, revision: 1, ...more }, who);

  it('is applied, and the next one made on the same phone is no conflict with it', async () => {
    expect(await mark('start', EIGHT)).toEqual({
      __typename: 'PhaseSettled',
      answer: 'applied',
      phase: { state: 'started', revision: 2 },
    });
    expect(await mark('finish', NOON)).toMatchObject({ answer: 'applied', phase: { state: 'done' } });
    const row = await job.phaseNow(dig);
    expect([row.actualStart, row.actualFinish]).toEqual([new Date(EIGHT), new Date(NOON)]);
  });

  it('is told as applied once more when its copy comes, with one line in the journal', async () => {
    const clientKey = randomUUID();
    const first = await mark('start', EIGHT, { clientKey });
    expect(await mark('start', EIGHT, { clientKey })).toEqual(first);
    const lines = await service.database.journalEntry.count({ where: { subjectId: dig.id } });
    expect(lines).toBe(1);
  });

  it('is already applied when somebody else made it so', async () => {
    await mark('start', EIGHT, {}, job.office);
    expect(await mark('start', EIGHT)).toMatchObject({ answer: 'alreadyApplied', phase: { revision: 2 } });
  });

  it('does not mind that another field was changed', async () => {
    await note('Rock at 3 ft', {}, job.office);
    expect(await mark('start', EIGHT)).toMatchObject({ answer: 'applied' });
    expect(await job.phaseNow(dig)).toMatchObject({ state: 'started' });
  });

  it('is a conflict with both values and whose the other one is, and writes nothing', async () => {
    await mark('start', EIGHT, {}, job.office);
    expect(await mark('start', TEN_PAST)).toEqual({
      __typename: 'FieldConflict',
      code: 'FieldConflict',
      message: expect.stringContaining('Choose one of the two'),
      field: 'start of Dig',
      theirs: 'Mon 6 Jan 08:00',
      mine: 'Mon 6 Jan 08:10',
      standing: EIGHT,
      changedBy: job.people.office.name,
      changedAt: '2031-01-06T20:00:00.000Z',
      currentRevision: 2,
    });
    expect((await job.phaseNow(dig)).actualStart).toEqual(new Date(EIGHT));
  });

  it('takes the place of the other value once the person has seen and chosen', async () => {
    await mark('start', EIGHT, {}, job.office);
    const conflict = await mark('start', TEN_PAST);
    const chosen = await mark('start', TEN_PAST, {
      seen: conflict['standing'],
      revision: conflict['currentRevision'],
    });
    expect(chosen).toMatchObject({ answer: 'applied', phase: { state: 'started' } });
    expect((await job.phaseNow(dig)).actualStart).toEqual(new Date(TEN_PAST));
  });

  it('is answered as before by a copy of a conflict, though the other value is gone by then', async () => {
    await mark('start', EIGHT, {}, job.office);
    const clientKey = randomUUID();
    const first = await mark('start', TEN_PAST, { clientKey });
    await job.office.change('putBackPhase', { phaseId: dig.id, reason: 'Not started' });
    expect(await mark('start', TEN_PAST, { clientKey })).toEqual(first);
    expect(await job.phaseNow(dig)).toMatchObject({ state: 'waiting' });
  });

  it('is refused with what stands in the way, and a late copy stays refused', async () => {
    const gate = await job.holdPoint(dig, 'mark-out-seen');
    const clientKey = randomUUID();
    expect(await mark('start', EIGHT, { clientKey })).toMatchObject({ code: 'HoldPointOpen' });
    await job.foreman.change('releaseHoldPoint', {
      holdPointId: gate.id,
      values: [{ itemId: 'seen', confirmed: true }],
    });
    expect(await mark('start', EIGHT, { clientKey })).toMatchObject({ code: 'HoldPointOpen' });
    expect(await job.phaseNow(dig)).toMatchObject({ state: 'waiting' });
    expect(await mark('start', EIGHT)).toMatchObject({ answer: 'applied' });
  });

  it('may come from a clock that runs a little ahead, and then means now', async () => {
    expect(await mark('start', '2031-01-06T20:04:59Z')).toMatchObject({ answer: 'applied' });
    expect((await job.phaseNow(dig)).actualStart).toEqual(new Date(NOW));
    expect(await mark('finish', '2031-01-06T20:05:01Z')).toMatchObject({
      code: 'InvalidInput',
      message: expect.stringContaining('lies in the future'),
    });
  });

  it('three weeks old and of a revision long gone: both values, no loss', async () => {
    await note('Rock at 3 ft', {}, job.office);
    await note('Rock at 3 ft, breaker ordered', { seen: 'Rock at 3 ft' }, job.office);
    service.setClock('2031-01-27T20:00:00Z');
    const foreman = await service.signIn(job.people.foreman.email, 'granite under gravel');
    expect(await note('Water in the hole', { seen: null, revision: 1 }, foreman)).toMatchObject({
      code: 'FieldConflict',
      theirs: '“Rock at 3 ft, breaker ordered”',
      mine: '“Water in the hole”',
      changedBy: job.people.office.name,
    });
    expect(await job.phaseNow(dig)).toMatchObject({ note: 'Rock at 3 ft, breaker ordered' });
  });

  it('three weeks old, applied then and never answered: its key is still known', async () => {
    const clientKey = randomUUID();
    const first = await note('Water in the hole', { clientKey });
    await note('Pumped out', { seen: 'Water in the hole' }, job.office);
    service.setClock('2031-01-27T20:00:00Z');
    const foreman = await service.signIn(job.people.foreman.email, 'granite under gravel');
    expect(await note('Water in the hole', { clientKey }, foreman)).toMatchObject({
      answer: first['answer'],
    });
    expect(await job.phaseNow(dig)).toMatchObject({ note: 'Pumped out' });
  });

  it('takes a note away, and refuses one that is too long', async () => {
    await note('Rock at 3 ft');
    expect(await note('  ', { seen: 'Rock at 3 ft' })).toMatchObject({ answer: 'applied' });
    expect(await job.phaseNow(dig)).toMatchObject({ note: null });
    expect(await note('x'.repeat(2001))).toMatchObject({ code: 'InvalidInput' });
  });

  it('tells how much is left, in conflict with another who told otherwise', async () => {
    const tell = (minutes: number, more: object = {}, who?: ApiClient) =>
      sent('tellRemaining', { phaseId: dig.id, remainingMinutes: minutes, revision: 1, ...more }, who);
    expect(await tell(90)).toMatchObject({ code: 'WrongState' });
    await mark('start', EIGHT);
    expect(await tell(90, {}, job.office)).toMatchObject({ answer: 'applied' });
    expect(await tell(150, { revision: 2 })).toMatchObject({
      code: 'FieldConflict',
      theirs: '1 h 30 min',
      mine: '2 h 30 min',
      standing: '90',
    });
    expect(await tell(150, { seen: 90, revision: 2 })).toMatchObject({ answer: 'applied' });
    expect(await job.phaseNow(dig)).toMatchObject({ remainingMinutes: 150 });
  });

  describe('that corrects a moment', () => {
    it('never puts a start after its finish or its placement, nor before what must come first', async () => {
      const first = await job.phase('Strip', { requiredCrewId: job.mason.id });
      await job.link(first, dig);
      await job.run(first, '2031-01-06T13:00:00Z', '2031-01-06T13:05:00Z');
      await mark('start', TEN_PAST);
      const correct = (at: string) => mark('start', at, { seen: TEN_PAST, revision: 2 });
      expect(await correct('2031-01-06T13:04:00Z')).toMatchObject({ code: 'BeforePredecessor' });
      await mark('finish', NOON);
      expect(await correct('2031-01-06T17:01:00Z')).toMatchObject({
        code: 'InvalidInput',
        message: expect.stringContaining('Mon 6 Jan 12:00'),
      });
      expect(await correct('2031-01-06T13:05:00Z')).toMatchObject({ answer: 'applied' });
    });

    it('never puts a finish before its start or after the start of what waited for it', async () => {
      const next = await job.phase('Form', { requiredCrewId: job.mason.id });
      await job.link(dig, next);
      await job.run(dig, EIGHT, NOON);
      await job.start(next, { at: '2031-01-06T18:00:00Z' });
      const correct = (at: string) => mark('finish', at, { seen: NOON, revision: 3 });
      expect(await correct('2031-01-06T12:59:00Z')).toMatchObject({ code: 'InvalidInput' });
      expect(await correct('2031-01-06T18:01:00Z')).toMatchObject({ code: 'InvalidInput' });
      expect(await correct('2031-01-06T18:00:00Z')).toMatchObject({ answer: 'applied' });
      expect(
        await service.database.journalEntry.count({
          where: { action: 'phase finish corrected', subjectId: dig.id },
        }),
      ).toBe(1);
    });

    it('is refused in a cancelled job, and for a wait, which runs by itself', async () => {
      const wait = await job.wait('Cure', 1);
      await job.link(dig, wait);
      await job.run(dig, EIGHT, TEN_PAST);
      const row = await job.phaseNow(wait);
      expect(
        await sent('markPhase', { phaseId: wait.id, mark: 'start', at: NOON, seen: row.actualStart }),
      ).toMatchObject({ code: 'WrongState' });
      await service.database.job.update({ where: { id: job.job.id }, data: { state: 'cancelled' } });
      expect(await mark('start', '2031-01-06T13:01:00Z', { seen: EIGHT, revision: 3 })).toMatchObject({
        code: 'WrongState',
      });
    });
  });
});
