import type { ExposedConcrete } from '../../shared/entry/footing/exposed-concrete.js';
import type { AreaHeat as HeatOfArea } from '../../shared/entry/design/heat-of-entry.js';
import { describeSource } from '../../shared/entry/source.js';
import type { ZoneCircuit } from '../../shared/heating/circuit/circuit-plan.js';
import type { CableLayout } from './models/cable.model.js';
import type { DesignCircuit } from './models/design-circuit.model.js';
import type { EntryDesign } from './models/entry-design.model.js';
import type { DesignFooting } from './models/footing.model.js';
import type { AreaHeat } from './models/heat.model.js';
import type { ShownCable, ShownDesign } from './threads/shown-design.js';

/** A design as the API gives it. */
export function entryDesignOf(design: ShownDesign): EntryDesign {
  const { risers } = design;
  return {
    heat: design.heat.map(heatOf),
    cables: design.cables.map(cableOf),
    circuits: (design.circuits?.zones ?? []).map(circuitOf),
    risers: risers && {
      ...risers,
      steps: risers.steps.map(({ courses, ...step }) => ({ ...step, courses: courses.say })),
    },
    footing: footingOf(design),
    drawings: design.drawings,
  };
}

function heatOf({ areaKey, areaName, demand, given, warmUp }: HeatOfArea): AreaHeat {
  const { weather: _weather, freeAreaRatio: _ratio, sources, ...parts } = demand;
  return { areaKey, areaName, ...parts, given, warmUpHours: warmUp, sources: sources.map(describeSource) };
}

function cableOf({ measure, ...cable }: ShownCable): CableLayout {
  return {
    ...cable,
    closest: measure?.closest ?? null,
    tightestBend: measure?.tightestBend ?? null,
    fields: (measure?.fields ?? []).map(({ key, length, meanSpacing, wattsPerSquareFoot, widestGap }) => ({
      key,
      feet: length / 12,
      meanSpacing: Number.isFinite(meanSpacing) ? meanSpacing : null,
      wattsPerSquareFoot,
      widestGap: widestGap.across,
    })),
  };
}

function circuitOf({ zone, sets, watts, load, size }: ZoneCircuit): DesignCircuit {
  return {
    zone,
    sets,
    watts,
    load,
    designLoad: size?.design ?? null,
    breaker: size?.breaker ?? null,
    conductorAwg: size?.conductorAwg ?? null,
    terminals: size?.terminals ?? null,
    source: size && describeSource(size.source),
    caution: size?.caution ?? 'More than the tables here reach: a licensed electrician designs the circuit.',
  };
}

function footingOf({ footing, measurement }: ShownDesign): DesignFooting | null {
  if (!footing || !measurement.footing) return null;
  const { width, thickness, bottom } = measurement.footing;
  return {
    width,
    thickness,
    bottom,
    frostDepth: measurement.frost.depth,
    frostSource: measurement.frost.source,
    concrete: concreteWords(footing.concrete),
    checklist: footing.checklist.map((item) => ({ ...item, source: describeSource(item.source) })),
  };
}

function concreteWords({ strength, air, source }: ExposedConcrete): string {
  const held = air ? `, ${air.least} to ${air.most} % of air` : '';
  return `In the weather at least ${strength} psi${held}: ${describeSource(source)}`;
}
