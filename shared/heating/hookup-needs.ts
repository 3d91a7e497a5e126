import { COMMON_PRACTICE, fromMemory, published, TRADE_RULE } from '../entry/source.js';
import type { Inches } from '../units/length.js';
import { latestReading, stageAccepted, type JudgedReading } from './accepted-reading.js';
import type { Need } from './need.js';

/** Free length of a lead that the box needs, in. */
export const FREE_LEAD_INCHES = 6;

/** What is known about a set on its way to the hookup. */
export interface HookupFacts {
  /** Keys of the areas the set runs through, in turn. */
  readonly areas: readonly string[];
  readonly readings: readonly JudgedReading[];
  readonly coldLeadThrough: boolean;
  /** Free length of the cold lead inside the wall; null while not measured. */
  readonly coldLeadFree: Inches | null;
  readonly sensorThrough: boolean;
  readonly leadsLabelled: boolean;
}

/**
 * What the electrician waits for: cold lead through the wall and long enough, sensor lead through, the reading after
 * laying within limits in every area, no bad reading since, both leads labelled. Always the same needs in the same order.
 */
export function hookupNeeds(facts: HookupFacts): Need[] {
  const unread = facts.areas.filter((area) => !stageAccepted(facts.readings, 'laid', area));
  const latest = latestReading(facts.readings);
  return [
    {
      id: 'cold-lead-through',
      met: facts.coldLeadThrough,
      text: facts.coldLeadThrough ? 'Cold lead is through the wall' : 'Fish the cold lead through its sleeve',
      source: TRADE_RULE,
    },
    coldLeadLength(facts),
    {
      id: 'sensor-lead-through',
      met: facts.sensorThrough,
      text: facts.sensorThrough
        ? 'Sensor lead is through the wall'
        : 'Fish the sensor lead through its sleeve',
      source: TRADE_RULE,
    },
    {
      id: 'reading-laid',
      met: unread.length === 0,
      text:
        unread.length === 0
          ? 'Readings after laying are within limits'
          : `Take the reading after laying and have it accepted: ${unread.join(', ')}`,
      source: fromMemory('IEC 60800, IEEE 515.1'),
    },
    {
      id: 'latest-reading',
      met: latest?.accepted === true,
      text:
        latest === undefined
          ? 'Take the first reading of the set'
          : latest.accepted
            ? 'The latest reading is within limits'
            : 'The latest reading is outside its limits: find the cause and read again',
      source: COMMON_PRACTICE,
    },
    {
      id: 'leads-labelled',
      met: facts.leadsLabelled,
      text: facts.leadsLabelled ? 'Both leads are labelled' : 'Label cold lead and sensor lead',
      source: published('NEC 426.25'),
    },
  ];
}

function coldLeadLength({ coldLeadFree }: HookupFacts): Need {
  const met = coldLeadFree !== null && coldLeadFree >= FREE_LEAD_INCHES;
  const asked = `at least ${FREE_LEAD_INCHES} in free inside the wall`;
  return {
    id: 'cold-lead-length',
    met,
    text: met
      ? `Cold lead has ${coldLeadFree} in free`
      : coldLeadFree === null
        ? `Measure the free length of the cold lead: ${asked}`
        : `Cold lead has ${coldLeadFree} in free; it needs ${asked}`,
    source: fromMemory('NEC 300.14'),
  };
}
