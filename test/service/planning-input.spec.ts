import { afterAll, beforeAll, expect, it } from '@jest/globals';
import { applyChanges } from '../../shared/schedule/change.js';
import type { PlanInput } from '../../shared/schedule/model.js';
import { plan } from '../../shared/schedule/plan.js';
import { Planner } from '../../shared/schedule/planner.js';
import { startService, type TestService } from '../support/service.js';
import { get, makeWorld, type PlanningWorld, short } from './planning-world.js';

/* Monday 6 January 2031, 09:00 in New York (14:00Z); one mason crew from 13:00Z to 21:00Z. */

let service: TestService;
let world: PlanningWorld;

interface Handed {
  readonly planNumber: number;
  readonly startsAt: string;
  readonly slotMinutes: number;
  readonly json: string;
}

beforeAll(async () => {
  service = await startService();
  world = await makeWorld(service);
});
afterAll(() => service.stop());

it('a page is handed the input with which the same engine makes the same plan and the same preview', async () => {
  const ash = await world.chain('Ash', { block: {}, stone: {} }, { priority: 1 });
  await world.chain('Birch', { wall: {} }, { priority: 2, dueAt: new Date('2031-01-07T21:00:00Z') });
  await world.replan();
  await world.office.change('commitJob', { jobId: ash.job.id });
  const before = await world.planNumber();
  const { planInput } = await world.office.data<{ planInput: Handed }>(
    '{ planInput { planNumber startsAt slotMinutes json } }',
  );
  const input = JSON.parse(planInput.json) as PlanInput;
  const at = (slot: number | null) =>
    short(new Date(Date.parse(planInput.startsAt) + (slot ?? 0) * planInput.slotMinutes * 60_000));
  const planner = Planner.of(input);
  expect(planner.plan.phases).toHaveLength(3);
  for (const { id, start, finish } of planner.plan.phases)
    expect(`${at(start)} – ${at(finish)}`).toBe(await world.dates({ id } as never));
  const change = { kind: 'delay', phaseId: get(ash.phases, 'block').id, slots: 4 } as const;
  expect(planner.preview([change])).toEqual(plan(applyChanges(input, [change])));
  expect(planner.preview([change])).not.toEqual(planner.plan);
  expect([planInput.planNumber, await world.planNumber()]).toEqual([before, before]);
});
