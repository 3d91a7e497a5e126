import type { Block } from '../block.js';
import type { RecordFacts } from '../../record-facts.js';
import { CLEARANCE_STATES, findingWords, INSPECTION_STATES, joined, sentence, when } from '../words.js';

/** Permits and other clearances, and the visits of the authority. */
export function inspections({ job, company: { zone } }: RecordFacts): Block[] {
  return [
    { kind: 'section', text: 'Permits and inspections' },
    {
      kind: 'table',
      heads: ['Inspection', 'Visit', 'State', 'When', 'Inspector and note'],
      shares: [32, 7, 14, 20, 27],
      rows: job.inspections.map((visit) => [
        visit.title,
        String(visit.attempt),
        INSPECTION_STATES[visit.state],
        when(visit.resultAt ?? visit.visitFrom, zone),
        joined([visit.inspector, visit.note], ': '),
      ]),
      none: 'No inspection belongs to this job.',
    },
    {
      kind: 'table',
      heads: ['Clearance', 'State', 'When', 'Reference'],
      shares: [38, 18, 22, 22],
      rows: job.clearances.map((one) => [
        one.title,
        CLEARANCE_STATES[one.state],
        when(one.clearedAt, zone),
        one.reference ?? '',
      ]),
      none: 'No clearance belongs to this job.',
    },
  ];
}

/** Every hold point with what was measured, who decided and when, why where that was said, and its caution. */
export function holdPoints({ job, company: { zone } }: RecordFacts): Block[] {
  return [
    { kind: 'section', text: 'Hold points' },
    {
      kind: 'table',
      heads: ['Hold point', 'State', 'Decided', 'Measured and found'],
      shares: [24, 9, 17, 50],
      rows: job.holdPoints.map((point) => [
        `${point.title} (before the ${point.gate} of ${point.phase.name})`,
        point.state,
        joined([when(point.decidedAt, zone), point.decidedBy?.name]),
        joined(
          [
            ...point.measured.map(({ itemId, text }) => {
              const item = point.items.find(({ id }) => id === itemId);
              return `${item?.label ?? itemId}: ${sentence(text)}`;
            }),
            point.reason && `${point.state === 'waived' ? 'Waived' : 'Said'}: ${sentence(point.reason)}`,
            ...point.findings.map(findingWords),
            point.caution && `Caution: ${sentence(point.caution)}`,
          ],
          ' ',
        ),
      ]),
      none: 'No hold point belongs to this job.',
    },
  ];
}
