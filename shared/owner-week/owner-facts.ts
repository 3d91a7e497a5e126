/** A stretch of time, in milliseconds since 1970. */
export interface Stretch {
  readonly from: number;
  readonly until: number;
}

/** A day of the site. */
export interface SiteDay extends Stretch {
  /** ISO date. */
  readonly date: string;
}

/** One phase as the owner's page needs it. */
export interface OwnerPhase {
  readonly kind: string;
  readonly state: 'waiting' | 'started' | 'done';
  /** When it is worked on, or waited for: as it was, as agreed, or as planned. */
  readonly stretches: readonly Stretch[];
  /** Whether the days were agreed; false for days that only the plan gives. */
  readonly agreed: boolean;
}

/** Weather that keeps people from work. */
export interface OwnerHold extends Stretch {
  /** Why, when the forecast says so; null when a person called it. */
  readonly why: string | null;
}

/** What is known of the heat of a job. */
export interface OwnerHeat {
  /** Heating sets of the job. */
  readonly sets: number;
  readonly energised: number;
  /** When the last of those that are not energised may be; null while that is not known. */
  readonly allowedAt: number | null;
  /** When the plan has it switched on; null when it does not say. */
  readonly plannedAt: number | null;
}

export const overlaps = (a: Stretch, b: Stretch): boolean => a.from < b.until && b.from < a.until;
