import type { Outcome } from './api-client.js';
import { goodValues } from './good-values.js';
import { type Hands, must } from './hands.js';
import {
  type HoldPointView,
  type InspectionView,
  type JobView,
  type PhaseView,
  viewJob,
} from './job-view.js';

const HOUR = 3_600_000;
const DAY = 24 * HOUR;

/** The phase whose placement a cure waits for. */
const PLACED_IN: Record<string, string> = {
  'footing-cure': 'footing-pour',
  'block-cure': 'block',
  'base-cure': 'walk-base',
};

/** Thickness of what is placed, by the kind of its phase. */
const SECTION_INCHES: Record<string, number> = { 'footing-pour': 10, block: 8, 'walk-base': 4 };

/** Something that happened on a job. */
export interface Happening {
  readonly at: Date;
  readonly text: string;
}

/** What may be left to somebody else: a walkthrough does some things by hand to show what is refused. */
export interface LifeOptions {
  readonly tell?: (happening: Happening) => void;
  /** Called before a phase is started or finished; false leaves it alone this time. */
  readonly allow?: (step: 'start' | 'finish', phase: PhaseView, now: Date) => Promise<boolean> | boolean;
  /** Results of inspections by key and attempt: true fails it. */
  readonly fails?: (inspection: InspectionView) => boolean;
  /** Brings in the temperatures of a placement between two moments; left out, the foreman reads them by hand. */
  readonly temperatures?: (placementId: string, after: Date, until: Date) => Promise<void>;
}

/**
 * Lets the people of a company work one job by its plan, through the public API: what the plan says for now is started
 * and finished, hold points are measured and released, inspections requested, booked and passed.
 */
export class JobLife {
  constructor(
    private readonly hands: Hands,
    readonly jobId: string,
    private readonly options: LifeOptions = {},
  ) {}

  /** The next moment at which the plan, as last seen, has something to do; null when it has nothing. */
  due: Date | null = new Date(0);

  /** Does everything that is due at this moment; true when anything was done. */
  async work(now: Date): Promise<boolean> {
    for (let round = 0; round < 60; round += 1) {
      const job = await viewJob(this.hands.office, this.jobId);
      if (!(await this.one(job, now))) {
        this.due = nextDue(job, now);
        return round > 0;
      }
    }
    throw new Error(`Job ${this.jobId} finds no end of work at ${now.toISOString()}`);
  }

  /** Does the first thing that is due; false when nothing is. */
  private async one(job: JobView, now: Date): Promise<boolean> {
    return (
      (await this.clearances(job, now)) ||
      (await this.inspections(job, now)) ||
      (await this.bookings(job, now)) ||
      (await this.finishes(job, now)) ||
      (await this.starts(job, now))
    );
  }

  private async clearances(job: JobView, now: Date): Promise<boolean> {
    for (const clearance of job.clearances) {
      // A mark-out lapses, so it is asked for when the digging is near.
      if (clearance.state === 'needed' && (clearance.key !== 'mark-out' || this.digSoon(job, now))) {
        await must(this.hands.office, 'requestClearance', { clearanceId: clearance.id });
        this.tell(now, `office asks for: ${clearance.title}`);
        return true;
      }
      if (clearance.state === 'requested' && clearance.expectedAt && new Date(clearance.expectedAt) <= now) {
        await must(this.hands.office, 'recordClearance', {
          clearanceId: clearance.id,
          clearedAt: clearance.expectedAt,
        });
        this.tell(now, `cleared: ${clearance.title}`);
        if (clearance.key === 'cable') await this.receiveSets(job, now);
        return true;
      }
    }
    return false;
  }

  private digSoon(job: JobView, now: Date): boolean {
    const dig = job.phases.find(({ kind }) => kind === 'dig');
    return !dig?.planned || new Date(dig.planned.startAt).getTime() - now.getTime() < 9 * DAY;
  }

  /** The set as delivered agrees with what was ordered; its first reading is taken in the yard. */
  private async receiveSets(job: JobView, now: Date): Promise<void> {
    for (const set of job.heatingSets) {
      await must(this.hands.office, 'receiveHeatingSet', {
        jobId: job.id,
        key: set.key,
        watts: set.watts,
        volts: set.volts,
        ohms: set.ohms,
        heatedFeet: set.heatedFeet,
        coldLeadFeet: set.coldLeadFeet,
        receivedAt: now.toISOString(),
      });
      await this.reading(job, set.id, 'received', null, now);
    }
  }

  private async reading(
    job: JobView,
    heatingSetId: string,
    stage: string,
    areaId: string | null,
    now: Date,
  ): Promise<Outcome> {
    const set = job.heatingSets.find(({ id }) => id === heatingSetId);
    if (!set) throw new Error(`Job ${job.number} has no heating set ${heatingSetId}`);
    const outcome = await must(this.hands.foreman, 'recordCableReading', {
      heatingSetId,
      stage,
      areaId,
      at: now.toISOString(),
      ohms: Math.round(set.ohms * 1.012 * 100) / 100,
      megaohms: 550,
      testVolts: 500,
      cableTempF: 60,
    });
    this.tell(now, `reading of ${set.key}, ${stage}`);
    return outcome;
  }

