import type { FormEvent } from 'react';
import { CreateCrewDocument, type EnteringQuery } from '../../api/documents.js';
import { FormFaults } from '../form-faults.js';
import { checkTyped } from '../forms/check-typed.js';
import { ticked, type Values } from '../forms/field.js';
import { placeFaults } from '../forms/place-faults.js';
import { typedNumber } from '../forms/typed-number.js';
import { TRADE_WORDS, USUAL_CREWS } from '../forms/usual.js';
import { weekInput, workWeek } from '../forms/week-input.js';
import { Step } from '../step.js';
import { TickedBox } from '../ticked-box.js';
import { TypedField } from '../typed-field.js';
import { useEnter } from '../use-enter.js';
import { useForm } from '../use-form.js';
import { WeekFields } from '../week-fields.js';
import { WorkingNote } from '../../working/working-note.js';

const FIELDS = [
  { name: 'crewName', label: 'Name of the crew', text: true },
  { name: 'size', label: 'Number of people', whole: true },
];
const TRADES = USUAL_CREWS.map(({ trade }) => trade);
const NEW_CREW: Values = { crewName: '', size: '2', ...workWeek('07:30', '16:00') };
const PATHS = { name: 'crewName', trades: 'trades', size: 'size', week: 'from' };
const LABELS = {
  crewName: 'Name of the crew',
  trades: 'The list of trades',
  size: 'The crew',
  from: 'Weekly hours',
};

interface CrewsStepProps {
  readonly crews: EnteringQuery['crews'];
  readonly missing: readonly string[];
  readonly zone: string;
}

/** Who works: crews with trades and hours, the usual ones by a press. */
export function CrewsStep({ crews, missing, zone }: CrewsStepProps) {
  const { enter, since } = useEnter(CreateCrewDocument);
  const { values, faults, form, type, refuse, clear } = useForm(NEW_CREW);
  const refuseFaults = (found: Parameters<typeof placeFaults>[0]) =>
    refuse(placeFaults(found, PATHS, LABELS));

  const addUsual = async (trades: readonly string[]) => {
    for (const { trade, name, size, from, to } of USUAL_CREWS.filter((crew) => trades.includes(crew.trade))) {
      const week = weekInput(workWeek(from, to));
      const answer = await enter({ name: freeName(name, crews), trades: [trade], size, zone, week });
      if (!answer.ok) return refuseFaults(answer.faults);
    }
  };
  const add = async (event: FormEvent) => {
    event.preventDefault();
    const at = checkTyped(FIELDS, values);
    if (Object.keys(at).length > 0) return refuse({ at, rest: [] });
    const answer = await enter({
      name: values['crewName'] ?? '',
      trades: TRADES.filter((trade) => ticked(values, trade)),
      size: typedNumber(values['size'] ?? '') ?? 0,
      zone,
      week: weekInput(values),
    });
    if (answer.ok) clear();
    else refuseFaults(answer.faults);
  };

  return (
    <Step
      step="crews"
      number={1}
      title="Crews"
      done={missing.length === 0}
      more="Enter another crew"
      standing={
        crews.length > 0 && (
          <p>
            {crews.map(({ name, trades, size }) => `${name} (${trades.join(', ')}; ${size})`).join(', ')}.
          </p>
        )
      }
    >
      {missing.length > 0 && (
        <>
          <p>
            Work waits until a crew of its trade is there. Missing: <b>{missing.join(', ')}</b>. Press for the
            usual crews, Monday to Friday, or enter your own below.
          </p>
          <p className="presses">
            <button
              type="button"
              className="act act-strong"
              disabled={since !== null}
              onClick={() => void addUsual(missing)}
            >
              Enter all that are missing
            </button>
            {USUAL_CREWS.filter(({ trade }) => missing.includes(trade)).map(
              ({ trade, name, size, from, to }) => (
                <button
                  key={trade}
                  type="button"
                  className="act"
                  disabled={since !== null}
                  onClick={() => void addUsual([trade])}
                >
                  {name}: {size}, {from} to {to}
                </button>
              ),
            )}
          </p>
        </>
      )}
      <form
        ref={form}
        noValidate
        className="own-form"
        aria-label="A crew of your own"
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
        <fieldset className="week">
          <legend>Trades of the crew</legend>
          {TRADES.map((trade) => (
            <TickedBox
              key={trade}
              name={trade}
              label={TRADE_WORDS[trade] ?? trade}
              on={ticked(values, trade)}
              onType={type}
            />
          ))}
          {faults.at['trades'] && <p className="fault">{faults.at['trades']}</p>}
        </fieldset>
        <WeekFields legend="Weekly hours" values={values} faults={faults.at} onType={type} />
        <FormFaults faults={faults} />
        <button type="submit" className="act act-strong" disabled={since !== null}>
          Enter this crew
        </button>
        <WorkingNote since={since}>Entering the crew and planning anew.</WorkingNote>
      </form>
    </Step>
  );
}

/** A name that no crew has yet. */
function freeName(name: string, crews: readonly { readonly name: string }[]): string {
  const taken = new Set(crews.map((crew) => crew.name));
  let free = name;
  for (let count = 2; taken.has(free); count += 1) free = `${name} ${count}`;
  return free;
}
