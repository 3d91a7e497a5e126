import { phaseTitle } from '../words/phase-words.js';
import type { PendingPhase } from '../site/pending/pending-phases.js';
import { PhotoFigure } from './photo-figure.js';
import { PhotoForm } from './photo-form.js';

/** The photos of a phase on the site sheet, those of this phone that are unsent counted, and the way to take more. */
export function PhasePhotos({ phase, zone }: { readonly phase: PendingPhase; readonly zone: string }) {
  const { photos, photosUnsent, job } = phase;
  const title = phaseTitle(phase);
  return (
    <details className="hold-point">
      <summary>{countWords(photos.length, photosUnsent)}</summary>
      {photos.length > 0 && (
        <div className="photos">
          {photos.map((photo) => (
            <PhotoFigure key={photo.id} photo={photo} phase={title} zone={zone} />
          ))}
        </div>
      )}
      <PhotoForm phaseId={phase.id} title={`${job.number} ${title}`} />
    </details>
  );
}

function countWords(onRecord: number, unsent: number): string {
  const waiting = unsent > 0 ? `${unsent} not sent yet` : '';
  if (onRecord === 0) return waiting ? `Photos: ${waiting}` : 'Take a photo of this phase';
  return `Photos: ${[String(onRecord), waiting].filter(Boolean).join(', ')}`;
}
