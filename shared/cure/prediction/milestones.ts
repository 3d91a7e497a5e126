import { epochMs, type EpochMs } from '../../units/time.js';
import { FIRST_FREEZE } from '../first-freeze.js';
import { ageOfMixtureStrength } from '../mixture-strength.js';
import type { CurePlacement } from '../placement.js';
import { crossing } from './age-clock.js';
import type { CureBasis, Reached } from './cure-prediction.js';

/** A stretch of time with the ages of the counted and of the coldest point at its ends, and its coldest temperature. */
export interface AgeStep {
  readonly from: EpochMs;
  readonly to: EpochMs;
  readonly counted: readonly [number, number];
  readonly coldest: readonly [number, number];
  /** Temperature of the coldest point at the end, °C. */
  readonly temperature: number;
}

/** Notes when a placement has its strengths, and when it was coldest or froze too early. */
export class Milestones {
  release: Reached | null = null;
  firstFreeze: Reached | null = null;
  lowest: (Reached & { readonly temperature: number }) | null = null;
  /** With the age of the coldest point when it froze. */
  freezes: (Reached & { readonly age: number }) | null = null;
  private readonly releaseAge: number;
  private readonly freezeAge: number;

  constructor({ mixture, required }: CurePlacement) {
    this.releaseAge = ageOfMixtureStrength(mixture, required) ?? Infinity;
    this.freezeAge = ageOfMixtureStrength(mixture, FIRST_FREEZE) ?? Infinity;
  }

  /** Looks at the placement as it begins. */
  begin(at: EpochMs, temperature: number): void {
    this.lowest = { at, basis: 'measured', temperature };
    if (this.releaseAge <= 0) this.release = { at, basis: 'measured' };
    if (temperature <= 0) this.freezes = { at, basis: 'measured', age: 0 };
  }

  /** Looks at a step. */
  note({ from, to, counted, coldest, temperature }: AgeStep, basis: CureBasis): void {
    if (!this.firstFreeze && coldest[1] >= this.freezeAge) {
      const at = epochMs(crossing(this.freezeAge, coldest[0], coldest[1], from, to));
      this.firstFreeze = { at, basis };
    }
    if (!this.freezes && temperature <= 0 && coldest[1] < this.freezeAge) {
      this.freezes = { at: to, basis, age: coldest[1] };
    }
    if (this.release) return;
    if (!this.lowest || temperature < this.lowest.temperature) this.lowest = { at: to, basis, temperature };
    if (counted[1] < this.releaseAge) return;
    this.release = { at: epochMs(crossing(this.releaseAge, counted[0], counted[1], from, to)), basis };
  }
}
