import type { BoardPhaseFragment } from '../api/documents.js';
import type { BoardData } from '../board/layout/rows.js';
import { useSignedIn } from '../session/session.js';
import { ImproveBlock } from './improve-block.js';
import { RiskBlock } from './risk-block.js';
import type { PlannerState } from './use-planner.js';
import { TryBlock } from './try-block.js';
import './planning.css';

interface PlanningBlocksProps {
  readonly board: BoardData;
  readonly phase: BoardPhaseFragment | null;
  readonly zone: string;
  readonly planned: PlannerState;
}

/** What the office asks of the plan: a better one, what a change would do, and how sure the dates are. */
export function PlanningBlocks({ board, phase, zone, planned }: PlanningBlocksProps) {
  const { me } = useSignedIn();
  if (me.role !== 'office') return null;
  return (
    <div className="blocks planning-blocks">
      <ImproveBlock zone={zone} />
      <TryBlock board={board} phase={phase} zone={zone} planned={planned} />
      <RiskBlock zone={zone} />
    </div>
  );
}
