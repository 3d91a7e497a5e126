import type { FormEvent } from 'react';
import { COOLING_SOURCE } from '../../shared/cure/rules/cooling-rate.js';
import { useSends } from '../sends/sends.js';
import { TRUST_WORDS } from '../words/source-words.js';
import { ProtectionFields, protectionIn, type ProtectionNow } from './protection-fields.js';

interface ChangeProtectionFormProps {
  readonly placement: { readonly id: string; readonly revision: number };
  readonly title: string;
  readonly now: ProtectionNow;
}

/** Puts more, less or another protection on from now on; the course, the plan and the alarms follow it. */
export function ChangeProtectionForm({ placement, title, now }: ChangeProtectionFormProps) {
  const { send } = useSends();
  const change = (event: FormEvent<HTMLFormElement>) => {
    event.preventDefault();
    void send('changeProtection', `Protection changed: ${title}`, {
      placementId: placement.id,
      revision: placement.revision,
      protectionPlan: protectionIn(new FormData(event.currentTarget)),
    });
  };
  return (
    <details className="hold-point change-protection">
      <summary>Change the protection</summary>
      {/* Filled anew when the protection has changed, by whomever. */}
      <form className="check-form" onSubmit={change} key={placement.revision}>
        <p>
          What stands on it from now on. Hours of heating count from placing. Turn heat down in steps; it may
          cool by no more than this: {COOLING_SOURCE.text} ({TRUST_WORDS[COOLING_SOURCE.mark]}).
        </p>
        <ProtectionFields now={now} />
        <button type="submit" className="act act-strong act-large">
          Change the protection
        </button>
      </form>
    </details>
  );
}
