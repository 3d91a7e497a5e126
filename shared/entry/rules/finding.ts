import type { Source } from '../source.js';

/** What one rule says about one set of facts. */
export interface Finding {
  /** File name of the rule, stable. */
  readonly rule: string;
  readonly ok: boolean;
  /** The value that was measured, with its unit. */
  readonly measured: string;
  /** The limit it was held against, with its unit. */
  readonly limit: string;
  readonly source: Source;
  /** What is wrong and what to do, or that it is right. */
  readonly text: string;
  /** What a person must mind, whatever the finding says. */
  readonly caution?: string;
  /** Kinds of phase that must not begin while the finding is not ok; none where it only advises. */
  readonly blocks?: readonly string[];
  /** Keys of the areas that it is about; left out where it is about the whole job. */
  readonly areas?: readonly string[];
}
