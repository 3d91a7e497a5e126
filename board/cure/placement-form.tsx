import type { FormEvent } from 'react';
import { useSends } from '../sends/sends.js';
import { pressedAt } from '../time/service-clock.js';
import { NumberField, numberIn } from './number-field.js';
import { ProtectionFields, protectionIn } from './protection-fields.js';

interface PlacementFormProps {
  readonly phase: { readonly id: string; readonly name: string; readonly hatch: string };
}

/** What a phase places, by its hatch; phases of other hatches place nothing that cures. */
const MATERIALS: Readonly<Record<string, string>> = {
  concrete: 'concrete',
  masonry: 'grout',
  mortar: 'mortar',
};

/** Whether a phase places something that must cure. */
export const places = ({ hatch }: { readonly hatch: string }): boolean => hatch in MATERIALS;

/** Writes down what was placed: mixture, section, temperature, protection. */
export function PlacementForm({ phase }: PlacementFormProps) {
  const { send } = useSends();
  const record = (event: FormEvent<HTMLFormElement>) => {
    event.preventDefault();
    const form = new FormData(event.currentTarget);
    void send('recordPlacement', `Placement: ${phase.name}`, {
      phaseId: phase.id,
      placedAt: pressedAt(),
      material: String(form.get('material')),
      sectionInches: numberIn(form, 'sectionInches') ?? 0,
      placedTempF: numberIn(form, 'placedTempF') ?? 0,
      accelerated: form.get('accelerated') === 'on',
      protectionPlan: protectionIn(form),
    });
  };
  return (
    <details className="hold-point">
      <summary>Record what was placed now</summary>
      <form className="check-form" onSubmit={record}>
        <label>
          What was placed
          <select name="material" defaultValue={MATERIALS[phase.hatch] ?? 'concrete'}>
            <option value="concrete">Concrete</option>
            <option value="grout">Grout in block</option>
            <option value="mortar">Mortar bed</option>
          </select>
        </label>
        <NumberField name="sectionInches" label="Least dimension of the section" unit="in" required />
        <NumberField name="placedTempF" label="Temperature as placed" unit="°F" required />
        <p className="limit">
          At least 55 °F for sections under 12 in (ACI 306.1-90 as restated by Beall 2004 [published]).
        </p>
        <label className="confirm">
          <input type="checkbox" name="accelerated" />
          Accelerator in the mixture
        </label>
        <p className="limit">Calcium chloride is not for masonry mortar or near embedded metal.</p>
        <ProtectionFields />
        <button type="submit" className="act act-strong act-large">
          Record the placement
        </button>
      </form>
    </details>
  );
}
