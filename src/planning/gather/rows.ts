import type {
  Authority,
  Clearance,
  Commitment,
  Company,
  Crew,
  CrewException,
  EquipmentHold,
  EquipmentPool,
  Forecast,
  HoldPoint,
  Inspection,
  Job,
  Link,
  Phase,
  Placement,
  PlannedPhase,
  PlannedVisit,
  ProtectionChoice,
  WeatherHold,
  WeatherLimitSet,
} from '../../generated/prisma/client.js';

/** A job with what planning needs of its site. */
export interface JobRow extends Job {
  readonly site: { readonly id: string; readonly zone: string; readonly authorityId: string | null };
}

/** Everything of a company that planning looks at, as stored. Phases are those that are not dropped. */
export interface PlanningRows {
  readonly company: Company;
  readonly crews: readonly (Crew & { readonly exceptions: readonly CrewException[] })[];
  readonly pools: readonly EquipmentPool[];
  readonly authorities: readonly Authority[];
  readonly jobs: readonly JobRow[];
  readonly phases: readonly Phase[];
  readonly links: readonly Link[];
  readonly holds: readonly EquipmentHold[];
  /** Hold points that dates follow from: inspections, clearances and cures. */
  readonly holdPoints: readonly HoldPoint[];
  readonly clearances: readonly Clearance[];
  /** Inspections that have not been decided. */
  readonly inspections: readonly Inspection[];
  readonly placements: readonly Placement[];
  /** What was chosen for phases that meet cold weather: it says how long their cure is expected to take. */
  readonly choices: readonly ProtectionChoice[];
  readonly limitSets: readonly WeatherLimitSet[];
  /** The newest forecast of each site. */
  readonly forecasts: readonly Forecast[];
  /** Holds that people called, and those of the forecast that a person has lifted. */
  readonly weatherHolds: readonly WeatherHold[];
  /** Commitments that stand. */
  readonly commitments: readonly Commitment[];
  /** The plan before this one. */
  readonly planned: readonly PlannedPhase[];
  readonly visits: readonly PlannedVisit[];
}
