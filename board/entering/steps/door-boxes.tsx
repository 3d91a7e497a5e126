import { ticked, type Values } from '../forms/field.js';
import { TickedBox } from '../ticked-box.js';

const DOOR_BOXES = [
  ['doorSwings', 'The door swings out over the landing'],
  ['handrail', 'A handrail is planned'],
  ['guard', 'A guard is planned'],
] as const;

/** What is planned at the door, beside its heights. */
export function DoorBoxes({
  values,
  onType,
}: {
  readonly values: Values;
  readonly onType: (name: string, value: string) => void;
}) {
  return (
    <>
      {DOOR_BOXES.map(([name, label]) => (
        <TickedBox key={name} name={name} label={label} on={ticked(values, name)} onType={onType} />
      ))}
    </>
  );
}
