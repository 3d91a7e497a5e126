import { enterDemoCompany, signInDemoPeople } from '../../../prisma/demo/company.js';
import { type DemoJob, enterJob } from '../../../prisma/demo/enter-job.js';
import { type Hands, must } from '../../../prisma/demo/hands.js';
import { type Happening, JobLife } from '../../../prisma/demo/job-life.js';
import { type PhaseView, viewJob } from '../../../prisma/demo/job-view.js';
import type { Stage } from '../stage.js';
import { type Trial, Trials } from '../trials.js';
import { fallingFrost } from './falling-frost.js';
import { Probe } from './probe.js';
import { COMPARISON, type ComparisonView, PLACEMENT, type PlacementView } from './questions.js';

const HOUR = 3_600_000;
const DAY = 24 * HOUR;

/** The protection: a tent at 60 °F for the first 12 hours, then two layers of blanket. */
const PROTECTION = { blanketLayers: 2, blanketR: 4, enclosure: true, enclosureF: 60, heatHours: 12 };
const POUR = { material: 'concrete', sectionInches: 10, placedTempF: 62, accelerated: true };

/** What the cold walkthrough shows. */
export interface ColdStory {
  readonly comparison: ComparisonView;
  readonly placedAt: string;
  readonly posts: { readonly taken: number; readonly known: number };
  readonly refusals: readonly Trial[];
  readonly lowestF: number;
  readonly lowestAt: string;
  readonly firstFreezeAt: string;
  readonly hoursToFirstFreeze: number;
  readonly releasedAt: string;
  readonly releasedPsi: number;
  readonly protectionOffAt: string;
  readonly bareFreezesAt: string;
  readonly bareFreezesPsi: number;
  readonly alarms: readonly { readonly kind: string; readonly at: string; readonly text: string }[];
  readonly mails: readonly string[];
  readonly method: string;
  readonly caution: string;
}

/** Takes a footing from the forecast of a hard frost to its measured release, through the public API and plain HTTP. */
export async function playCold(
  stage: Stage,
  measurement: unknown,
  from: Date,
  say: (happening: Happening) => void,
): Promise<ColdStory> {
  const hands: Hands = { ...(await signInDemoPeople(stage.url)), setClock: (at) => stage.setClock(at) };
  const authorityId = await enterDemoCompany(hands.office);
  const { jobId, siteId } = await enterJob(hands.office, authorityId, {
    street: 'Larch Street',
    house: 14,
    owner: 'P. Anders',
    priority: 2,
    dueAt: null,
    measurement: measurement as DemoJob['measurement'],
  });
  await must(hands.office, 'commitJob', { jobId });
  const play = new ColdPlay(stage, hands, { jobId, siteId }, say);
  await play.untilPoured(from);
  return play.untilReleased();
}

class ColdPlay {
  private now = new Date(0);
  private frostFrom: Date | null = null;
  private comparison: ComparisonView | null = null;
  private placementId: string | null = null;
  private placedAt = new Date(0);
  private readonly trials = new Trials((at, text) => this.say({ at, text }));

  constructor(
    private readonly stage: Stage,
    private readonly hands: Hands,
    private readonly ids: { readonly jobId: string; readonly siteId: string },
    private readonly say: (happening: Happening) => void,
  ) {}

  /** Lets the people work until the footing is poured; on the morning of the pour the frost is forecast. */
  async untilPoured(from: Date): Promise<void> {
    const life = new JobLife(this.hands, this.ids.jobId, {
      allow: (step, phase, now) => this.allow(step, phase, now),
    });
    this.now = from;
    while (this.now.getTime() < from.getTime() + 90 * DAY) {
      this.stage.setClock(this.now);
      await life.work(this.now);
      await this.stage.settled();
      const { phases } = await viewJob(this.hands.office, this.ids.jobId);
      if (phases.some(({ kind, state }) => kind === 'footing-pour' && state === 'done')) return;
      const due = life.due?.getTime() ?? Number.POSITIVE_INFINITY;
      const next = Math.max(due, this.now.getTime() + HOUR / 4);
      this.now = new Date(Math.min(this.now.getTime() + 12 * HOUR, next));
    }
    throw new Error('The footing was not poured within 90 days');
  }

