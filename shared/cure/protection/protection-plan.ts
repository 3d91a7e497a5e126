import type { RValue } from '../../units/insulation.js';
import { rValue } from '../../units/insulation.js';
import type { Fahrenheit } from '../../units/temperature.js';
import { hours, type Hours } from '../../units/time.js';

/** Blankets over a placement for a time; hours count from placing. */
export interface BlanketStretch {
  readonly from: Hours;
  /** Null: until the protection comes off. */
  readonly until: Hours | null;
  readonly layers: number;
  /** Resistance of one layer. */
  readonly each: RValue;
}

/** A heated enclosure over a placement for a time; hours count from placing. */
export interface HeatStretch {
  readonly from: Hours;
  readonly until: Hours | null;
  /** Air inside. */
  readonly inside: Fahrenheit;
}

/** How a placement is kept warm, by time. */
export interface ProtectionPlan {
  readonly blankets: readonly BlanketStretch[];
  readonly heat: readonly HeatStretch[];
  /** When all of it comes off, h from placing; null while that is open. */
  readonly offAt: Hours | null;
}

/** Nothing keeps it warm. */
export const NO_PROTECTION: ProtectionPlan = { blankets: [], heat: [], offAt: null };

/** What the plan of a small pour is made of. */
export interface SmallPourProtection {
  readonly blanketLayers: number;
  readonly blanketR: RValue;
  readonly enclosure: Fahrenheit | null;
  /** From placing. */
  readonly heatHours: Hours;
  readonly offAt?: Hours | null;
}

/**
 * The trade's way with a small pour: heated in an enclosure for some hours, then left under blankets. Without an
 * enclosure the blankets lie from the beginning.
 */
export function smallPourPlan(spec: SmallPourProtection): ProtectionPlan {
  const { blanketLayers: layers, blanketR: each, enclosure, heatHours, offAt = null } = spec;
  const heated = enclosure !== null && heatHours > 0;
  const from = heated ? heatHours : hours(0);
  return {
    blankets: layers > 0 ? [{ from, until: null, layers, each }] : [],
    heat: heated ? [{ from: hours(0), until: heatHours, inside: enclosure }] : [],
    offAt,
  };
}

/** What stands over a placement at an hour after placing. */
export interface ProtectionNow {
  readonly blanketR: RValue;
  /** Air inside the enclosure; null when it stands open to the weather. */
  readonly inside: Fahrenheit | null;
}

/** What a plan has over a placement at an hour; of two enclosures the cooler, blankets add up. */
export function protectionAt({ blankets, heat, offAt }: ProtectionPlan, hour: number): ProtectionNow {
  if (offAt !== null && hour >= offAt) return { blanketR: rValue(0), inside: null };
  const on = ({ from, until }: { from: Hours; until: Hours | null }) =>
    hour >= from && (until === null || hour < until);
  const inside = heat.filter(on).map((stretch) => stretch.inside);
  const r = blankets.filter(on).reduce((sum, { layers, each }) => sum + layers * each, 0);
  return {
    blanketR: rValue(r),
    inside: inside.reduce<Fahrenheit | null>((low, t) => (low === null || t < low ? t : low), null),
  };
}

/** Hours from placing at which something changes, in order, without 0. */
export function changesOf({ blankets, heat, offAt }: ProtectionPlan): number[] {
  const all = [...blankets, ...heat].flatMap(({ from, until }) => [from, until ?? 0]);
  return [...new Set([...all, offAt ?? 0])].filter((hour) => hour > 0).sort((a, b) => a - b);
}
