import type {
  Area,
  Clearance,
  EquipmentHold,
  EquipmentPool,
  HoldPoint,
  Inspection,
  Job,
  Phase,
  Placement,
  PlannedPhase,
  PlannedVisit,
  Proposal,
  Site,
} from '../generated/prisma/client.js';

/** A phase that is not done, with where the plan has it. */
export type PhaseFacts = Phase & {
  readonly area: Area | null;
  readonly planned: PlannedPhase | null;
  readonly holdPoints: readonly HoldPoint[];
  readonly holds: readonly (EquipmentHold & { readonly pool: EquipmentPool })[];
};

/** A live job with everything that reminders follow from. */
export interface JobFacts {
  readonly job: Job;
  readonly site: Site;
  /** Phases that are neither done nor dropped. */
  readonly phases: readonly PhaseFacts[];
  /** Inspections without a result. */
  readonly inspections: readonly (Inspection & { readonly planned: PlannedVisit | null })[];
  readonly clearances: readonly Clearance[];
  readonly placements: readonly Placement[];
}

/** What the reminders of a company follow from, as its rows stand now. */
export interface ReminderFacts {
  /** Zone of the office. */
  readonly zone: string;
  readonly jobs: readonly JobFacts[];
  /** The proposal that waits for the office, if any. */
  readonly openProposal: Proposal | null;
}
