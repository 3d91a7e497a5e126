import type { Source } from '../entry/source.js';
import type { Psi } from '../units/stress.js';
import type { EpochMs, Hours } from '../units/time.js';
import type { ReadingGap } from './measured-history.js';

interface Common {
  readonly required: Psi;
  /** How it was estimated, in words. */
  readonly method: string;
  readonly source: Source;
  readonly caution: string;
}

/** Strength from readings alone, up to the last of them. */
export interface MeasuredStrength extends Common {
  readonly basis: 'measured';
  readonly strength: Psi;
  readonly equivalentAge: Hours;
  /** The last reading that counts. */
  readonly asOf: EpochMs;
  readonly reached: boolean;
  readonly gaps: readonly ReadingGap[];
}

/** When the required strength is expected. It dates the plan; it never releases anything. */
export interface PredictedRelease extends Common {
  readonly basis: 'predicted';
  /** Null when it is never reached under the assumption. */
  readonly releaseAt: EpochMs | null;
  /** What was assumed after the last reading, in words. */
  readonly assumption: string;
}
