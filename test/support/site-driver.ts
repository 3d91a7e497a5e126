import type { HoldPointItem } from '../../shared/entry/hold-points/item.js';
import type { HoldPoint, Phase } from '../../src/generated/prisma/client.js';
import type { Database } from '../../src/platform/database/database.js';
import type { ApiClient } from './api-client.js';

/*
 * Runs a job by doing nothing but what its obstacles say: takes the first phase that something can be done about and
 * does it through the API. What cannot be done now waits for time.
 */

const HOUR = 60 * 60 * 1000;

/** Rounds without a step, each longer than the one before, after which a job is stuck: over two months. */
const MOST_IDLE = 24;

interface Obstacle {
  readonly code: string;
  readonly message: string;
  readonly holdPoint: { readonly id: string } | null;
  readonly inspection: { readonly id: string } | null;
  readonly clearance: { readonly id: string } | null;
}

/** What the driver acts through. */
export interface DriverHands {
  readonly database: Database;
  readonly office: ApiClient;
  readonly electrician: ApiClient;
  readonly setClock: (iso: string) => void;
}

/** Drives one job. */
export class SiteDriver {
  /** Every obstacle code met on the way. */
  readonly met = new Set<string>();

  constructor(
    private readonly hands: DriverHands,
    private readonly jobId: string,
    private now: number,
  ) {}

  /** Runs until the job is done. @throws Error when nothing moves any more, naming what is left. */
  async runToEnd(): Promise<void> {
    let idle = 0;
    while ((await this.job()).state !== 'done') {
      if (await this.actOnce()) {
        idle = 0;
        this.pass(HOUR);
      } else {
        idle += 1;
        this.pass(6 * HOUR * idle);
      }
      if (idle > MOST_IDLE) throw new Error(`Nothing moves any more: ${JSON.stringify(await this.open())}`);
    }
  }

  private pass(milliseconds: number): void {
    this.now += milliseconds;
    this.hands.setClock(new Date(this.now).toISOString());
  }

  private job() {
    return this.hands.database.job.findUniqueOrThrow({ where: { id: this.jobId } });
  }

  /** Does the first thing that can be done. */
  private async actOnce(): Promise<boolean> {
    for (const { obstacles, ...phase } of await this.open()) {
      if (obstacles.length === 0 && (await this.step(phase))) return true;
      for (const obstacle of obstacles) if (await this.lift(phase, obstacle)) return true;
    }
    return false;
  }

  /** The phases that are not over, with what stands in their way. */
  private async open(): Promise<(Phase & { obstacles: Obstacle[] })[]> {
    const { job } = await this.hands.office.data<{
      job: { phases: { id: string; obstacles: Obstacle[] }[] };
    }>(
      `query($id: ID!) { job(id: $id) { phases { id obstacles {
        code message holdPoint { id } inspection { id } clearance { id }
      } } } }`,
      { id: this.jobId },
    );
    const rows = await this.hands.database.phase.findMany({
      where: { jobId: this.jobId, state: { in: ['waiting', 'started'] } },
      orderBy: { position: 'asc' },
    });
    return rows.map((row) => {
      const obstacles = job.phases.find(({ id }) => id === row.id)?.obstacles ?? [];
      for (const { code } of obstacles) this.met.add(code);
      return { ...row, obstacles };
    });
  }

  private async step(phase: Phase): Promise<boolean> {
    const hookup = await this.hands.database.hookup.findFirst({ where: { phaseId: phase.id } });
    if (hookup && phase.state === 'waiting') return this.connect(hookup.id);
    if (phase.state === 'started') {
      if (phase.kind === 'energise') await this.energise(phase);
      return this.must('finishPhase', { phaseId: phase.id });
    }
    const crew = await this.hands.database.crew.findFirst({
      where: { companyId: phase.companyId, trades: { has: phase.trade ?? '' } },
    });
    return this.must('startPhase', { phaseId: phase.id, crewId: crew?.id ?? null });
  }

  private async lift(phase: Phase, { code, holdPoint, inspection, clearance }: Obstacle): Promise<boolean> {
    if (code === 'ClearanceMissing' && clearance)
      return this.must('recordClearance', { clearanceId: clearance.id });
    if (code === 'InspectionOutstanding' && inspection) return this.inspect(inspection.id);
    if (code === 'NeedsMissing') return this.leads(phase);
    if (!holdPoint) return false;
    const point = await this.hands.database.holdPoint.findUniqueOrThrow({ where: { id: holdPoint.id } });
    if (code === 'ReadingMissing') return this.read(point, phase);
    return code === 'HoldPointOpen' ? this.release(point) : false;
  }

  private async must(name: string, input: object, client = this.hands.office): Promise<true> {
    const outcome: { code?: string; message?: string } = await client.change(name, { ...input });
    if (outcome.code)
      throw new Error(`${name} ${JSON.stringify(input)}: ${outcome.code}: ${outcome.message}`);
    return true;
  }

