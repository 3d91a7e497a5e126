import type { WeatherLimit } from '../../../shared/weather/weather-limit.js';
import type { Forecast } from '../../../shared/weather/forecast.js';
import type {
  CableReading,
  Clearance,
  Crew,
  Hookup,
  HoldPoint,
  Inspection,
  Job,
  Link,
  Phase,
  WeatherHold,
} from '../../generated/prisma/client.js';
import type { StoredFinding } from '../../design/design.face.js';
import type { Need } from '../../../shared/heating/need.js';

/** A hold point with the rows that can release it. */
export type PointFacts = HoldPoint & {
  readonly inspection: Inspection | null;
  readonly clearance: Clearance | null;
};

/** A phase that this one waits for, by a link. */
export interface Predecessor {
  readonly link: Link;
  readonly phase: Phase;
}

/** Equipment that the phase takes when it starts, and who has the rest of it. */
export interface EquipmentFacts {
  readonly poolId: string;
  readonly poolName: string;
  readonly needed: number;
  readonly owned: number;
  readonly out: readonly { readonly phase: Phase; readonly quantity: number }[];
}

/** The limits of the phase and the newest forecast of its site. */
export interface WeatherFacts {
  readonly limits: readonly WeatherLimit[];
  readonly forecast: Forecast;
  /** Kinds of equipment that the phase takes along, which may lift a limit. */
  readonly protection: readonly string[];
}

/** Everything that decides whether a phase may start or finish; gathered for many phases at once. */
export interface PhaseFacts {
  readonly phase: Phase;
  readonly job: Job;
  /** Key of the area it works on; null when it is the job's or the set's. */
  readonly areaKey: string | null;
  /** What the rules say about the design of the job. */
  readonly designFindings: readonly StoredFinding[];
  /** IANA zone of the site, in which messages give times. */
  readonly zone: string;
  readonly predecessors: readonly Predecessor[];
  readonly holdPoints: readonly PointFacts[];
  /** Holds of the site or the phase that were not lifted, and those of a forecast that a person lifted. */
  readonly weatherHolds: readonly WeatherHold[];
  readonly weather: WeatherFacts | null;
  /** Who would do it: as asked for, required, committed or planned. */
  readonly crew: Crew | null;
  /** What else that crew has started, or was doing at the moment asked about. */
  readonly crewWork: readonly Phase[];
  readonly equipment: readonly EquipmentFacts[];
  /** Latest readings, outside their limits, of the heating sets whose readings gate this phase. */
  readonly failing: readonly CableReading[];
  /** The hookup this phase makes, with its needs; null for any other phase. */
  readonly hookup: { readonly row: Hookup; readonly needs: readonly Need[] } | null;
}
