import type { Gate, PlannedPhase } from '../model.js';
import type { Book } from './book.js';
import { violation, type Violation } from './violation.js';

/** No planned phase starts before a gate; a lapsed clearance and an assumed date are owned up to. */
export function checkGates(book: Book): Violation[] {
  const found: Violation[] = [];
  for (const { phase, at } of book.placed()) {
    if (at.state !== 'planned') continue;
    const pinned = book.says('pinBeforeGate', (conflict) => conflict.phaseId === at.id);
    for (const gate of phase.gates ?? []) {
      const from = opensAt(book, gate);
      if (from === null) {
        const ok = gate.kind === 'inspection' ? false : admits(book, at, gate);
        if (!ok) found.push(violation('gate', at.id, `${nameOf(gate)} has no date and nobody says so`));
      } else if (at.start < from && !pinned) {
        found.push(violation('gate', at.id, `starts at ${at.start}, ${nameOf(gate)} opens at ${from}`));
      }
      if (gate.kind === 'inspection' && lapses(book, at, gate.inspectionId, from)) {
        found.push(violation('gate', at.id, `${gate.inspectionId} is no longer valid and nobody says so`));
      }
      if (gate.kind !== 'clearance' || gate.expires === undefined || at.start < gate.expires) continue;
      if (!book.says('clearanceLapsed', (c) => c.phaseId === at.id && c.clearanceId === gate.id)) {
        found.push(violation('gate', at.id, `${gate.id} lapses before it starts and nobody says so`));
      }
    }
  }
  return found;
}

function opensAt(book: Book, gate: Gate): number | null {
  switch (gate.kind) {
    case 'clearance':
      return gate.earliest;
    case 'cure':
      return gate.expected;
    case 'notBefore':
      return gate.at;
    case 'inspection':
      return book.plan.inspections.find(({ id }) => id === gate.inspectionId)?.finish ?? null;
  }
}

function lapses(book: Book, at: PlannedPhase, inspectionId: string, finish: number | null): boolean {
  const validFor = book.input.inspections.find(({ id }) => id === inspectionId)?.validFor;
  if (finish === null || validFor === undefined || at.start! <= finish + validFor) return false;
  return !book.says('inspectionLapsed', (c) => c.phaseId === at.id && c.inspectionId === inspectionId);
}

function admits(book: Book, at: PlannedPhase, gate: Gate): boolean {
  const id = nameOf(gate);
  return at.assumes.includes(id) && book.says('gateUndated', (c) => c.phaseId === at.id && c.gateId === id);
}

function nameOf(gate: Gate): string {
  return gate.kind === 'inspection' ? gate.inspectionId : gate.id;
}
