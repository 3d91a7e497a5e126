import type { Block, RecordDocument } from '../document/block.js';
import type { RecordPicture } from '../record-facts.js';
import { drawFigure } from './draw-figure.js';
import { drawPhotos } from './draw-photos.js';
import { drawTable } from './draw-table.js';
import { LINE, PAGE, Paper, RED, type Style } from './paper.js';

const SECTION: Style = { size: 15, bold: true };
const HEADING: Style = { size: 10.5, bold: true };
const TEXT: Style = { size: 9 };
const NAME: Style = { size: 9, bold: true };
const SMALL: Style = { size: 8 };
const EDGE: Style = { size: 7.5 };
/** Width of the names beside their values. */
const NAMES = 130;

/**
 * Draws a document as a PDF on Letter. Equal input gives equal bytes: nothing of it is of the present, and nothing is left to
 * chance.
 */
export async function drawDocument(
  record: RecordDocument,
  pictures: readonly RecordPicture[],
  asOf: Date,
): Promise<Buffer> {
  const paper = new Paper(record, asOf);
  const { doc } = paper;
  const chunks: Buffer[] = [];
  const done = new Promise<Buffer>((resolve, reject) => {
    doc.on('data', (chunk: Buffer) => chunks.push(chunk));
    doc.on('end', () => resolve(Buffer.concat(chunks)));
    doc.on('error', reject);
  });
  const { blocks } = record;
  blocks.forEach((block, i) => {
    if (block.kind !== 'photo') return drawBlock(paper, block, i === 0);
    if (blocks[i - 1]?.kind === 'photo') return undefined;
    const end = blocks.findIndex((one, n) => n > i && one.kind !== 'photo');
    const row = blocks.slice(i, end === -1 ? undefined : end).filter((one) => one.kind === 'photo');
    return drawPhotos(paper, row, pictures);
  });
  drawEdges(paper, record);
  doc.end();
  return done;
}

function drawBlock(paper: Paper, block: Exclude<Block, { kind: 'photo' }>, first: boolean): void {
  switch (block.kind) {
    case 'section':
      paper.y += first ? 0 : 14;
      paper.need(110);
      paper.doc.outline.addItem(paper.shown(block.text, SECTION));
      paper.paragraph(block.text, SECTION);
      paper.rule(paper.y + 1, 1.6);
      paper.y += 9;
      return;
    case 'heading':
      paper.y += 4;
      paper.need(70);
      paper.paragraph(block.text, HEADING);
      paper.y += 3;
      return;
    case 'text':
      return drawText(paper, block.text, block.tone);
    case 'pairs':
      return drawPairs(paper, block.rows);
    case 'table':
      return drawTable(paper, block);
    case 'figure':
      return drawFigure(paper, block);
  }
}

/** A caution has a red stroke beside it, on every page that it goes over. */
function drawText(paper: Paper, text: string, tone: 'caution' | 'small' | undefined): void {
  const style = tone === 'small' ? SMALL : TEXT;
  if (tone !== 'caution') {
    paper.paragraph(text, style);
    paper.y += 6;
    return;
  }
  const height = TEXT.size * LINE;
  for (const line of paper.lines(`Caution: ${text}`, PAGE.inner - 12, TEXT)) {
    paper.need(height);
    paper.doc.rect(PAGE.left, paper.y - 1, 3, height).fill(RED);
    paper.write(line, PAGE.left + 12, paper.y, TEXT);
    paper.y += height;
  }
  paper.y += 6;
}

function drawPairs(paper: Paper, rows: readonly (readonly [string, string])[]): void {
  const height = TEXT.size * LINE;
  for (const [name, value] of rows) {
    const names = paper.lines(name, NAMES - 8, NAME);
    const values = paper.lines(value, PAGE.inner - NAMES, TEXT);
    for (let n = 0; n < Math.max(names.length, values.length); n += 1) {
      paper.need(height);
      paper.write(names[n] ?? '', PAGE.left, paper.y, NAME);
      paper.write(values[n] ?? '', PAGE.left + NAMES, paper.y, TEXT);
      paper.y += height;
    }
    paper.y += 2;
  }
  paper.y += 6;
}

/** Head and foot of every page, once it is known how many there are. */
function drawEdges(paper: Paper, { head, subject }: RecordDocument): void {
  const { start, count } = paper.doc.bufferedPageRange();
  for (let page = start; page < start + count; page += 1) {
    paper.doc.switchToPage(page);
    const number = `page ${page + 1} of ${count}`;
    const right = PAGE.left + PAGE.inner - paper.width(number, EDGE);
    const [left = ''] = paper.lines(`${head}. ${subject}`, PAGE.inner - 70, EDGE);
    paper.write(left, PAGE.left, 764, EDGE);
    paper.write(number, right, 764, EDGE);
  }
}
