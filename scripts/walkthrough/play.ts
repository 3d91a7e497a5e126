import type { ApiClient } from '../../prisma/demo/api-client.js';
import { enterDemoCompany, signInDemoPeople } from '../../prisma/demo/company.js';
import { enterJob } from '../../prisma/demo/enter-job.js';
import { type Hands, must } from '../../prisma/demo/hands.js';
import { type Happening, JobLife } from '../../prisma/demo/job-life.js';
import { type PhaseView, viewJob } from '../../prisma/demo/job-view.js';
import { failReading, forbidden } from './forbidden.js';
import { hardFrost } from './hard-frost.js';
import type { Stage } from './stage.js';
import { type Trial, Trials } from './trials.js';

const HOUR = 3_600_000;
const DAY = 24 * HOUR;

/** A phase as it went, with why it started when it did. */
export interface PhaseStory {
  readonly phase: string;
  readonly started: string;
  readonly reasons: readonly string[];
}

/** What a walkthrough shows. */
export interface Story {
  readonly job: { readonly number: number; readonly name: string; readonly plannedFinishAtEntry: string };
  readonly refusals: readonly Trial[];
  readonly refusalKinds: number;
  readonly inspections: readonly {
    readonly title: string;
    readonly attempt: number;
    readonly state: string;
  }[];
  readonly weatherHold: {
    readonly limit: string;
    readonly finishBefore: string;
    readonly finishAfter: string;
  } | null;
  readonly readings: readonly {
    readonly stage: string;
    readonly area: string | null;
    readonly accepted: boolean;
  }[];
  readonly phases: readonly PhaseStory[];
  readonly timeline: readonly { readonly at: string; readonly text: string }[];
  readonly mails: readonly { readonly to: string; readonly subject: string }[];
  readonly hookupNotices: number;
  readonly energisedAt: string;
}

/** Takes one job from its measurement to the energised walk, through the public API of the service on the stage. */
export async function play(
  stage: Stage,
  measurement: unknown,
  from: Date,
  say: (happening: Happening) => void,
): Promise<Story> {
  const timeline: Happening[] = [];
  const tell = (happening: Happening) => {
    timeline.push(happening);
    say(happening);
  };
  const hands: Hands = { ...(await signInDemoPeople(stage.url)), setClock: (at) => stage.setClock(at) };
  const trials = new Trials((at, text) => tell({ at, text }));
  const authorityId = await enterDemoCompany(hands.office);
  const job = {
    street: 'Larch Street',
    house: 14,
    owner: 'P. Anders',
    priority: 2,
    dueAt: null,
    measurement: measurement as Sheet,
  };
  const { jobId, siteId } = await enterJob(hands.office, authorityId, job);
  await tryBadSheet(hands.office, siteId, measurement as Sheet, trials, from);
  await must(hands.office, 'commitJob', { jobId });
  const entered = await viewJob(hands.office, jobId);
  const plannedFinishAtEntry = await plannedFinish(hands.office, jobId);
  tell({
    at: from,
    text: `job ${entered.number} is entered with ${entered.phases.length} phases and committed; planned to finish ${day(plannedFinishAtEntry)}`,
  });

  const director = new Director(hands, jobId, siteId, trials, tell);
  const life = new JobLife(hands, jobId, {
    tell,
    allow: (step, phase, now) => director.allow(step, phase, now),
    fails: ({ key, attempt }) => key.startsWith('footing') && attempt === 1,
  });
  await liveUntilEnergised(stage, hands, life, jobId, from);

  await stage.settled();
  const done = await viewJob(hands.office, jobId);
  const mails = stage.mail.messages().map(({ to, subject }) => ({ to, subject }));
  const areaOf = (id: string | undefined) =>
    done.phases.find(({ area }) => area?.id === id)?.area?.key ?? null;
  return {
    job: { number: done.number, name: done.name, plannedFinishAtEntry },
    refusals: trials.all,
    refusalKinds: trials.kinds,
    inspections: done.inspections.map(({ title, attempt, state }) => ({ title, attempt, state })),
    weatherHold: director.weatherHold,
    readings: done.heatingSets.flatMap(({ readings }) =>
      readings.map(({ stage: at, area, accepted }) => ({ stage: at, area: areaOf(area?.id), accepted })),
    ),
    phases: director.stories,
    timeline: timeline.map(({ at, text }) => ({ at: at.toISOString(), text })),
    mails,
    hookupNotices: mails.filter(({ subject }) => subject.startsWith('Ready for hookup')).length,
    energisedAt: done.hookups[0]?.energisedAt ?? '',
  };
}

interface Sheet {
  readonly frost: { readonly depthInches: number; readonly source: string };
  readonly areas: readonly object[];
}

