import type { HeatingSetFieldsFragment } from '../api/documents.js';
import { isoWords } from '../time/moment-words.js';
import { findingWords } from '../words/finding-words.js';
import { trendSteps } from './trend-words.js';

interface ReadingTrendProps {
  readonly set: HeatingSetFieldsFragment;
  readonly zone: string;
}

/** The readings against the label, oldest first, so that a drift is seen at a glance; each with what the rules say. */
export function ReadingTrend({ set, zone }: ReadingTrendProps) {
  const steps = trendSteps(set.ohms, set.readings);
  return (
    <section aria-label="Readings">
      <h2>Readings against the label, {set.ohms} Ω</h2>
      <p>
        {set.receivedAt ? 'Label' : 'Design, not delivered yet'}: {set.watts} W at {set.volts} V, {set.ohms} Ω
        at {set.labelTempF} °F, {set.heatedFeet} ft of heating cable through{' '}
        {set.areas.map(({ name }) => name).join(', then ')}.
      </p>
      {steps.length === 0 && <p>No reading yet.</p>}
      <ol className="trend">
        {set.readings.map((reading, index) => (
          <li key={reading.id} className={reading.accepted ? undefined : 'trend-out'}>
            <p className="trend-head">
              <b>{steps[index]?.stage}</b>
              <span>{reading.area?.name ?? 'whole set'}</span>
              <span>{isoWords(reading.at, zone)}</span>
              <b>{reading.accepted ? 'within limits' : 'NOT within limits'}</b>
            </p>
            <p className="trend-values">
              <span>{steps[index]?.ohms}</span>
              <span>{steps[index]?.megaohms}</span>
              <span>at {reading.testVolts} V</span>
              <span>cable {reading.cableTempF} °F</span>
            </p>
            {reading.warnings.map((warning) => (
              <p key={warning}>
                <b>Look at this:</b> {warning}.
              </p>
            ))}
            <details>
              <summary>Limits and their sources</summary>
              <ul>
                {reading.findings.map((finding) => (
                  <li key={finding.text}>{findingWords(finding)}</li>
                ))}
              </ul>
            </details>
          </li>
        ))}
      </ol>
    </section>
  );
}
