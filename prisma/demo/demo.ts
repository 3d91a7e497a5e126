import { mkdtempSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { bootApi } from '../../src/boot.js';
import { Database } from '../../src/platform/database/database.js';
import { chooseProtection } from './choose-protection.js';
import { enterDemoCompany, makeDemoCompany, signInDemoPeople } from './company.js';
import { type DemoJob, enterJob } from './enter-job.js';
import { type Hands, must } from './hands.js';
import { JobLife } from './job-life.js';
import { liveThrough } from './live-through.js';
import { MEASUREMENTS } from './measurements.js';
import { SiteLogger } from './site-logger.js';
import { writeClock } from './write-clock.js';
import { winterForecast } from './winter-forecast.js';

const DAY = 86_400_000;

interface Planned extends Omit<DemoJob, 'dueAt' | 'measurement'> {
  /** Days before the present on which the office enters the job. */
  readonly enteredDaysAgo: number;
  /** Days after the present by which it was promised. */
  readonly dueInDays: number | null;
}

const JOBS: readonly Planned[] = [
  { street: 'Larch Street', house: 14, owner: 'P. Anders', priority: 2, enteredDaysAgo: 62, dueInDays: 21 },
  { street: 'Quarry Road', house: 3, owner: 'J. Whitlow', priority: 3, enteredDaysAgo: 48, dueInDays: 30 },
  { street: 'Mill Lane', house: 27, owner: 'R. Ostrow', priority: 4, enteredDaysAgo: 36, dueInDays: 45 },
  { street: 'Chapel Hill', house: 8, owner: 'S. Dunmore', priority: 1, enteredDaysAgo: 30, dueInDays: 40 },
  { street: 'Ferry Steps', house: 51, owner: 'L. Brandt', priority: 5, enteredDaysAgo: 20, dueInDays: null },
  { street: 'Orchard Rise', house: 19, owner: 'K. Imre', priority: 5, enteredDaysAgo: 6, dueInDays: 75 },
];

/**
 * Loads the demo: an invented company whose people have worked six jobs up to the present, through the public API of a
 * service that runs in this process on a clock of its own.
 */
export async function loadDemo(present: Date, say: (text: string) => void): Promise<void> {
  const clockFile = join(mkdtempSync(join(tmpdir(), 'flagway-demo-')), 'now');
  const setClock = (at: Date) => writeClock(clockFile, at);
  const from = new Date(present.getTime() - 63 * DAY);
  setClock(from);
  Object.assign(process.env, {
    FLAGWAY_CLOCK_FILE: clockFile,
    FLAGWAY_PORT: '0',
    FLAGWAY_HOST: '127.0.0.1',
    FLAGWAY_ROLES: 'api',
  });
  const service = await bootApi({ board: false });
  try {
    await makeDemoCompany(service.app.get(Database));
    const hands: Hands = { ...(await signInDemoPeople(service.url)), setClock };
    const authorityId = await enterDemoCompany(hands.office);
    await live(hands, authorityId, { from, to: present }, say);
  } finally {
    await service.close();
  }
}

async function live(
  hands: Hands,
  authorityId: string,
  span: { from: Date; to: Date },
  say: (text: string) => void,
): Promise<void> {
  const lives: JobLife[] = [];
  const sites: string[] = [];
  const waiting = [...JOBS];
  const enterDue = async (now: Date) => {
    while (waiting[0] && span.to.getTime() - waiting[0].enteredDaysAgo * DAY <= now.getTime()) {
      const job = waiting.shift() as Planned;
      const dueAt = job.dueInDays === null ? null : new Date(span.to.getTime() + job.dueInDays * DAY);
      const { jobId, siteId } = await enterJob(hands.office, authorityId, {
        ...job,
        dueAt,
        measurement: sheetOf(job.street),
      });
      // Where a crew is promised elsewhere on such a day, the dates of this job stay a plan.
      await hands.office.change('commitJob', { jobId });
      const fails =
        job.street === 'Mill Lane'
          ? ({ key, attempt }: { key: string; attempt: number }) => key.startsWith('footing') && attempt === 1
          : () => false;
      // At one site a logger reads what cures, at the others the foreman does.
      const logger =
        job.street === 'Chapel Hill'
          ? await SiteLogger.register(hands, siteId, 'Probe under the tent')
          : null;
      lives.push(
        new JobLife(hands, jobId, {
          fails,
          ...(logger && { temperatures: (...asked) => logger.post(...asked) }),
        }),
      );
      sites.push(siteId);
      say(`${job.street} is entered`);
    }
    return lives;
  };
  // A job that runs into what its people cannot settle by themselves stays as it is; the demo goes on without it.
  const resting = new Set<JobLife>();
  const work = async (life: JobLife, now: Date): Promise<void> => {
    if (resting.has(life)) return;
    try {
      await life.work(now);
    } catch (error) {
      resting.add(life);
      say(`a job rests from ${now.toISOString()}: ${error instanceof Error ? error.message : String(error)}`);
    }
  };
  const eachMorning = async (now: Date): Promise<void> => {
    // The office looks at proposals each morning until the last day.
    if (span.to.getTime() - now.getTime() > DAY) await acceptOpenProposal(hands);
  };
  await liveThrough(hands, span, enterDue, eachMorning, work);
  for (const siteId of sites) {
    await must(hands.office, 'uploadForecast', {
      siteId,
      source: 'invented winter week',
      format: 'csv',
      text: winterForecast(span.to),
    });
  }
  await chooseProtection(
    hands,
    lives.map(({ jobId }) => jobId),
    span.to,
  );
}

function sheetOf(street: string): DemoJob['measurement'] {
  const sheet = MEASUREMENTS[street];
  if (!sheet) throw new Error(`Nobody measured ${street}`);
  return sheet;
}

/** Accepts what is proposed; a proposal that has been overtaken in the meantime is left for the next morning. */
async function acceptOpenProposal(hands: Hands): Promise<void> {
  const { proposals } = await hands.office.data<{ proposals: { edges: { node: { id: string } }[] } }>(
    '{ proposals(first: 1, state: open) { edges { node { id } } } }',
  );
  const open = proposals.edges[0]?.node;
  if (open) await hands.office.change('acceptProposal', { proposalId: open.id });
}
