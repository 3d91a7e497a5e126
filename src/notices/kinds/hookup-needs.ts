import { hookupNeeds } from '../../../shared/heating/hookup-needs.js';
import { inches } from '../../../shared/units/length.js';
import { epochMs } from '../../../shared/units/time.js';
import type { HookupFacts } from './hookup-facts.js';

/** The needs of the hookup that are met, as sentences. */
export function metNeeds(hookup: HookupFacts): string[] {
  const { readings, areas } = hookup.heatingSet;
  const names = new Map(areas.map(({ area }) => [area.id, area.name]));
  return hookupNeeds({
    areas: [...names.values()],
    readings: readings.map(({ stage, areaId, at, accepted }) => ({
      stage,
      areaKey: areaId === null ? null : (names.get(areaId) ?? null),
      at: epochMs(at.getTime()),
      accepted,
    })),
    coldLeadThrough: hookup.coldLeadThrough,
    coldLeadFree: hookup.coldLeadFreeInches === null ? null : inches(hookup.coldLeadFreeInches),
    sensorThrough: hookup.sensorThrough,
    leadsLabelled: hookup.leadsLabelled,
  })
    .filter(({ met }) => met)
    .map(({ text }) => text);
}
