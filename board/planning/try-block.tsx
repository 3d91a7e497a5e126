import { useMemo, useState } from 'react';
import type { Change } from '../../shared/schedule/change.js';
import type { PlanInput } from '../../shared/schedule/model.js';
import { Planner } from '../../shared/schedule/planner.js';
import { type BoardPhaseFragment, PlanInputDocument } from '../api/documents.js';
import { useQuery } from '../api/use-query.js';
import type { BoardData } from '../board/layout/rows.js';
import { TriedBare } from './tried-bare.js';
import { TriedHere } from './tried-here.js';
import { TryForm } from './try-form.js';

/** What is tried: changes of the plan handed to the page, or a phase without its protection. */
export type Tried =
  | { readonly words: string; readonly changes: readonly Change[] }
  | { readonly words: string; readonly bare: string };

interface TryBlockProps {
  readonly board: BoardData;
  /** The phase in focus on the board. */
  readonly phase: BoardPhaseFragment | null;
  readonly zone: string;
}

const MINUTE = 60_000;

/** Tries a change: every job's end at once, and nothing is written. */
export function TryBlock({ board, phase, zone }: TryBlockProps) {
  const { data, error } = useQuery(PlanInputDocument, {});
  const handed = data?.planInput ?? null;
  const planner = useMemo(
    () => (handed?.json ? Planner.of(JSON.parse(handed.json) as PlanInput) : null),
    [handed?.json],
  );
  const [chosen, setChosen] = useState<BoardPhaseFragment | null>(null);
  const [tried, setTried] = useState<Tried | null>(null);
  if (phase && phase !== chosen) setChosen(phase);
  return (
    <section className="block try" aria-label="What if" tabIndex={0}>
      <h2 className="caption">What if</h2>
      {error && <p className="fault">{error.message}</p>}
      {handed && !handed.json && <p>There is too much planned to try changes in the page.</p>}
      {handed && planner && (
        <TryForm
          board={board}
          planned={planner.input}
          subject={phase ?? chosen}
          slotsOf={(hours) => Math.ceil((hours * 60) / handed.slotMinutes)}
          today={Math.ceil(
            (Date.parse(board.now) - Date.parse(handed.startsAt)) / (handed.slotMinutes * MINUTE),
          )}
          tried={tried}
          onTry={setTried}
        />
      )}
      <div role="status">
        {tried && 'bare' in tried && (
          <TriedBare key={tried.bare} phaseId={tried.bare} words={tried.words} zone={zone} />
        )}
        {tried && 'changes' in tried && handed && planner && (
          <TriedHere
            planner={planner}
            changes={tried.changes}
            words={tried.words}
            board={board}
            scale={handed}
            zone={zone}
          />
        )}
      </div>
    </section>
  );
}
