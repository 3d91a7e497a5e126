import type { Slot, SlotCount } from './slot.js';

/** A half-open stretch of slots: `from` belongs to it, `to` does not. */
export interface Interval {
  readonly from: Slot;
  readonly to: Slot;
}

/** Everything one planning pass looks at. Order of the lists does not matter; ids are unique within each list. */
export interface PlanInput {
  /** Number of slots in the horizon; nothing is planned to finish after it. */
  readonly horizon: SlotCount;
  /** The present. Unstarted work never starts before it. */
  readonly now: Slot;
  /** Commitments that start before this slot are kept in place unless a hard constraint forbids it. */
  readonly freezeUntil: Slot;
  readonly calendars: readonly Calendar[];
  readonly crews: readonly Crew[];
  readonly pools: readonly Pool[];
  readonly weather: readonly WeatherSet[];
  readonly inspections: readonly Inspection[];
  readonly jobs: readonly Job[];
  readonly phases: readonly Phase[];
  readonly links: readonly Link[];
  /**
   * Phase ids in the order of an improved plan, which then replaces the rule of rank for everything that is neither fact, pinned nor frozen.
   * Phases it does not name come after those it names, by the rule.
   */
  readonly order?: readonly string[] | undefined;
}

/** Open time of a crew, an authority or a kind of wait. `calendarFromWeek` makes one from weekly hours. */
export interface Calendar {
  readonly id: string;
  /** Open stretches in any order; touching and overlapping ones are merged. */
  readonly open: readonly Interval[];
}

/** People who do one phase at a time, from its start to its finish, across all jobs. */
export interface Crew {
  readonly id: string;
  readonly trades: readonly string[];
  readonly calendarId: string;
}

/** Equipment the company owns in a limited quantity. */
export interface Pool {
  readonly id: string;
  readonly quantity: number;
}

/** A list of weather holds shared by the phases that have the same limits at the same site. */
export interface WeatherSet {
  readonly id: string;
  readonly holds: readonly WeatherHold[];
}

/** A stretch in which the phases of a weather set may not run, or beyond the forecast (`unknown`: plannable, marked). */
export interface WeatherHold extends Interval {
  readonly cause: WeatherCause;
}

/** Why a weather hold stands. */
export type WeatherCause =
  | {
      readonly kind: 'limit';
      /** Which limit closes it. */
      readonly limitId: string;
      /** Forecast value that crosses the limit, in the limit's own unit. */
      readonly value: number;
      /** Hour of that value. */
      readonly hour: Slot;
      readonly text: string;
    }
  | { readonly kind: 'called'; readonly holdId: string; readonly text: string }
  | { readonly kind: 'unknown' };

/** One entry rebuilt at one site. */
export interface Job {
  readonly id: string;
  /** Lower goes first. */
  readonly priority: number;
  /** Promise to finish by this slot; missing it is a conflict, not an error. */
  readonly due?: Slot | undefined;
}

/** How long a phase takes. Zero slots make a milestone, which needs no crew. */
export type Duration =
  /** Working time in the crew's (or the phase's) open hours. Continuous work must fit one open stretch. */
  | { readonly kind: 'work'; readonly slots: SlotCount; readonly mode: 'continuous' | 'interruptible' }
  /** Elapsed time, nights and closed days included: a cure. It starts in open time and is never interrupted. */
  | { readonly kind: 'elapsed'; readonly slots: SlotCount };

/** A piece of work by one crew, or one wait. */
export interface Phase {
  readonly id: string;
  readonly jobId: string;
  readonly duration: Duration;
  /** Trade whose crews can do it; leave out for waits and for what an authority does. */
  readonly trade?: string | undefined;
  /** The one crew that must do it. */
  readonly crewId?: string | undefined;
  /** Open hours of a phase without crew; always open when left out. */
  readonly calendarId?: string | undefined;
  /** Weather sets that close it. */
  readonly weatherIds?: readonly string[] | undefined;
  /**
   * False: while closing weather pauses it, its crew is free for other work. True when left out: the crew waits with it. Says nothing about
   * work that is not interruptible.
   */
  readonly keepsCrew?: boolean | undefined;
  readonly holds?: readonly EquipmentHold[] | undefined;
  readonly gates?: readonly Gate[] | undefined;
  readonly facts?: PhaseFacts | undefined;
  /** Dates told to people. */
  readonly commitment?: Commitment | undefined;
  /** Where the plan before this one had it; keeps the order, so that little moves. */
  readonly previous?: { readonly start: Slot; readonly crewId?: string | undefined } | undefined;
}

/** Equipment taken from the phase's start until its own finish, or until the finish of `untilPhaseId` when that is later. */
export interface EquipmentHold {
  readonly poolId: string;
  readonly quantity: number;
  readonly untilPhaseId?: string | undefined;
}

