import type { Feet, Inches } from '../../units/length.js';
import { TRADE_RULE } from '../source.js';
import type { Finding } from './finding.js';
import { say } from './say.js';

/** What became of laying a set: its closest runs, or why it cannot be laid. */
export type LaidSet =
  | { readonly laid: true; readonly closest: Inches }
  | { readonly laid: false; readonly why: string; readonly fits: { shortest: Feet; longest: Feet } | null };

/** A set lies on its areas in full, uncut and uncrossed, at its spacing, with its bends and setbacks kept. */
export function cableLayout(label: Feet, outcome: LaidSet): Finding {
  const { laid } = outcome;
  return {
    rule: 'cable-layout',
    ok: laid,
    measured: laid
      ? `${say(label, 'ft')}, runs no closer than ${say(Math.round(outcome.closest * 100) / 100, 'in')}`
      : say(label, 'ft'),
    limit: laid || !outcome.fits ? 'all of the label, every limit kept' : sayRange(outcome.fits),
    source: TRADE_RULE,
    text: laid ? 'The whole set can be laid' : `The set cannot be laid: ${outcome.why}`,
    caution: "Never cut or cross the heating cable; the set's instructions go first.",
  };
}

const sayRange = ({ shortest, longest }: { shortest: Feet; longest: Feet }): string =>
  `${Math.ceil(shortest)} to ${say(Math.floor(longest), 'ft')}`;
