import { type FindingParts, findingWords } from '../words/finding-words.js';

/** What a mutation answered: the changed rows, or a refusal with a code. */
export interface Outcome {
  readonly __typename: string;
  readonly code?: string;
  readonly message?: string;
  readonly findings?: readonly FindingText[];
  readonly finding?: FindingText | null;
  readonly reading?: { readonly accepted: boolean; readonly findings: readonly FindingText[] } | null;
}

interface FindingText extends FindingParts {
  readonly ok: boolean;
}

/** An outcome in words. */
export interface OutcomeText {
  readonly state: 'done' | 'refused';
  readonly message: string;
  readonly details: readonly string[];
}

/** Says what came of a change: its refusal in full with every finding, or that it is recorded. */
export function readOutcome(outcome: Outcome): OutcomeText {
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
  return { state: 'done', message: 'Recorded.', details: [] };
}

function failing(findings: readonly FindingText[] = []): string[] {
  return findings.filter(({ ok }) => !ok).map(findingWords);
}
