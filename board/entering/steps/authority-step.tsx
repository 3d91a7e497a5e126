import type { FormEvent } from 'react';
import { CreateAuthorityDocument, type EnteringQuery } from '../../api/documents.js';
import { FormFaults } from '../form-faults.js';
import { checkTyped } from '../forms/check-typed.js';
import { type FormField, usualValues } from '../forms/field.js';
import { placeFaults } from '../forms/place-faults.js';
import { typedNumber } from '../forms/typed-number.js';
import { weekInput, workWeek } from '../forms/week-input.js';
import { Step } from '../step.js';
import { TypedField } from '../typed-field.js';
import { useEnter } from '../use-enter.js';
import { useForm } from '../use-form.js';
import { WeekFields } from '../week-fields.js';
import { WorkingNote } from '../../working/working-note.js';

const FIELDS: readonly FormField[] = [
  {
    name: 'authorityName',
    label: 'Name of the authority',
    text: true,
    hint: 'The building department, say.',
  },
  { name: 'phone', label: 'Telephone for requests', text: true, optional: true },
  { name: 'notice', label: 'Notice before a visit', unit: 'h', usual: '24', whole: true },
  { name: 'visit', label: 'A visit takes', unit: 'min', usual: '30', whole: true },
];
const NEW = { ...usualValues(FIELDS), ...workWeek('09:00', '15:00') };
const PATHS = {
  name: 'authorityName',
  phone: 'phone',
  noticeHours: 'notice',
  visitMinutes: 'visit',
  week: 'from',
};
const LABELS = {
  ...Object.fromEntries(FIELDS.map(({ name, label }) => [name, label])),
  from: 'The list of visiting hours',
};

interface AuthorityStepProps {
  readonly authorities: EnteringQuery['authorities'];
  readonly zone: string;
}

/** Who inspects: how long before a visit it wants to be asked, and when it comes. */
export function AuthorityStep({ authorities, zone }: AuthorityStepProps) {
  const { enter, since } = useEnter(CreateAuthorityDocument);
  const { values, faults, form, type, refuse, clear } = useForm(NEW);
  const add = async (event: FormEvent) => {
    event.preventDefault();
    const at = checkTyped(FIELDS, values);
    if (Object.keys(at).length > 0) return refuse({ at, rest: [] });
    const answer = await enter({
      name: values['authorityName'] ?? '',
      phone: (values['phone'] ?? '').trim() || null,
      noticeHours: typedNumber(values['notice'] ?? '') ?? 0,
      visitMinutes: typedNumber(values['visit'] ?? '') ?? 0,
      zone,
      week: weekInput(values),
    });
    if (answer.ok) clear();
    else refuse(placeFaults(answer.faults, PATHS, LABELS));
  };
  return (
    <Step
      step="authority"
      number={3}
      title="Inspecting authority"
      done={authorities.length > 0}
      more="Enter another authority"
      standing={
        authorities.length > 0 && (
          <p>{authorities.map(({ name, noticeHours }) => `${name}, ${noticeHours} h notice`).join('; ')}.</p>
        )
      }
    >
      <p>Concrete waits for its inspection. Ask the authority for its notice and its visiting hours.</p>
      <form
        ref={form}
        noValidate
        className="own-form"
        aria-label="An authority"
        onSubmit={(event) => void add(event)}
      >
        <div className="field-row">
          {FIELDS.map((field) => (
            <TypedField
              key={field.name}
              field={field}
              value={values[field.name] ?? ''}
              fault={faults.at[field.name]}
              onType={type}
            />
          ))}
        </div>
        <WeekFields legend="Visiting hours" values={values} faults={faults.at} onType={type} />
        <FormFaults faults={faults} />
        <button type="submit" className="act act-strong" disabled={since !== null}>
          Enter the authority
        </button>
        <WorkingNote since={since}>Entering the authority.</WorkingNote>
      </form>
    </Step>
  );
}
