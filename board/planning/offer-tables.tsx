import type { BoardProposalFragment, OfferedPlanFragment } from '../api/documents.js';
import { dayWords, isoWords } from '../time/moment-words.js';
import { TableHead } from './table-head.js';
import { whoToTell } from './who-to-tell.js';

interface OfferTablesProps {
  readonly proposal: BoardProposalFragment & OfferedPlanFragment;
  readonly zone: string;
}

/** What an offered plan has otherwise than the one in force: ends that change, who must be told, what moves. */
export function OfferTables({ proposal, zone }: OfferTablesProps) {
  const told = whoToTell(proposal.differences);
  return (
    <>
      <table>
        <caption>Ends that change</caption>
        <TableHead names={['Job', 'In force', 'Offered']} />
        <tbody>
          {proposal.jobEnds.map(({ job, before, after }, index) => (
            <tr key={job?.id ?? index}>
              <th scope="row">{job ? `${job.number} ${job.name}` : 'a job that is gone'}</th>
              <td>{before ? dayWords(Date.parse(before), zone) : 'none'}</td>
              <td>{after ? dayWords(Date.parse(after), zone) : 'none'}</td>
            </tr>
          ))}
        </tbody>
      </table>
      <h3>Must be told</h3>
      {told.length === 0 ? (
        <p>Nobody: nothing promised moves.</p>
      ) : (
        <ul>
          {told.map(({ crew, phases }) => (
            <li key={crew}>
              {crew}: {phases.join(', ')}
            </li>
          ))}
        </ul>
      )}
      <table>
        <caption>What moves</caption>
        <TableHead names={['Phase', 'From', 'To', 'Why']} />
        <tbody>
          {[
            ...proposal.differences.map((one) => ({ ...one, promised: true })),
            ...proposal.moves.map((one) => ({ ...one, promised: false })),
          ].map(({ phase, startBefore, startAfter, reason, promised }, index) => (
            <tr key={phase?.id ?? index}>
              <th scope="row">
                {phase ? `${phase.job.number} ${phase.name}` : 'a phase that is gone'}
                {promised && ' (promised)'}
              </th>
              <td>{isoWords(startBefore, zone, 'none')}</td>
              <td>{isoWords(startAfter, zone, 'none')}</td>
              <td>{reason?.text}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </>
  );
}