  private async allow(step: 'start' | 'finish', phase: PhaseView, now: Date): Promise<boolean> {
    if (phase.kind !== 'footing-pour') return true;
    if (step === 'start' && this.comparison === null) await this.choose(phase, now);
    if (step === 'finish' && this.placementId === null) await this.place(phase, now);
    return true;
  }

  /** The frost is forecast; both ways are shown, and the office protects. */
  private async choose(phase: PhaseView, now: Date): Promise<void> {
    this.frostFrom = now;
    await must(this.hands.office, 'uploadForecast', {
      siteId: this.ids.siteId,
      source: 'invented frost',
      format: 'csv',
      text: fallingFrost(now),
    });
    this.tell('forecast: 28 °F now, falling to 12 °F within a day, hard frost for two more, then mild');
    const pour = { phaseId: phase.id, ...POUR, protectionPlan: PROTECTION };
    const { protectOrWait } = await this.hands.office.data<{ protectOrWait: ComparisonView }>(COMPARISON, {
      input: pour,
    });
    this.comparison = protectOrWait;
    const reason = 'the masons are here and the tent is free';
    await must(this.hands.office, 'chooseProtection', { pour, branch: 'protect', reason });
    this.tell(`the office chooses to protect: ${protectOrWait.protect.protection.text}`);
  }

  private async place(phase: PhaseView, now: Date): Promise<void> {
    const outcome = (await must(
      this.hands.foreman,
      'recordPlacement',
      { phaseId: phase.id, placedAt: now.toISOString(), ...POUR, protectionPlan: PROTECTION },
      '... on PlacementChanged { placement { id } }',
    )) as unknown as { placement: { id: string } };
    this.placementId = outcome.placement.id;
    this.placedAt = now;
    this.tell(`placed at ${POUR.placedTempF} °F, section ${POUR.sectionInches} in, accelerated`);
  }

  /** Readings come in by HTTP; a release is tried on the prediction, and given on the measurement. */
  async untilReleased(): Promise<ColdStory> {
    const first = await this.placement();
    const probe = await this.register(first);
    const cure = await this.cureHoldPoint();
    const predicted = new Date(first.predictedReleaseAt ?? this.now);
    this.tell(
      `predicted: ${first.strength.requiredPsi} psi ${hours(this.placedAt, predicted)} h after placing; nothing is measured yet`,
    );
    this.at(new Date(predicted.getTime() + HOUR));
    const release = { holdPointId: cure, values: [] };
    await this.trials.refuse(
      this.now,
      'release on the prediction',
      this.hands.foreman,
      'releaseHoldPoint',
      release,
    );
    let taken = (await probe.post(this.now)).taken;
    const again = await probe.repeat();
    this.tell(`the logger posts ${taken} readings over HTTP; one sent twice is known, not taken again`);
    const { taken: more, releasedAt } = await this.releaseWhenMeasured(probe, cure);
    taken += more;
    const released = await this.placement();
    this.tell(
      `released on measurement: ${Math.floor(released.strength.psi)} of ${released.strength.requiredPsi} psi`,
    );
    const offAt = await this.takeOffWhenAllowed(probe);
    return this.story(released, { taken, known: again.known }, releasedAt, offAt);
  }

  private async releaseWhenMeasured(probe: Probe, cure: string) {
    let taken = 0;
    for (let hour = 0; hour < 14 * 24; hour += 1) {
      const outcome = await this.hands.foreman.change('releaseHoldPoint', { holdPointId: cure, values: [] });
      if (!outcome.code) return { taken, releasedAt: this.now };
      this.tell(`not yet: ${outcome.message}`);
      this.at(new Date(this.now.getTime() + 2 * HOUR));
      taken += (await probe.post(this.now)).taken;
    }
    throw new Error('The measured strength was not reached within two weeks');
  }

