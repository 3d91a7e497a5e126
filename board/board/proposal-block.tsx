import type { BoardProposalFragment } from '../api/documents.js';
import { useSends } from '../sends/sends.js';
import { useDecide } from '../sends/use-decide.js';
import { useSignedIn } from '../session/session.js';
import { dayWords, isoWords } from '../time/moment-words.js';

interface ProposalBlockProps {
  readonly proposal: BoardProposalFragment | null;
  readonly zone: string;
}

/** The open proposal: what would move against the committed dates, which ends change, and the decision on it. */
export function ProposalBlock({ proposal, zone }: ProposalBlockProps) {
  return (
    <section className="block proposal" aria-label="Proposal" tabIndex={0}>
      <h2 className="caption">Proposal</h2>
      {proposal ? (
        <Open proposal={proposal} zone={zone} />
      ) : (
        <p>None is open: the plan keeps every committed date.</p>
      )}
    </section>
  );
}

function Open({ proposal, zone }: { readonly proposal: BoardProposalFragment; readonly zone: string }) {
  const { sends } = useSends();
  const { me } = useSignedIn();
  const busy = sends.some(({ state, input }) => state === 'sending' && input['proposalId'] === proposal.id);
  const decide = useDecide()(proposal);
  const finishes = proposal.jobFinishes.filter(({ before, after }) => before !== after);
  return (
    <>
      <p>
        <b>No. {proposal.number}</b>, {isoWords(proposal.createdAt, zone)}: {proposal.cause}
      </p>
      {me.role === 'office' ? (
        <p className="decide">
          <button
            type="button"
            className="act act-strong"
            disabled={busy}
            onClick={() => decide('acceptProposal', 'Accept')}
          >
            Accept
          </button>
          <button
            type="button"
            className="act"
            disabled={busy}
            onClick={() => decide('dropProposal', 'Drop')}
          >
            Drop
          </button>
        </p>
      ) : (
        <p>The office accepts or drops it.</p>
      )}
      {finishes.length > 0 && (
        <table>
          <caption>Ends that change</caption>
          <thead>
            <tr>
              <th scope="col">Job</th>
              <th scope="col">From</th>
              <th scope="col">To</th>
            </tr>
          </thead>
          <tbody>
            {finishes.map(({ job, before, after }, index) => (
              <tr key={job?.id ?? index}>
                <th scope="row">{job ? `${job.number} ${job.name}` : 'a job that is gone'}</th>
                <td>{before ? dayWords(Date.parse(before), zone) : 'none'}</td>
                <td>{after ? dayWords(Date.parse(after), zone) : 'none'}</td>
              </tr>
            ))}
          </tbody>
        </table>
      )}
      <table>
        <caption>What moves</caption>
        <thead>
          <tr>
            <th scope="col">Phase</th>
            <th scope="col">Committed</th>
            <th scope="col">Proposed</th>
            <th scope="col">Why</th>
          </tr>
        </thead>
        <tbody>
          {proposal.differences.map((difference, index) => (
            <DifferenceRow key={difference.phase?.id ?? index} difference={difference} zone={zone} />
          ))}
        </tbody>
      </table>
    </>
  );
}

interface DifferenceRowProps {
  readonly difference: BoardProposalFragment['differences'][number];
  readonly zone: string;
}

/** One phase that moves; a crew is named only where it changes. */
function DifferenceRow({ difference, zone }: DifferenceRowProps) {
  const { phase, startBefore, startAfter, crewBefore, crewAfter, reason } = difference;
  const crew = (named: typeof crewBefore) =>
    crewBefore?.id !== crewAfter?.id && named ? `, ${named.name}` : '';
  return (
    <tr>
      <th scope="row">{phase ? `${phase.job.number} ${phase.name}` : 'a phase that is gone'}</th>
      <td>
        {isoWords(startBefore, zone, 'none')}
        {crew(crewBefore)}
      </td>
      <td>
        {isoWords(startAfter, zone, 'none')}
        {crew(crewAfter)}
      </td>
      <td>{reason?.text}</td>
    </tr>
  );
}
