import { createRequire } from 'node:module';
import PDFDocument from 'pdfkit';
import type { RecordDocument } from '../document/block.js';
import { breakLines } from './break-lines.js';
import { printable } from './printable.js';

const require = createRequire(import.meta.url);
const REGULAR = require.resolve('dejavu-fonts-ttf/ttf/DejaVuSansCondensed.ttf');
const BOLD = require.resolve('dejavu-fonts-ttf/ttf/DejaVuSansCondensed-Bold.ttf');

/** Letter in points, and the part of it that text stands in. */
export const PAGE = { width: 612, height: 792, left: 54, top: 54, bottom: 738, inner: 504 } as const;
export const INK = '#1d1b16';
export const PENCIL = '#cfc8b4';
export const RED = '#a3341f';

/** How letters look. */
export interface Style {
  readonly size: number;
  readonly bold?: boolean;
  readonly colour?: string;
}

/** Height of a line to the size of its letters. */
export const LINE = 1.28;

/** Pages in the making: where the next thing stands, and letters that always fit the font. */
export class Paper {
  readonly doc: PDFKit.PDFDocument;
  y: number = PAGE.top;
  private readonly widths = new Map<string, number>();

  /** @param asOf the moment that stands as the making of the document: one of the record, never the present. */
  constructor({ title, subject }: RecordDocument, asOf: Date) {
    this.doc = new PDFDocument({
      size: 'LETTER',
      margin: 0,
      bufferPages: true,
      pdfVersion: '1.7',
      lang: 'en-US',
      displayTitle: true,
      info: {
        Title: title,
        Author: subject,
        Creator: 'Flagway',
        Producer: 'Flagway',
        CreationDate: asOf,
        ModDate: asOf,
      },
    });
    this.doc.registerFont('regular', REGULAR);
    this.doc.registerFont('bold', BOLD);
  }

  newPage(): void {
    this.doc.addPage();
    this.y = PAGE.top;
  }

  /** Goes to a new page where less than `height` is left of this one. */
  need(height: number): void {
    if (this.y + height > PAGE.bottom) this.newPage();
  }

  /** A text in lines that are no wider than `width`. */
  lines(text: string, width: number, style: Style): string[] {
    return breakLines(this.shown(text, style), width - 0.5, (piece) => this.width(piece, style));
  }

  /** Writes one line with the top of its letters at `y`. */
  write(line: string, x: number, y: number, style: Style): void {
    if (line === '') return;
    this.use(style);
    this.doc.fillColor(style.colour ?? INK).text(line, x, y, { lineBreak: false });
  }

  /** Writes a text at the present place, over pages where it must. */
  paragraph(text: string, style: Style, x: number = PAGE.left, width: number = PAGE.inner): void {
    for (const line of this.lines(text, width, style)) {
      this.need(style.size * LINE);
      this.write(line, x, this.y, style);
      this.y += style.size * LINE;
    }
  }

  /** A straight line. */
  rule(y: number, width = 0.5, colour: string = INK): void {
    this.doc
      .moveTo(PAGE.left, y)
      .lineTo(PAGE.left + PAGE.inner, y)
      .lineWidth(width)
      .strokeColor(colour)
      .stroke();
  }

  width(piece: string, style: Style): number {
    const key = `${style.bold ? 'b' : 'r'}${style.size} ${piece}`;
    const known = this.widths.get(key);
    if (known !== undefined) return known;
    this.use(style);
    const width = this.doc.widthOfString(piece);
    if (this.widths.size < 50_000) this.widths.set(key, width);
    return width;
  }

  /** A text with what the font has not written out. */
  shown(text: string, style: Style): string {
    this.use(style);
    const font = (this.doc as unknown as { _font: { font: { hasGlyphForCodePoint(code: number): boolean } } })
      ._font;
    return printable(text, (code) => font.font.hasGlyphForCodePoint(code));
  }

  private use({ size, bold }: Style): void {
    this.doc.font(bold ? 'bold' : 'regular').fontSize(size);
  }
}