  /** The blankets stay as long as the rules say, whatever the strength. */
  private async takeOffWhenAllowed(probe: Probe): Promise<Date> {
    const { placementId } = this;
    const off = { placementId };
    await this.trials.refuse(
      this.now,
      'take the blankets off at once',
      this.hands.foreman,
      'takeProtectionOff',
      off,
    );
    for (let step = 0; step < 14 * 8; step += 1) {
      this.at(new Date(this.now.getTime() + 3 * HOUR));
      await probe.post(this.now);
      const outcome = await this.hands.foreman.change('takeProtectionOff', off);
      await this.stage.settled();
      if (outcome.code) continue;
      this.tell('the protection comes off, as the rules allow; blankets and tent are free');
      return this.now;
    }
    throw new Error('The protection could not come off within two weeks');
  }

  private async story(
    { outlook, strength }: PlacementView,
    posts: ColdStory['posts'],
    releasedAt: Date,
    offAt: Date,
  ): Promise<ColdStory> {
    const { comparison } = this;
    const freezes = comparison?.bare?.freezes;
    if (!comparison || !freezes || !outlook.firstFreeze || outlook.firstFreeze.basis !== 'measured')
      throw new Error('The frost must freeze the bare pour, and the protected one must measure its 500 psi');
    const { alarms } = await this.placement();
    return {
      comparison,
      placedAt: this.placedAt.toISOString(),
      posts,
      refusals: this.trials.all,
      lowestF: outlook.lowest.coldestF ?? Number.NaN,
      lowestAt: outlook.lowest.at,
      firstFreezeAt: outlook.firstFreeze.at,
      hoursToFirstFreeze: outlook.hoursToFirstFreeze ?? Number.NaN,
      releasedAt: releasedAt.toISOString(),
      releasedPsi: strength.psi,
      protectionOffAt: offAt.toISOString(),
      bareFreezesAt: freezes.at,
      bareFreezesPsi: freezes.psi ?? 0,
      alarms: alarms.map(({ kind, openedAt, finding }) => ({ kind, at: openedAt, text: finding.text })),
      mails: this.stage.mail.messages().map(({ subject }) => subject),
      method: outlook.method,
      caution: outlook.caution,
    };
  }

  private async register(placement: PlacementView): Promise<Probe> {
    const { siteId } = this.ids;
    const outcome = (await must(
      this.hands.foreman,
      'registerLogger',
      { siteId, placementId: placement.id, name: 'Probe 3' },
      '... on LoggerRegistered { token path }',
    )) as unknown as { token: string; path: string };
    this.tell('a logger is registered; its token is shown once');
    const address = `${this.stage.url}${outcome.path}`;
    const course = placement.outlook.points;
    return new Probe(address, outcome.token, this.placedAt, course, this.frostFrom ?? this.placedAt);
  }

  private async cureHoldPoint(): Promise<string> {
    const { phases } = await viewJob(this.hands.office, this.ids.jobId);
    const point = phases
      .find(({ kind }) => kind === 'footing-cure')
      ?.holdPoints.find(({ kind }) => kind === 'cure');
    if (!point) throw new Error('The footing has no cure hold point');
    return point.id;
  }

  private async placement(): Promise<PlacementView> {
    const { placement } = await this.hands.office.data<{ placement: PlacementView }>(PLACEMENT, {
      id: this.placementId,
    });
    return placement;
  }

  private at(now: Date): void {
    this.now = now;
    this.stage.setClock(now);
  }

  private tell(text: string): void {
    this.say({ at: this.now, text });
  }
}

const hours = (from: Date, to: Date): string => ((to.getTime() - from.getTime()) / HOUR).toFixed(1);
