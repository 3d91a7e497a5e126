import { ticked, type Values } from '../forms/field.js';
import { TickedBox } from '../ticked-box.js';
import { TypedField } from '../typed-field.js';

const PRIORITY_WORDS: Readonly<Record<number, string>> = { 1: ', first', 5: ', as most', 9: ', last' };

interface DateFieldsProps {
  readonly values: Values;
  /** What is wrong with the promised end. */
  readonly fault: string | undefined;
  readonly onType: (name: string, value: string) => void;
}

/** How soon the job is served, its promised end, and whether it is built in the cold. */
export function DateFields({ values, fault, onType }: DateFieldsProps) {
  return (
    <fieldset className="measure-group">
      <legend>Dates</legend>
      <div className="field-row">
        <div className="typed">
          <label htmlFor="job-priority">Served</label>
          <select
            id="job-priority"
            value={values['priority']}
            onChange={({ target }) => onType('priority', target.value)}
          >
            {[1, 2, 3, 4, 5, 6, 7, 8, 9].map((priority) => (
              <option key={priority} value={priority}>
                {priority}
                {PRIORITY_WORDS[priority] ?? ''}
              </option>
            ))}
          </select>
        </div>
        <TypedField
          field={{
            name: 'due',
            label: 'Promised end',
            optional: true,
            hint: 'Kept when work ends by 17:00 that day.',
          }}
          type="date"
          value={values['due'] ?? ''}
          fault={fault}
          onType={onType}
        />
      </div>
      <TickedBox
        name="cold"
        label="Plan blankets, tents and heaters against the cold"
        on={ticked(values, 'cold')}
        onType={onType}
      />
    </fieldset>
  );
}
