import type { ReactNode } from 'react';
import { isoWords } from '../time/moment-words.js';
import { findingWords } from '../words/finding-words.js';
import type { DesignFinding } from './job-types.js';
import { Sheet } from './sheet.js';

interface DesignTableProps {
  readonly findings: readonly DesignFinding[];
  readonly zone: string;
  /** What the office may do about a broken rule, where it may. */
  readonly wayOut?: (finding: DesignFinding) => ReactNode;
}

/** What the rules say about the design: broken ones first, each with what should wait for it, and who goes on against it. */
export function DesignTable({ findings, zone, wayOut }: DesignTableProps) {
  const inOrder = [...findings.filter(({ ok }) => !ok), ...findings.filter(({ ok }) => ok)];
  return (
    <Sheet title="Design" heads={['Kept', 'Found', 'Should wait for it']}>
      {inOrder.map((finding) => (
        <tr key={`${finding.rule} ${finding.text} ${finding.measured}`}>
          <th scope="row">{finding.ok ? 'Yes' : finding.waived ? 'Waived' : 'No'}</th>
          <td className="job-wraps">
            {findingWords(finding)}
            {finding.waived && <p>{waiverWords(finding, zone)}</p>}
            {!finding.ok && !finding.waived && wayOut?.(finding)}
          </td>
          <td>{waits(finding)}</td>
        </tr>
      ))}
    </Sheet>
  );
}

/** Nothing waits for a rule that was waived. */
const waits = ({ blocks, waived }: DesignFinding): string =>
  waived ? '' : (blocks ?? []).map((kind) => kind.replaceAll('-', ' ')).join(', ');

/** "Waived by R. Alder, Sat 28 Nov 10:12: the set's instructions allow 14 in". */
function waiverWords({ waived, waivedBy, waivedAt }: DesignFinding, zone: string): string {
  const by = waivedBy ? ` by ${waivedBy.name}` : '';
  const at = waivedAt ? `, ${isoWords(waivedAt, zone)}` : '';
  return `Waived${by}${at}: ${waived ?? ''}`;
}
