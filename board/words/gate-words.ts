import type { GateFieldsFragment } from '../api/documents.js';
import { GATE_KIND_WORDS, GATE_STATE_WORDS } from '../draw/gate-symbol.js';

/** "Before start: footing inspection (inspection, open)". */
export function gateWords(gate: GateFieldsFragment): string {
  return `Before ${gate.gate}: ${gate.title} (${GATE_KIND_WORDS[gate.kind]}, ${GATE_STATE_WORDS[gate.state]})`;
}
