import { readFrom } from '../read/reader.js';
import type { Fault } from '../read/fault.js';
import type { Measured } from './judge-hold-point.js';
import type { MeasuredValue } from './item.js';

/** Measured values read from outside, or what is wrong with them. */
export type MeasuredRead =
  | { readonly ok: true; readonly measured: Measured }
  | { readonly ok: false; readonly faults: readonly Fault[] };

/** Reads an object from item id to yes or no, a number, or a list of numbers. */
export function readMeasured(value: unknown): MeasuredRead {
  const root = readFrom(value);
  if (typeof value !== 'object' || value === null || Array.isArray(value)) {
    root.fault('must be an object from item to what was measured');
    return { ok: false, faults: root.faults };
  }
  const entries = Object.keys(value).map((id): [string, MeasuredValue] => {
    const item = root.at(id);
    if (typeof item.value === 'boolean') return [id, item.value];
    return [id, Array.isArray(item.value) ? item.list(1).map((one) => one.number()) : item.number()];
  });
  return root.faults.length > 0
    ? { ok: false, faults: root.faults }
    : { ok: true, measured: Object.fromEntries(entries) };
}
