import type { HeatingSetFieldsFragment } from '../api/documents.js';
import { isoWords } from '../time/moment-words.js';
import { findingWords } from '../words/finding-words.js';
import { STAGE_WORDS } from '../words/state-words.js';
import { Sheet } from './sheet.js';

/** The label of a heating set and its readings, each against the limits that held. */
export function HeatingSetBlock({
  set,
  zone,
}: {
  readonly set: HeatingSetFieldsFragment;
  readonly zone: string;
}) {
  return (
    <>
      <Sheet
        title={`Readings of ${set.name}`}
        heads={['Stage', 'Area', 'When', 'Resistance', 'Insulation', 'At', 'Cable', 'Within limits']}
      >
        {set.readings.map((reading) => (
          <tr key={reading.id}>
            <th scope="row">{STAGE_WORDS[reading.stage]}</th>
            <td>{reading.area?.name ?? 'whole set'}</td>
            <td>{isoWords(reading.at, zone)}</td>
            <td>{reading.ohms} Ω</td>
            <td>{reading.megaohms} MΩ</td>
            <td>{reading.testVolts} V</td>
            <td>{reading.cableTempF} °F</td>
            <td>
              {reading.accepted ? 'yes. ' : 'no. '}
              {reading.findings
                .filter(({ ok }) => reading.accepted || !ok)
                .map(findingWords)
                .join(' ')}
              {reading.warnings.length > 0 && <b> Look at: {reading.warnings.join('. ')}.</b>}
            </td>
          </tr>
        ))}
        {set.readings.length === 0 && (
          <tr>
            <td colSpan={8}>No reading yet.</td>
          </tr>
        )}
      </Sheet>
      <p className="job-aside">
        {set.receivedAt ? 'Label' : 'Design, not delivered yet'}: {set.watts} W at {set.volts} V, {set.ohms} Ω
        at {set.labelTempF} °F, {set.heatedFeet} ft of heating cable, {set.coldLeadFeet} ft of cold lead; runs
        through {set.areas.map(({ name }) => name).join(', then ')}. The bed cures {set.cureDays} days before
        it is energised.
      </p>
    </>
  );
}
