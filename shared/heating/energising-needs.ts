import { fromMemory, published, type Source } from '../entry/source.js';
import { addHours, hours, type Days, type EpochMs } from '../units/time.js';
import { stageAccepted, type JudgedReading } from './accepted-reading.js';
import type { Need } from './need.js';

/** Caution that goes with every leave to energise. */
export const ENERGISING_CAUTION =
  "Energise only after the set's stated cure; never to cure mortar, never coiled. Ground-fault protection of equipment is required and is not shock protection for people.";

const INSTRUCTIONS: Source = published("the heating set's own instructions");

/** What is known about a set on its way to being energised. */
export interface EnergisingFacts {
  readonly now: EpochMs;
  readonly hookupDone: boolean;
  readonly finalPassed: boolean;
  readonly readings: readonly JudgedReading[];
  /** When the stone over each area of the set was finished; null while it is not. */
  readonly bedsFinished: readonly { readonly areaKey: string; readonly at: EpochMs | null }[];
  readonly cureDays: Days;
}

/** What energising waits for: hookup, final inspection, reading before the hookup, and every bed cured for the set's days. */
export function energisingNeeds(facts: EnergisingFacts): Need[] {
  const read = stageAccepted(facts.readings, 'beforeHookup');
  return [
    {
      id: 'hookup-recorded',
      met: facts.hookupDone,
      text: facts.hookupDone ? 'Hookup is recorded' : 'Record the hookup; a licensed electrician makes it',
      source: published('NEC 426'),
    },
    {
      id: 'final-passed',
      met: facts.finalPassed,
      text: facts.finalPassed ? 'Final inspection has passed' : 'Have the final inspection pass',
      source: published('IRC R109.1'),
    },
    {
      id: 'reading-before-hookup',
      met: read,
      text: read
        ? 'Reading before the hookup is within limits'
        : 'Take the reading before the hookup and have it accepted',
      source: fromMemory('IEEE 515.1'),
    },
    bedCured(facts),
  ];
}

/** When the last bed has cured; null while any is not finished. */
export function bedCuredAt({
  bedsFinished,
  cureDays,
}: Pick<EnergisingFacts, 'bedsFinished' | 'cureDays'>): EpochMs | null {
  const times = bedsFinished.map((bed) => bed.at);
  const last = times.reduce<EpochMs | null>(
    (latest, at) => (at !== null && (latest === null || at > latest) ? at : latest),
    null,
  );
  return last === null || times.includes(null) ? null : addHours(last, hours(cureDays * 24));
}

function bedCured(facts: EnergisingFacts): Need {
  const from = bedCuredAt(facts);
  const open = facts.bedsFinished.filter((bed) => bed.at === null).map((bed) => bed.areaKey);
  const days = `${facts.cureDays} days`;
  if (from === null) {
    const what = open.length > 0 ? `not finished: ${open.join(', ')}` : 'no bed is recorded';
    return {
      id: 'bed-cured',
      met: false,
      text: `Bed and stone must cure ${days}; ${what}`,
      source: INSTRUCTIONS,
    };
  }
  const met = facts.now >= from;
  return {
    id: 'bed-cured',
    met,
    metFrom: from,
    text: met ? `Bed has cured ${days}` : `Bed has not cured ${days} yet: wait, do not energise to help it`,
    source: INSTRUCTIONS,
  };
}
