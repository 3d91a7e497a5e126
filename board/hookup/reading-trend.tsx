import type { HeatingSetFieldsFragment } from '../api/documents.js';
import { trendSteps } from './trend-words.js';

/** The readings against the label, oldest first, so that a drift is seen at a glance. */
export function ReadingTrend({ set }: { readonly set: HeatingSetFieldsFragment }) {
  const steps = trendSteps(set.ohms, set.readings);
  return (
    <section aria-label="Trend of the readings">
      <h2>Readings against the label, {set.ohms} Ω</h2>
      {steps.length === 0 && <p>No reading yet.</p>}
      <ol className="trend">
        {steps.map(({ id, stage, ohms, megaohms, accepted }) => (
          <li key={id} className={accepted ? undefined : 'trend-out'}>
            <span className="caption">{stage}</span>
            <b>{ohms}</b>
            <span>{megaohms}</span>
            <span>{accepted ? 'within limits' : 'NOT within limits'}</span>
          </li>
        ))}
      </ol>
      {steps.length > 0 && (
        <p className="trend-note">
          As measured; limits follow the temperature of the cable and stand with each reading below.
        </p>
      )}
    </section>
  );
}
