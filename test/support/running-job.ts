import { randomUUID } from 'node:crypto';
import type { HoldPointItem } from '../../shared/entry/hold-points/item.js';
import { COMMON_PRACTICE } from '../../shared/entry/source.js';
import type {
  Authority,
  Clearance,
  Company,
  Crew,
  EquipmentPool,
  HeatingSet,
  HoldPoint,
  Inspection,
  Job,
  Link,
  Person,
  Phase,
  Prisma,
  Role,
  Site,
} from '../../src/generated/prisma/client.js';
import type { Database } from '../../src/platform/database/database.js';
import type { ApiClient } from './api-client.js';
import { makeCompany, TEST_PASSWORD } from './company.js';
import type { TestService } from './service.js';

/*
 * A company with one job of which a test lays out just the phases, links and gates it is about, straight in the
 * database; what is tested then happens through the API.
 */

const ALL_DAY = Object.fromEntries(
  ['mon', 'tue', 'wed', 'thu', 'fri'].map((day) => [day, [['08:00', '16:00']]]),
);

/** Item that asks for a yes. */
export const confirmItem = (id: string): HoldPointItem => ({
  id,
  label: `Check of ${id}`,
  unit: null,
  limit: { confirmed: true },
  required: true,
  source: COMMON_PRACTICE,
});

/** A job in the hands of a test. */
export class RunningJob {
  private position = 0;

  private constructor(
    readonly database: Database,
    readonly company: Company,
    readonly people: Record<Role, Person>,
    readonly office: ApiClient,
    readonly foreman: ApiClient,
    readonly electrician: ApiClient,
    readonly site: Site,
    readonly authority: Authority,
    readonly job: Job,
    readonly mason: Crew,
    readonly labour: Crew,
  ) {}

  static async make(
    service: Pick<TestService, 'database' | 'signIn'>,
    name = `Company ${randomUUID()}`,
  ): Promise<RunningJob> {
    const { database } = service;
    const { company, people } = await makeCompany(database, name);
    const companyId = company.id;
    const client = (role: Role) => service.signIn(people[role].email, TEST_PASSWORD);
    const authority = await database.authority.create({
      data: {
        companyId,
        name: 'Building office',
        noticeHours: 24,
        visitMinutes: 30,
        zone: 'America/New_York',
        week: ALL_DAY,
      },
    });
    const site = await database.site.create({
      data: {
        companyId,
        address: '4 Larch Street',
        town: 'Alder Mills',
        zone: 'America/New_York',
        frostDepthInches: 48,
        frostSource: 'town',
        authorityId: authority.id,
      },
    });
    const template = await database.template.create({ data: { companyId, name: 'entry', body: {} } });
    const job = await database.job.create({
      data: {
        companyId,
        number: 101,
        name: 'Larch Street',
        siteId: site.id,
        templateId: template.id,
        ownerName: 'R. Alder',
        measurement: {},
        quantities: [],
      },
    });
    const crew = (crewName: string, trades: string[]) =>
      database.crew.create({
        data: { companyId, name: crewName, trades, size: 2, zone: 'America/New_York', week: ALL_DAY },
      });
    return new RunningJob(
      database,
      company,
      people,
      await client('office'),
      await client('foreman'),
      await client('electrician'),
      site,
      authority,
      job,
      await crew('Masons', ['mason']),
      await crew('Diggers', ['labour']),
    );
  }

  get own(): { companyId: string; jobId: string } {
    return { companyId: this.company.id, jobId: this.job.id };
  }

  /** A phase; work of a mason for four hours unless said otherwise. */
  phase(key: string, more: Partial<Prisma.PhaseUncheckedCreateInput> = {}): Promise<Phase> {
    this.position += 1;
    return this.database.phase.create({
      data: {
        ...this.own,
        key,
        kind: key,
        name: key,
        hatch: 'none',
        trade: 'mason',
        position: this.position,
        durationKind: 'work',
        durationMinutes: 240,
        continuity: 'interruptible',
        origin: 'custom',
        ...more,
      },
    });
  }

  /** A wait of some hours. */
  wait(key: string, hours: number): Promise<Phase> {
    return this.phase(key, { trade: null, durationKind: 'elapsed', durationMinutes: hours * 60 });
  }

  link(from: Phase, to: Phase, more: Partial<Prisma.LinkUncheckedCreateInput> = {}): Promise<Link> {
    return this.database.link.create({
      data: { ...this.own, fromId: from.id, toId: to.id, kind: 'finishStart', origin: 'custom', ...more },
    });
  }

  /** A hold point; a check of one confirmation before the start unless said otherwise. */
  holdPoint(
    phase: Phase,
    key: string,
    {
      items = [confirmItem('seen')],
      ...more
    }: Partial<Omit<Prisma.HoldPointUncheckedCreateInput, 'items'>> & {
      items?: HoldPointItem[];
    } = {},
  ): Promise<HoldPoint> {
    return this.database.holdPoint.create({
      data: {
        ...this.own,
        phaseId: phase.id,
        key,
        kind: 'check',
        gate: 'start',
        title: key,
        waivable: true,
        items: items as unknown as Prisma.InputJsonArray,
        ...more,
      },
    });
  }

