import type { FieldFaults, Values } from './forms/field.js';
import { WEEKDAYS } from './forms/week-input.js';
import { TickedBox } from './ticked-box.js';
import { TypedField } from './typed-field.js';

interface WeekFieldsProps {
  readonly values: Values;
  readonly faults: FieldFaults;
  readonly legend: string;
  readonly onType: (name: string, value: string) => void;
}

/** The days of a week and the hours of each. */
export function WeekFields({ values, faults, legend, onType }: WeekFieldsProps) {
  return (
    <fieldset className="week">
      <legend>{legend}</legend>
      <div className="week-days">
        {WEEKDAYS.map(([day, name]) => (
          <TickedBox key={day} name={day} label={name} on={values[day] === 'yes'} onType={onType} />
        ))}
      </div>
      <div className="field-row">
        <TypedField
          field={{ name: 'from', label: 'From' }}
          type="time"
          value={values['from'] ?? ''}
          fault={faults['from']}
          onType={onType}
        />
        <TypedField
          field={{ name: 'to', label: 'To' }}
          type="time"
          value={values['to'] ?? ''}
          fault={faults['to']}
          onType={onType}
        />
      </div>
    </fieldset>
  );
}
