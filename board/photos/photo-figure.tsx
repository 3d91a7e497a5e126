import type { ReactNode } from 'react';
import type { PhotoFieldsFragment } from '../api/documents.js';
import { isoWords } from '../time/moment-words.js';
import { photoWords } from './photo-words.js';
import './photos.css';

interface PhotoFigureProps {
  readonly photo: PhotoFieldsFragment;
  readonly phase: string;
  readonly zone: string;
  readonly children?: ReactNode;
}

/** A photo small, with what it shows, who took it and when; pressed, it is shown large. */
export function PhotoFigure({ photo, phase, zone, children }: PhotoFigureProps) {
  const { path, smallPath, width, height, caption, takenAt, takenBy } = photo;
  return (
    <figure className="photo">
      <a href={path} target="_blank" rel="noreferrer">
        <img
          src={smallPath}
          width={width}
          height={height}
          loading="lazy"
          alt={photoWords(photo, phase, zone)}
        />
      </a>
      <figcaption>
        {caption && <b>{caption} </b>}
        {isoWords(takenAt, zone)}
        {takenBy && `, ${takenBy.name}`}
      </figcaption>
      {children}
    </figure>
  );
}
