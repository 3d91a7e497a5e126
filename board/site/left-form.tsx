import type { FormEvent } from 'react';
import { NumberField, numberIn } from '../cure/number-field.js';
import { useSends } from '../sends/sends.js';
import { durationWords } from '../time/moment-words.js';
import { phaseTitle } from '../words/phase-words.js';
import type { SitePhase } from './day-sections.js';

/** How much work is left of a started phase; the plan counts on from there. */
export function LeftForm({ phase }: { readonly phase: SitePhase }) {
  const { send } = useSends();
  const told = phase.remainingMinutes;
  const tell = (event: FormEvent<HTMLFormElement>) => {
    event.preventDefault();
    const hours = numberIn(new FormData(event.currentTarget), 'hours');
    if (hours === null) return;
    void send('tellRemaining', `Work left of ${phase.job.number} ${phaseTitle(phase)}`, {
      phaseId: phase.id,
      remainingMinutes: Math.round(hours * 60),
      seen: told,
      revision: phase.revision,
    });
  };
  return (
    <details className="hold-point">
      <summary>{told === null ? 'Tell how much is left' : `Left: ${durationWords(told)}`}</summary>
      <form className="check-form" onSubmit={tell}>
        <NumberField name="hours" label="Work left for the crew" unit="h" required />
        <button type="submit" className="act act-strong act-large">
          Tell the office
        </button>
      </form>
    </details>
  );
}
