import type { Send } from './send.js';

/** The input that sets the own value over the one that stands, now that the person has seen both. */
export function ownValueInput({ change, input, conflict }: Send): Readonly<Record<string, unknown>> {
  if (!conflict) return input;
  const { standing, currentRevision } = conflict;
  const seen = change === 'tellRemaining' && standing !== null ? Number(standing) : standing;
  return { ...input, seen, revision: currentRevision };
}
