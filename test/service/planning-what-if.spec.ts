import { randomUUID } from 'node:crypto';
import { afterAll, beforeAll, beforeEach, describe, expect, it } from '@jest/globals';
import { startService, type TestService } from '../support/service.js';
import { type ChainedJob, get, makeWorld, type PlanningWorld } from './planning-world.js';

/*
 * Monday 6 January 2031, 09:00 in New York; days of eight hours from 08:00 (13:00Z). One mason crew has two jobs: a day and a half of work in
 * two phases, and behind it four hours that are due on Wednesday evening.
 */

interface Answer {
  readonly code?: string;
  readonly message?: string;
  readonly jobs: {
    readonly job: { readonly name: string };
    readonly laterMinutes: number | null;
    readonly dueMissedAfter: boolean;
  }[];
  readonly phases: {
    readonly phase: { readonly name: string };
    readonly startBefore: string | null;
    readonly startAfter: string | null;
    readonly crewAfter: { readonly name: string } | null;
    readonly byExtraCrew: boolean;
  }[];
  readonly conflictsAdded: { readonly kind: string; readonly text: string }[];
  readonly conflictsRemoved: { readonly kind: string }[];
}

const SHOWN = `__typename ... on Refusal { code message } ... on Supposed {
  jobs { job { name } laterMinutes dueMissedAfter }
  phases { phase { name } startBefore startAfter crewAfter { name } byExtraCrew }
  conflictsAdded { kind text } conflictsRemoved { kind } }`;

