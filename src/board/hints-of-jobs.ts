import type { Hint } from '../platform/hints/hint.js';

/** What a subscriber gets for each hint. */
export interface Changed {
  readonly changed: Pick<Hint, 'changeNumber' | 'jobIds' | 'improvementId'>;
}

/**
 * The hints that concern some jobs; all hints when none are named. A hint without jobs concerns everyone. Leaving ends
 * the source at once.
 */
export function hintsOfJobs(
  source: AsyncIterableIterator<Hint>,
  jobIds: readonly string[] | null,
): AsyncIterableIterator<Changed> {
  const wanted = jobIds && new Set(jobIds);
  const concerns = (hint: Hint): boolean =>
    wanted === null || hint.jobIds.length === 0 || hint.jobIds.some((id) => wanted.has(id));
  return {
    async next() {
      for (;;) {
        const result = await source.next();
        if (result.done) return { done: true, value: undefined };
        const { changeNumber, jobIds: touched, improvementId } = result.value;
        if (concerns(result.value))
          return {
            done: false,
            value: { changed: { changeNumber, jobIds: touched, ...(improvementId && { improvementId }) } },
          };
      }
    },
    async return() {
      await source.return?.();
      return { done: true, value: undefined };
    },
    [Symbol.asyncIterator]() {
      return this;
    },
  };
}
