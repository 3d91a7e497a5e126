import { useMemo } from 'react';
import type { Change } from '../../shared/schedule/change.js';
import type { Planner } from '../../shared/schedule/planner.js';
import { whatIf, type WhatIf } from '../../shared/schedule/what-if/what-if.js';
import type { BoardData } from '../board/layout/rows.js';
import { shiftsFound, type SlotScale } from './shifts.js';
import { ShiftsTable } from './shifts-table.js';

interface TriedHereProps {
  readonly planner: Planner;
  readonly changes: readonly Change[];
  readonly words: string;
  readonly board: BoardData;
  readonly scale: SlotScale;
  readonly zone: string;
}

/** Changes tried with the engine itself, in the page. */
export function TriedHere({ planner, changes, words, board, scale, zone }: TriedHereProps) {
  const found = useMemo(() => preview(planner, changes), [planner, changes]);
  return found ? (
    <ShiftsTable shifts={shiftsFound(found, board, scale)} words={words} zone={zone} />
  ) : (
    <p>What was tried is no longer planned. Choose again.</p>
  );
}

/** The plan may have gone on since the change was chosen, and what it names with it. */
function preview(planner: Planner, changes: readonly Change[]): WhatIf | null {
  try {
    return whatIf(planner, changes);
  } catch (error) {
    if (error instanceof RangeError) return null;
    throw error;
  }
}
