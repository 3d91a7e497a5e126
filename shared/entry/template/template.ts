import type { AreaKind } from '../measurement/area.js';
import type { QuantityName } from '../quantities/quantity-names.js';
import type { Source } from '../source.js';
import type { TemplateHoldPoint } from './template-hold-point.js';
import type { ClearanceKind, Continuity, Hatch, LagIn, LinkKind, Trade } from './words.js';

/**
 * How an entry is built, as data: a company edits rates, durations, lags, crew sizes and hold points and keeps it as
 * JSON. Everything refers to phases by their kind; the expansion turns a kind into one phase for the job, for
 * each area, or for each heating set.
 */
export interface EntryTemplate {
  readonly version: 1;
  readonly name: string;
  readonly phases: readonly TemplatePhase[];
  readonly links: readonly TemplateLink[];
  readonly holdPoints: readonly TemplateHoldPoint[];
  readonly clearances: readonly TemplateClearance[];
  readonly equipment: readonly TemplateEquipment[];
}

/** Which areas something is meant for; what is left out does not limit. */
export interface AreaFilter {
  readonly kinds?: readonly AreaKind[];
  readonly heated?: boolean;
}

/** One kind of phase. */
export interface TemplatePhase {
  /** Stable id: `dig`, `footing-pour`, `cable`. */
  readonly kind: string;
  /** Name in trade words; the area's or set's name is appended where there is one. */
  readonly name: string;
  /** One for the job, one for each area, or one for each heating set. */
  readonly scope: 'job' | 'area' | 'set';
  /** Areas that have it; a phase of the job is there when any area fits. */
  readonly where?: AreaFilter;
  readonly hatch: Hatch;
  /** Null for a wait. */
  readonly trade: Trade | null;
  readonly duration: TemplateDuration;
  readonly continuity: Continuity;
  /** Key of the weather limits it runs under; null when weather does not matter. */
  readonly weatherLimits: string | null;
  /** What is placed here and must cure, if anything. */
  readonly placement?: TemplatePlacement;
}

/** Work from quantities at production rates, or time by the clock. */
export type TemplateDuration =
  | {
      readonly kind: 'work';
      /** People who work at it together; work minutes are divided by them. */
      readonly crewSize: number;
      /** Minutes on the clock for setting up and clearing away, whatever the quantity. */
      readonly setUpMinutes: number;
      readonly rates: readonly ProductionRate[];
      readonly source: Source;
    }
  | { readonly kind: 'elapsed'; readonly minutes: number; readonly source: Source };

/** Minutes of one person for one unit of a quantity. */
export interface ProductionRate {
  readonly quantity: QuantityName;
  readonly minutesPerUnit: number;
}

/** Concrete or mortar placed by a phase. */
export interface TemplatePlacement {
  readonly material: 'concrete' | 'grout' | 'mortar';
  /** Least dimension of the section, in, or the measured thickness it has. */
  readonly sectionInches: number | 'footingThickness' | 'bedThickness' | 'walkBaseThickness';
}

/** Which phases of the one kind meet which of the other. */
export type Pairing =
  /** Every one with every one. */
  | 'every'
  /** Those of the same area. */
  | 'sameArea'
  /** Those of the same heating set, or of an area it runs through. */
  | 'sameSet'
  /** An area with the area the same uncut cable runs into next. */
  | 'nextInSet'
  /** The first area of a set on the side that has areas. */
  | 'firstOfSet'
  /** The last area of a set on the side that has areas. */
  | 'lastOfSet';

/** A dependency between two kinds. */
export interface TemplateLink {
  readonly from: string;
  readonly to: string;
  readonly kind: LinkKind;
  readonly pairing: Pairing;
  /** Only for phases of areas that fit. */
  readonly where?: AreaFilter;
  /** Minutes, or the days of cure that the set's instructions ask for. */
  readonly lag: number | 'setCureDays';
  readonly lagIn: LagIn;
}

/** Leave from outside, asked for once per job. */
export interface TemplateClearance {
  readonly key: string;
  readonly kind: ClearanceKind;
  readonly title: string;
  /** Days by the clock from asking to having it. */
  readonly leadDays: number;
  /** Days it lives once given; null when it does not lapse. */
  readonly lifeDays: number | null;
  readonly where?: AreaFilter;
  readonly source: Source;
}

/** Equipment kept from the start of one phase until the finish of another. */
export interface TemplateEquipment {
  /** Kind of the company's stock: `blanket`, `enclosure`, `heater`. */
  readonly pool: string;
  readonly from: string;
  readonly until: string;
  readonly count: { readonly fixed: number } | { readonly quantity: QuantityName; readonly perUnit: number };
  /** Whether it is needed in any season or only in cold weather. */
  readonly season: 'any' | 'cold';
  readonly source: Source;
}
