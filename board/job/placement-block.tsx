import { PlacementCure } from '../cure/placement-cure.js';
import { TRUST_WORDS } from '../words/source-words.js';
import { isoWords } from '../time/moment-words.js';
import type { JobRecords } from './job-types.js';
import { Sheet } from './sheet.js';

/** A logger reads hundreds of times; the newest are listed, the drawing has them all. */
const MOST_READINGS = 24;

interface PlacementBlockProps {
  readonly placement: JobRecords['placements'][number];
  readonly zone: string;
}

/** A placement with its temperatures and its strength; measured and predicted are told apart. */
export function PlacementBlock({ placement, zone }: PlacementBlockProps) {
  const { strength, readings } = placement;
  return (
    <>
      <Sheet
        title={`Cure: ${placement.phase.name}`}
        heads={['Read', `In the ${placement.material}`, 'Air', 'By']}
      >
        {readings.slice(-MOST_READINGS).map((reading) => (
          <tr key={reading.id}>
            <th scope="row">{isoWords(reading.at, zone)}</th>
            <td>{reading.concreteF} °F</td>
            <td>{reading.airF === null ? '' : `${reading.airF} °F`}</td>
            <td>{reading.logger ? reading.logger.name : 'hand'}</td>
          </tr>
        ))}
        {readings.length === 0 && (
          <tr>
            <td colSpan={4}>No temperature read yet.</td>
          </tr>
        )}
      </Sheet>
      <p className="job-aside">
        Placed {isoWords(placement.placedAt, zone)} at {placement.placedTempF} °F.{' '}
        {strength.basis === 'measured'
          ? 'From measured temperatures'
          : 'Predicted, from assumed temperatures'}
        : {Math.round(strength.psi)} of {strength.requiredPsi} psi; reached{' '}
        {isoWords(strength.releaseAt, zone, 'out of sight')}. Method: {strength.method} [
        {TRUST_WORDS[strength.mark]}]. <span className="job-caution">Caution: {strength.caution}</span>
      </p>
      <PlacementCure placementId={placement.id} title={`Cure: ${placement.phase.name}`} zone={zone} />
    </>
  );
}
