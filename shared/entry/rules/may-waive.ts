import type { Finding } from './finding.js';

/** Rules that nobody waives though the trade made them: a cut heating cable is replaced. */
const NEVER: readonly string[] = ['uncut-cable'];

/**
 * Whether an office may go on against a broken rule, by name and reason: what the trade or common practice asks for, it may;
 * what a code asks for, published or from memory, only the authority lifts.
 */
export const mayWaive = ({ rule, source }: Pick<Finding, 'rule' | 'source'>): boolean =>
  (source.mark === 'T' || source.mark === 'C') && !NEVER.includes(rule);
