import { JobPhotosDocument, type JobPhotosQuery } from '../api/documents.js';
import { useQuery } from '../api/use-query.js';
import { useSends } from '../sends/sends.js';
import { useSignedIn } from '../session/session.js';
import { isoWords } from '../time/moment-words.js';
import { phaseTitle } from '../words/phase-words.js';
import { PhotoFigure } from './photo-figure.js';
import './photos.css';

type JobPhoto = NonNullable<JobPhotosQuery['jobByNumber']>['photos'][number];

/** The photos of a job in the order they were taken; the office says which of them the owner of the house sees. */
export function JobPhotos({ number, zone }: { readonly number: number; readonly zone: string }) {
  const { data, error } = useQuery(JobPhotosDocument, { number });
  const photos = data?.jobByNumber?.photos ?? [];
  if (error) return <p className="fault">{error.message}</p>;
  return (
    <section className="job-sheet" aria-label="Photos">
      <h2>Photos</h2>
      {data && photos.length === 0 && <p>No photo yet. They are taken on the site sheet.</p>}
      <div className="photos">
        {photos.map((photo) => (
          <PhotoOfJob key={photo.id} photo={photo} zone={zone} />
        ))}
      </div>
    </section>
  );
}

function PhotoOfJob({ photo, zone }: { readonly photo: JobPhoto; readonly zone: string }) {
  const { me } = useSignedIn();
  const { send, sends } = useSends();
  const { id: photoId, revision, releasedAt, phase } = photo;
  const title = phase ? phaseTitle(phase) : 'Photo';
  const busy = sends.some(({ state, input }) => state === 'sending' && input['photoId'] === photoId);
  const decide = () =>
    releasedAt
      ? send('takeBackPhoto', `Take back from the owner: ${title}`, { photoId, revision })
      : send('releasePhoto', `Release to the owner: ${title}`, { photoId, revision });
  return (
    <PhotoFigure photo={photo} phase={title} zone={zone}>
      <p>{title}</p>
      <p>
        {releasedAt ? `Released to the owner ${isoWords(releasedAt, zone)}` : 'Not released to the owner'}
      </p>
      {me.role === 'office' && (
        <button type="button" className="act" disabled={busy} onClick={() => void decide()}>
          {releasedAt ? 'Take back' : 'Release to the owner'}
        </button>
      )}
    </PhotoFigure>
  );
}
