import type { Source } from '../source.js';

/** How long before the dig the notice centre must be asked. */
export type NoticeRule =
  /** Hours by the clock, those of days that do not count left out. */
  | { readonly kind: 'hours'; readonly hours: number }
  /** The day of asking does not count; digging may begin on the n-th day that does. */
  | { readonly kind: 'nth-day'; readonly days: number }
  /** The day of asking does not count; n whole days that do go by first. */
  | { readonly kind: 'full-days'; readonly days: number };

/** How long a mark-out is good for, counted from the day of asking, which does not count itself. */
export interface LifeRule {
  readonly days: number;
  /** Working days leave out weekends and holidays. */
  readonly counted: 'calendar' | 'working';
}

/** What a state asks of a mark-out: data with its source and its date, never code. */
export interface MarkOutRule {
  /** Postal code of the state. */
  readonly state: string;
  readonly notice: NoticeRule | null;
  readonly life: LifeRule | null;
  readonly source: Source;
  /** A day on which the rule is known to have held. */
  readonly asOf: string;
}
