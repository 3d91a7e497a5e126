import type { CableReading } from '../../generated/prisma/client.js';
import type { Fact } from '../message.js';
import type { HookupFacts } from './hookup-facts.js';

const STAGES: Record<CableReading['stage'], string> = {
  received: 'as received',
  laid: 'after laying',
  covered: 'after covering',
  beforeHookup: 'before hookup',
};

/** "job 104, Birch Lane 3". */
export function jobName({ job }: Pick<HookupFacts, 'job'>): string {
  return `job ${job.number}, ${job.name}`;
}

/** What every notice of a hookup says first: job, address, heating set. */
export function placeFacts(hookup: HookupFacts): Fact[] {
  const { site } = hookup.job;
  return [
    { label: 'Job', value: `${hookup.job.number}, ${hookup.job.name}` },
    { label: 'Address', value: `${site.address}, ${site.town}` },
    { label: 'Heating set', value: hookup.heatingSet.name },
  ];
}

/** The readings so far, oldest first, each as one line. */
export function readingLines({ heatingSet }: HookupFacts): string[] {
  const areas = new Map(heatingSet.areas.map(({ area }) => [area.id, area.name]));
  return heatingSet.readings.map((reading) => {
    const area = reading.areaId === null ? '' : `, ${areas.get(reading.areaId) ?? 'area removed'}`;
    const verdict = reading.accepted ? 'within limits' : 'NOT within limits';
    return `${STAGES[reading.stage]}${area}: ${reading.ohms} Ω, ${reading.megaohms} MΩ at ${reading.testVolts} V, cable at ${reading.cableTempF} °F: ${verdict}`;
  });
}

/** The link to the hookup, where a day is booked and the connection recorded; signed for the electrician. */
export function hookupLink(hookup: HookupFacts, words: string) {
  return { words, path: `/hookups/${hookup.id}`, signed: 'hookup' } as const;
}
