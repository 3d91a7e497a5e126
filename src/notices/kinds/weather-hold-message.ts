import { describeSource } from '../../../shared/entry/source.js';
import { storedCauses } from '../../weather/weather.face.js';
import type { Fact } from '../message.js';
import type { AffectedPhase, WeatherHoldFacts } from './weather-hold-facts.js';

/** What limits of the weather are, and what stands above them. */
export const LIMIT_CAUTION =
  'The limits are the company’s own. The local code and the instructions of what is built in may ask for more.';

/** "stone (walk), job 104, Birch Lane", or the address of a site that is held as a whole. */
export function heldName({ site, phase }: WeatherHoldFacts): string {
  if (!phase) return `the site ${site.address}`;
  const name = phase.area ? `${phase.name} (${phase.area.name})` : phase.name;
  return `${name}, job ${phase.job.number}, ${phase.job.name}`;
}

/** Job, address and when the work is held; one pair of times for each hold. */
export function holdFacts(holds: readonly WeatherHoldFacts[], affected: readonly AffectedPhase[]): Fact[] {
  const [first] = holds;
  if (!first) return [];
  const { phase, site } = first;
  const planned = phase?.planned?.startAt;
  return [
    ...(phase ? [{ label: 'Job', value: `${phase.job.number}, ${phase.job.name}` }] : []),
    { label: 'Address', value: `${site.address}, ${site.town}` },
    ...(phase
      ? []
      : [{ label: 'Work affected', value: affected.map(({ name }) => name).join(', ') || 'none planned' }]),
    ...holds.flatMap(({ startsAt, endsAt }): Fact[] => [
      { label: 'Held from', value: { at: startsAt.toISOString() } },
      { label: 'Held until', value: endsAt ? { at: endsAt.toISOString() } : 'it is lifted' },
    ]),
    ...(planned ? [{ label: 'Now planned for', value: { at: planned.toISOString() } }] : []),
  ];
}

/** Why each hold stands: limit, value and source, or the words of the person who called it. */
export function whyLines(holds: readonly WeatherHoldFacts[]): string[] {
  const lines = holds.flatMap(({ detail, reason }) => {
    const causes = storedCauses(detail);
    return causes.length > 0
      ? causes.map(({ text, source }) => `${text}. Source of the limit: ${describeSource(source)}`)
      : [reason];
  });
  return [...new Set(lines)];
}

/** Where to see more. */
export const holdLink = ({ phase }: WeatherHoldFacts, words: string) => ({
  words,
  path: phase ? `/jobs/${phase.job.number}` : '/',
});