/** Dates promised for a phase. */
export interface Commitment {
  readonly start: Slot;
  readonly finish: Slot;
  readonly crewId?: string | undefined;
}

/** What has happened, or what the office has fixed. */
export interface PhaseFacts {
  readonly actualStart?: Slot | undefined;
  readonly actualFinish?: Slot | undefined;
  /** Crew that did or does it. */
  readonly crewId?: string | undefined;
  /** Slots left of a started phase; when left out, the duration less what fits between its start and now, at least one. */
  readonly remaining?: SlotCount | undefined;
  /** Start fixed by a person; kept, with a conflict, even before a predecessor or in closed time. */
  readonly pinnedStart?: Slot | undefined;
}

/** The four kinds of link: finish-start, start-start, finish-finish, start-finish. */
export type LinkKind = 'FS' | 'SS' | 'FF' | 'SF';

/** A dependency between two phases, possibly of two jobs. */
export interface Link {
  readonly id: string;
  readonly from: string;
  readonly to: string;
  readonly kind: LinkKind;
  /** May be negative (a lead). */
  readonly lag: SlotCount;
  /** Working lags count the successor's open time, elapsed ones the clock. */
  readonly lagIn: 'working' | 'elapsed';
  /** Greatest lag: the successor's end point comes no later than the predecessor's plus this (mortar within so long of mixing). */
  readonly mostLag?: SlotCount | undefined;
  /** How the greatest lag is counted; as `lagIn` when left out. */
  readonly mostLagIn?: 'working' | 'elapsed' | undefined;
}

/** Something that must be reached before a phase may start. */
export type Gate = ClearanceGate | InspectionGate | CureGate | NotBeforeGate;

/** Leave from outside: a permit, a utility mark-out, delivered material. */
export interface ClearanceGate {
  readonly kind: 'clearance';
  readonly id: string;
  /** When it is or will be valid; null when nobody can say yet: the dates then assume it and are marked. */
  readonly earliest: Slot | null;
  /** The phase must start before this slot. */
  readonly expires?: Slot | undefined;
}

/** Waits for the visit of an inspection listed in the input. */
export interface InspectionGate {
  readonly kind: 'inspection';
  readonly inspectionId: string;
}

/** Waits for strength, by the date that measurements and prediction give. Null: no prediction yet, marked as clearances are. */
export interface CureGate {
  readonly kind: 'cure';
  readonly id: string;
  readonly expected: Slot | null;
  readonly strengthNow?: number | undefined;
  readonly strengthNeeded?: number | undefined;
}

/** A plain earliest start with its cause, e.g. `forecast`, `holdPoint`. */
export interface NotBeforeGate {
  readonly kind: 'notBefore';
  readonly id: string;
  readonly at: Slot;
  readonly cause: string;
}

/** A visit by the authority having jurisdiction. */
export interface Inspection {
  readonly id: string;
  readonly jobId: string;
  /** Phases that must be finished before the visit. */
  readonly after: readonly string[];
  /** Time between request and the earliest visit. */
  readonly notice: SlotCount;
  /** Whether the notice counts visiting hours or the clock. */
  readonly noticeIn: 'working' | 'elapsed';
  /** Visiting hours. */
  readonly calendarId: string;
  readonly visit: SlotCount;
  /** By the clock: phases that wait for the visit must start no later than this after its finish. */
  readonly validFor?: SlotCount | undefined;
  readonly state:
    | { readonly kind: 'open' }
    | { readonly kind: 'requested'; readonly at: Slot }
    | { readonly kind: 'booked'; readonly from: Slot; readonly to: Slot }
    | { readonly kind: 'passed'; readonly at: Slot };
}

/** Dates computed now. Lists are ordered by id; equal input gives an equal plan, byte for byte. */
export interface Plan {
  readonly now: Slot;
  readonly phases: readonly PlannedPhase[];
  readonly inspections: readonly PlannedInspection[];
  readonly jobs: readonly PlannedJob[];
  readonly conflicts: readonly Conflict[];
}

