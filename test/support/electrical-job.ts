import type {
  HeatingSet,
  Hookup,
  HoldPoint,
  Phase,
  ReadingStage,
} from '../../src/generated/prisma/client.js';
import { RunningJob, type StepOutcome } from './running-job.js';
import type { TestService } from './service.js';

/*
 * A job with one heating set under one landing, up to its hookup, and the steps that bring it there.
 *
 *   const entry = await electricalJob(service);
 *   await entry.makeReady();               // leads through, readings taken: the hookup is ready
 *   await entry.read('beforeHookup');      // and its phase may start
 */

export interface ElectricalJob {
  readonly job: RunningJob;
  readonly set: HeatingSet;
  readonly hookup: Hookup;
  readonly phases: Readonly<Record<'test' | 'stone' | 'hookup', Phase>>;
  /** The check that stands at the finish of the hookup. */
  readonly gate: HoldPoint;
  leads(more?: object): Promise<StepOutcome>;
  read(stage: ReadingStage, more?: object): Promise<StepOutcome>;
  makeReady(): Promise<void>;
}

const LEADS = { coldLeadThrough: true, coldLeadFreeInches: 9, sensorThrough: true, leadsLabelled: true };

/** Makes the job; nothing of it is tested or through the wall yet. */
export async function electricalJob(
  service: Pick<TestService, 'database' | 'signIn'>,
): Promise<ElectricalJob> {
  const job = await RunningJob.make(service);
  const { database } = service;
  const set = await job.heatingSet({ cureDays: 7 });
  const area = await database.area.create({
    data: {
      ...job.own,
      key: 'landing',
      kind: 'landing',
      name: 'landing',
      position: 0,
      heated: true,
      quantities: {},
    },
  });
  await database.heatingSetArea.create({
    data: { companyId: job.company.id, heatingSetId: set.id, areaId: area.id, position: 0 },
  });
  const test = await job.phase('cable-test', { areaId: area.id });
  const stone = await job.phase('stone', { areaId: area.id });
  const connect = await job.phase('hookup', { trade: 'electrician' });
  await job.link(test, stone);
  await job.link(test, connect);
  const reading = (phase: Phase, stage: ReadingStage, gate: 'start' | 'finish') =>
    job.holdPoint(phase, `reading-${stage}`, {
      kind: 'reading',
      gate,
      waivable: false,
      items: [],
      heatingSetId: set.id,
      readingStage: stage,
    });
  await reading(test, 'laid', 'finish');
  await reading(connect, 'beforeHookup', 'start');
  const gate = await job.holdPoint(connect, 'connection', { gate: 'finish', waivable: false });
  const hookup = await database.hookup.create({
    data: { ...job.own, heatingSetId: set.id, phaseId: connect.id },
  });
  const leads = (more: object = {}): Promise<StepOutcome> =>
    job.foreman.change('recordLeads', { hookupId: hookup.id, ...LEADS, ...more });
  const read = (stage: ReadingStage, more: object = {}): Promise<StepOutcome> =>
    job.foreman.change('recordCableReading', {
      heatingSetId: set.id,
      stage,
      ohms: 19.2,
      megaohms: 500,
      testVolts: 500,
      cableTempF: 40,
      ...more,
    });
  return {
    job,
    set,
    hookup,
    phases: { test, stone, hookup: connect },
    gate,
    leads,
    read,
    makeReady: async () => {
      await job.start(test);
      for (const outcome of [await read('laid', { areaId: area.id }), await job.finish(test), await leads()])
        if (outcome.code) throw new Error(`${outcome.code}: ${outcome.message}`);
    },
  };
}
