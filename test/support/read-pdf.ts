import { getDocument, OPS } from 'pdfjs-dist/legacy/build/pdf.mjs';

/*
 * Reads a PDF with a library that has nothing to do with the one that writes it.
 *
 *   const { pages } = await readPdf(bytes);
 *   pages[0].text; pages[0].boxes;
 */

/** A box in points of the page, its corner below and left. */
export interface Box {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** A page as it is read. */
export interface PdfPage {
  /** Width and height in points, 72 to the inch. */
  readonly size: readonly [number, number];
  /** Its words in the order they stand in the file, a space between the pieces. */
  readonly text: string;
  /** The box of each path that is drawn. */
  readonly boxes: readonly Box[];
  /** How many pictures stand on it. */
  readonly pictures: number;
}

export async function readPdf(
  bytes: Buffer,
): Promise<{ readonly pages: PdfPage[]; readonly title: unknown }> {
  const task = getDocument({ data: new Uint8Array(bytes), useSystemFonts: false, verbosity: 0 });
  const file = await task.promise;
  const pages: PdfPage[] = [];
  for (let number = 1; number <= file.numPages; number += 1) {
    const page = await file.getPage(number);
    const { items } = await page.getTextContent();
    const words = items.flatMap((item) => ('str' in item && item.str !== '' ? item.str : []));
    const list = await page.getOperatorList();
    const [, , width = 0, height = 0] = page.view;
    pages.push({ size: [width, height], text: words.join(' ').replaceAll(/\s+/g, ' '), ...drawn(list) });
  }
  const { info } = await file.getMetadata();
  await task.destroy();
  return { pages, title: (info as { Title?: unknown }).Title };
}

type Matrix = readonly [number, number, number, number, number, number];

/** Follows the transforms of a page to the boxes of its paths. */
function drawn({ fnArray, argsArray }: { fnArray: number[]; argsArray: unknown[] }) {
  let now: Matrix = [1, 0, 0, 1, 0, 0];
  const kept: Matrix[] = [];
  const boxes: Box[] = [];
  let pictures = 0;
  fnArray.forEach((operation, i) => {
    const args = argsArray[i];
    if (operation === OPS.save) kept.push(now);
    else if (operation === OPS.restore) now = kept.pop() ?? now;
    else if (operation === OPS.transform) now = times(now, args as Matrix);
    else if (operation === OPS.paintImageXObject) pictures += 1;
    else if (operation === OPS.constructPath) {
      const [, , limits] = args as [unknown, unknown, ArrayLike<number> | null];
      if (limits) boxes.push(boxOf(now, limits));
    }
  });
  return { boxes, pictures };
}

function boxOf(matrix: Matrix, limits: ArrayLike<number>): Box {
  const [x1 = 0, y1 = 0, x2 = 0, y2 = 0] = Array.from(limits);
  const corners = [at(matrix, x1, y1), at(matrix, x2, y1), at(matrix, x1, y2), at(matrix, x2, y2)];
  const [xs, ys] = [corners.map(([x]) => x), corners.map(([, y]) => y)];
  const [x, y] = [Math.min(...xs), Math.min(...ys)];
  return { x, y, width: Math.max(...xs) - x, height: Math.max(...ys) - y };
}

const at = ([a, b, c, d, e, f]: Matrix, x: number, y: number): readonly [number, number] => [
  a * x + c * y + e,
  b * x + d * y + f,
];

const times = ([a, b, c, d, e, f]: Matrix, [a2, b2, c2, d2, e2, f2]: Matrix): Matrix => [
  a * a2 + c * b2,
  b * a2 + d * b2,
  a * c2 + c * d2,
  b * c2 + d * d2,
  a * e2 + c * f2 + e,
  b * e2 + d * f2 + f,
];
