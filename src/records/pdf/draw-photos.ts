import type { Block } from '../document/block.js';
import type { RecordPicture } from '../record-facts.js';
import { LINE, PAGE, type Paper, type Style } from './paper.js';

type Photo = Extract<Block, { kind: 'photo' }>;

const WORDS: Style = { size: 8 };
const GAP = 12;
const WIDTH = (PAGE.inner - GAP) / 2;
const HEIGHT = WIDTH * 0.75;

/** Draws photos two in a row, each with its words. */
export function drawPhotos(paper: Paper, photos: readonly Photo[], pictures: readonly RecordPicture[]): void {
  for (let i = 0; i < photos.length; i += 2) {
    const row = photos.slice(i, i + 2).map(({ photoId, words }) => ({
      jpeg: pictures.find((picture) => picture.photoId === photoId)?.jpeg,
      lines: paper.lines(words, WIDTH, WORDS),
    }));
    const words = Math.max(...row.map(({ lines }) => lines.length)) * WORDS.size * LINE;
    paper.need(HEIGHT + words + GAP);
    row.forEach(({ jpeg, lines }, column) => {
      const x = PAGE.left + column * (WIDTH + GAP);
      if (jpeg) paper.doc.image(Buffer.from(jpeg), x, paper.y, { fit: [WIDTH, HEIGHT], valign: 'bottom' });
      lines.forEach((line, n) => paper.write(line, x, paper.y + HEIGHT + 4 + n * WORDS.size * LINE, WORDS));
    });
    paper.y += HEIGHT + words + GAP;
  }
}
