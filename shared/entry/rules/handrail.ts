import { published } from '../source.js';
import type { Finding } from './finding.js';

const FROM = 4;

/** A flight of four risers or more has a handrail on one side at least. */
export function handrail(risers: number, planned: boolean): Finding {
  const needed = risers >= FROM;
  const ok = planned || !needed;
  return {
    rule: 'handrail',
    ok,
    measured: `${risers} risers, ${planned ? 'handrail planned' : 'no handrail planned'}`,
    limit: `handrail from ${FROM} risers`,
    source: published('IRC R311.7.8'),
    text: needed
      ? ok
        ? 'Handrail is planned'
        : 'Plan a handrail, and keep the cable 3 to 4 in inside where its posts are drilled'
      : 'No handrail is asked for',
    caution: 'Drill for posts only where the drawing shows no cable.',
  };
}