/** Where a phase sits and why. `start` and `finish` are null together, when it could not be placed. */
export interface PlannedPhase {
  readonly id: string;
  readonly jobId: string;
  readonly state: 'done' | 'started' | 'planned' | 'unplanned';
  readonly start: Slot | null;
  readonly finish: Slot | null;
  readonly crewId: string | null;
  /** Stretches in which it runs: closed time and weather holds are left out. */
  readonly segments: readonly Interval[];
  /** How far it can slip, links and calendars honoured but other work ignored, before its job finishes later; in its own open time. */
  readonly totalFloat: SlotCount | null;
  /** How far it can slip before any successor moves; in its own open time. */
  readonly freeFloat: SlotCount | null;
  /** Not finished and without total float. */
  readonly critical: boolean;
  /** What holds it in place: a pin or a commitment inside the freeze window that is kept. */
  readonly fixedBy: 'pin' | 'commitment' | null;
  /** The one constraint that binds its start. */
  readonly reason: Reason;
  /** When links alone would have let it start. */
  readonly ready: Slot | null;
  /** Which link, or the present, made it ready then. */
  readonly readyReason: Reason;
  /** Waits from `ready` to `start`, in order; their lengths add up to the whole. */
  readonly trail: readonly TrailStep[];
  /** True when any of it lies beyond the forecast: not to be shown as fair. */
  readonly weatherUnknown: boolean;
  /** Gates nobody has dated yet: the dates assume them. */
  readonly assumes: readonly string[];
}

/** One wait on the way from ready to start. */
export interface TrailStep extends Interval {
  readonly reason: Reason;
}

/**
 * By which rule one phase goes before another that wants the same crew or equipment: what has happened; a pin; a commitment inside the
 * freeze window; the order of an improved plan; where it stood before; the job's priority; its due date; the longer way to the end; the id.
 * `link`: the other waits for it anyway. `needed`: something that goes first needs it or brings it along.
 */
export type Ahead =
  | 'fact'
  | 'pin'
  | 'commitment'
  | 'order'
  | 'previous'
  | 'priority'
  | 'due'
  | 'tail'
  | 'id'
  | 'link'
  | 'needed';

/** What binds a start, with its reference. */
export type Reason =
  | { readonly kind: 'now' }
  | { readonly kind: 'actual' }
  | { readonly kind: 'link'; readonly linkId: string; readonly phaseId: string; readonly linkKind: LinkKind }
  /** The crew is with `phaseId`, which goes first by the rule `ahead`. */
  | {
      readonly kind: 'crew';
      readonly crewId: string;
      readonly phaseId: string;
      readonly until: Slot;
      readonly ahead: Ahead;
    }
  /** Equipment is out with `phaseId`, back when `releasedBy` finishes (null: at that phase's own finish). */
  | {
      readonly kind: 'equipment';
      readonly poolId: string;
      readonly phaseId: string;
      readonly releasedBy: string | null;
      readonly until: Slot | null;
      readonly ahead: Ahead;
    }
  /** Kept back so that `phaseId`, which follows it by this link, comes within the greatest lag. */
  | {
      readonly kind: 'mostLag';
      readonly linkId: string;
      readonly phaseId: string;
      readonly until: Slot;
      /** What kept `phaseId` from coming sooner. */
      readonly cause: Reason;
    }
  | {
      readonly kind: 'weather';
      readonly weatherId: string;
      readonly until: Slot;
      readonly cause: WeatherCause;
    }
  | { readonly kind: 'clearance'; readonly id: string; readonly at: Slot | null }
  | { readonly kind: 'inspection'; readonly inspectionId: string; readonly until: Slot | null }
  | {
      readonly kind: 'cure';
      readonly id: string;
      readonly at: Slot | null;
      readonly strengthNow: number | null;
      readonly strengthNeeded: number | null;
    }
  | { readonly kind: 'notBefore'; readonly id: string; readonly cause: string; readonly at: Slot }
  | { readonly kind: 'pin'; readonly at: Slot }
  | { readonly kind: 'commitment'; readonly at: Slot }
  /** Closed hours of a calendar: `until` is when they end. */
  | { readonly kind: 'calendar'; readonly calendarId: string | null; readonly until: Slot }
  /**
   * It could not be placed: the conflict of this code says more, or `phaseId` could not be placed, which comes before it or would have
   * given back the equipment it takes.
   */
  | {
      readonly kind: 'unplanned';
      readonly code: ConflictCode | 'predecessorUnplanned';
      readonly phaseId: string | null;
    };

/** A visit as the plan places it. */
export interface PlannedInspection {
  readonly id: string;
  readonly jobId: string;
  readonly state: 'passed' | 'booked' | 'planned' | 'unplanned';
  /** When its work is finished. */
  readonly ready: Slot | null;
  readonly start: Slot | null;
  readonly finish: Slot | null;
  /** Last moment to ask for this visit; null when it is asked for already, or cannot be placed. */
  readonly latestRequest: Slot | null;
  /** The one thing that binds the visit. */
  readonly reason:
    | { readonly kind: 'phase'; readonly phaseId: string }
    | { readonly kind: 'notice'; readonly from: Slot }
    | { readonly kind: 'hours'; readonly calendarId: string; readonly until: Slot }
    /** Put off so that it is still valid when `phaseId` starts. */
    | { readonly kind: 'validity'; readonly phaseId: string }
    | { readonly kind: 'booked' }
    | { readonly kind: 'passed' }
    | { readonly kind: 'unplanned'; readonly phaseId: string | null };
}