/** The classic slip of the pen: 75 for 7.5. */
async function tryBadSheet(
  office: ApiClient,
  siteId: string,
  sheet: Sheet,
  trials: Trials,
  now: Date,
): Promise<void> {
  const areas = sheet.areas.map((area) => ('riserInches' in area ? { ...area, riserInches: 75 } : area));
  const measurement = JSON.stringify({ ...sheet, areas });
  await trials.refuse(now, 'enter a riser of 75 in', office, 'createJob', {
    siteId,
    name: 'Slip',
    ownerName: 'P. Anders',
    priority: 5,
    measurement,
  });
}

async function liveUntilEnergised(
  stage: Stage,
  hands: Hands,
  life: JobLife,
  jobId: string,
  from: Date,
): Promise<void> {
  let now = from;
  for (const last = new Date(from.getTime() + 200 * DAY); now < last;) {
    stage.setClock(now);
    await life.work(now);
    // What is due is sent before the clock jumps on, as it would be in a week that takes a week.
    await stage.settled();
    const { hookups, phases } = await viewJob(hands.office, jobId);
    if (
      hookups.every(({ energisedAt }) => energisedAt) &&
      phases.every(({ state }) => state === 'done' || state === 'dropped')
    )
      return;
    const next = life.due?.getTime() ?? Number.POSITIVE_INFINITY;
    now = new Date(Math.min(now.getTime() + 12 * HOUR, Math.max(next, now.getTime() + HOUR / 4)));
  }
  throw new Error('The job was not energised within 200 days');
}

/** Steers the play: keeps the reasons of each start, and tries what is forbidden where it is most tempting. */
class Director {
  readonly stories: PhaseStory[] = [];
  weatherHold: Story['weatherHold'] = null;
  private readonly played = new Set<string>();
  private readonly attempts: ReturnType<typeof forbidden>;

  constructor(
    private readonly hands: Hands,
    private readonly jobId: string,
    private readonly siteId: string,
    private readonly trials: Trials,
    private readonly tell: (happening: Happening) => void,
  ) {
    this.attempts = forbidden(hands, trials);
  }

  async allow(step: 'start' | 'finish', phase: PhaseView, now: Date): Promise<boolean> {
    const cue = `${step} ${phase.kind}`;
    if (step === 'start' && !this.stories.some(({ phase: name }) => name === phase.key)) {
      this.stories.push({
        phase: phase.key,
        started: now.toISOString(),
        reasons: await reasonsOf(this.hands.office, phase.id),
      });
    }
    if (this.played.has(cue)) return true;
    this.played.add(cue);
    await this.attempts[cue]?.(await viewJob(this.hands.office, this.jobId), phase, now);
    if (cue === 'start block') return this.frost(phase, now);
    if (cue === 'finish cable-test') {
      const { accepted, findings } = await failReading(this.hands, this.jobId, phase, now);
      this.tell({
        at: now,
        text: `a reading off the label is ${accepted ? 'accepted' : 'not accepted'}: ${findings.join(' ')}`,
      });
      await this.trials.refuse(
        now,
        'finish the test with a failed reading',
        this.hands.foreman,
        'finishPhase',
        { phaseId: phase.id, at: now.toISOString() },
      );
    }
    return true;
  }

  /** A hard frost is forecast on the morning the block should start: the plan moves, and starting is refused. */
  private async frost(phase: PhaseView, now: Date): Promise<boolean> {
    const finishBefore = await plannedFinish(this.hands.office, this.jobId);
    await must(this.hands.office, 'uploadForecast', {
      siteId: this.siteId,
      source: 'invented frost',
      format: 'csv',
      text: hardFrost(now),
    });
    const finishAfter = await plannedFinish(this.hands.office, this.jobId);
    const [limit = ''] = await reasonsOf(this.hands.office, phase.id);
    this.weatherHold = { limit, finishBefore, finishAfter };
    this.tell({
      at: now,
      text: `a hard frost is forecast: the finish moves from ${day(finishBefore)} to ${day(finishAfter)}. ${limit}`,
    });
    await this.trials.refuse(now, 'lay block in the frost', this.hands.foreman, 'startPhase', {
      phaseId: phase.id,
      at: now.toISOString(),
      crewId: phase.planned?.crew?.id ?? null,
    });
    return false;
  }
}

async function reasonsOf(office: ApiClient, phaseId: string): Promise<string[]> {
  const { explain } = await office.data<{ explain: { text: string }[] }>(
    'query($id: ID!) { explain(phaseId: $id) { text } }',
    { id: phaseId },
  );
  return explain.map(({ text }) => text);
}

async function plannedFinish(office: ApiClient, jobId: string): Promise<string> {
  const { job } = await office.data<{ job: { plannedFinish: string | null } }>(
    'query($id: ID!) { job(id: $id) { plannedFinish } }',
    { id: jobId },
  );
  return job.plannedFinish ?? '';
}

const day = (iso: string): string => iso.slice(0, 10);
