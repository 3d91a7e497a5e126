import type { LinkPhotoFieldsFragment } from '../api/documents.js';
import { momentWords } from '../time/moment-words.js';
import '../photos/photos.css';

interface LinkPhotosProps {
  readonly photos: readonly LinkPhotoFieldsFragment[];
  readonly zone: string;
}

/** The photos of a page that a link opens, newest first; pressed, one is shown large. Nothing where there are none. */
export function LinkPhotos({ photos, zone }: LinkPhotosProps) {
  if (photos.length === 0) return null;
  return (
    <section aria-label="Photos">
      <h2>Photos</h2>
      <div className="photos">
        {photos.map(({ id, caption, takenAt, path, smallPath, width, height }) => {
          const when = momentWords(Date.parse(takenAt), zone);
          return (
            <figure key={id} className="photo">
              <a href={path} target="_blank" rel="noreferrer">
                <img
                  src={smallPath}
                  width={width}
                  height={height}
                  loading="lazy"
                  alt={`${caption ?? 'Photo from the site'}, ${when}`}
                />
              </a>
              <figcaption>
                {caption && <b>{caption} </b>}
                {when}
              </figcaption>
            </figure>
          );
        })}
      </div>
    </section>
  );
}
