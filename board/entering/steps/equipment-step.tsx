import type { FormEvent } from 'react';
import { type EnteringQuery, SetEquipmentDocument } from '../../api/documents.js';
import { FormFaults } from '../form-faults.js';
import { checkTyped } from '../forms/check-typed.js';
import { type FormField, usualValues, type Values } from '../forms/field.js';
import { placeFaults } from '../forms/place-faults.js';
import { typedNumber } from '../forms/typed-number.js';
import { USUAL_EQUIPMENT } from '../forms/usual.js';
import { Step } from '../step.js';
import { TypedField } from '../typed-field.js';
import { useEnter } from '../use-enter.js';
import { useForm } from '../use-form.js';
import { WorkingNote } from '../../working/working-note.js';

/** A field for each kind: what there is, or what is usual while nothing is entered. */
const fieldsOf = (pools: EnteringQuery['equipmentPools']): readonly FormField[] =>
  USUAL_EQUIPMENT.map(({ kind, name, quantity }) => ({
    name: kind,
    label: name,
    unit: 'pieces',
    whole: true,
    ...(pools.every((pool) => pool.kind !== kind) && { usual: String(quantity) }),
  }));

/** What there is, by kind. */
const standing = (pools: EnteringQuery['equipmentPools']): Values =>
  Object.fromEntries(pools.map(({ kind, quantity }) => [kind, String(quantity)]));

interface EquipmentStepProps {
  readonly pools: EnteringQuery['equipmentPools'];
  readonly missing: readonly string[];
}

/** What keeps a pour warm: how many of each the company has. */
export function EquipmentStep({ pools, missing }: EquipmentStepProps) {
  const { enter, since } = useEnter(SetEquipmentDocument);
  const fields = fieldsOf(pools);
  const { values, faults, form, type, refuse } = useForm({ ...usualValues(fields), ...standing(pools) });
  const put = async (event: FormEvent) => {
    event.preventDefault();
    const at = checkTyped(fields, values);
    if (Object.keys(at).length > 0) return refuse({ at, rest: [] });
    for (const { kind, name, unit } of USUAL_EQUIPMENT) {
      const quantity = typedNumber(values[kind] ?? '') ?? 0;
      const answer = await enter({ kind, name, unit, quantity });
      if (!answer.ok) return refuse(placeFaults(answer.faults, { quantity: kind }, { [kind]: name }));
    }
  };
  return (
    <Step
      step="equipment"
      number={2}
      title="Equipment against the cold"
      done={missing.length === 0}
      more="Change how many there are"
      standing={
        pools.length > 0 && <p>{pools.map(({ name, quantity }) => `${quantity} ${name}`).join(', ')}.</p>
      }
    >
      <p>The plan never uses more at one time than there is. None is a number too: enter 0.</p>
      <form
        ref={form}
        noValidate
        className="own-form"
        aria-label="Equipment"
        onSubmit={(event) => void put(event)}
      >
        <div className="field-row">
          {fields.map((field) => (
            <TypedField
              key={field.name}
              field={field}
              value={values[field.name] ?? ''}
              fault={faults.at[field.name]}
              onType={type}
            />
          ))}
        </div>
        <FormFaults faults={faults} />
        <button type="submit" className="act act-strong" disabled={since !== null}>
          Enter the equipment
        </button>
        <WorkingNote since={since}>Entering the equipment and planning anew.</WorkingNote>
      </form>
    </Step>
  );
}
