import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import { startService, type TestService } from '../support/service.js';
import { makeWorld, type PlanningWorld } from './planning-world.js';

interface JobRisk {
  readonly job: { readonly name: string };
  readonly planned: string;
  readonly fan: { readonly share: number; readonly at: string }[];
  readonly half: { readonly at: string; readonly low: string; readonly high: string };
  readonly fourFifths: { readonly at: string };
  readonly dueKept: { readonly chance: number; readonly low: number; readonly high: number } | null;
  readonly causes: { readonly source: string; readonly share: number; readonly hours: number }[];
}
interface Risk {
  readonly planNumber: number;
  readonly samples: number;
  readonly seed: number;
  readonly assumptions: string[];
  readonly jobs: JobRisk[];
  readonly phases: { readonly critical: { readonly chance: number }; readonly promiseKept: object | null }[];
}

describe('how sure the dates of a plan are', () => {
  let service: TestService;
  let world: PlanningWorld;

  beforeAll(async () => {
    service = await startService();
    service.setClock('2031-01-06T14:00:00Z');
    world = await makeWorld(service);
    const tight = new Date('2031-01-07T21:00:00Z');
    const ash = await world.chain('Ash', { block: { hours: 8 }, stone: { hours: 6 } }, { dueAt: tight });
    await world.chain(
      'Birch',
      { wall: { hours: 8 } },
      { priority: 9, dueAt: new Date('2031-06-01T21:00:00Z') },
    );
    await world.replan();
    await world.office.change('commitJob', { jobId: ash.job.id });
  });
  afterAll(() => service.stop());

  const ask = async (samples: number, seed = 1): Promise<Risk> => {
    const date = '{ share at low high }';
    const chance = '{ chance low high }';
    const { planRisk } = await world.office.data<{ planRisk: Risk }>(
      `query($samples: Int, $seed: Int) { planRisk(samples: $samples, seed: $seed) { planNumber samples seed assumptions
        jobs { job { name } planned fan ${date} half ${date} fourFifths ${date} dueKept ${chance} causes { source hours share } }
        phases { phase { name } critical ${chance} promiseKept ${chance} } } }`,
      { samples, seed },
    );
    return planRisk;
  };
  const jobOf = ({ jobs }: Risk, name: string): JobRisk => {
    const found = jobs.find(({ job }) => job.name === name);
    if (!found) throw new Error(`There is no ${name}`);
    return found;
  };

  it('gives the dates at 50 and 80 %, in order, with their precision', async () => {
    const risk = await ask(100);
    expect(risk).toMatchObject({ samples: 100, seed: 1, planNumber: await world.planNumber() });
    const { fan, half, fourFifths } = jobOf(risk, 'Ash');
    const dates = fan.map(({ at }) => Date.parse(at));
    expect(dates).toEqual([...dates].sort((a, b) => a - b));
    expect(Date.parse(fourFifths.at)).toBeGreaterThanOrEqual(Date.parse(half.at));
    expect(Date.parse(half.low)).toBeLessThanOrEqual(Date.parse(half.high));
  });

  it('says that a tight promise is less sure than an easy one, and what it hangs on', async () => {
    const risk = await ask(100);
    const [tight, easy] = [jobOf(risk, 'Ash'), jobOf(risk, 'Birch')];
    expect(tight.dueKept?.chance).toBeLessThan(easy.dueKept?.chance ?? 0);
    expect(easy.dueKept?.low).toBeGreaterThan(0.5);
    const shares = tight.causes.map(({ share }) => share);
    expect(shares.length).toBeGreaterThan(0);
    expect(shares.reduce((sum, share) => sum + share, 0)).toBeLessThanOrEqual(1 + 1e-9);
    expect(risk.phases.filter(({ promiseKept }) => promiseKept !== null)).toHaveLength(2);
  });

  it('gives equal figures for an equal seed and other ones for another', async () => {
    const [one, same, other] = [await ask(60, 5), await ask(60, 5), await ask(60, 6)];
    expect(same).toEqual(one);
    expect(other.jobs).not.toEqual(one.jobs);
  });

  it('is more precise with more samples', async () => {
    const width = async (samples: number) => {
      const { dueKept } = jobOf(await ask(samples), 'Ash');
      return (dueKept?.high ?? 0) - (dueKept?.low ?? 0);
    };
    expect(await width(400)).toBeLessThan(await width(20));
  });

  it('bounds what it is asked for', async () => {
    expect((await ask(1)).samples).toBe(20);
    expect((await ask(5000)).samples).toBe(1000);
  });

  it('says where its chances come from, and that it is no leave to start', async () => {
    const { assumptions } = await ask(20);
    expect(assumptions.join(' ')).toMatch(/no source/);
    expect(assumptions.join(' ')).toMatch(/never leave to start/);
  });
});
