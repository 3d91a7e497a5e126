import type { FormEvent } from 'react';
import { AlarmList } from '../cure/alarm-list.js';
import { NumberField, numberIn } from '../cure/number-field.js';
import { PlacementCure } from '../cure/placement-cure.js';
import { useSends } from '../sends/sends.js';
import { useSignedIn } from '../session/session.js';
import { TRUST_WORDS } from '../words/source-words.js';
import { isoWords } from '../time/moment-words.js';
import { pressedAt } from '../time/service-clock.js';
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
  // The course is drawn for what this hold point waits for: the newest placement.
  const gated = newest.slice(0, 1);
  const record = (event: FormEvent<HTMLFormElement>) => {
    event.preventDefault();
    const form = new FormData(event.currentTarget);
    const placement = placements.find(({ id }) => id === form.get('placement'));
    if (!placement) return;
    void send('recordTemperature', `Temperature in ${placement.phase.name}`, {
      placementId: placement.id,
      at: pressedAt(),
      concreteF: numberIn(form, 'concreteF') ?? Number.NaN,
      airF: numberIn(form, 'airF'),
    });
  };
  return (
    <>
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
                . Method: {strength.method} [{TRUST_WORDS[strength.mark]}]. Caution: {strength.caution}
              </p>
            ))}
            {newest.slice(1).map(({ id, alarms }) => (
              <AlarmList key={id} alarms={alarms} zone={company.zone} />
            ))}
            <NumberField name="concreteF" label="Temperature in the concrete or mortar" unit="°F" required />
            <NumberField name="airF" label="Air beside it (may be left out)" unit="°F" />
            <button type="submit" className="act act-strong act-large">
              Record the temperature
            </button>
          </>
        )}
        <button
          type="button"
          className="act act-large"
          onClick={() =>
            void send('decideHoldPoint', `Release ${holdPoint.title}`, {
              holdPointId: holdPoint.id,
              revision: holdPoint.revision,
              seen: holdPoint.state,
              decision: 'released',
              values: [],
            })
          }
        >
          Release
        </button>
      </form>
      {gated.map(({ id, phase }) => (
        <PlacementCure key={id} placementId={id} title={`Cure: ${phase.name}`} zone={company.zone} />
      ))}
    </>
  );
}
