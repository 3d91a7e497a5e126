import { entryDrawings } from '../../../shared/drawing/entry-drawings.js';
import { designEntry } from '../../../shared/entry/design/design-entry.js';
import type { SetOnPlan } from '../../../shared/entry/design/lay-set.js';
import type { EntryMeasurement } from '../../../shared/entry/measurement/measurement.js';
import type { ShownCable, ShownDesign } from './shown-design.js';

/** Designs an entry and keeps what callers see of it. */
export function showDesign(measurement: EntryMeasurement): ShownDesign {
  const designed = designEntry(measurement);
  const { heat, circuits, risers, footing, findings } = designed;
  return {
    measurement,
    heat,
    cables: designed.sets.map((set) => shownCable(set, measurement)),
    circuits,
    risers,
    footing,
    drawings: entryDrawings(designed),
    findings,
  };
}

function shownCable({ setKey, setName, layout, instead }: SetOnPlan, measured: EntryMeasurement): ShownCable {
  const shown = layout ?? instead?.layout ?? null;
  const label = measured.heatingSets.find(({ key }) => key === setKey)?.heatedLength ?? null;
  return {
    setKey,
    setName,
    feet: layout ? label : (instead?.length ?? null),
    asMeasured: layout !== null,
    measure: shown?.measure ?? null,
    coldLeadOutside: shown?.coldLeadOutside ?? null,
  };
}
