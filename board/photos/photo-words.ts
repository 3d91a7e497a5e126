import type { PhotoFieldsFragment } from '../api/documents.js';
import { momentWords } from '../time/moment-words.js';

/** What a photo shows, for those who do not see it: its caption or its phase, and when it was taken. */
export function photoWords(
  { caption, takenAt }: Pick<PhotoFieldsFragment, 'caption' | 'takenAt'>,
  phase: string,
  zone: string,
): string {
  const when = momentWords(Date.parse(takenAt), zone);
  return caption ? `${caption} (${phase}, ${when})` : `${phase}, ${when}`;
}
