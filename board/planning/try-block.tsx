import { useState } from 'react';
import type { Change } from '../../shared/schedule/change.js';
import type { BoardPhaseFragment } from '../api/documents.js';
import type { BoardData } from '../board/layout/rows.js';
import { TriedBare } from './tried-bare.js';
import { TriedHere } from './tried-here.js';
import { TryForm } from './try-form.js';
import type { PlannerState } from './use-planner.js';

/** What is tried: changes of the plan handed to the page, or a phase without its protection. */
export type Tried =
  | { readonly words: string; readonly changes: readonly Change[] }
  | { readonly words: string; readonly bare: string };

interface TryBlockProps {
  readonly board: BoardData;
  /** The phase in focus on the board. */
  readonly phase: BoardPhaseFragment | null;
  readonly zone: string;
  readonly planned: PlannerState;
}

const MINUTE = 60_000;

/** Tries a change: every job's end at once, and nothing is written. */
export function TryBlock({ board, phase, zone, planned }: TryBlockProps) {
  const { here, tooMuch, error } = planned;
  const [chosen, setChosen] = useState<BoardPhaseFragment | null>(null);
  const [tried, setTried] = useState<Tried | null>(null);
  if (phase && phase !== chosen) setChosen(phase);
  return (
    <section className="block try" aria-label="What if" tabIndex={0}>
      <h2 className="caption">What if</h2>
      {error && <p className="fault">{error.message}</p>}
      {tooMuch && <p>There is too much planned to try changes in the page.</p>}
      {here && (
        <TryForm
          board={board}
          planned={here.input}
          subject={phase ?? chosen}
          slotsOf={(hours) => Math.ceil((hours * 60) / here.scale.slotMinutes)}
          today={Math.ceil(
            (Date.parse(board.now) - Date.parse(here.scale.startsAt)) / (here.scale.slotMinutes * MINUTE),
          )}
          tried={tried}
          onTry={setTried}
        />
      )}
      <div role="status">
        {tried && 'bare' in tried && (
          <TriedBare key={tried.bare} phaseId={tried.bare} words={tried.words} zone={zone} />
        )}
        {tried && 'changes' in tried && here && (
          <TriedHere
            planner={here.planner()}
            changes={tried.changes}
            words={tried.words}
            board={board}
            scale={here.scale}
            zone={zone}
          />
        )}
      </div>
    </section>
  );
}