/** A job's outcome. */
export interface PlannedJob {
  readonly id: string;
  /** Finish of its last placed phase; null when it has none. */
  readonly finish: Slot | null;
  /** False when a phase of it could not be placed, so that `finish` is not the end. */
  readonly complete: boolean;
  readonly due: Slot | null;
}

/** Names of the conflicts. */
export type ConflictCode = Conflict['code'];

/** What cannot be had as asked. Part of the answer, never thrown. */
export type Conflict =
  /** Links and inspections that wait for each other: each phase must precede the next, and the last the first. */
  | { readonly code: 'cycle'; readonly phaseIds: readonly string[]; readonly linkIds: readonly string[] }
  /** Greatest lags that no plan could meet, whatever crews and equipment there are: least lags and lengths around this circle exceed them. */
  | {
      readonly code: 'lagCycle';
      readonly phaseIds: readonly string[];
      readonly linkIds: readonly string[];
      /** By how many slots, at least. */
      readonly by: SlotCount;
    }
  /** A greatest lag is not met: the successor comes `by` slots too late, for this cause; `phaseIds` is the circle from predecessor to successor. */
  | {
      readonly code: 'lagExceeded';
      readonly linkId: string;
      readonly by: SlotCount;
      readonly phaseIds: readonly string[];
      readonly cause: Reason;
    }
  /** A phase starts after the visit it waits for has lost its validity. */
  | {
      readonly code: 'inspectionLapsed';
      readonly phaseId: string;
      readonly inspectionId: string;
      readonly expires: Slot;
      readonly start: Slot;
    }
  | {
      readonly code: 'pinBeforePredecessor';
      readonly phaseId: string;
      readonly pin: Slot;
      readonly earliest: Slot;
      readonly cause: Reason;
    }
  | {
      readonly code: 'pinBeforeGate';
      readonly phaseId: string;
      readonly pin: Slot;
      readonly earliest: Slot;
      readonly cause: Reason;
    }
  | {
      readonly code: 'pinInClosedTime';
      readonly phaseId: string;
      readonly pin: Slot;
      readonly earliest: Slot;
      readonly cause: Reason;
    }
  /** The pin could not be kept: in the past, or crew or equipment is taken. */
  | {
      readonly code: 'pinMoved';
      readonly phaseId: string;
      readonly pin: Slot;
      readonly start: Slot;
      readonly cause: Reason;
    }
  | {
      readonly code: 'commitmentBroken';
      readonly phaseId: string;
      readonly committed: Slot;
      readonly start: Slot | null;
      readonly cause: Reason;
    }
  | { readonly code: 'dueMissed'; readonly jobId: string; readonly due: Slot; readonly finish: Slot }
  | {
      readonly code: 'clearanceLapsed';
      readonly phaseId: string;
      readonly clearanceId: string;
      readonly expires: Slot;
      readonly start: Slot;
    }
  /** A gate without a date was assumed. */
  | { readonly code: 'gateUndated'; readonly phaseId: string; readonly gateId: string }
  /** Booked for a time when its work will not be finished; planned anew. */
  | {
      readonly code: 'visitBeforeReady';
      readonly inspectionId: string;
      readonly booked: Slot;
      readonly ready: Slot | null;
    }
  | { readonly code: 'crewMissing'; readonly phaseId: string; readonly trade: string }
  /** Facts put one crew on two phases at once. */
  | { readonly code: 'crewDoubled'; readonly crewId: string; readonly phaseIds: readonly [string, string] }
  | {
      readonly code: 'poolTooSmall';
      readonly phaseId: string;
      readonly poolId: string;
      readonly needed: number;
      readonly quantity: number;
    }
  /** It would take equipment that is never given back: the releasing phase cannot be placed, for this cause. */
  | {
      readonly code: 'releaseMissing';
      readonly phaseId: string;
      readonly releasePhaseId: string;
      readonly cause: Reason;
    }
  /** Started work has taken more than there is. */
  | {
      readonly code: 'poolOverdrawn';
      readonly poolId: string;
      readonly phaseIds: readonly string[];
      readonly from: Slot;
      readonly to: Slot;
    }
  /** Continuous work is longer than any stretch open to it. */
  | {
      readonly code: 'noStretch';
      readonly phaseId: string;
      readonly needed: SlotCount;
      readonly longest: SlotCount;
    }
  | { readonly code: 'beyondHorizon'; readonly phaseId: string; readonly cause: Reason };
