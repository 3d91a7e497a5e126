import { useState } from 'react';
import { GATE_KIND_WORDS, GateSymbol } from '../draw/gate-symbol.js';
import { HATCH_WORDS, HATCHES, HatchSwatch } from '../draw/hatches.js';
import type { HoldPointKind } from '../api/documents.js';

const KINDS = Object.keys(GATE_KIND_WORDS) as HoldPointKind[];

/** How outlines and grounds tell a phase's state; the class draws the sample. */
const STATES = {
  'legend-started': 'started, filled up to now',
  'legend-done': 'done',
  'legend-critical': 'critical',
  'legend-unknown': 'weather unknown',
} as const;

/** Hatches of the weather over a job, by their pattern. */
const BANDS = {
  some: 'weather closes some work',
  all: 'all work to come',
  rain: 'rain',
} as const;

/** What the signs of the drawing mean, for those who ask. */
export function Legend() {
  const [open, setOpen] = useState(false);
  return (
    <section className="legend" aria-label="Signs">
      <button type="button" className="act" aria-expanded={open} onClick={() => setOpen(!open)}>
        what the signs mean
      </button>
      {open && <Signs />}
    </section>
  );
}

function Signs() {
  return (
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
      {Object.entries(BANDS).map(([pattern, words]) => (
        <li key={pattern}>
          <svg className="legend-band" aria-hidden="true">
            <rect className="weather-closed" width="100%" height="100%" fill={`url(#weather-${pattern})`} />
          </svg>{' '}
          {words}
        </li>
      ))}
      <li>
        <svg className="legend-band" aria-hidden="true">
          <path className="weather-temperature" d="M1 3C8 0 12 9 20 8S28 4 33 2" />
          <path className="weather-freezing" d="M0 6H34" />
        </svg>{' '}
        temperature, 32 °F dotted
      </li>
      <li>
        <svg className="legend-band" aria-hidden="true">
          <path className="weather-wind" d="M12 8l3 -6M16 8l3 -6" />
        </svg>{' '}
        wind, a stroke for 10 mph
      </li>
      {Object.entries(STATES).map(([className, words]) => (
        <li key={className}>
          <span className={`legend-state ${className}`} /> {words}
        </li>
      ))}
    </ul>
  );
}
