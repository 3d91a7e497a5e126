import type { Change } from '../../platform/change/change.js';
import { Refused } from '../../platform/outcomes/refusal.js';
import { WrongState } from '../errors/wrong-state.js';
import { sayInstead } from '../phase-states.js';
import type { NotePhaseInput } from './intents.inputs.js';
import { demandIntentPhase, settle } from './settle.js';

const ACTIONS = [
  'phase note written',
  'phase started',
  'phase put back before its start',
  'phase put back to started',
];

/** Writes the note of a phase: what the next crew must know. */
export async function notePhase(change: Change, input: NotePhaseInput & { readonly note: string | null }) {
  const phase = await demandIntentPhase(change, input.phaseId);
  if (phase.state === 'dropped')
    throw new Refused(new WrongState(phase.state, sayInstead(phase.name, phase.state)));
  const field = {
    field: 'note',
    standing: phase.note,
    seen: input.seen ?? null,
    asked: input.note,
    words: (value: string | null) => (value === null ? 'no note' : `“${value}”`),
    actions: ACTIONS,
  };
  return settle(change, phase, input.revision, field, async () => {
    await change.tx.phase.update({
      where: { id: phase.id },
      data: { note: input.note, revision: { increment: 1 } },
    });
    change.record({
      action: 'phase note written',
      subjectType: 'phase',
      subjectId: phase.id,
      jobId: phase.jobId,
      detail: { name: phase.name, note: input.note },
    });
  });
}
