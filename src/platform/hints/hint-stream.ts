import type { Hint } from './hint.js';

/**
 * The hints of one subscriber as an async iterator. Written by hand because a generator stays open after the
 * subscriber left until the next event; this one ends at once. Hints that come faster than they are read are merged.
 */
export class HintStream implements AsyncIterableIterator<Hint> {
  private pending: Hint | null = null;
  private waiting: ((result: IteratorResult<Hint>) => void) | null = null;
  private ended = false;

  constructor(
    readonly companyId: string,
    private readonly onEnd: () => void,
  ) {}

  push(hint: Hint): void {
    if (this.ended) return;
    if (this.waiting) {
      this.waiting({ done: false, value: hint });
      this.waiting = null;
      return;
    }
    this.pending = this.pending ? merge(this.pending, hint) : hint;
  }

  end(): void {
    if (this.ended) return;
    this.ended = true;
    this.onEnd();
    this.waiting?.({ done: true, value: undefined });
    this.waiting = null;
  }

  next(): Promise<IteratorResult<Hint>> {
    if (this.pending) {
      const value = this.pending;
      this.pending = null;
      return Promise.resolve({ done: false, value });
    }
    if (this.ended) return Promise.resolve({ done: true, value: undefined });
    return new Promise((resolve) => {
      this.waiting = resolve;
    });
  }

  return(): Promise<IteratorResult<Hint>> {
    this.end();
    return Promise.resolve({ done: true, value: undefined });
  }

  [Symbol.asyncIterator](): this {
    return this;
  }
}

/** Two hints as one; a hint without jobs means all jobs and stays so. */
function merge(earlier: Hint, later: Hint): Hint {
  const all = earlier.jobIds.length === 0 || later.jobIds.length === 0;
  return { ...later, jobIds: all ? [] : [...new Set([...earlier.jobIds, ...later.jobIds])] };
}
