import type { Finding } from '../../entry/rules/finding.js';
import { amperes, type Amperes, type OhmsPerFoot, type Volts, type Watts } from '../../units/electrical.js';
import type { Feet } from '../../units/length.js';
import { offVoltage } from './off-voltage.js';
import { panelLoad, type Panel } from './panel-load.js';
import { loadCurrent, offVoltagePower } from './power.js';
import { sizeCircuit, type CircuitSize } from './size-circuit.js';
import type { TerminalRating } from './tables/ampacity.js';
import { voltageDrop, voltageDropFinding } from './voltage-drop.js';

/** A heating set as far as its circuit asks. */
export interface SetLoad {
  readonly key: string;
  readonly name: string;
  readonly watts: Watts;
  readonly volts: Volts;
  readonly coldLead: Feet;
  /** One conductor of the cold lead; 0 where it is not known. */
  readonly coldLeadOhmsPerFoot: OhmsPerFoot;
}

/** Sets that are switched together and share a circuit, side by side. */
export interface Zone {
  readonly key: string;
  readonly sets: readonly string[];
}

/** What the house offers. */
export interface Supply {
  readonly volts: Volts;
  readonly terminals: TerminalRating;
  readonly panel: Panel | null;
}

/** The circuit of a zone. */
export interface ZoneCircuit {
  readonly zone: string;
  readonly sets: readonly string[];
  readonly watts: Watts;
  readonly load: Amperes;
  /** Null above what the tables here reach: an electrician designs that. */
  readonly size: CircuitSize | null;
  /** Voltage of each set against the supply, and drop of its cold lead where its resistance is known. */
  readonly findings: readonly Finding[];
}

/** Circuits of an entry. */
export interface CircuitPlan {
  readonly zones: readonly ZoneCircuit[];
  readonly load: Amperes;
  /** Null where nothing is known about the panel. */
  readonly panel: Finding | null;
}

/**
 * A circuit for each zone, and for each set that no zone names; together against the panel. Power and current are those on
 * the supply's own voltage. Throws where a zone names a set that there is not, or a set stands in two zones.
 */
export function planCircuits(sets: readonly SetLoad[], zones: readonly Zone[], supply: Supply): CircuitPlan {
  const named = zones.flatMap((zone) => zone.sets);
  demandKnown(sets, named);
  const alone = sets.filter((set) => !named.includes(set.key)).map(({ key }) => ({ key, sets: [key] }));
  const circuits = [...zones, ...alone].map((zone) => zoneCircuit(zone, sets, supply));
  const load = amperes(circuits.reduce((sum, circuit) => sum + circuit.load, 0));
  return { zones: circuits, load, panel: supply.panel && panelLoad(supply.panel, load) };
}

function zoneCircuit(zone: Zone, all: readonly SetLoad[], supply: Supply): ZoneCircuit {
  const sets = all.filter((set) => zone.sets.includes(set.key));
  const watts = sets.reduce((sum, set) => sum + powerOn(set, supply.volts), 0) as Watts;
  const load = loadCurrent(watts, supply.volts);
  return {
    zone: zone.key,
    sets: sets.map((set) => set.key),
    watts,
    load,
    size: sizeCircuit(load, supply.terminals),
    findings: sets.flatMap((set) => setFindings(set, supply.volts)),
  };
}

const powerOn = (set: SetLoad, supply: Volts): Watts => offVoltagePower(set.watts, set.volts, supply);

function setFindings(set: SetLoad, supply: Volts): Finding[] {
  const findings = [offVoltage(set, supply)];
  if (set.coldLeadOhmsPerFoot > 0) {
    const current = loadCurrent(powerOn(set, supply), supply);
    const lost = voltageDrop(set.coldLead, current, set.coldLeadOhmsPerFoot);
    findings.push(voltageDropFinding(lost, supply));
  }
  return findings.map((finding) => ({ ...finding, text: `${set.name}: ${finding.text}` }));
}

function demandKnown(sets: readonly SetLoad[], named: readonly string[]): void {
  const known = sets.map((set) => set.key);
  for (const [i, key] of named.entries()) {
    if (!known.includes(key))
      throw new RangeError(`there is no heating set "${key}"; take it out of its zone or measure it`);
    if (named.indexOf(key) !== i)
      throw new RangeError(`heating set "${key}" stands in two zones; a set is switched by one`);
  }
}
