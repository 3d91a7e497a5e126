import { signInDemoPeople } from '../../../prisma/demo/company.js';
import { type Hands, UnexpectedRefusal } from '../../../prisma/demo/hands.js';
import { JobLife } from '../../../prisma/demo/job-life.js';
import { type JobView, type PhaseView, viewJob } from '../../../prisma/demo/job-view.js';
import { liveThrough } from '../../../prisma/demo/live-through.js';
import { PRESENT } from './demo-database.js';
import type { DemoService } from './demo-service.js';

const DAY = 86_400_000;
/** How far the demo is worked on before it is given up. */
const DAYS = 30;

/** A pour that a crew has started and not yet written down. */
export interface StartedPour {
  readonly job: number;
  /** The service's clock, an instant after its start. */
  readonly at: string;
}

/**
 * Lets the people of the demo work on from its present until a phase of the kind has been started, in whichever job that is first, and
 * leaves that phase as it is then: nothing is recorded as placed in it.
 * @throws Error when no such phase comes within thirty days
 */
export async function startedPour(service: DemoService, kind: string): Promise<StartedPour> {
  const hands: Hands = {
    ...(await signInDemoPeople(service.url)),
    setClock: (at) => service.setClock(at.toISOString()),
  };
  const { jobs } = await hands.office.data<{ jobs: { edges: { node: { id: string } }[] } }>(
    '{ jobs(first: 50) { edges { node { id } } } }',
  );
  const ids = jobs.edges.map(({ node }) => node.id);
  const allow = (step: 'start' | 'finish', phase: PhaseView) => step === 'start' || phase.kind !== kind;
  const lives = ids.map((id) => new JobLife(hands, id, { allow }));
  for (let day = 0; day <= DAYS; day += 1) {
    for (const id of ids) {
      const job = await viewJob(hands.office, id);
      if (under(job, kind)) {
        const at = new Date(Date.parse(PRESENT) + day * DAY).toISOString();
        return { job: job.number, at };
      }
    }
    const from = new Date(Date.parse(PRESENT) + day * DAY);
    await liveThrough(
      hands,
      { from, to: new Date(from.getTime() + DAY) },
      () => Promise.resolve(lives),
      undefined,
      (life, now) => life.work(now).catch(leaveRefused),
    );
  }
  throw new Error(`No phase of the kind "${kind}" is started within ${DAYS} days of the demo's present.`);
}

/** A job that its people cannot take further by themselves waits for the office; the others go on. */
const leaveRefused = (error: unknown): void => {
  if (!(error instanceof UnexpectedRefusal)) throw error;
};

const under = ({ phases }: JobView, kind: string): boolean =>
  phases.some((phase) => phase.kind === kind && phase.state === 'started');
