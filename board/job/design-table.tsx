import { findingWords } from '../words/finding-words.js';
import type { JobDesign } from './job-types.js';
import { Sheet } from './sheet.js';

/** What the rules say about the design: broken ones first, each with what should wait for it. */
export function DesignTable({ findings }: { readonly findings: JobDesign['findings'] }) {
  const inOrder = [...findings.filter(({ ok }) => !ok), ...findings.filter(({ ok }) => ok)];
  return (
    <Sheet title="Design" heads={['Kept', 'Found', 'Should wait for it']}>
      {inOrder.map((finding) => (
        <tr key={`${finding.rule} ${finding.text} ${finding.measured}`}>
          <th scope="row">{finding.ok ? 'Yes' : 'No'}</th>
          <td className="job-wraps">{findingWords(finding)}</td>
          <td>{(finding.blocks ?? []).map((kind) => kind.replaceAll('-', ' ')).join(', ')}</td>
        </tr>
      ))}
    </Sheet>
  );
}
