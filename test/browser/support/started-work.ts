import { goodValues, type GivenValue } from '../../../prisma/demo/good-values.js';
import { type HoldPointView, viewJob } from '../../../prisma/demo/job-view.js';
import type { DemoService } from './demo-service.js';

/** A started piece of work that only checks keep from being finished. */
export interface StartedWork {
  readonly id: string;
  /** Its name on the site sheet, with the number of its job. */
  readonly title: string;
  /** The checks, each with values that a well-built entry gives. */
  readonly checks: readonly { readonly title: string; readonly values: readonly GivenValue[] }[];
}

/** The first such work of the demo. @throws Error when there is none at the demo's present. */
export async function startedWork(service: DemoService): Promise<StartedWork> {
  const office = await service.client('office');
  const { jobs } = await office.data<{ jobs: { edges: { node: { id: string } }[] } }>(
    '{ jobs(first: 50) { edges { node { id } } } }',
  );
  for (const { node } of jobs.edges) {
    const job = await viewJob(office, node.id);
    const phase = job.phases.find(
      ({ state, durationKind, holdPoints }) =>
        state === 'started' &&
        durationKind === 'work' &&
        openAtFinish(holdPoints).length > 0 &&
        openAtFinish(holdPoints).every(({ kind }) => kind === 'check'),
    );
    if (phase) {
      return {
        id: phase.id,
        title: `${job.number} ${phase.name}`,
        checks: openAtFinish(phase.holdPoints).map(({ title, items }) => ({
          title,
          values: goodValues(items, job.site.frostDepthInches),
        })),
      };
    }
  }
  throw new Error('The demo has no started work that waits for a check; choose another present for it.');
}

const openAtFinish = (holdPoints: readonly HoldPointView[]): HoldPointView[] =>
  holdPoints.filter(({ gate, state }) => gate === 'finish' && state !== 'released' && state !== 'waived');
