import type { Block } from '../block.js';
import type { RecordFacts } from '../../record-facts.js';
import { joined, PHASE_STATES, when } from '../words.js';

/** The phases as they went. Notes are for the crews, so the owner's record has none. */
export function work({ job, company: { zone }, audience }: RecordFacts): Block[] {
  return [
    { kind: 'section', text: 'Work as it went' },
    {
      kind: 'table',
      heads: ['Phase', 'State', 'Start', 'Finish', audience === 'company' ? 'Crew and note' : 'Crew'],
      shares: [34, 12, 17, 17, 20],
      rows: job.phases.map((phase) => [
        phaseTitle(phase),
        PHASE_STATES[phase.state],
        when(phase.actualStart, zone),
        when(phase.actualFinish, zone),
        joined([phase.actualCrew?.name, audience === 'company' && phase.note], ': '),
      ]),
      none: 'No phase belongs to this job.',
    },
  ];
}

/** Most names of the template end with their area already. */
function phaseTitle({ name, area }: RecordFacts['job']['phases'][number]): string {
  return !area || name.toLowerCase().includes(area.name.toLowerCase()) ? name : `${name}: ${area.name}`;
}
