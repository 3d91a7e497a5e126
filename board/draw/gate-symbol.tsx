import type { HoldPointKind, HoldPointState } from '../api/documents.js';

/** What a gate's shape means. */
export const GATE_KIND_WORDS: Readonly<Record<HoldPointKind, string>> = {
  check: 'check',
  inspection: 'inspection',
  clearance: 'clearance',
  cure: 'cure',
  reading: 'cable reading',
};

/** What a gate's filling means. */
export const GATE_STATE_WORDS: Readonly<Record<HoldPointState, string>> = {
  open: 'open',
  released: 'released',
  refused: 'refused',
  waived: 'waived',
};

const OUTLINES: Readonly<Record<HoldPointKind, string>> = {
  check: 'M1.5 1.5H10.5V10.5H1.5Z',
  inspection: 'M6 1.2A4.8 4.8 0 1 1 5.99 1.2Z',
  clearance: 'M6 1 11 10.5H1Z',
  cure: 'M3.5 1.5H8.5L11 6 8.5 10.5H3.5L1 6Z',
  reading: 'M6 .8 11.2 6 6 11.2 .8 6Z',
};

interface GateSymbolProps {
  readonly kind: HoldPointKind;
  readonly state: HoldPointState;
}

/**
 * The mark of a hold point, 12 by 12. The shape tells the kind: square check, round inspection, triangular clearance,
 * six-sided cure, four-pointed reading. The filling tells the state: hollow open, solid released, crossed refused, half
 * waived.
 */
export function GateSymbol({ kind, state }: GateSymbolProps) {
  const outline = OUTLINES[kind];
  return (
    <svg className={`gate gate-${state}`} width="12" height="12" viewBox="0 0 12 12" aria-hidden="true">
      <path className="gate-field" d={outline} />
      {state === 'waived' && <path className="gate-half" d="M1 6H11V11H1Z" />}
      {state === 'refused' && <path className="gate-cross" d="M3.5 3.5 8.5 8.5M8.5 3.5 3.5 8.5" />}
    </svg>
  );
}
