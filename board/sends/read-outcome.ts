import { type FindingParts, findingWords } from '../words/finding-words.js';
import type { Delivered } from './outbox/outbox.js';
import type { Conflict } from './send.js';

/** What a mutation answered: the changed rows, or a refusal with a code. */
export interface Outcome extends Partial<Conflict> {
  readonly __typename: string;
  readonly code?: string;
  readonly message?: string;
  /** Whether an intent made it so. */
  readonly answer?: 'applied' | 'alreadyApplied';
  readonly findings?: readonly FindingText[];
  readonly finding?: FindingText | null;
  readonly reading?: { readonly accepted: boolean; readonly findings: readonly FindingText[] } | null;
}

interface FindingText extends FindingParts {
  readonly ok: boolean;
}

/** Says what came of a change: that it is recorded, its refusal in full with every finding, or both values. */
export function readOutcome(outcome: Outcome): Delivered {
  if (outcome.code === 'FieldConflict') {
    return { state: 'conflict', message: outcome.message ?? outcome.code, conflict: conflictIn(outcome) };
  }
  if (outcome.code) {
    return {
      state: 'refused',
      message: outcome.message ?? outcome.code,
      details: failing(outcome.findings ?? (outcome.finding ? [outcome.finding] : [])),
    };
  }
  if (outcome.reading && !outcome.reading.accepted) {
    return {
      state: 'done',
      message: 'Recorded, but the reading is outside its limits: the hold point stays open.',
      details: failing(outcome.reading.findings),
    };
  }
  const message = outcome.answer === 'alreadyApplied' ? 'It was so on record already.' : 'Recorded.';
  return { state: 'done', message, details: [] };
}

function conflictIn(outcome: Outcome): Conflict {
  return {
    field: outcome.field ?? '',
    theirs: outcome.theirs ?? '',
    mine: outcome.mine ?? '',
    standing: outcome.standing ?? null,
    changedBy: outcome.changedBy ?? null,
    currentRevision: outcome.currentRevision ?? 0,
  };
}

function failing(findings: readonly FindingText[] = []): string[] {
  return findings.filter(({ ok }) => !ok).map(findingWords);
}
