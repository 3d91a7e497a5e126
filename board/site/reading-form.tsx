import type { FormEvent } from 'react';
import { useSends } from '../sends/sends.js';
import { pressedAt } from '../time/service-clock.js';
import type { SiteHoldPoint } from './hold-point-sheet.js';

interface ReadingFormProps {
  readonly holdPoint: SiteHoldPoint;
  readonly areaId: string | null;
}

const FIELDS = [
  { name: 'ohms', label: 'Resistance between the conductors', unit: 'Ω' },
  { name: 'megaohms', label: 'Insulation to the shield', unit: 'MΩ' },
  { name: 'testVolts', label: 'Voltage of the insulation test', unit: 'V' },
  { name: 'cableTempF', label: 'Temperature of the cable', unit: '°F' },
] as const;

/** A resistance and insulation test of the heating set; within its limits it releases the hold point by itself. */
export function ReadingForm({ holdPoint, areaId }: ReadingFormProps) {
  const { send } = useSends();
  const { heatingSet, readingStage: stage } = holdPoint;
  if (!heatingSet || !stage) return <p>No heating set is named for this reading. Ask the office.</p>;
  const record = (event: FormEvent<HTMLFormElement>) => {
    event.preventDefault();
    const form = new FormData(event.currentTarget);
    const value = (name: string) => Number(String(form.get(name)).replace(',', '.'));
    const ofArea = stage === 'laid' || stage === 'covered';
    void send('recordCableReading', `${holdPoint.title}: reading of ${heatingSet.name}`, {
      heatingSetId: heatingSet.id,
      stage,
      at: pressedAt(),
      ...(ofArea && areaId && { areaId }),
      ohms: value('ohms'),
      megaohms: value('megaohms'),
      testVolts: value('testVolts'),
      cableTempF: value('cableTempF'),
    });
  };
  return (
    <form className="check-form" onSubmit={record}>
      <p>{heatingSet.name}. Cold leads apart and de-energised; the cable itself is never cut.</p>
      {FIELDS.map(({ name, label, unit }) => (
        <label key={name}>
          {label}
          <span className="measured">
            <input
              name={name}
              inputMode="decimal"
              autoComplete="off"
              pattern="-?[0-9]+([.,][0-9]+)?"
              required
              title="A number such as 64.5"
            />
            {unit}
          </span>
        </label>
      ))}
      <button type="submit" className="act act-strong act-large">
        Record the reading
      </button>
    </form>
  );
}