  /** A hold point that ends a cure: 1,000 psi in what `pour` places. */
  strength(cure: Phase, pour: Phase): Promise<HoldPoint> {
    return this.holdPoint(cure, 'footing-strength', {
      kind: 'cure',
      gate: 'finish',
      placementPhaseId: pour.id,
      items: [
        {
          id: 'strength',
          label: 'Strength',
          unit: 'psi',
          limit: { atLeast: 1000 },
          required: false,
          source: COMMON_PRACTICE,
        },
      ],
    });
  }

  /** An inspection before the start of a phase, with its hold point. */
  async inspection(phase: Phase, key = 'footing'): Promise<{ inspection: Inspection; holdPoint: HoldPoint }> {
    const inspection = await this.database.inspection.create({
      data: { ...this.own, phaseId: phase.id, authorityId: this.authority.id, key, title: key },
    });
    const holdPoint = await this.holdPoint(phase, key, {
      kind: 'inspection',
      waivable: false,
      items: [],
      inspectionId: inspection.id,
    });
    return { inspection, holdPoint };
  }

  /** A clearance before the start of a phase, with its hold point. */
  async clearance(
    phase: Phase,
    more: Partial<Prisma.ClearanceUncheckedCreateInput> = {},
  ): Promise<{ clearance: Clearance; holdPoint: HoldPoint }> {
    const clearance = await this.database.clearance.create({
      data: {
        ...this.own,
        key: 'mark-out',
        kind: 'markOut',
        title: 'Utility mark-out',
        leadMinutes: 4 * 24 * 60,
        lifeDays: 30,
        ...more,
      },
    });
    const holdPoint = await this.holdPoint(phase, 'mark-out', {
      kind: 'clearance',
      waivable: false,
      items: [],
      clearanceId: clearance.id,
    });
    return { clearance, holdPoint };
  }

  /** Equipment of the company, and how much a phase takes of it until another finishes. */
  async equipment(
    owned: number,
    holds: { from: Phase; until: Phase; quantity: number }[],
  ): Promise<EquipmentPool> {
    const pool = await this.database.equipmentPool.create({
      data: {
        companyId: this.company.id,
        kind: 'blanket',
        name: 'Blankets',
        unit: 'blanket',
        quantity: owned,
      },
    });
    for (const { from, until, quantity } of holds) {
      await this.database.equipmentHold.create({
        data: {
          companyId: this.company.id,
          poolId: pool.id,
          quantity,
          fromPhaseId: from.id,
          untilPhaseId: until.id,
        },
      });
    }
    return pool;
  }

  /** A received heating set of one 240 V cable: 19.2 Ω by its label. */
  async heatingSet(more: Partial<Prisma.HeatingSetUncheckedCreateInput> = {}): Promise<HeatingSet> {
    return this.database.heatingSet.create({
      data: {
        ...this.own,
        key: 'set-1',
        name: 'Set 1',
        watts: 3000,
        volts: 240,
        ohms: 19.2,
        heatedFeet: 240,
        coldLeadFeet: 20,
        receivedAt: new Date('2031-01-02T14:00:00Z'),
        ...more,
      },
    });
  }

  /** The row of a phase as it now stands. */
  phaseNow(phase: { id: string }): Promise<Phase> {
    return this.database.phase.findUniqueOrThrow({ where: { id: phase.id } });
  }

  /** The row of a hold point as it now stands. */
  holdPointNow(point: { id: string }): Promise<HoldPoint> {
    return this.database.holdPoint.findUniqueOrThrow({ where: { id: point.id } });
  }

  /** Starts a phase through the API and gives the outcome; a mason's with the masons. */
  async start(phase: Phase, input: Record<string, unknown> = {}, selection = ''): Promise<StepOutcome> {
    const crewId = phase.trade === 'mason' ? this.mason.id : null;
    return this.foreman.change('startPhase', { phaseId: phase.id, crewId, ...input }, selection);
  }

  /** Finishes a phase through the API and gives the outcome. */
  async finish(phase: Phase, input: Record<string, unknown> = {}, selection = ''): Promise<StepOutcome> {
    return this.foreman.change('finishPhase', { phaseId: phase.id, ...input }, selection);
  }

  /** Starts and finishes a phase at these instants. @throws Error when either is refused. */
  async run(phase: Phase, from: string, to: string): Promise<void> {
    for (const outcome of [await this.start(phase, { at: from }), await this.finish(phase, { at: to })])
      if (outcome.code) throw new Error(`${phase.name}: ${outcome.code}: ${outcome.message}`);
  }
}

/** What a step answers: the success type or a refusal with its own fields. */
export type StepOutcome = { __typename: string; code?: string; message?: string } & Record<string, unknown>;
