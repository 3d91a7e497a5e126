import type { Source } from '../entry/source.js';
import type { EpochMs } from '../units/time.js';

/** Something that must be so before a step may be taken. */
export interface Need {
  readonly id: string;
  readonly met: boolean;
  /** What is so, or what is missing and what to do. */
  readonly text: string;
  /** When it will be met by itself, where that is known. */
  readonly metFrom?: EpochMs;
  readonly source: Source;
}

/** Whether every need is met. */
export const allMet = (needs: readonly Need[]): boolean => needs.every((need) => need.met);
