import type { BoardPhaseFragment } from '../../api/documents.js';
import type { BarTimes } from './bar-times.js';

/** Dates differ on the board when they are a quarter of an hour apart, the planning step. */
const STEP = 15 * 60_000;

/** The committed dates of a phase where they differ from those drawn, or when another crew was told. */
export function committedRule(phase: BoardPhaseFragment, bar: BarTimes): BarTimes | null {
  const { commitment, planned } = phase;
  if (!commitment || commitment.state !== 'held' || phase.state === 'done') return null;
  const from = Date.parse(commitment.startAt);
  const to = Date.parse(commitment.finishAt);
  const moved = Math.abs(from - bar.from) >= STEP || Math.abs(to - bar.to) >= STEP;
  const otherCrew = Boolean(planned?.crew) && commitment.crew?.id !== planned?.crew?.id;
  return moved || otherCrew ? { from, to } : null;
}
