import { GATE_KIND_WORDS, GATE_STATE_WORDS, GateSymbol } from '../draw/gate-symbol.js';
import { isoWords } from '../time/moment-words.js';
import { findingWords } from '../words/finding-words.js';
import type { JobOfPage } from './job-types.js';
import { Sheet } from './sheet.js';

/** Every hold point of the job with its decision and what the rules found. */
export function HoldPointTable({
  holdPoints,
  zone,
}: {
  readonly holdPoints: JobOfPage['holdPoints'];
  readonly zone: string;
}) {
  return (
    <Sheet
      title="Hold points"
      heads={['', 'Hold point', 'Kind', 'Stands before', 'State', 'Decided', 'Found']}
    >
      {holdPoints.map((point) => (
        <tr key={point.id}>
          <td>
            <GateSymbol kind={point.kind} state={point.state} />
          </td>
          <th scope="row">{point.title}</th>
          <td>{GATE_KIND_WORDS[point.kind]}</td>
          <td>
            {point.gate} of {point.phase.name}
          </td>
          <td>
            {GATE_STATE_WORDS[point.state]}
            {point.reason && `: ${point.reason}`}
          </td>
          <td>
            {point.decidedAt && isoWords(point.decidedAt, zone)}
            {point.decidedBy && `, ${point.decidedBy.name}`}
          </td>
          <td>
            {point.findings.map((finding) => (
              <p key={`${finding.text} ${finding.measured}`}>
                {!finding.ok && <b>Outside: </b>}
                {findingWords(finding)}
              </p>
            ))}
            {point.caution && <p className="job-caution">Caution: {point.caution}</p>}
          </td>
        </tr>
      ))}
    </Sheet>
  );
}
