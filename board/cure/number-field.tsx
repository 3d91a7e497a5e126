interface NumberFieldProps {
  readonly name: string;
  readonly label: string;
  readonly unit: string;
  readonly required?: boolean;
  readonly value?: string;
}

/** A number with its unit, typed with a decimal point or a comma. */
export function NumberField({ name, label, unit, required = false, value = '' }: NumberFieldProps) {
  return (
    <label>
      {label}
      <span className="measured">
        <input
          name={name}
          inputMode="decimal"
          autoComplete="off"
          pattern="-?[0-9]+([.,][0-9]+)?"
          title="A number such as 54.5"
          required={required}
          defaultValue={value}
        />
        {unit}
      </span>
    </label>
  );
}

/** What was typed into a number field; null when nothing was. */
export function numberIn(form: FormData, name: string): number | null {
  const text = String(form.get(name) ?? '').trim();
  return text === '' ? null : Number(text.replace(',', '.'));
}
