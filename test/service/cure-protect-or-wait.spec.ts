import { afterAll, beforeAll, beforeEach, describe, expect, it } from '@jest/globals';
import type { Phase } from '../../src/generated/prisma/client.js';
import { RunningJob, type StepOutcome } from '../support/running-job.js';
import { startService, type TestService } from '../support/service.js';

/* Monday 6 January 2031, 09:00 in New York; crews work 08:00 to 16:00 (13:00Z to 21:00Z). */
const NOW = '2031-01-06T14:00:00Z';
const HOUR = 3_600_000;
const BEGIN = Date.parse('2031-01-06T13:00:00Z');

/** Two and a half days of 24 °F, then 50 °F to the end of the week. */
function frost(): string {
  const rows = Array.from({ length: 168 }, (_, hour) => {
    const at = new Date(BEGIN + hour * HOUR).toISOString();
    return `${at},${hour < 60 ? 24 : 50},5,0,0`;
  });
  return ['issued_at,2031-01-06T12:00Z', 'at,temperature_f,wind_mph,rain_chance_pct,rain_in', ...rows].join(
    '\n',
  );
}

describe('protect or wait', () => {
  let service: TestService;
  let job: RunningJob;
  let pour: Phase;
  let cure: Phase;
  let block: Phase;

  beforeAll(async () => {
    service = await startService({ now: NOW });
  });
  beforeEach(async () => {
    service.setClock(NOW);
    job = await RunningJob.make(service);
    pour = await job.phase('footing-pour', {
      hatch: 'concrete',
      weatherLimitKey: 'concrete',
      continuity: 'continuous',
    });
    cure = await job.wait('footing-cure', 12);
    block = await job.phase('block');
    await job.link(pour, cure);
    await job.link(cure, block);
    await job.strength(cure, pour);
    await job.equipment(5, []);
    for (const kind of ['enclosure', 'heater'])
      await job.office.change('setEquipment', { kind, name: kind, unit: 'piece', quantity: 1 });
    await job.office.change('uploadForecast', {
      siteId: job.site.id,
      source: 'test sheet',
      text: frost(),
      format: 'csv',
    });
  });
  afterAll(() => service.stop());

  const BRANCH = `branch placedAt curedAt jobFinish equipmentDays heatingHours weatherUnknown cautions protection { kinds }
    placing { ok limit mark } outlook { hoursToFirstFreeze method mark caution lowest { coldestF } freezes { at psi } }`;
  const ASK = `query($input: ProtectOrWaitInput!) { protectOrWait(input: $input) { cold coldRule phase { key }
    protect { ${BRANCH} } wait { ${BRANCH} } bare { freezes { at psi } } jobs { waitLaterMinutes job { number } } } }`;
  interface Branch {
    readonly placedAt: string;
    readonly curedAt: string;
    readonly jobFinish: string;
    readonly equipmentDays: number;
    readonly heatingHours: number;
    readonly cautions: string[];
    readonly outlook: { readonly lowest: { readonly coldestF: number }; readonly freezes: object | null };
  }
  interface Answer {
    readonly protect: Branch;
    readonly wait: Branch;
    readonly bare: { readonly freezes: { readonly psi: number } };
    readonly jobs: { readonly waitLaterMinutes: number }[];
  }
  const ask = async (more: object = {}): Promise<Answer> => {
    const input = { phaseId: pour.id, ...more };
    return (await job.office.data<{ protectOrWait: Answer }>(ASK, { input })).protectOrWait;
  };
  const choose = (branch: string, more: object = {}) =>
    job.office.change<StepOutcome>(
      'chooseProtection',
      { pour: { phaseId: pour.id }, branch, ...more },
      '... on ProtectionChosen { phase { id protectionChoice { branch reason protection { text } by { name } } } }',
    );
  const planned = (phase: Phase) =>
    service.database.plannedPhase.findUniqueOrThrow({ where: { phaseId: phase.id } });

  it('carries both through the plan: dates, equipment, heating, lowest temperature and cautions', async () => {
    const answer = await ask();
    expect(answer).toMatchObject({
      cold: true,
      coldRule: expect.stringContaining('ACI 306R-16'),
      phase: { key: 'footing-pour' },
      protect: {
        branch: 'protect',
        // Placed the same day: tent and blankets lift the limits that close the work.
        placedAt: '2031-01-06T18:00:00.000Z',
        heatingHours: 12,
        protection: { kinds: ['blanket', 'enclosure', 'heater'] },
        placing: { ok: true, mark: 'P', limit: expect.stringContaining('55 °F') },
        outlook: { freezes: null, mark: 'M', caution: expect.stringContaining('engineer') },
      },
      wait: { branch: 'wait', heatingHours: 0, equipmentDays: 0, protection: { kinds: [] } },
    });
    const { protect, wait, bare, jobs } = answer;
    // The frost lasts to 9 January 01:00Z; the crew works again at 13:00Z.
    expect(wait.placedAt >= '2031-01-09T13:00:00.000Z').toBe(true);
    expect(wait.outlook.freezes).toBeNull();
    expect(protect.outlook.lowest.coldestF).toBeGreaterThan(40);
    // Three pieces (a blanket, the tent, its heater) from the start of the pour to the end of its cure.
    const days = (Date.parse(protect.curedAt) - Date.parse('2031-01-06T14:00:00Z')) / (24 * HOUR);
    expect(protect.equipmentDays).toBeCloseTo(3 * days, 1);
    expect(protect.cautions.join(' ')).toMatch(/Carbon monoxide.*carbonation/);
    expect(wait.cautions.join(' ')).not.toMatch(/Carbon monoxide/);
    // First freeze not before 500 psi: ACI 306.1-90 as restated by Beall 2004.
    expect(bare.freezes.psi).toBeLessThan(500);
    expect(jobs[0]?.waitLaterMinutes).toBe(
      (Date.parse(wait.jobFinish) - Date.parse(protect.jobFinish)) / 60_000,
    );
    expect(jobs[0]?.waitLaterMinutes).toBeGreaterThan(24 * 60);
  });

  it('writes nothing when it compares, and answers alike twice', async () => {
    const rows = () =>
      Promise.all([
        service.database.equipmentHold.count({ where: { companyId: job.company.id } }),
        service.database.protectionChoice.count({ where: { companyId: job.company.id } }),
        service.database.journalEntry.count({ where: { companyId: job.company.id } }),
      ]);
    const before = await rows();
    expect(await ask()).toEqual(await ask());
    expect(await rows()).toEqual(before);
  });

  it('sees a tent that is out with another job', async () => {
    const other = await job.phase('veneer', {
      trade: null,
      durationKind: 'elapsed',
      durationMinutes: 4 * 24 * 60,
    });
    const tent = await service.database.equipmentPool.findFirstOrThrow({
      where: { companyId: job.company.id, kind: 'enclosure' },
    });
    await service.database.phase.update({
      where: { id: other.id },
      data: { state: 'started', actualStart: new Date(NOW) },
    });
    await service.database.equipmentHold.create({
      data: {
        companyId: job.company.id,
        poolId: tent.id,
        quantity: 1,
        fromPhaseId: other.id,
        untilPhaseId: other.id,
      },
    });
    expect((await ask()).protect.placedAt >= '2031-01-10T14:00:00.000Z').toBe(true);
    const blankets = await ask({ protectionPlan: { blanketLayers: 2 } });
    expect(blankets.protect.placedAt).toBe('2031-01-06T18:00:00.000Z');
  });

  it('protects when that is chosen: stock is held, the cure is dated by it, and the plan has it today', async () => {
    const { protect } = await ask();
    expect(await choose('protect', { reason: 'the masons are here' })).toMatchObject({
      phase: {
        protectionChoice: {
          branch: 'protect',
          reason: 'the masons are here',
          protection: { text: '1 layer of blanket (R 4 each), tent kept at 60 °F for 12 h' },
          by: { name: job.people.office.name },
        },
      },
    });
    const holds = await service.database.equipmentHold.findMany({
      where: { fromPhaseId: pour.id },
      include: { pool: true },
    });
    expect(
      holds.map(({ pool, quantity, untilPhaseId }) => [pool.kind, quantity, untilPhaseId]).sort(),
    ).toEqual([
      ['blanket', 1, cure.id],
      ['enclosure', 1, cure.id],
      ['heater', 1, cure.id],
    ]);
    expect((await planned(pour)).finishAt.toISOString()).toBe(protect.placedAt);
    expect((await planned(cure)).finishAt.toISOString()).toBe(protect.curedAt);
  });

  it('reminds of the equipment of a later pour only while it is protected', async () => {
    await job.office.change('pinPhase', { phaseId: pour.id, startAt: '2031-01-08T14:00:00Z' });
    const reminders = () =>
      service.database.reminder.count({
        where: { subjectId: pour.id, kind: 'equipment-due-tomorrow', state: 'pending' },
      });
    await choose('protect');
    expect(await reminders()).toBe(1);
    await choose('wait');
    expect(await reminders()).toBe(0);
  });

  it('waits when that is chosen: the stock is given back and the plan goes past the frost', async () => {
    const { wait } = await ask();
    await choose('protect');
    expect(await choose('wait')).toMatchObject({
      phase: { protectionChoice: { branch: 'wait', protection: null } },
    });
    expect(await service.database.equipmentHold.count({ where: { fromPhaseId: pour.id } })).toBe(0);
    expect((await planned(pour)).finishAt.toISOString()).toBe(wait.placedAt);
    expect((await planned(block)).finishAt.toISOString()).toBe(wait.jobFinish);
    expect(await service.database.protectionChoice.count({ where: { phaseId: pour.id } })).toBe(1);
    await choose('protect');
    expect((await planned(pour)).finishAt.toISOString()).toBe('2031-01-06T18:00:00.000Z');
  });

  it('is the choice of the office, for what has not started, on values that can be', async () => {
    await expect(
      job.foreman.change('chooseProtection', { pour: { phaseId: pour.id }, branch: 'wait' }),
    ).rejects.toThrow(/not-allowed/);
    expect(await choose('wait', { pour: { phaseId: pour.id, sectionInches: 900 } })).toMatchObject({
      code: 'InvalidInput',
      message: expect.stringContaining('0.25 to 120 in'),
    });
    expect(await choose('wait', { revision: 99 })).toMatchObject({ code: 'StaleRevision' });
    await expect(ask({ placedTempF: 10 })).rejects.toThrow(/placedTempF: must be 32 to 120/);
    await service.database.phase.update({ where: { id: pour.id }, data: { state: 'started' } });
    expect(await choose('wait')).toMatchObject({ code: 'WrongState' });
    expect(await ask()).toBeNull();
  });
});
