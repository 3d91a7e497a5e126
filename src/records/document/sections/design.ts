import type { Block } from '../block.js';
import type { RecordFacts } from '../../record-facts.js';
import { findingWords } from '../words.js';

/** What was built, in figures, and what the rules said of it, with waivers. */
export function design({ job }: RecordFacts): Block[] {
  const inOrder = [...job.findings.filter(({ ok }) => !ok), ...job.findings.filter(({ ok }) => ok)];
  return [
    { kind: 'section', text: 'Quantities and rules' },
    {
      kind: 'table',
      heads: ['Quantity', 'Measured', 'Unit'],
      shares: [60, 20, 20],
      rows: job.quantities.map(({ label, value, unit }) => [
        label,
        String(Math.round(value * 100) / 100),
        unit,
      ]),
      none: 'No quantities are on record.',
    },
    {
      kind: 'table',
      heads: ['Kept', 'What the rules say of the design'],
      shares: [10, 90],
      rows: inOrder.map((finding) => [
        finding.ok ? 'yes' : finding.waived ? 'waived' : 'NO',
        findingWords(finding),
      ]),
      none: 'The design was not held against rules.',
    },
  ];
}