  private async inspections(job: JobView, now: Date): Promise<boolean> {
    for (const inspection of job.inspections) {
      const { id: inspectionId, plannedVisit } = inspection;
      if (inspection.state === 'needed' && plannedVisit && (askAt(inspection) ?? now) <= now) {
        await must(this.hands.foreman, 'requestInspection', { inspectionId, at: now.toISOString() });
        this.tell(now, `asked for: ${inspection.title}`);
        return true;
      }
      if (inspection.state === 'requested' && plannedVisit) {
        await must(this.hands.foreman, 'bookInspection', {
          inspectionId,
          visitFrom: plannedVisit.startAt,
          visitTo: plannedVisit.finishAt,
        });
        this.tell(now, `booked: ${inspection.title}`);
        return true;
      }
      if (inspection.state === 'booked' && inspection.visitTo && new Date(inspection.visitTo) <= now) {
        const failed = this.options.fails?.(inspection) ?? false;
        const result = {
          inspectionId,
          at: inspection.visitTo,
          inspector: 'inspector on duty',
          note: failed ? 'Dowels missing at the north corner.' : null,
        };
        await must(this.hands.foreman, failed ? 'failInspection' : 'passInspection', result);
        this.tell(now, `${failed ? 'failed' : 'passed'}: ${inspection.title}`);
        return true;
      }
    }
    return false;
  }

  private async finishes(job: JobView, now: Date): Promise<boolean> {
    for (const phase of job.phases.filter(({ state }) => state === 'started')) {
      if (!phase.planned || new Date(phase.planned.finishAt) > now) continue;
      if (!(await (this.options.allow?.('finish', phase, now) ?? true))) continue;
      if (await this.releaseNext(job, phase, 'finish', now)) return true;
      if (await this.place(job, phase, now)) return true;
      if (await this.electrical(job, phase, now)) return true;
      const outcome = await this.hands.foreman.change('finishPhase', {
        phaseId: phase.id,
        at: now.toISOString(),
      });
      if (outcome.code) continue;
      this.tell(now, `finished: ${phase.name}`);
      return true;
    }
    return false;
  }

  private async starts(job: JobView, now: Date): Promise<boolean> {
    for (const phase of job.phases.filter(({ state }) => state === 'waiting')) {
      if (!phase.planned || new Date(phase.planned.startAt) > now) continue;
      if (!(await (this.options.allow?.('start', phase, now) ?? true))) continue;
      if (await this.releaseNext(job, phase, 'start', now)) return true;
      const crewId = phase.planned.crew?.id ?? null;
      const outcome = await this.hands.foreman.change('startPhase', {
        phaseId: phase.id,
        at: now.toISOString(),
        crewId,
      });
      if (outcome.code) continue;
      this.tell(now, `started: ${phase.name}`);
      return true;
    }
    return false;
  }

  /** Releases one open hold point of the gate; true when it did. */
  private async releaseNext(
    job: JobView,
    phase: PhaseView,
    gate: 'start' | 'finish',
    now: Date,
  ): Promise<boolean> {
    const open = phase.holdPoints.filter(
      (point) => point.gate === gate && (point.state === 'open' || point.state === 'refused'),
    );
    for (const point of open) if (await this.release(job, phase, point, now)) return true;
    return false;
  }

  private async release(job: JobView, phase: PhaseView, point: HoldPointView, now: Date): Promise<boolean> {
    switch (point.kind) {
      case 'check': {
        const values = goodValues(point.items, job.site.frostDepthInches);
        await must(this.hands.foreman, 'releaseHoldPoint', { holdPointId: point.id, values });
        if (point.key === 'leads') await this.leads(job, phase);
        break;
      }
      case 'reading': {
        const set =
          job.heatingSets.find(({ id }) => id === point.heatingSet?.id) ??
          job.heatingSets.find(({ areas }) => !phase.area || areas.some(({ id }) => id === phase.area?.id)) ??
          job.heatingSets[0];
        if (!set || !point.readingStage) return false;
        const stage = point.readingStage;
        await this.reading(
          job,
          set.id,
          stage,
          stage === 'laid' || stage === 'covered' ? (phase.area?.id ?? null) : null,
          now,
        );
        break;
      }
      case 'cure':
        return this.cure(job, phase, point, now);
      default:
        return false;
    }
    this.tell(now, `released: ${point.title} (${phase.name})`);
    return true;
  }

  /** Cold lead and sensor lead are through the wall and labelled once the first area's cable lies. */
  private async leads(job: JobView, phase: PhaseView): Promise<void> {
    const set = job.heatingSets.find(({ areas }) => areas[0]?.id === phase.area?.id);
    const hookup = job.hookups.find(({ heatingSet }) => heatingSet.id === set?.id);
    if (!hookup) return;
    await must(this.hands.foreman, 'recordLeads', {
      hookupId: hookup.id,
      coldLeadThrough: true,
      coldLeadFreeInches: 10,
      sensorThrough: true,
      leadsLabelled: true,
    });
  }

