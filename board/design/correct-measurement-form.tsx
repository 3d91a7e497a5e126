import { type FormEvent, useState } from 'react';
import { OutcomeLine } from '../sends/outcome-list.js';
import { useSends } from '../sends/sends.js';
import { correctedSheet, measuredFields, type MeasuredField } from './measured-fields.js';

interface CorrectMeasurementFormProps {
  readonly job: { readonly id: string; readonly revision: number; readonly measurement: string };
  readonly number: number;
}

/** Every measured value of the job to be put right, with the reason; what follows from them is derived anew. */
export function CorrectMeasurementForm({ job, number }: CorrectMeasurementFormProps) {
  const { sends, send } = useSends();
  const [unchanged, setUnchanged] = useState(false);
  const sheet = JSON.parse(job.measurement) as Readonly<Record<string, unknown>>;
  const groups = measuredFields(sheet);
  const busy = sends.some(({ state, change }) => state === 'sending' && change === 'correctMeasurement');
  const correct = (event: FormEvent<HTMLFormElement>) => {
    event.preventDefault();
    const form = new FormData(event.currentTarget);
    const typed = groups.flatMap(({ fields }) =>
      fields.map((field) => [field.path, typedIn(form, field)] as const),
    );
    const { sheet: corrected, changed } = correctedSheet(sheet, new Map(typed));
    setUnchanged(!changed);
    if (!changed) return;
    void send('correctMeasurement', `Measurement of job ${number} corrected`, {
      jobId: job.id,
      revision: job.revision,
      measurement: JSON.stringify(corrected),
      reason: String(form.get('reason') ?? '').trim(),
    });
  };
  return (
    <details className="way-out correct-measurement">
      <summary>Correct a measurement</summary>
      {/* Filled anew when the sheet has changed, by whomever. */}
      <form className="check-form" onSubmit={correct} key={job.revision}>
        <p>
          Change what was measured or read wrongly; lengths that hang together, such as an area and its
          outline on the plan, together. Quantities, the design and the work of phases that have not begun
          follow. What a code forbids is refused.
        </p>
        <div className="measured-groups">
          {groups.map(({ title, fields }) => (
            <fieldset key={title}>
              <legend>{title}</legend>
              {fields.map((field) => (
                <MeasuredInput key={field.path} field={field} />
              ))}
            </fieldset>
          ))}
        </div>
        <label>
          Why it is corrected; kept with your name
          <input name="reason" required minLength={REASON} title={`At least ${REASON} characters`} />
        </label>
        {sends
          .filter(({ change }) => change === 'correctMeasurement')
          .map((one) => (
            <OutcomeLine key={one.key} send={one} />
          ))}
        {unchanged && <p role="alert">Nothing is other than it was: change a value first.</p>}
        <button type="submit" className="act act-strong act-large" disabled={busy}>
          Correct the measurement
        </button>
      </form>
    </details>
  );
}

/** A reason has so many characters at least. */
const REASON = 3;

function MeasuredInput({ field: { path, label, unit, value } }: { readonly field: MeasuredField }) {
  const number = typeof value === 'number';
  return (
    <label>
      {label}
      <span className="measured">
        <input
          name={path}
          inputMode={number ? 'decimal' : 'text'}
          autoComplete="off"
          {...(number && { pattern: '-?[0-9]+([.,][0-9]+)?', title: 'A number such as 54.5' })}
          required
          defaultValue={String(value)}
        />
        {unit}
      </span>
    </label>
  );
}

/** What was typed, as it stands on the sheet: a number with a decimal point or a comma, or words. */
function typedIn(form: FormData, { path, value }: MeasuredField): number | string {
  const text = String(form.get(path) ?? '').trim();
  return typeof value === 'number' ? Number(text.replace(',', '.')) : text;
}
