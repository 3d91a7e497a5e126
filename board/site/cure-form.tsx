import type { FormEvent } from 'react';
import { useSends } from '../sends/sends.js';
import { useSignedIn } from '../session/session.js';
import { isoWords } from '../time/moment-words.js';
import type { SitePhase } from './day-sections.js';
import type { SiteHoldPoint } from './hold-point-sheet.js';

type SitePlacement = SitePhase['job']['placements'][number];

interface CureFormProps {
  readonly holdPoint: SiteHoldPoint;
  readonly placements: readonly SitePlacement[];
}

/** Temperatures of a placement, and the release that rests on them; a prediction never releases a cure. */
export function CureForm({ holdPoint, placements }: CureFormProps) {
  const { send } = useSends();
  const { company } = useSignedIn();
  const newest = [...placements].sort((a, b) => Date.parse(b.placedAt) - Date.parse(a.placedAt));
  const record = (event: FormEvent<HTMLFormElement>) => {
    event.preventDefault();
    const form = new FormData(event.currentTarget);
    const placement = placements.find(({ id }) => id === form.get('placement'));
    const air = String(form.get('airF')).trim();
    if (!placement) return;
    void send('recordTemperature', `Temperature in ${placement.phase.name}`, {
      placementId: placement.id,
      concreteF: degrees(form.get('concreteF')),
      airF: air ? degrees(air) : null,
    });
  };
  return (
    <form className="check-form" onSubmit={record}>
      <p>Released by temperatures measured in the placement, when they show the strength.</p>
      {newest.length === 0 && <p>No placement is on record for this job yet.</p>}
      {newest.length > 0 && (
        <>
          <label>
            Placement
            <select name="placement">
              {newest.map(({ id, placedAt, phase }) => (
                <option key={id} value={id}>
                  {phase.name}, {isoWords(placedAt, company.zone)}
                </option>
              ))}
            </select>
          </label>
          {newest.map(({ id, phase, strength }) => (
            <p key={id} className="limit">
              {phase.name}: {Math.floor(strength.psi)} of {strength.requiredPsi} psi,{' '}
              {strength.basis === 'measured'
                ? 'from measured temperatures'
                : 'predicted, which releases nothing'}
              . {strength.caution}
            </p>
          ))}
          <Degrees name="concreteF" label="Temperature in the concrete or mortar" required />
          <Degrees name="airF" label="Air beside it (may be left out)" />
          <button type="submit" className="act act-strong act-large">
            Record the temperature
          </button>
        </>
      )}
      <button
        type="button"
        className="act act-large"
        onClick={() =>
          void send('releaseHoldPoint', `Release ${holdPoint.title}`, {
            holdPointId: holdPoint.id,
            revision: holdPoint.revision,
            values: [],
          })
        }
      >
        Release
      </button>
    </form>
  );
}

const degrees = (text: unknown): number => Number(String(text).replace(',', '.'));

function Degrees({
  name,
  label,
  required = false,
}: {
  readonly name: string;
  readonly label: string;
  readonly required?: boolean;
}) {
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
        />
        °F
      </span>
    </label>
  );
}
