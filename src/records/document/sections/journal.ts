import type { Block } from '../block.js';
import type { RecordFacts } from '../../record-facts.js';
import { when } from '../words.js';

/** What was done at the job, by whom and why; for the company alone. */
export function journal({ journal: lines, company: { zone }, audience }: RecordFacts): Block[] {
  if (audience === 'owner') return [];
  return [
    { kind: 'section', text: 'Journal' },
    {
      kind: 'table',
      heads: ['When', 'What', 'Who', 'Why'],
      shares: [18, 30, 18, 34],
      rows: lines.map(({ at, action, person, reason }) => [
        when(at, zone),
        action,
        person?.name ?? 'the service',
        reason ?? '',
      ]),
      none: 'Nothing is in the journal.',
    },
  ];
}
