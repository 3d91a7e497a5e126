import { GATE_KIND_WORDS, GateSymbol } from '../draw/gate-symbol.js';
import { HATCH_WORDS, HATCHES, HatchSwatch } from '../draw/hatches.js';
import type { HoldPointKind } from '../api/documents.js';

const KINDS = Object.keys(GATE_KIND_WORDS) as HoldPointKind[];

/** How outlines and grounds tell a phase's state; the class draws the sample. */
const STATES = {
  'legend-started': 'started, dark up to now',
  'legend-done': 'done',
  'legend-critical': 'critical',
  'legend-unknown': 'weather unknown',
} as const;

/** What the signs of the drawing mean. */
export function Legend() {
  return (
    <section className="legend" aria-label="Signs">
      <ul>
        {HATCHES.map((hatch) => (
          <li key={hatch}>
            <HatchSwatch hatch={hatch} /> {HATCH_WORDS[hatch]}
          </li>
        ))}
        <li>
          <HatchSwatch hatch="none" wait /> wait (cure)
        </li>
        {KINDS.map((kind) => (
          <li key={kind}>
            <GateSymbol kind={kind} state="open" /> {GATE_KIND_WORDS[kind]}
          </li>
        ))}
        <li>
          <GateSymbol kind="check" state="released" /> released
        </li>
        <li>
          <GateSymbol kind="check" state="refused" /> refused
        </li>
        <li>
          <GateSymbol kind="check" state="waived" /> waived
        </li>
        <li>
          <span className="legend-hold legend-called" /> weather hold, called
        </li>
        <li>
          <span className="legend-hold legend-forecast" /> by forecast
        </li>
        <li>
          <span className="legend-rule" /> committed dates that differ
        </li>
        {Object.entries(STATES).map(([className, words]) => (
          <li key={className}>
            <span className={`legend-state ${className}`} /> {words}
          </li>
        ))}
      </ul>
    </section>
  );
}
