import { fromMemory, published } from '../source.js';
import type { MarkOutRule } from './mark-out-rule.js';

const STATE_LAW = fromMemory("the state's law on notice before excavation; the section is still to be named");

/**
 * Mark-out rules that are known, by state. What is null is not known: ask the notice centre. A company adds its own; laws
 * change, and the notice centre's ticket goes before all of this.
 */
export const MARK_OUT_RULES: readonly MarkOutRule[] = [
  {
    state: 'MA',
    notice: { kind: 'hours', hours: 72 },
    life: null,
    source: published('MGL chapter 82 §40A'),
    asOf: '2025-10-10',
  },
  {
    state: 'OH',
    notice: { kind: 'hours', hours: 48 },
    life: null,
    source: published('ORC 3781.28'),
    asOf: '2025-10-10',
  },
  {
    state: 'NJ',
    notice: { kind: 'nth-day', days: 3 },
    life: { days: 45, counted: 'working' },
    source: published('NJAC 14:2-3.1'),
    asOf: '2025-10-10',
  },
  {
    state: 'AL',
    notice: { kind: 'full-days', days: 2 },
    life: { days: 20, counted: 'working' },
    source: STATE_LAW,
    asOf: '2025-10-10',
  },
  {
    state: 'IL',
    notice: { kind: 'full-days', days: 2 },
    life: { days: 25, counted: 'calendar' },
    source: STATE_LAW,
    asOf: '2025-10-10',
  },
  {
    state: 'CT',
    notice: null,
    life: { days: 30, counted: 'calendar' },
    source: STATE_LAW,
    asOf: '2025-10-10',
  },
];

/** The rule of a state. Throws where none is known, saying whom to ask. */
export function markOutRule(state: string): MarkOutRule {
  const rule = MARK_OUT_RULES.find((one) => one.state === state);
  if (!rule)
    throw new RangeError(
      `no mark-out rule is known for "${state}"; ask its notice centre and enter the rule`,
    );
  return rule;
}
