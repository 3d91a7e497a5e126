/** Says that something changed; whoever hears it asks for the changes since the number it last saw. */
export interface Hint {
  readonly companyId: string;
  /** Number of the newest journal entry of the change, as decimal text. */
  readonly changeNumber: string;
  /** Jobs the change touched; empty when it touched the company as a whole. */
  readonly jobIds: readonly string[];
  /** The search for a better plan that has got further; nothing else changed then. */
  readonly improvementId?: string;
}

/** Name of the PostgreSQL channel that carries hints between processes. */
export const HINT_CHANNEL = 'flagway_hint';

/** PostgreSQL refuses a payload of 8,000 bytes or more: past this many jobs a hint names none, which means "all". */
export const MOST_JOBS_NAMED = 150;
