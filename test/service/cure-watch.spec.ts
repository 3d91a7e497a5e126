import { afterAll, beforeAll, beforeEach, describe, expect, it } from '@jest/globals';
import type { HoldPoint, Phase } from '../../src/generated/prisma/client.js';
import { ChangeRunner } from '../../src/platform/change/change-runner.js';
import { contextOf } from '../../src/platform/context.js';
import { RunningJob, type StepOutcome } from '../support/running-job.js';
import { startService, type TestService } from '../support/service.js';

const NOW = '2031-01-06T14:00:00Z';
const PLACED = Date.parse('2031-01-06T08:00:00Z');
const HOUR = 3_600_000;
const after = (hours: number): string => new Date(PLACED + hours * HOUR).toISOString();

/** A forecast file from placing on: one temperature an hour, a little wind. */
function csv(temperatures: readonly number[], issued = '2031-01-06T07:00Z'): string {
  const rows = temperatures.map((temperature, hour) => `${after(hour)},${temperature},6,0,0`);
  return [`issued_at,${issued}`, 'at,temperature_f,wind_mph,rain_chance_pct,rain_in', ...rows].join('\n');
}
const steady = (hours: number, temperature: number) => Array<number>(hours).fill(temperature);

describe('the watch over what cures', () => {
  let service: TestService;
  let job: RunningJob;
  let pour: Phase;
  let cure: Phase;
  let strength: HoldPoint;

  beforeAll(async () => {
    service = await startService({ now: NOW });
  });
  beforeEach(async () => {
    service.setClock(NOW);
    job = await RunningJob.make(service);
    pour = await job.phase('footing-pour');
    cure = await job.wait('footing-cure', 24);
    await job.link(pour, cure);
    strength = await job.strength(cure, pour);
    await job.start(pour, { at: '2031-01-06T07:00:00Z' });
  });
  afterAll(() => service.stop());

  const SEEN = `placement { id predictedReleaseAt revision protectionOffAt protectionPlan { text kinds }
    alarms { kind openedAt finding { text measured limit mark source } }
    protectionOff { ok text }
    outlook { requiredPsi hoursToFirstFreeze method assumption mark source caution airKnownUntil
      release { at basis } firstFreeze { basis } lowest { coldestF basis } freezes { at psi basis }
      points { at basis temperatureF airF psi } } }`;
  interface Seen {
    readonly id: string;
    readonly predictedReleaseAt: string;
    readonly alarms: { readonly kind: string; readonly finding: { readonly text: string } }[];
    readonly protectionOff: { readonly ok: boolean; readonly text: string } | null;
    readonly outlook: {
      readonly points: { readonly at: string; readonly basis: string; readonly temperatureF: number }[];
      readonly release: { readonly at: string; readonly basis: string } | null;
      readonly freezes: { readonly at: string; readonly psi: number } | null;
      readonly lowest: { readonly coldestF: number };
    };
  }
  const seenIn = (outcome: StepOutcome) => outcome['placement'] as Seen;
  const place = async (more: object = {}): Promise<Seen> => {
    const outcome = await job.foreman.change<StepOutcome>(
      'recordPlacement',
      {
        phaseId: pour.id,
        placedAt: after(0),
        material: 'concrete',
        sectionInches: 10,
        placedTempF: 62,
        ...more,
      },
      `... on PlacementChanged { ${SEEN} }`,
    );
    if (outcome.code) throw new Error(outcome.message);
    return seenIn(outcome);
  };
  const look = async (id: string): Promise<Seen> =>
    (
      await job.office.data<{ placement: Seen }>(
        `query($id: ID!) { placement(id: $id) ${SEEN.slice('placement '.length)} }`,
        { id },
      )
    ).placement;
  const read = (placementId: string, hours: number, concreteF: number, airF: number | null = null) =>
    job.foreman.change<StepOutcome>('recordTemperature', { placementId, at: after(hours), concreteF, airF });
  const forecast = (text: string) =>
    job.office.change('uploadForecast', { siteId: job.site.id, source: 'test sheet', text, format: 'csv' });
  /** What the clock does by itself once an hour. */
  const pass = (hours: number) => {
    service.setClock(after(hours));
    return service.app
      .get(ChangeRunner)
      .passTime(contextOf({ companyId: job.company.id, personId: '', role: 'office', name: 'the clock' }));
  };
  const outbox = (topic: string) =>
    service.database.outbox.count({ where: { companyId: job.company.id, topic } });
  const TENT = { blanketLayers: 2, enclosure: true };

  it('predicts by protection and forecast, and names method, source mark, assumption and caution', async () => {
    await forecast(csv(steady(72, 20)));
    const warm = await place({ protectionPlan: TENT });
    expect(warm).toMatchObject({
      protectionPlan: {
        text: '2 layers of blanket (R 4 each), tent kept at 60 °F for 12 h',
        kinds: ['blanket', 'enclosure', 'heater'],
      },
      outlook: {
        requiredPsi: 1000,
        method: expect.stringMatching(/Nurse–Saul.*conduction through the section/),
        assumption: 'air at 20 °F where none is forecast',
        mark: 'M',
        source: expect.stringContaining('C1074'),
        caution: expect.stringContaining('wait for the engineer'),
        freezes: null,
        release: { basis: 'predicted' },
      },
    });
    expect(warm.predictedReleaseAt).toBe(warm.outlook.release?.at);
    expect(warm.outlook.points.every(({ basis }, i) => basis === 'predicted' || i === 0)).toBe(true);
    const bare = await place();
    // A bare footing in air of 20 °F is frozen at its corners within hours, long before 500 psi (ACI 306.1-90 in Beall 2004).
    expect(bare.outlook.freezes).toMatchObject({ psi: expect.any(Number) });
    expect(bare.outlook.freezes?.psi).toBeLessThan(500);
    expect(bare.outlook.lowest.coldestF).toBeLessThan(32);
    expect(warm.outlook.lowest.coldestF).toBeGreaterThan(45);
  });

  it('moves the predicted date with the forecast, and the plan with it', async () => {
    await forecast(csv(steady(96, 45)));
    const { id, predictedReleaseAt } = await place();
    await job.finish(pour, { at: '2031-01-06T13:00:00Z' });
    const finish = async () =>
      (await service.database.plannedPhase.findUniqueOrThrow({ where: { phaseId: cure.id } })).finishAt;
    const before = await finish();
    await forecast(csv(steady(96, 33), '2031-01-06T08:00Z'));
    const colder = await look(id);
    expect(Date.parse(colder.predictedReleaseAt)).toBeGreaterThan(Date.parse(predictedReleaseAt) + 6 * HOUR);
    expect((await finish()).getTime()).toBeGreaterThan(before.getTime());
  });

  it('puts readings in the place of the prediction up to the last of them', async () => {
    await forecast(csv(steady(72, 30)));
    const { id } = await place({ protectionPlan: TENT });
    await read(id, 2, 61, 30);
    await read(id, 4, 60, 30);
    const { outlook } = await look(id);
    const measured = outlook.points.filter(({ basis }) => basis === 'measured');
    expect(measured.map(({ at, temperatureF }) => [at, temperatureF])).toEqual([
      [after(0), 62],
      [after(2), 61],
      [after(4), 60],
    ]);
    const [first] = outlook.points.filter(({ basis }) => basis === 'predicted');
    expect(Date.parse(first?.at ?? '')).toBeGreaterThan(PLACED + 4 * HOUR);
  });

  it('raises an alarm once, tells it once, and ends it when it holds no longer', async () => {
    const { id } = await place({ protectionPlan: TENT });
    expect((await look(id)).alarms.map(({ kind }) => kind)).toEqual([]);
    await read(id, 4, 60);
    await read(id, 5, 36);
    await read(id, 5.5, 36);
    const standing = await look(id);
    expect(standing.alarms.map(({ kind }) => kind)).toEqual(['nearing-freezing', 'cooling-fast', 'too-cold']);
    expect(standing.alarms[0]?.finding).toEqual({
      text: expect.stringContaining('cover it, heat it'),
      measured: '36 °F read',
      limit: 'above 37 °F until it has 500 psi',
      mark: 'C',
      source: 'common practice, no source',
    });
    expect([await outbox('cure-freezing'), await outbox('cure-alarm')]).toEqual([1, 2]);
    service.setClock(after(9));
    await read(id, 8.5, 58);
    expect((await look(id)).alarms.map(({ kind }) => kind)).toEqual(['cooling-fast']);
    const all = await service.database.cureAlarm.findMany({ where: { placementId: id } });
    expect(all.filter(({ clearedAt }) => clearedAt !== null)).toHaveLength(2);
    const journal = await service.database.journalEntry.groupBy({
      by: ['action'],
      where: { subjectId: id, action: { startsWith: 'cure alarm' } },
      _count: true,
    });
    expect(Object.fromEntries(journal.map(({ action, _count }) => [action, _count]))).toEqual({
      'cure alarm opened': 3,
      'cure alarm ended': 2,
    });
  });

  it('misses a reading by the clock alone, once', async () => {
    const { id } = await place({ protectionPlan: TENT });
    await pass(5.9);
    expect((await look(id)).alarms).toEqual([]);
    // Every 6 h until 500 psi, common practice, no source.
    await pass(7);
    await pass(8);
    expect((await look(id)).alarms.map(({ kind }) => kind)).toEqual(['reading-missing']);
    expect(await outbox('cure-alarm')).toBe(1);
    await read(id, 8, 60);
    expect((await look(id)).alarms).toEqual([]);
  });

  it('lets protection come off by days, strength and a surface near the air, or by the office with a reason', async () => {
    await forecast(csv(steady(150, 45)));
    const pool = await job.equipment(4, [{ from: pour, until: cure, quantity: 3 }]);
    const { id } = await place({ protectionPlan: { blanketLayers: 1 } });
    const off = (who: 'foreman' | 'office', more: object = {}) =>
      job[who].change<StepOutcome>(
        'takeProtectionOff',
        { placementId: id, ...more },
        '... on PlacementChanged { placement { protectionOffAt protectionOffReason } } ... on ProtectionMustStay { finding { ok mark source } }',
      );
    expect(await off('foreman')).toMatchObject({
      code: 'ProtectionMustStay',
      message: expect.stringMatching(
        /days of protection are not over; its required strength is not measured/,
      ),
      finding: { ok: false, mark: 'P', source: expect.stringContaining('306.1') },
    });
    expect(await off('foreman', { reason: 'it is in the way' })).toMatchObject({
      code: 'ProtectionMustStay',
    });
    // Three days against freezing, not accelerated: ACI 306.1-90 in Beall 2004, fig. 3-38.
    for (let hour = 6; hour <= 72; hour += 6) {
      service.setClock(after(hour));
      await read(id, hour, 60, 45);
    }
    const seen = await look(id);
    expect(seen.alarms.map(({ kind }) => kind)).toEqual(['protection-may-come-off']);
    expect(seen.protectionOff).toMatchObject({ ok: true });
    expect(await outbox('protection-may-come-off')).toBe(1);
    expect(await off('foreman')).toMatchObject({ placement: { protectionOffAt: after(72) } });
    expect((await look(id)).alarms).toEqual([]);
    const hold = await service.database.equipmentHold.findFirstOrThrow({ where: { poolId: pool.id } });
    expect(hold.untilPhaseId).toBe(pour.id);
    expect(await off('foreman')).toMatchObject({ code: 'WrongState' });
  });

  it('lets the office take it off early with a reason, which stays on record', async () => {
    const { id } = await place({ protectionPlan: { blanketLayers: 1 } });
    const outcome = await job.office.change<StepOutcome>(
      'takeProtectionOff',
      { placementId: id, reason: 'cylinders broken at 1,400 psi by the laboratory' },
      '... on PlacementChanged { placement { protectionOffReason } }',
    );
    expect(outcome).toMatchObject({
      placement: { protectionOffReason: 'cylinders broken at 1,400 psi by the laboratory' },
    });
  });

  it('takes a changed protection into account from then on', async () => {
    await forecast(csv(steady(72, 15)));
    const bare = await place();
    const change = (protectionPlan: object) =>
      job.foreman.change<StepOutcome>(
        'changeProtection',
        { placementId: bare.id, protectionPlan },
        `... on PlacementChanged { ${SEEN} }`,
      );
    expect(await change({})).toMatchObject({ code: 'InvalidInput' });
    expect(await change({ enclosure: true, enclosureF: 20 })).toMatchObject({ code: 'InvalidInput' });
    await read(bare.id, 5, 50);
    const covered = seenIn(await change({ blanketLayers: 3 }));
    expect(covered.outlook.lowest.coldestF).toBeGreaterThan(bare.outlook.lowest.coldestF + 10);
  });

  it('counts an accelerator, cautiously', async () => {
    const plain = await place({ protectionPlan: TENT });
    const fast = await place({ protectionPlan: TENT, accelerated: true });
    expect(Date.parse(fast.predictedReleaseAt)).toBeLessThan(Date.parse(plain.predictedReleaseAt));
  });

  it('ends with the decision: nothing is asked for any more', async () => {
    const { id } = await place();
    await job.finish(pour, { at: '2031-01-06T13:00:00Z' });
    await pass(12);
    expect((await look(id)).alarms.map(({ kind }) => kind)).toContain('reading-missing');
    const waived = await job.office.change<StepOutcome>('waiveHoldPoint', {
      holdPointId: strength.id,
      reason: 'cylinders broken at 1,400 psi by the laboratory',
    });
    expect(waived).toMatchObject({ __typename: 'HoldPointChanged' });
    expect((await look(id)).alarms).toEqual([]);
  });
});