  private async inspect(inspectionId: string): Promise<boolean> {
    const visit = await this.hands.database.inspection.findUniqueOrThrow({ where: { id: inspectionId } });
    if (visit.state === 'needed') return this.must('requestInspection', { inspectionId });
    if (visit.state === 'requested') {
      const { inspection } = await this.hands.office.data<{ inspection: { earliestVisit: string } }>(
        'query($id: ID!) { inspection(id: $id) { earliestVisit } }',
        { id: inspectionId },
      );
      const from = Date.parse(inspection.earliestVisit);
      return this.must('bookInspection', {
        inspectionId,
        visitFrom: new Date(from).toISOString(),
        visitTo: new Date(from + HOUR / 2).toISOString(),
      });
    }
    if (visit.state !== 'booked' || (visit.visitFrom?.getTime() ?? 0) > this.now) return false;
    return this.must('passInspection', { inspectionId, inspector: 'N. Elm' });
  }

  private async read(point: HoldPoint, phase: Phase): Promise<boolean> {
    const set = await this.hands.database.heatingSet.findUniqueOrThrow({
      where: { id: point.heatingSetId ?? '' },
    });
    const { key, watts, volts, ohms, heatedFeet, coldLeadFeet } = set;
    if (!set.receivedAt)
      return this.must('receiveHeatingSet', {
        jobId: this.jobId,
        key,
        watts,
        volts,
        ohms,
        heatedFeet,
        coldLeadFeet,
      });
    const byArea = point.readingStage === 'laid' || point.readingStage === 'covered';
    return this.must('recordCableReading', {
      heatingSetId: set.id,
      stage: point.readingStage,
      areaId: byArea ? phase.areaId : null,
      ohms,
      megaohms: 500,
      testVolts: set.insulationVolts,
      cableTempF: set.labelTempF,
    });
  }

  /** Measures what the limits ask for; a cure gets its placement and one warm reading every six hours. */
  private async release(point: HoldPoint): Promise<boolean> {
    if (point.kind === 'cure') return this.cure(point);
    const items = point.items as unknown as HoldPointItem[];
    const values = items.map(({ id, limit, many }) => {
      if (limit.confirmed) return { itemId: id, confirmed: true };
      const value = limit.atMost ?? limit.atLeast ?? 1;
      return many ? { itemId: id, values: [value, value] } : { itemId: id, value };
    });
    return this.must('releaseHoldPoint', { holdPointId: point.id, values });
  }

  private async cure(point: HoldPoint): Promise<boolean> {
    const phaseId = point.placementPhaseId ?? '';
    const placed = await this.hands.database.placement.findFirst({
      where: { phaseId },
      include: { readings: { orderBy: { at: 'desc' }, take: 1 } },
    });
    const pour = await this.hands.database.phase.findUniqueOrThrow({ where: { id: phaseId } });
    if (!placed)
      return this.must('recordPlacement', {
        phaseId,
        placedAt: pour.actualFinish?.toISOString(),
        material: 'concrete',
        sectionInches: 10,
        placedTempF: 65,
        protection: ['blanket'],
      });
    const outcome: { code?: string } = await this.hands.office.change('releaseHoldPoint', {
      holdPointId: point.id,
      values: [],
    });
    if (outcome.code !== 'CureNotReached') return outcome.code === undefined;
    this.met.add('CureNotReached');
    const last = placed.readings[0]?.at ?? placed.placedAt;
    const next = last.getTime() + 6 * HOUR;
    if (next > this.now) return false;
    return this.must('recordTemperature', {
      placementId: placed.id,
      at: new Date(next).toISOString(),
      concreteF: 60,
    });
  }

  private async leads(phase: Phase): Promise<boolean> {
    const hookup = await this.hands.database.hookup.findFirstOrThrow({ where: { phaseId: phase.id } });
    if (hookup.coldLeadThrough) return false;
    return this.must('recordLeads', {
      hookupId: hookup.id,
      coldLeadThrough: true,
      coldLeadFreeInches: 8,
      sensorThrough: true,
      leadsLabelled: true,
    });
  }

  private async connect(hookupId: string): Promise<boolean> {
    return this.must(
      'recordHookup',
      { hookupId, breakerAmperes: 60, disconnect: true, groundFault: true },
      this.hands.electrician,
    );
  }

  /** The phase of a set carries the key of the set. */
  private async energise(phase: Phase): Promise<void> {
    const hookup = await this.hands.database.hookup.findFirstOrThrow({
      where: { jobId: this.jobId, heatingSet: { key: phase.key.split('.')[1] ?? '' } },
    });
    if (hookup.energisedAt === null)
      await this.must('recordEnergised', { hookupId: hookup.id }, this.hands.electrician);
  }
}
