import type { Finding as RuleFinding } from '../../shared/entry/rules/finding.js';
import type { Finding } from './finding.model.js';

/** A rule's finding as callers see it and as it is kept: its source taken apart into mark and text. */
export function findingOf({ source, caution, ...finding }: RuleFinding): Finding {
  return { ...finding, mark: source.mark, source: source.text, caution: caution ?? null };
}
