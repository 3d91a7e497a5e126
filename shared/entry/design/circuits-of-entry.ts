import { planCircuits, type CircuitPlan } from '../../heating/circuit/circuit-plan.js';
import type { EntryMeasurement } from '../measurement/measurement.js';
import type { Finding } from '../rules/finding.js';

/** Circuits of the sets of an entry, each a zone of its own; null where the supply is not given. */
export function circuitsOfEntry({ heatingSets, design }: EntryMeasurement): CircuitPlan | null {
  if (!design.supply) return null;
  const loads = heatingSets.map((set) => ({
    key: set.key,
    name: set.name,
    watts: set.watts,
    volts: set.volts,
    coldLead: set.coldLeadLength,
    coldLeadOhmsPerFoot: set.coldLeadOhmsPerFoot,
  }));
  return planCircuits(loads, [], design.supply);
}

/** What the rules say about those circuits. */
export function circuitFindings(measurement: EntryMeasurement): Finding[] {
  const plan = circuitsOfEntry(measurement);
  if (!plan) return [];
  return [...plan.zones.flatMap((zone) => zone.findings), ...(plan.panel ? [plan.panel] : [])];
}
