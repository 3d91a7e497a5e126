import { randomUUID } from 'node:crypto';
import type { Job, Phase, PlannedPhase, Prisma } from '../../src/generated/prisma/client.js';
import { ChangeRunner } from '../../src/platform/change/change-runner.js';
import { contextOf, type Context } from '../../src/platform/context.js';
import type { Database } from '../../src/platform/database/database.js';
import type { ApiClient } from '../support/api-client.js';
import { makeCompany, TEST_PASSWORD } from '../support/company.js';
import type { TestService } from '../support/service.js';

/** Open hours of every crew of the world: 08:00 to 16:00 in New York, which is 13:00Z to 21:00Z in January. */
const WEEK = Object.fromEntries(
  ['mon', 'tue', 'wed', 'thu', 'fri'].map((day) => [day, [['08:00', '16:00']]]),
);

type PhaseSpec = Partial<Prisma.PhaseUncheckedCreateInput> & { readonly hours?: number };

/** A small company whose plan can be worked out by hand: one mason crew, one labour crew, one site. */
export interface PlanningWorld {
  readonly db: Database;
  readonly companyId: string;
  readonly siteId: string;
  readonly masons: string;
  readonly diggers: string;
  readonly ctx: Context;
  readonly office: ApiClient;
  readonly foreman: ApiClient;
  /** Adds a job with phases in a chain, each after the one before; mason work of 4 hours unless said otherwise. */
  chain(
    name: string,
    phases: Record<string, PhaseSpec>,
    job?: Partial<Prisma.JobUncheckedCreateInput>,
  ): Promise<ChainedJob>;
  link(from: Phase, to: Phase, data?: Partial<Prisma.LinkUncheckedCreateInput>): Promise<void>;
  crew(name: string, trades: string[], data?: Partial<Prisma.CrewUncheckedCreateInput>): Promise<string>;
  /** Makes a change that changes nothing, so that the company is planned anew. */
  replan(): Promise<void>;
  planned(phase: Phase): Promise<PlannedPhase | null>;
  /** Start and finish of a phase in the plan, "no place" without one. */
  dates(phase: Phase): Promise<string>;
  planNumber(): Promise<number>;
}

/** A job and its phases by key. */
export interface ChainedJob {
  readonly job: Job;
  readonly phases: Readonly<Record<string, Phase>>;
}

/** Makes the company in a database of the service. */
export async function makeWorld(service: TestService): Promise<PlanningWorld> {
  const db = service.database;
  const { company, people } = await makeCompany(db, `World ${randomUUID()}`);
  const companyId = company.id;
  const runner = service.app.get(ChangeRunner);
  const ctx = contextOf({ companyId, personId: people.office.id, role: 'office', name: 'office' });
  const site = await db.site.create({
    data: {
      companyId,
      address: '4 Larch Street',
      town: 'Alder Bend',
      zone: 'America/New_York',
      frostDepthInches: 42,
      frostSource: 'invented',
    },
  });
  const template = await db.template.create({ data: { companyId, name: 'small', body: {} } });
  const crew: PlanningWorld['crew'] = async (name, trades, data = {}) => {
    const made = { companyId, name, trades, size: 2, zone: 'America/New_York', week: WEEK, ...data };
    return (await db.crew.create({ data: made })).id;
  };
  const link: PlanningWorld['link'] = async (from, to, data = {}) => {
    const ends = { companyId, jobId: from.jobId, fromId: from.id, toId: to.id };
    await db.link.create({ data: { ...ends, kind: 'finishStart', origin: 'custom', ...data } });
  };
  let number = 0;
  const planned = (phase: Phase) => db.plannedPhase.findUnique({ where: { phaseId: phase.id } });
  return {
    db,
    companyId,
    siteId: site.id,
    masons: await crew('Masons', ['mason']),
    diggers: await crew('Diggers', ['labour']),
    ctx,
    office: await service.signIn(people.office.email, TEST_PASSWORD),
    foreman: await service.signIn(people.foreman.email, TEST_PASSWORD),
    crew,
    link,
    chain: async (name, specs, data = {}) => {
      number += 1;
      const job = await db.job.create({
        data: {
          companyId,
          number: 100 + number,
          name,
          siteId: site.id,
          templateId: template.id,
          ownerName: 'A. Linden',
          measurement: {},
          quantities: [],
          ...data,
        },
      });
      const phases: Record<string, Phase> = {};
      let before: Phase | undefined;
      for (const [key, { hours = 4, ...spec }] of Object.entries(specs)) {
        const phase = await db.phase.create({
          data: {
            companyId,
            jobId: job.id,
            key,
            kind: key,
            name: key,
            hatch: 'masonry',
            trade: 'mason',
            position: Object.keys(phases).length,
            durationKind: 'work',
            durationMinutes: hours * 60,
            continuity: 'interruptible',
            origin: 'custom',
            ...spec,
          },
        });
        if (before) await link(before, phase);
        phases[key] = before = phase;
      }
      return { job, phases };
    },
    replan: () =>
      runner.runInternal(ctx, async (change) =>
        change.record({ action: 'looked again', subjectType: 'company', subjectId: companyId }),
      ),
    planned,
    dates: async (phase) => {
      const row = await planned(phase);
      return row ? `${short(row.startAt)} – ${short(row.finishAt)}` : 'no place';
    },
    planNumber: async () => (await db.company.findUniqueOrThrow({ where: { id: companyId } })).planNumber,
  };
}

/** "06 14:00" of an instant in January 2031, in UTC. */
export const short = (at: Date | string): string => new Date(at).toISOString().slice(8, 16).replace('T', ' ');

/** Reads a member that must be there. */
export function get<T>(from: Readonly<Record<string, T>>, key: string): T {
  const value = from[key];
  if (value === undefined) throw new Error(`There is no ${key}`);
  return value;
}
