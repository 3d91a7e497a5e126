import type { AreaKind } from '../measurement/area.js';
import type { MeasuredSet } from '../measurement/measurement.js';
import type { HoldPointItem } from '../hold-points/item.js';
import type { Quantities } from '../quantities/quantity-names.js';
import type { Finding } from '../rules/finding.js';
import type {
  ClearanceKind,
  Continuity,
  Gate,
  Hatch,
  HoldPointKind,
  LagIn,
  LinkKind,
  ReadingStage,
  Trade,
} from './words.js';

/** Everything a new job gets from its template and its measurement; keys refer to each other. */
export interface EntryPlanDraft {
  readonly areas: readonly DraftArea[];
  readonly phases: readonly DraftPhase[];
  readonly links: readonly DraftLink[];
  readonly holdPoints: readonly DraftHoldPoint[];
  readonly clearances: readonly DraftClearance[];
  readonly inspections: readonly DraftInspection[];
  readonly equipmentHolds: readonly DraftEquipmentHold[];
  readonly placements: readonly DraftPlacement[];
  /** Sets as measured; areas in the order the cable runs through them. */
  readonly heatingSets: readonly MeasuredSet[];
  readonly hookups: readonly DraftHookup[];
  /** Of the whole job. */
  readonly quantities: Quantities;
  /** What the rules say about the design; an entry with a failed one may be drafted, not built. */
  readonly findings: readonly Finding[];
}

/** An area with its quantities; `position` is the order of the measurement. */
export interface DraftArea {
  readonly key: string;
  readonly kind: AreaKind;
  readonly name: string;
  readonly position: number;
  readonly heated: boolean;
  readonly quantities: Quantities;
}

/** A phase; its key is the kind, with `.area` or `.set` where there is one. */
export interface DraftPhase {
  readonly key: string;
  readonly kind: string;
  readonly areaKey: string | null;
  readonly heatingSetKey: string | null;
  readonly name: string;
  readonly hatch: Hatch;
  readonly trade: Trade | null;
  readonly position: number;
  readonly durationKind: 'work' | 'elapsed';
  /** Minutes of working time at the crew size, a multiple of 15; or minutes by the clock. */
  readonly durationMinutes: number;
  /** Null for what no crew does. */
  readonly crewSize: number | null;
  readonly continuity: Continuity;
  readonly weatherLimitKey: string | null;
}

/** A dependency. */
export interface DraftLink {
  readonly from: string;
  readonly to: string;
  readonly kind: LinkKind;
  readonly lagMinutes: number;
  readonly lagIn: LagIn;
}

/** A hold point; what does not apply to its kind is null. `key` is unique within its phase. */
export interface DraftHoldPoint {
  readonly key: string;
  readonly phaseKey: string;
  readonly kind: HoldPointKind;
  readonly gate: Gate;
  readonly title: string;
  readonly items: readonly HoldPointItem[];
  readonly caution: string | null;
  readonly waivable: boolean;
  readonly inspectionKey: string | null;
  readonly clearanceKey: string | null;
  readonly heatingSetKey: string | null;
  readonly readingStage: ReadingStage | null;
  readonly placementPhaseKey: string | null;
  readonly requiredPsi: number | null;
}

/** Leave from outside. */
export interface DraftClearance {
  readonly key: string;
  readonly kind: ClearanceKind;
  readonly title: string;
  readonly leadMinutes: number;
  readonly lifeDays: number | null;
}

/** An authority's visit that the phase waits for. */
export interface DraftInspection {
  readonly key: string;
  readonly phaseKey: string;
  readonly title: string;
}

/** Equipment kept from the start of one phase until the finish of another. */
export interface DraftEquipmentHold {
  readonly pool: string;
  readonly quantity: number;
  readonly from: string;
  readonly until: string;
}

/** What a phase places and what strength is asked of it. */
export interface DraftPlacement {
  readonly phaseKey: string;
  readonly material: 'concrete' | 'grout' | 'mortar';
  readonly sectionInches: number;
  /** 0 when no hold point asks for a strength. */
  readonly requiredPsi: number;
}

/** The electrician's connection of a set. */
export interface DraftHookup {
  readonly heatingSetKey: string;
  readonly phaseKey: string;
  readonly energisePhaseKey: string | null;
}
