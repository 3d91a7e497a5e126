import type {
  Area,
  HeatingSet,
  Hookup,
  Job,
  Phase,
  Prisma,
  Site,
} from '../../src/generated/prisma/client.js';
import type { Database, Transaction } from '../../src/platform/database/database.js';

/** A job of one heated area with one phase, one heating set and its hookup, written straight into the database. */
export interface BareJob {
  readonly site: Site;
  readonly job: Job;
  readonly area: Area;
  readonly phase: Phase;
  readonly heatingSet: HeatingSet;
  readonly hookup: Hookup;
}

let counter = 0;

/** Makes the rows; what a test needs beside them it adds itself. */
export async function makeBareJob(
  database: Database | Transaction,
  companyId: string,
  zone = 'America/New_York',
): Promise<BareJob> {
  counter += 1;
  const site = await database.site.create({
    data: {
      companyId,
      address: `${counter} Larch Street`,
      town: 'Alder Mills',
      zone,
      frostDepthInches: 48,
      frostSource: 'town',
    },
  });
  const template = await database.template.create({
    data: { companyId, name: `entry ${counter}`, body: {} },
  });
  const job = await database.job.create({
    data: {
      companyId,
      number: 100 + counter,
      name: `Larch Street ${counter}`,
      siteId: site.id,
      templateId: template.id,
      ownerName: 'R. Alder',
      state: 'running',
      measurement: {},
      quantities: [],
    },
  });
  const area = await database.area.create({
    data: {
      companyId,
      jobId: job.id,
      key: 'landing',
      kind: 'landing',
      name: 'landing',
      position: 1,
      heated: true,
      quantities: {},
    },
  });
  const phase = await addPhase(database, {
    companyId,
    jobId: job.id,
    areaId: area.id,
    key: 'cable',
    name: 'cable',
    trade: 'cable',
  });
  const heatingSet = await database.heatingSet.create({
    data: {
      companyId,
      jobId: job.id,
      key: 'set',
      name: 'set 1',
      watts: 1650,
      volts: 240,
      ohms: 34.9,
      heatedFeet: 240,
      coldLeadFeet: 20,
    },
  });
  await database.heatingSetArea.create({
    data: { companyId, heatingSetId: heatingSet.id, areaId: area.id, position: 1 },
  });
  const hookup = await database.hookup.create({
    data: { companyId, jobId: job.id, heatingSetId: heatingSet.id, phaseId: phase.id },
  });
  return { site, job, area, phase, heatingSet, hookup };
}

/** Adds a phase to a job. */
export function addPhase(
  database: Database | Transaction,
  phase: Pick<Prisma.PhaseUncheckedCreateInput, 'companyId' | 'jobId' | 'key' | 'name'> &
    Partial<Prisma.PhaseUncheckedCreateInput>,
): Promise<Phase> {
  return database.phase.create({
    data: {
      kind: phase.key,
      hatch: 'none',
      position: 1,
      durationKind: 'work',
      durationMinutes: 240,
      continuity: 'interruptible',
      origin: 'custom',
      ...phase,
    },
  });
}

/** Puts a phase into the plan, from and to ISO instants. */
export async function planPhase(
  database: Database | Transaction,
  phase: Phase,
  from: string,
  to: string,
  crewId: string | null = null,
): Promise<void> {
  const dates = { startAt: new Date(from), finishAt: new Date(to), crewId };
  await database.plannedPhase.upsert({
    where: { phaseId: phase.id },
    update: dates,
    create: {
      phaseId: phase.id,
      companyId: phase.companyId,
      planNumber: 1,
      ...dates,
      segments: [],
      totalFloatMinutes: 0,
      freeFloatMinutes: 0,
      critical: false,
      weatherUnknown: false,
      reason: {},
    },
  });
}
