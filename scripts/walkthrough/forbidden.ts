import { randomUUID } from 'node:crypto';
import type { GivenValue } from '../../prisma/demo/good-values.js';
import { goodValues } from '../../prisma/demo/good-values.js';
import type { Hands } from '../../prisma/demo/hands.js';
import { type JobView, type PhaseView, viewJob } from '../../prisma/demo/job-view.js';
import type { Trials } from './trials.js';

type Attempt = (job: JobView, phase: PhaseView, now: Date) => Promise<void>;

const phaseOf = (job: JobView, kind: string): PhaseView => {
  const found = job.phases.find((phase) => phase.kind === kind);
  if (!found) throw new Error(`The job has no phase of the kind ${kind}`);
  return found;
};

/**
 * What is tried although the trade forbids it, by the moment at which it is most tempting: before the phase of that
 * kind starts, or before it finishes.
 */
export function forbidden(hands: Hands, trials: Trials): Record<string, Attempt> {
  const { office, foreman, electrician } = hands;
  const start = (now: Date, tried: string, phase: PhaseView) =>
    trials.refuse(now, tried, foreman, 'startPhase', {
      phaseId: phase.id,
      at: now.toISOString(),
      crewId: phase.planned?.crew?.id ?? null,
    });
  return {
    'start demo': async (job, _phase, now) => {
      const inspection = phaseOf(job, 'footing-pour').holdPoints.find(({ kind }) => kind === 'inspection');
      await trials.refuse(now, 'waive the footing inspection', office, 'waiveHoldPoint', {
        holdPointId: inspection?.id,
        reason: 'the inspector is busy this week',
      });
      await trials.refuse(now, 'let the demolition wait for the hand-over', office, 'addLink', {
        fromId: phaseOf(job, 'hand-over').id,
        toId: phaseOf(job, 'demo').id,
        kind: 'finishStart',
        lagMinutes: 0,
        lagIn: 'elapsed',
      });
      await start(now, 'demolish before the services are found', phaseOf(job, 'demo'));
      await start(now, 'pour the footing on the first day', phaseOf(job, 'footing-pour'));
      await trials.refuse(now, 'change the job from a page read long ago', office, 'updateJob', {
        jobId: job.id,
        revision: 99,
        priority: 1,
      });
      const clientKey = randomUUID();
      await office.change('updateJob', { clientKey, jobId: job.id, priority: 2 });
      await trials.refuse(now, 'use one client key for two changes', office, 'updateJob', {
        clientKey,
        jobId: job.id,
        priority: 3,
      });
    },
    'finish dig': async (job, phase, now) => {
      const depth = phase.holdPoints.find(({ key }) => key === 'depth');
      const shallow = goodValues(depth?.items ?? [], job.site.frostDepthInches).map((value): GivenValue =>
        value.itemId === 'footing-depth'
          ? { itemId: value.itemId, values: [job.site.frostDepthInches - 1] }
          : value,
      );
      await trials.refuse(now, 'release the depth an inch above frost', foreman, 'releaseHoldPoint', {
        holdPointId: depth?.id,
        values: shallow,
      });
      await trials.refuse(now, 'call the dig finished without its depth', foreman, 'finishPhase', {
        phaseId: phase.id,
        at: now.toISOString(),
      });
    },
    'finish footing-cure': async (_job, phase, now) => {
      const strength = phase.holdPoints.find(({ kind }) => kind === 'cure');
      await trials.refuse(now, 'release the footing without one temperature', foreman, 'releaseHoldPoint', {
        holdPointId: strength?.id,
        values: [],
      });
    },
    'start cable-test': async (job, _phase, now) => {
      const [hookup] = job.hookups;
      await start(now, 'lay stone over the cable before its test', phaseOf(job, 'stone'));
      await trials.refuse(now, 'record the hookup before its needs are met', electrician, 'recordHookup', {
        hookupId: hookup?.id,
        at: now.toISOString(),
        breakerAmperes: 30,
        disconnect: true,
        groundFault: true,
        note: null,
      });
    },
    'finish hookup': async (job, _phase, now) => {
      const [hookup] = job.hookups;
      await trials.refuse(
        now,
        'energise before the bed has cured and the final inspection',
        electrician,
        'recordEnergised',
        { hookupId: hookup?.id, at: now.toISOString() },
      );
    },
  };
}

/** A reading far off the label: recorded, shown with what is wrong, and nothing is released by it. */
export async function failReading(
  hands: Hands,
  jobId: string,
  phase: PhaseView,
  now: Date,
): Promise<{ accepted: boolean; findings: string[] }> {
  const job = await viewJob(hands.office, jobId);
  const [set] = job.heatingSets;
  const outcome = (await hands.foreman.change(
    'recordCableReading',
    {
      heatingSetId: set?.id,
      stage: 'laid',
      areaId: phase.area?.id,
      at: now.toISOString(),
      ohms: (set?.ohms ?? 0) * 1.6,
      megaohms: 4,
      testVolts: 500,
      cableTempF: 60,
    },
    '... on HeatingSetChanged { reading { accepted findings { ok text } } }',
  )) as unknown as { reading: { accepted: boolean; findings: { ok: boolean; text: string }[] } };
  const { accepted, findings } = outcome.reading;
  return { accepted, findings: findings.filter(({ ok }) => !ok).map(({ text }) => text) };
}
