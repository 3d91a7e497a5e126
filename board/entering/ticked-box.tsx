interface TickedBoxProps {
  readonly name: string;
  readonly label: string;
  readonly on: boolean;
  readonly onType: (name: string, value: string) => void;
}

/** A box to tick; ticked it holds `yes`. */
export function TickedBox({ name, label, on, onType }: TickedBoxProps) {
  return (
    <label className="ticked">
      <input
        type="checkbox"
        name={name}
        checked={on}
        onChange={({ target }) => onType(name, target.checked ? 'yes' : '')}
      />
      {label}
    </label>
  );
}
