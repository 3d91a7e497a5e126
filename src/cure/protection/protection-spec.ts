import {
  NO_PROTECTION,
  type ProtectionPlan,
  smallPourPlan,
} from '../../../shared/cure/protection/protection-plan.js';
import { rValue } from '../../../shared/units/insulation.js';
import { fahrenheit } from '../../../shared/units/temperature.js';
import { hours, type Hours } from '../../../shared/units/time.js';
import { COMMON_PRACTICE, type Source, TRADE_RULE } from '../../../shared/entry/source.js';

/** How a placement is kept warm, as it is stored. */
export interface ProtectionSpec {
  /** Layers of insulated blanket on it. */
  readonly blanketLayers: number;
  /** Thermal resistance of one layer, h·ft²·°F/Btu. */
  readonly blanketR: number;
  /** Temperature inside a heated enclosure, °F; null when there is none. */
  readonly enclosureF: number | null;
  /** Hours from placing in which the enclosure is heated; 0 without one. */
  readonly heatHours: number;
}

/** Nothing keeps it warm. */
export const BARE: ProtectionSpec = { blanketLayers: 0, blanketR: 4, enclosureF: null, heatHours: 0 };

/** One layer of insulated blanket, h·ft²·°F/Btu; the maker's own figure goes first. */
export const BLANKET_R: { readonly value: number; readonly source: Source } = {
  value: 4,
  source: COMMON_PRACTICE,
};

/** A small pour in freezing weather is heated in a tent for 10 to 12 hours and then left under blankets. */
export const TENT_HOURS: { readonly value: number; readonly source: Source } = {
  value: 12,
  source: TRADE_RULE,
};

/** What a tent is heated to; the concrete under it must be kept at 55 °F. */
export const TENT_F: { readonly value: number; readonly source: Source } = {
  value: 60,
  source: COMMON_PRACTICE,
};

/** What stands over a placement of which only the kinds of protection are known. */
export function specOfKinds(kinds: readonly string[]): ProtectionSpec {
  const heated = kinds.includes('enclosure') || kinds.includes('heater');
  return {
    blanketLayers: kinds.includes('blanket') ? 1 : 0,
    blanketR: BLANKET_R.value,
    enclosureF: heated ? TENT_F.value : null,
    heatHours: heated ? TENT_HOURS.value : 0,
  };
}

/** The kinds of equipment that a protection takes: blanket, enclosure, heater. */
export function kindsOf({ blanketLayers, enclosureF }: ProtectionSpec): string[] {
  return [...(blanketLayers > 0 ? ['blanket'] : []), ...(enclosureF === null ? [] : ['enclosure', 'heater'])];
}

/** Whether anything keeps it warm. */
export const isBare = (spec: ProtectionSpec): boolean => kindsOf(spec).length === 0;

/** A protection in words: "1 layer of blanket (R 4), tent at 60 °F for 12 h". */
export function protectionWords(spec: ProtectionSpec): string {
  const { blanketLayers, blanketR, enclosureF, heatHours } = spec;
  const layers = `${blanketLayers} layer${blanketLayers > 1 ? 's' : ''} of blanket (R ${blanketR} each)`;
  const tent = `tent kept at ${enclosureF ?? 0} °F for ${heatHours} h`;
  const parts = [blanketLayers > 0 ? layers : '', enclosureF === null ? '' : tent].filter(Boolean);
  return parts.length > 0 ? parts.join(', ') : 'no protection';
}

/** A stored protection as the core reads it; `offAt` hours after placing, null while it is on. */
export function planOf(spec: ProtectionSpec, offAt: Hours | null = null): ProtectionPlan {
  if (isBare(spec)) return NO_PROTECTION;
  return smallPourPlan({
    blanketLayers: spec.blanketLayers,
    blanketR: rValue(spec.blanketR),
    enclosure: spec.enclosureF === null ? null : fahrenheit(spec.enclosureF),
    heatHours: hours(spec.heatHours),
    offAt,
  });
}