describe('what if', () => {
  let service: TestService;
  let world: PlanningWorld;
  let long: ChainedJob;
  let short: ChainedJob;

  beforeAll(async () => {
    service = await startService();
  });
  beforeEach(async () => {
    service.setClock('2031-01-06T14:00:00Z');
    world = await makeWorld(service);
    long = await world.chain('Long', { block: { hours: 8 }, stone: { hours: 4 } }, { priority: 1 });
    short = await world.chain(
      'Short',
      { step: { hours: 4 } },
      { priority: 5, dueAt: new Date('2031-01-08T21:00:00Z') },
    );
    await world.replan();
  });
  afterAll(() => service.stop());

  const ask = async (input: object, as = world.office): Promise<Answer> => {
    const { whatIf } = await as.data<{ whatIf: Answer }>(
      `query($input: WhatIfInput!) { whatIf(input: $input) { ${SHOWN} } }`,
      { input },
    );
    return whatIf;
  };
  const later = ({ jobs }: Answer) =>
    Object.fromEntries(jobs.map(({ job, laterMinutes }) => [job.name, laterMinutes]));
  const dates = () =>
    Promise.all(
      [...Object.values(long.phases), ...Object.values(short.phases)].map((phase) => world.dates(phase)),
    );

  it('a phase takes longer: every job is told, moved or not, and nothing is written', async () => {
    const before = await dates();
    const answer = await ask({ delay: { phaseId: get(short.phases, 'step').id, minutes: 60 } });
    expect(later(answer)).toEqual({ Long: 0, Short: 60 });
    expect(answer.conflictsAdded).toEqual([]);
    const behind = await ask({ delay: { phaseId: get(long.phases, 'block').id, minutes: 480 } });
    expect(later(behind)).toEqual({ Long: 24 * 60, Short: 24 * 60 });
    expect(behind.phases.map(({ phase }) => phase.name).sort()).toEqual(['block', 'step', 'stone']);
    expect(await dates()).toEqual(before);
    expect(
      await world.db.journalEntry.count({ where: { companyId: world.companyId, action: 'what if' } }),
    ).toBe(0);
  });

  it('there is one more crew: the job that only waited for hands comes forward, by the extra crew', async () => {
    const answer = await ask({ extraCrew: { crewId: world.masons } });
    expect(later(answer).Long).toBe(0);
    expect(later(answer).Short).toBeLessThan(0);
    expect(answer.phases).toMatchObject([
      { phase: { name: 'step' }, startAfter: '2031-01-06T14:00:00.000Z', crewAfter: null, byExtraCrew: true },
    ]);
  });

  it('days are lost: a promise breaks, and it says so in words', async () => {
    const lostTime = { from: '2031-01-06T05:00:00Z', to: '2031-01-09T05:00:00Z' };
    const answer = await ask({ lostTime });
    expect(answer.jobs.find(({ job }) => job.name === 'Short')?.dueMissedAfter).toBe(true);
    expect(answer.conflictsAdded).toMatchObject([{ kind: 'dueMissed' }]);
    expect(answer.conflictsAdded[0]?.text).toContain('is due Wed 8 Jan 16:00');
    expect(later(await ask({ lostTime: { ...lostTime, crewId: world.diggers } }))).toEqual({
      Long: 0,
      Short: 0,
    });
    const twice = await ask({ lostTime, extraCrew: { crewId: world.masons } });
    expect(later(twice).Short).toBeLessThan(later(answer).Short ?? 0);
  });

  it('a start is tried: what it pushes away moves, and the fixed start is not kept', async () => {
    const start = { phaseId: get(short.phases, 'step').id, startAt: '2031-01-06T14:00:00Z' };
    const answer = await ask({ start });
    // Four hours of work less on Monday: the stone ends on Wednesday at nine instead of Tuesday at one.
    expect(later(answer)).toMatchObject({ Long: 20 * 60 });
    expect(later(answer).Short).toBeLessThan(0);
    expect((await world.db.phase.findUniqueOrThrow({ where: { id: start.phaseId } })).pinnedStart).toBeNull();
  });

  it('a phase goes unprotected: its blankets serve another', async () => {
    const pool = await world.db.equipmentPool.create({
      data: { companyId: world.companyId, name: 'Blankets', kind: 'blanket', unit: 'sheet', quantity: 1 },
    });
    for (const phase of [get(long.phases, 'block'), get(short.phases, 'step')]) {
      await world.db.equipmentHold.create({
        data: {
          companyId: world.companyId,
          poolId: pool.id,
          fromPhaseId: phase.id,
          untilPhaseId: phase.id,
          quantity: 1,
        },
      });
    }
    await world.crew('More masons', ['mason']);
    await world.replan();
    const answer = await ask({ withoutProtection: { phaseId: get(long.phases, 'block').id } });
    expect(later(answer).Short).toBeLessThan(0);
    expect(await world.db.equipmentHold.count({ where: { poolId: pool.id } })).toBe(2);
  });

  it('nothing is supposed, or what cannot be: every fault is said', async () => {
    expect(await ask({})).toMatchObject({
      code: 'InvalidInput',
      message: expect.stringContaining('Suppose something'),
    });
    const step = get(short.phases, 'step').id;
    const faults = await ask({
      delay: { phaseId: step, minutes: 5 },
      lostTime: { from: '2031-01-09T05:00:00Z', to: '2031-01-06T05:00:00Z' },
      start: { phaseId: step, startAt: '2031-01-01T14:00:00Z' },
    });
    expect(faults.code).toBe('InvalidInput');
    for (const path of ['delay.minutes', 'lostTime.to', 'start.startAt'])
      expect(faults.message).toContain(path);
    expect(
      await ask({ lostTime: { from: '2030-01-01T00:00:00Z', to: '2030-01-02T00:00:00Z' } }),
    ).toMatchObject({ code: 'InvalidInput' });
  });

  it('names nobody, or somebody of another company: the two answer alike', async () => {
    const other = await makeWorld(service);
    const theirs = await other.chain('Theirs', { block: {} });
    for (const phaseId of [randomUUID(), 'no id', get(theirs.phases, 'block').id]) {
      expect(await ask({ delay: { phaseId, minutes: 60 } })).toMatchObject({
        code: 'NotFound',
        message: expect.stringContaining('no such phase'),
      });
    }
    for (const crewId of [randomUUID(), other.masons]) {
      expect(await ask({ extraCrew: { crewId } })).toMatchObject({
        code: 'NotFound',
        message: expect.stringContaining('no such crew'),
      });
    }
    await expect(ask({ extraCrew: { crewId: world.masons } }, world.foreman)).rejects.toThrow();
  });
});
