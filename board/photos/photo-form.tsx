import { type ChangeEvent, useId, useRef, useState } from 'react';
import { useSends } from '../sends/sends.js';
import { serviceNow } from '../time/service-clock.js';
import { shrinkPicture, UnreadablePicture } from './shrink-picture.js';
import { takenAt } from './taken-at.js';
import './photos.css';

interface PhotoFormProps {
  readonly phaseId: string;
  readonly holdPointId?: string;
  /** What the photo is of, for the list of what is sent. */
  readonly title: string;
}

/** Takes photos with the camera or from the phone; they are kept there until they are sent. */
export function PhotoForm({ phaseId, holdPointId, title }: PhotoFormProps) {
  const { send } = useSends();
  const caption = useRef<HTMLInputElement>(null);
  const [fault, setFault] = useState('');
  const hint = useId();
  const add = async (file: File): Promise<string> => {
    try {
      const picture = await shrinkPicture(file);
      const said = caption.current?.value.trim() || null;
      const at = takenAt(file.lastModified, Date.now(), serviceNow());
      const input = { phaseId, holdPointId: holdPointId ?? null, caption: said, takenAt: at };
      void send('addPhoto', `Photo of ${title}`, input, picture);
      return '';
    } catch (error) {
      if (!(error instanceof UnreadablePicture)) throw error;
      return error.message;
    }
  };
  const take = async ({ currentTarget: field }: ChangeEvent<HTMLInputElement>) => {
    const files = [...(field.files ?? [])];
    const faults: string[] = [];
    // One after the other: a phone has little room for pictures as large as its camera takes them.
    for (const file of files) faults.push(await add(file));
    setFault(faults.filter(Boolean).join(' '));
    field.value = '';
    if (caption.current) caption.current.value = '';
  };
  return (
    <div className="check-form">
      <label>
        What it shows (may be left out)
        <input ref={caption} maxLength={200} autoComplete="off" />
      </label>
      <div className="two-acts">
        <label className="act act-strong photo-pick">
          Take a photo
          <input
            type="file"
            accept="image/*"
            capture="environment"
            aria-describedby={hint}
            onChange={(event) => void take(event)}
          />
        </label>
        <label className="act photo-pick">
          Choose photos
          <input
            type="file"
            accept="image/*"
            multiple
            aria-describedby={hint}
            onChange={(event) => void take(event)}
          />
        </label>
      </div>
      <p id={hint} className="limit">
        Made smaller on the phone, without the place where it was taken.
      </p>
      <p role="alert" className="fault">
        {fault}
      </p>
    </div>
  );
}
