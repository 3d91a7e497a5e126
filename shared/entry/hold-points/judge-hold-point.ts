import type { Fault } from '../read/fault.js';
import type { Finding } from '../rules/finding.js';
import type { HoldPointItem, MeasuredValue } from './item.js';
import { judgeItem } from './judge-item.js';

/** What was measured at a hold point, by item id. */
export type Measured = Readonly<Record<string, MeasuredValue>>;

/** Whether a hold point may be released on what was measured. */
export interface HoldPointJudgement {
  /** Nothing is missing, nothing unknown, everything right. */
  readonly ok: boolean;
  readonly findings: readonly Finding[];
  /** Required items not measured, and values for items that do not exist. */
  readonly faults: readonly Fault[];
}

/** Holds what was measured against every item. A required item without a value keeps the hold point closed. */
export function judgeHoldPoint(items: readonly HoldPointItem[], measured: Measured): HoldPointJudgement {
  const given = (id: string): MeasuredValue | undefined =>
    Object.prototype.hasOwnProperty.call(measured, id) ? measured[id] : undefined;
  const missing = items.filter((item) => item.required && given(item.id) === undefined);
  const unknown = Object.keys(measured).filter((id) => !items.some((item) => item.id === id));
  const findings = items.flatMap((item) => {
    const value = given(item.id);
    return value === undefined ? [] : [judgeItem(item, value)];
  });
  const faults = [
    ...missing.map((item) => ({ path: item.id, message: `${item.label}: not measured; measure it` })),
    ...unknown.map((id) => ({ path: id, message: 'no such item here; remove it' })),
  ];
  return { ok: faults.length === 0 && findings.every((finding) => finding.ok), findings, faults };
}
