import type { Source } from '../../entry/source.js';
import type { Fahrenheit } from '../../units/temperature.js';
import type { Psi } from '../../units/stress.js';
import type { EpochMs, Hours } from '../../units/time.js';
import type { ConcreteReading, CurePlacement } from '../placement.js';
import type { ProtectionPlan } from '../protection/protection-plan.js';
import type { AirHour } from './air-by-hour.js';
import type { PlacementSection } from './placement-section.js';

/** What a placement's prediction is computed from. */
export interface CureRequest {
  readonly placement: CurePlacement;
  readonly section: PlacementSection;
  readonly plan: ProtectionPlan;
  /** They replace the prediction up to the last of them. */
  readonly readings: readonly ConcreteReading[];
  readonly now: EpochMs;
  /** Air by hour, measured or forecast; hours left out are unknown. */
  readonly air: readonly AirHour[];
  /** Air where none is known. Null: the prediction ends there, for unknown is never fair. */
  readonly assumedAir: Fahrenheit | null;
  /** Longest time from placing that is looked at; 14 days when left out. */
  readonly horizon?: Hours;
  /** Time step; 30 minutes when left out. The model is stable at any. */
  readonly stepMinutes?: number;
}

/** Whether something was measured, or is predicted by the thermal model. Never mixed. */
export type CureBasis = 'measured' | 'predicted';

/** One point of a cure. */
export interface CurvePoint {
  readonly at: EpochMs;
  readonly basis: CureBasis;
  /** Temperature that the strength counts with: the reading, or the coldest of the section by the model. */
  readonly counted: Fahrenheit;
  readonly centre: Fahrenheit;
  /** Upper face. */
  readonly surface: Fahrenheit;
  /** Coldest point, an edge or a corner; a reading itself where it was measured. */
  readonly coldest: Fahrenheit;
  readonly air: Fahrenheit | null;
  /** False where the air is an assumption. */
  readonly airKnown: boolean;
  readonly strength: Psi;
  /** Strength at the coldest point. */
  readonly coldestStrength: Psi;
}

/** When something is reached, and on what that rests. */
export interface Reached {
  readonly at: EpochMs;
  readonly basis: CureBasis;
}

/** How a placement goes: measured up to the last reading, predicted from there on. */
export interface CurePrediction {
  readonly points: readonly CurvePoint[];
  /** When it has its required strength; null when that is out of sight. A prediction dates the plan, no more. */
  readonly release: Reached | null;
  /** When its coldest point has 500 psi; null when that is out of sight. */
  readonly firstFreeze: Reached | null;
  /** From placing to that; null when out of sight. */
  readonly hoursToFirstFreeze: Hours | null;
  /** Lowest temperature of its coldest point until it has its required strength. */
  readonly lowest: Reached & { readonly coldest: Fahrenheit };
  /** When its coldest point freezes before it has 500 psi; null when it does not, as far as can be seen. */
  readonly freezes: (Reached & { readonly strength: Psi }) | null;
  /** Up to when the air after the last reading is known without a break; null when it is not known at all. */
  readonly airKnownUntil: EpochMs | null;
  /** From when nothing is predicted because the air is unknown; null when the whole time is covered. */
  readonly unknownFrom: EpochMs | null;
  /** Share of the moved heat that the model lost; at most 0.001. */
  readonly energyError: number;
  readonly method: string;
  readonly assumption: string;
  readonly source: Source;
  readonly caution: string;
}
