import { momentWords } from '../../time/moment-words.js';
import type { Preview } from '../preview.js';

/** What is tried, as it goes on after the name of the phase. */
export const triedWords = ({ tried }: Pick<Preview, 'tried'>, zone: string): string =>
  `${tried.way === 'fixed' ? 'fixed at' : 'no earlier than'} ${momentWords(tried.at, zone)}`;

/** A preview in a sentence or two: read out at every step. */
export function previewWords(preview: Preview, name: string, zone: string): string {
  const { lands, places, ends, broken, conflicts } = preview;
  const sentences = [
    `${name} ${triedWords(preview, zone)}`,
    lands ? `It would start ${momentWords(lands.from, zone)}` : 'It would have no place',
    places.size === 0
      ? 'Nothing moves'
      : [
          count(places.size, 'phase moves', 'phases move'),
          ends.length > 0 && count(ends.length, 'end changes', 'ends change'),
          broken.length > 0 && count(broken.length, 'promise moves', 'promises move'),
          conflicts.length > 0 && count(conflicts.length, 'conflict comes', 'conflicts come'),
        ]
          .filter(Boolean)
          .join(', '),
  ];
  return `${sentences.join('. ')}.`;
}

const count = (many: number, one: string, more: string): string => `${many} ${many === 1 ? one : more}`;
