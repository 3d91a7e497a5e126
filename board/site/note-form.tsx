import type { FormEvent } from 'react';
import { useSends } from '../sends/sends.js';
import { phaseTitle } from '../words/phase-words.js';
import type { SitePhase } from './day-sections.js';

/** The note of a phase: what the next crew and the office must know. */
export function NoteForm({ phase }: { readonly phase: SitePhase }) {
  const { send } = useSends();
  const keep = (event: FormEvent<HTMLFormElement>) => {
    event.preventDefault();
    const note = String(new FormData(event.currentTarget).get('note')).trim() || null;
    if (note === phase.note) return;
    void send('notePhase', `Note on ${phase.job.number} ${phaseTitle(phase)}`, {
      phaseId: phase.id,
      note,
      seen: phase.note,
      revision: phase.revision,
    });
  };
  return (
    <details className="hold-point">
      <summary>{phase.note ? `Note: ${phase.note}` : 'Write a note'}</summary>
      <form className="check-form" onSubmit={keep}>
        <label>
          Note for the next crew and the office
          <textarea name="note" rows={3} maxLength={2000} defaultValue={phase.note ?? ''} />
        </label>
        <button type="submit" className="act act-strong act-large">
          Keep the note
        </button>
      </form>
    </details>
  );
}
