import type { Block } from '../block.js';
import type { RecordFacts } from '../../record-facts.js';
import { joined, when } from '../words.js';

/** The photos whose pictures are among the facts: all for the company, the released ones for the owner of the house. */
export function photos({ job, company: { zone }, pictures, audience }: RecordFacts): Block[] {
  const shown = job.photos.filter(({ id }) => pictures.some(({ photoId }) => photoId === id));
  const none = audience === 'owner' ? 'No photo was released to the owner.' : 'No photo was taken.';
  return [
    { kind: 'section', text: 'Photos' },
    ...(shown.length === 0 ? [{ kind: 'text', text: none } as const] : []),
    ...shown.map((photo): Block => ({
      kind: 'photo',
      photoId: photo.id,
      words: joined([photo.caption, photo.phase?.name, when(photo.takenAt, zone), photo.takenBy?.name]),
    })),
  ];
}
