import { type BoardPhaseFragment, ReasonsDocument } from '../api/documents.js';
import { useQuery } from '../api/use-query.js';

/** Why a phase sits where it sits: each reason rests on the next, down to today. */
export function ReasonChain({ phase }: { readonly phase: BoardPhaseFragment }) {
  const { data, error } = useQuery(ReasonsDocument, { phaseId: phase.id });
  const reasons = data?.explain ?? [];
  return (
    <div id="detail-reasons">
      <h3>{phase.state === 'waiting' ? 'Why not earlier' : 'Why then'}</h3>
      {error && <p className="fault">{error.message}</p>}
      {data && reasons.length === 0 && <p>The plan gives no reason for this phase.</p>}
      <ol className="reasons">
        {reasons.map(({ text, alongside }, index) => (
          <li key={index}>
            {text}
            {alongside.length > 0 && (
              <>
                {' '}
                At the same moment this binds too, and only all of it giving way lets it start earlier:
                <ul>
                  {alongside.map((other) => (
                    <li key={other.text}>{other.text}</li>
                  ))}
                </ul>
              </>
            )}
          </li>
        ))}
      </ol>
    </div>
  );
}