  /** Writes down what was placed, once, before its phase is called finished. */
  private async place(job: JobView, phase: PhaseView, now: Date): Promise<boolean> {
    const cured = Object.values(PLACED_IN).includes(phase.kind);
    if (!cured || job.placements.some(({ phase: of }) => of.id === phase.id)) return false;
    await must(this.hands.foreman, 'recordPlacement', {
      phaseId: phase.id,
      placedAt: now.toISOString(),
      material: phase.kind === 'block' ? 'grout' : 'concrete',
      sectionInches: SECTION_INCHES[phase.kind] ?? 8,
      placedTempF: 62,
      accelerated: true,
      protection: ['enclosure', 'heater', 'blanket'],
    });
    this.tell(now, `placed: ${phase.name}`);
    return true;
  }

  /** The electrician books the day that the plan gives, once told that the leads are ready. */
  private async bookings(job: JobView, now: Date): Promise<boolean> {
    const ready = job.hookups.find(({ state }) => state === 'ready');
    const planned = job.phases.find(({ id }) => id === ready?.phase.id)?.planned;
    if (!ready || !planned) return false;
    const day = new Date(Math.max(new Date(planned.startAt).getTime(), now.getTime())).toISOString();
    await must(this.hands.electrician, 'bookHookup', { hookupId: ready.id, day });
    this.tell(now, `the electrician books ${day.slice(0, 10)}`);
    return true;
  }

  /** The electrician's own records, before the phase is called finished. */
  private async electrical(job: JobView, phase: PhaseView, now: Date): Promise<boolean> {
    if (phase.kind === 'hookup') {
      const open = job.hookups.find(({ state, phase: of }) => state !== 'done' && of.id === phase.id);
      if (!open) return false;
      await must(this.hands.electrician, 'recordHookup', {
        hookupId: open.id,
        at: now.toISOString(),
        breakerAmperes: 30,
        disconnect: true,
        groundFault: true,
        note: null,
      });
      this.tell(now, 'the electrician records the hookup');
      return true;
    }
    const dark = job.hookups.find(({ energisedAt }) => !energisedAt);
    if (phase.kind !== 'energise' || !dark) return false;
    await must(this.hands.electrician, 'recordEnergised', { hookupId: dark.id, at: now.toISOString() });
    this.tell(now, 'energised');
    return true;
  }

  /** Writes down the temperatures since the last visit and releases when they are enough. */
  private async cure(job: JobView, phase: PhaseView, point: HoldPointView, now: Date): Promise<boolean> {
    const placement = job.placements.find(
      ({ phase: of }) => of.kind === PLACED_IN[phase.kind] && of.area?.id === phase.area?.id,
    );
    if (!placement) return false;
    const last = Math.max(
      new Date(placement.placedAt).getTime(),
      ...placement.readings.map(({ at }) => new Date(at).getTime()),
    );
    await (this.options.temperatures?.(placement.id, new Date(last), now) ??
      this.readByHand(placement.id, last, now));
    const outcome = await this.hands.foreman.change('releaseHoldPoint', {
      holdPointId: point.id,
      values: [],
    });
    if (outcome.code) return false;
    this.tell(now, `released on measured strength: ${point.title}`);
    return true;
  }

  private async readByHand(placementId: string, last: number, now: Date): Promise<void> {
    for (let at = last + 8 * HOUR; at <= now.getTime(); at += 8 * HOUR) {
      await must(this.hands.foreman, 'recordTemperature', {
        placementId,
        at: new Date(at).toISOString(),
        concreteF: 60 + ((at / HOUR / 8) % 3),
        airF: 27,
      });
    }
  }

  private tell(at: Date, text: string): void {
    this.options.tell?.({ at, text });
  }
}

function nextDue(job: JobView, now: Date): Date | null {
  const moments = [
    ...job.phases.map(({ state, planned }) =>
      state === 'waiting' ? planned?.startAt : state === 'started' ? planned?.finishAt : null,
    ),
    ...job.clearances.map(({ state, expectedAt }) => (state === 'requested' ? expectedAt : null)),
    ...job.inspections.map((inspection) =>
      inspection.state === 'needed'
        ? askAt(inspection)?.toISOString()
        : inspection.state === 'booked'
          ? inspection.visitTo
          : null,
    ),
    ...job.placements.map(({ predictedReleaseAt }) => predictedReleaseAt),
  ];
  const later = moments.flatMap((text) => (text ? [new Date(text)] : [])).filter((at) => at > now);
  return later.length === 0 ? null : new Date(Math.min(...later.map((at) => at.getTime())));
}

/** A day before the last moment that still gives the planned visit. */
function askAt({ plannedVisit }: InspectionView): Date | null {
  return plannedVisit && new Date(new Date(plannedVisit.requestBy).getTime() - DAY);
}
