import { useId } from 'react';
import type { FormField } from './forms/field.js';

interface TypedFieldProps {
  readonly field: FormField;
  readonly value: string;
  readonly fault?: string | undefined;
  readonly onType: (name: string, value: string) => void;
  readonly type?: 'text' | 'time' | 'date' | 'tel';
}

/** One field with its unit, a mark while it holds what is usual, and its fault beneath it. */
export function TypedField({ field, value, fault, onType, type = 'text' }: TypedFieldProps) {
  const { name, label, unit, usual, optional, hint, text } = field;
  const id = useId();
  const isUsual = usual !== undefined && value === usual;
  const notes = [hint && `${id}-hint`, isUsual && `${id}-usual`, fault && `${id}-fault`].filter(Boolean);
  return (
    <div className={fault ? 'typed typed-fault' : 'typed'}>
      <label htmlFor={id}>
        {label}
        {optional && <span className="limit"> (may stay empty)</span>}
      </label>
      <span className="measured">
        <input
          id={id}
          name={name}
          type={type}
          className={text || type !== 'text' ? 'typed-text' : 'typed-number'}
          inputMode={text || type !== 'text' ? undefined : 'decimal'}
          autoComplete="off"
          value={value}
          aria-invalid={fault ? true : undefined}
          aria-describedby={notes.length > 0 ? notes.join(' ') : undefined}
          onChange={({ target }) => onType(name, target.value)}
        />
        {unit}
        {isUsual && (
          <span id={`${id}-usual`} className="usual">
            usual; check it
          </span>
        )}
      </span>
      {hint && (
        <span id={`${id}-hint`} className="limit">
          {hint}
        </span>
      )}
      {fault && (
        <span id={`${id}-fault`} className="fault">
          {fault}
        </span>
      )}
    </div>
  );
}
