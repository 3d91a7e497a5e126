import type { Block } from '../block.js';
import type { RecordFacts } from '../../record-facts.js';
import { HOOKUP_STATES, when } from '../words.js';

/** Circuits as the labels ask for them, connections as they were made, the run test and the settings of the control. */
export function electrical({ job, company: { zone }, connections }: RecordFacts): Block[] {
  const run = job.holdPoints.filter(({ key }) => key === 'run-test');
  const cautions = new Set(job.hookups.flatMap((hookup) => hookup.cautions));
  return [
    { kind: 'section', text: 'Connection and control' },
    ...(job.hookups.length === 0
      ? [{ kind: 'text', text: 'Nothing is connected in this job.' } as const]
      : []),
    ...job.hookups.flatMap((hookup): Block[] => [
      { kind: 'heading', text: hookup.heatingSet.name },
      {
        kind: 'pairs',
        rows: [
          ['Circuit', `${hookup.circuit.text} (${hookup.circuit.source})`],
          ['State', HOOKUP_STATES[hookup.state]],
          ['Electrician', hookup.electrician?.name ?? 'none named'],
          ['Connected', when(hookup.doneAt, zone) || 'not yet'],
          [
            'Cold lead inside the wall',
            hookup.coldLeadFreeInches === null ? 'not measured' : `${hookup.coldLeadFreeInches} in free`,
          ],
          ...(connections.find(({ hookupId }) => hookupId === hookup.id)?.values ?? []),
          ['Energising allowed', when(hookup.energiseAllowedAt, zone) || 'not yet'],
          ['Energised', when(hookup.energisedAt, zone) || 'not yet'],
        ],
      },
    ]),
    {
      kind: 'table',
      heads: ['Run test and control settings', 'Found', 'Asked for', 'When and by whom'],
      shares: [34, 20, 20, 26],
      rows: run.flatMap((point) =>
        point.items.map((item) => [
          item.label,
          point.measured.find(({ itemId }) => itemId === item.id)?.text ?? 'not on record',
          item.limitText,
          [when(point.decidedAt, zone), point.decidedBy?.name ?? ''].filter(Boolean).join(', '),
        ]),
      ),
      none: 'No run test belongs to this job.',
    },
    ...[...cautions].map((text): Block => ({ kind: 'text', tone: 'caution', text })),
  ];
}
