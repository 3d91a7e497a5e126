import { sourceWords } from './source-words.js';

/** What a rule says about one measured value, with where its limit comes from. */
export interface FindingParts {
  readonly text: string;
  readonly measured: string;
  readonly limit: string;
  readonly mark: string;
  readonly source: string;
  readonly caution?: string | null;
}

/**
 * A finding whole: "Footing is 1 in short of frost: dig deeper. Found 41 in; limit: at least 42 in (town; published).
 * Caution: ...". A limit is never told without its source, nor a finding without its caution.
 */
export function findingWords(finding: FindingParts): string {
  const { text, measured, limit, caution } = finding;
  return [
    sentence(text),
    `Found ${measured}; limit: ${limit} (${sourceWords(finding)}).`,
    ...(caution ? [`Caution: ${sentence(caution)}`] : []),
  ].join(' ');
}

/** The text with one full stop at its end. */
export const sentence = (text: string): string =>
  /[.!?]$/.test(text.trim()) ? text.trim() : `${text.trim()}.`;
