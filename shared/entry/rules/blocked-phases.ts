import type { Finding } from './finding.js';
import type { RULES } from './rules.js';

/** Kinds of phase that must not begin while a rule is broken. A rule with none only advises. */
const BLOCKED: Readonly<Record<keyof typeof RULES, readonly string[]>> = {
  'cable-cover': ['stone'],
  'cable-depth': [],
  'cable-layout': ['cable'],
  'cable-spacing': ['cable'],
  'cold-lead-reach': ['cable'],
  'concrete-strength': ['footing-pour'],
  'door-drop': ['block'],
  'drainage-slope': ['stone'],
  'excavation-protection': ['footing-form'],
  'footing-frost-depth': ['footing-pour'],
  guard: ['final-inspection'],
  handrail: ['final-inspection'],
  'heat-supplied': [],
  'landing-depth': ['footing-form'],
  'landing-slope': ['stone'],
  'lap-length': ['footing-pour'],
  'power-density': ['cable'],
  'rebar-cover': ['footing-pour'],
  'riser-height': ['block'],
  'riser-spread': ['stone'],
  'shallow-footing': ['footing-pour'],
  'silica-respirator': ['block', 'veneer', 'stone'],
  'tread-depth': ['block'],
  'uncut-cable': ['stone', 'hookup'],
  'walk-base': ['cable'],
};

/** Kinds of phase that a broken rule keeps from beginning; none for a rule that is kept or only advises. */
export function blockedPhases({ rule, ok }: Pick<Finding, 'rule' | 'ok'>): readonly string[] {
  if (ok || !Object.hasOwn(BLOCKED, rule)) return [];
  return BLOCKED[rule as keyof typeof BLOCKED];
}
