import { WithoutProtectionDocument } from '../api/documents.js';
import { useQuery } from '../api/use-query.js';
import { shiftsAnswered } from './shifts.js';
import { ShiftsTable } from './shifts-table.js';

interface TriedBareProps {
  readonly phaseId: string;
  readonly words: string;
  readonly zone: string;
}

/** A phase left without its protection: the service knows the weather that closes bare work, so it is asked. */
export function TriedBare({ phaseId, words, zone }: TriedBareProps) {
  const { data, error } = useQuery(WithoutProtectionDocument, { phaseId });
  const answer = data?.whatIf;
  return (
    <>
      {error && <p className="fault">{error.message}</p>}
      {!answer && !error && <p>Asking for the plan without protection.</p>}
      {answer && answer.__typename !== 'Supposed' && <p className="fault">{answer.message}</p>}
      {answer?.__typename === 'Supposed' && (
        <>
          <ShiftsTable shifts={shiftsAnswered(answer)} words={words} zone={zone} />
          <p>
            It waits for weather that bare work may meet, as far as the forecast knows it. Fresh concrete and
            mortar that freeze are lost: this is for comparing, never leave to go without.
          </p>
        </>
      )}
    </>
  );
}
