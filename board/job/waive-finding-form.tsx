import type { FormEvent } from 'react';
import { mayWaive } from '../../shared/entry/rules/may-waive.js';
import type { Mark } from '../../shared/entry/source.js';
import { OutcomeLine } from '../sends/outcome-list.js';
import { useSends } from '../sends/sends.js';
import type { DesignFinding } from './job-types.js';

interface WaiveFindingFormProps {
  readonly jobId: string;
  readonly finding: DesignFinding;
}

/** Goes on against a broken rule that trade or common practice made, by reason; of any other it says that nobody may. */
export function WaiveFindingForm({ jobId, finding }: WaiveFindingFormProps) {
  const { sends, send } = useSends();
  const source = { mark: finding.mark as Mark, text: finding.source };
  if (!mayWaive({ rule: finding.rule, source }))
    return <p>Nobody here waives this rule: correct the measurement.</p>;
  const busy = sends.some(({ state, change }) => state === 'sending' && change === 'waiveFinding');
  const waive = (event: FormEvent<HTMLFormElement>) => {
    event.preventDefault();
    void send('waiveFinding', `Waived: ${finding.text}`, {
      jobId,
      rule: finding.rule,
      text: finding.text,
      reason: String(new FormData(event.currentTarget).get('reason') ?? '').trim(),
    });
  };
  return (
    <details className="way-out">
      <summary>Go on against this rule</summary>
      <form className="check-form" onSubmit={waive}>
        <label>
          Why it is right here; kept with your name
          <input name="reason" required minLength={REASON} title={`At least ${REASON} characters`} />
        </label>
        {sends
          .filter(({ change, input }) => change === 'waiveFinding' && input['text'] === finding.text)
          .map((one) => (
            <OutcomeLine key={one.key} send={one} />
          ))}
        <button type="submit" className="act act-strong act-large" disabled={busy}>
          Waive the rule
        </button>
      </form>
    </details>
  );
}

/** A reason has so many characters at least. */
const REASON = 3;
