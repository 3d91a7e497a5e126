import type { JudgedReading } from '../../../shared/heating/accepted-reading.js';
import { bedCuredAt, energisingNeeds } from '../../../shared/heating/energising-needs.js';
import { hookupNeeds } from '../../../shared/heating/hookup-needs.js';
import type { Need } from '../../../shared/heating/need.js';
import { inches } from '../../../shared/units/length.js';
import { days, epochMs } from '../../../shared/units/time.js';
import type { Hookup } from '../../generated/prisma/client.js';
import type { Transaction } from '../../platform/database/database.js';
import { areaKeyOf, READ_SET, type ReadSet } from '../stored-set.js';
import { bedsFinished, type FinishedBed } from './beds-finished.js';
import { finalInspections } from './final-inspections.js';

const LATEST = 'latest-reading';

/** What a hookup and the energising after it still need. */
export interface HookupNeeds {
  readonly hookup: readonly Need[];
  readonly energising: readonly Need[];
  /** When the last bed over the cable has cured; null while a bed is not finished. */
  readonly bedCuredAt: Date | null;
}

/** The needs of hookups as the rows stand; the number of queries does not grow with the hookups. */
export async function needsByHookup(
  tx: Transaction,
  companyId: string,
  hookups: readonly Hookup[],
  at: Date,
): Promise<Map<string, HookupNeeds>> {
  if (hookups.length === 0) return new Map();
  const sets = await tx.heatingSet.findMany({
    where: { companyId, id: { in: hookups.map(({ heatingSetId }) => heatingSetId) } },
    include: READ_SET,
  });
  const beds = await bedsFinished(tx, companyId, sets);
  const finalPassed = await finalInspections(tx, companyId, [...new Set(hookups.map(({ jobId }) => jobId))]);
  const found = new Map<string, HookupNeeds>();
  for (const hookup of hookups) {
    const set = sets.find(({ id }) => id === hookup.heatingSetId);
    if (!set) continue;
    found.set(hookup.id, needsOf(hookup, set, beds.get(set.id) ?? [], finalPassed(hookup.jobId), at));
  }
  return found;
}

function needsOf(
  hookup: Hookup,
  set: ReadSet,
  beds: readonly FinishedBed[],
  finalPassed: boolean,
  at: Date,
): HookupNeeds {
  const readings = judgedReadings(set);
  const free = hookup.coldLeadFreeInches;
  const cureDays = days(set.cureDays);
  const curedAt = bedCuredAt({ bedsFinished: beds, cureDays });
  const connecting = hookupNeeds({
    areas: set.areas.map(({ area }) => area.key),
    readings,
    coldLeadThrough: hookup.coldLeadThrough,
    coldLeadFree: free === null ? null : inches(free),
    sensorThrough: hookup.sensorThrough,
    leadsLabelled: hookup.leadsLabelled,
  });
  const energising = energisingNeeds({
    now: epochMs(at.getTime()),
    hookupDone: hookup.state === 'done',
    finalPassed,
    readings,
    bedsFinished: beds,
    cureDays,
  });
  return {
    hookup: connecting,
    // A reading that failed after the hookup forbids energising just as it would have forbidden the hookup.
    energising: [...energising, ...connecting.filter(({ id }) => id === LATEST)],
    bedCuredAt: curedAt === null ? null : new Date(curedAt),
  };
}

function judgedReadings(set: ReadSet): JudgedReading[] {
  return set.readings.map(({ stage, areaId, at, accepted }) => ({
    stage,
    areaKey: areaKeyOf(set, areaId),
    at: epochMs(at.getTime()),
    accepted,
  }));
}
