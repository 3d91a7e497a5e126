/** How far a number can be trusted: published, common practice, from memory, or a rule of the trade. */
export type Mark = 'P' | 'C' | 'M' | 'T';

/**
 * Where a number comes from.
 * `P` a published source, named; `C` common practice, no source; `M` from memory, to be verified against the
 * named text; `T` a rule of thumb of the trade, no source.
 */
export interface Source {
  readonly mark: Mark;
  /** The document, or what is known about the number where there is none. */
  readonly text: string;
}

/** Every mark. */
export const MARKS: readonly Mark[] = ['P', 'C', 'M', 'T'];

/** A named published source. */
export const published = (text: string): Source => ({ mark: 'P', text });
/** A text recalled from memory: shown as such wherever a person sees it. */
export const fromMemory = (text: string): Source => ({ mark: 'M', text });
/** Common practice of the trade. */
export const COMMON_PRACTICE: Source = { mark: 'C', text: 'common practice, no source' };
/** A rule of thumb of the trade. */
export const TRADE_RULE: Source = { mark: 'T', text: 'rule of the trade, no source' };

const WORDS: Record<Mark, string> = {
  P: 'published',
  C: 'common practice',
  M: 'from memory, verify against the text',
  T: 'rule of the trade',
};

/** The mark in words, for a screen or a message. */
export const describeSource = (source: Source): string => `${source.text} [${WORDS[source.mark]}]`;
