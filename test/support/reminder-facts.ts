import type {
  Clearance,
  HoldPoint,
  Inspection,
  Placement,
  PlannedVisit,
} from '../../src/generated/prisma/client.js';
import type { JobFacts, PhaseFacts, ReminderFacts } from '../../src/reminders/facts.js';

/*
 * Facts for the derivation of reminders, each with only what a test names beside plain values.
 *
 *   factsOf(jobFacts({ phases: [phaseFacts({ ... })] }))
 */

const row = <T>(plain: object, changes: Partial<T>): T => ({ ...plain, ...changes }) as T;

const base = { companyId: 'c', jobId: 'j', revision: 1 };

/** The facts of a company with these jobs. */
export const factsOf = (...jobs: JobFacts[]): ReminderFacts => ({
  zone: 'America/New_York',
  openProposal: null,
  jobs,
});

/** A live job in New York's zone. */
export const jobFacts = (changes: Partial<JobFacts> = {}): JobFacts => ({
  job: row({ ...base, id: 'j', number: 104, name: 'Birch Lane', state: 'running' }, {}),
  site: row({ id: 's', address: '3 Birch Lane', town: 'Alder Mills', zone: 'America/New_York' }, {}),
  phases: [],
  inspections: [],
  clearances: [],
  placements: [],
  ...changes,
});

/** A waiting phase "cable", planned for the 8th of January 2031 from 8:00 to 16:00 in New York. */
export const phaseFacts = (changes: Partial<PhaseFacts> = {}): PhaseFacts =>
  row(
    {
      ...base,
      id: 'p',
      key: 'cable',
      name: 'cable',
      state: 'waiting',
      area: null,
      actualCrewId: null,
      requiredCrewId: null,
      holdPoints: [],
      holds: [],
      planned: {
        startAt: new Date('2031-01-08T08:00:00-05:00'),
        finishAt: new Date('2031-01-08T16:00:00-05:00'),
        crewId: 'crew',
      },
    },
    changes,
  );

/** An open check before the start of its phase. */
export const holdPoint = (changes: Partial<HoldPoint> = {}): HoldPoint =>
  row(
    {
      ...base,
      id: 'h',
      phaseId: 'p',
      key: 'check',
      kind: 'check',
      gate: 'start',
      title: 'Depth measured',
      state: 'open',
      caution: null,
      clearanceId: null,
      placementPhaseId: null,
      readingStage: null,
    },
    changes,
  );

/** An inspection not asked for yet, with its planned visit on the 8th at 10:00, to be asked for by the 6th at 10:00. */
export const inspection = (
  changes: Partial<Inspection & { planned: PlannedVisit | null }> = {},
): Inspection & { planned: PlannedVisit | null } =>
  row(
    {
      ...base,
      id: 'i',
      phaseId: 'p',
      title: 'Footing',
      state: 'needed',
      attempt: 1,
      visitFrom: null,
      visitTo: null,
      planned: {
        startAt: new Date('2031-01-08T10:00:00-05:00'),
        finishAt: new Date('2031-01-08T10:30:00-05:00'),
        requestBy: new Date('2031-01-06T10:00:00-05:00'),
      },
    },
    changes,
  );

/** A valid mark-out that lapses on the 10th at noon. */
export const markOut = (changes: Partial<Clearance> = {}): Clearance =>
  row(
    {
      ...base,
      id: 'm',
      kind: 'markOut',
      title: 'Utility mark-out',
      state: 'cleared',
      lapsesAt: new Date('2031-01-10T12:00:00-05:00'),
      reference: 'T-1',
    },
    changes,
  );

/** Mortar placed on the 6th, predicted to be strong enough on the 8th at 9:00. */
export const placement = (changes: Partial<Placement> = {}): Placement =>
  row(
    {
      ...base,
      id: 'pl',
      phaseId: 'pour',
      material: 'concrete',
      requiredPsi: 500,
      placedAt: new Date('2031-01-06T09:00:00-05:00'),
      predictedReleaseAt: new Date('2031-01-08T09:00:00-05:00'),
    },
    changes,
  );
