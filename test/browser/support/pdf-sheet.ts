import { getDocument, OPS, Util } from 'pdfjs-dist/legacy/build/pdf.mjs';

/** A place on a sheet of a PDF, in points from its lower left corner: 72 to the inch (ISO 32000). */
export interface SheetPoint {
  readonly x: number;
  readonly y: number;
}

/** What is drawn on a sheet: straight strokes, and words with the middle of their baseline. */
export interface PdfSheet {
  readonly strokes: readonly { readonly a: SheetPoint; readonly b: SheetPoint }[];
  readonly texts: readonly {
    readonly words: string;
    readonly middle: SheetPoint;
    readonly along: SheetPoint;
  }[];
}

type Matrix = number[];

/** Reads the sheets of a PDF. */
export async function readPdf(data: Uint8Array): Promise<PdfSheet[]> {
  const pdf = await getDocument({ data: new Uint8Array(data), isEvalSupported: false, verbosity: 0 }).promise;
  const sheets: PdfSheet[] = [];
  for (let number = 1; number <= pdf.numPages; number++) {
    const page = await pdf.getPage(number);
    const [{ fnArray, argsArray }, { items }] = await Promise.all([
      page.getOperatorList(),
      page.getTextContent(),
    ]);
    sheets.push({
      strokes: strokesOf(fnArray, argsArray as unknown[]),
      texts: items.flatMap((item) => {
        if (!('str' in item) || item.str.trim() === '') return [];
        const [a = 1, b = 0, , , x = 0, y = 0] = item.transform as number[];
        const long = Math.hypot(a, b);
        const along = { x: a / long, y: b / long };
        const half = item.width / 2;
        return [{ words: item.str, along, middle: { x: x + along.x * half, y: y + along.y * half } }];
      }),
    });
  }
  await pdf.destroy();
  return sheets;
}

/** A stroke that a text is written along and close above the middle of; the nearest where more than one lies so. */
export function dimensionLine(
  strokes: PdfSheet['strokes'],
  middle: SheetPoint,
  along: SheetPoint,
): PdfSheet['strokes'][number] | null {
  const long = ({ a, b }: PdfSheet['strokes'][number]) => Math.hypot(b.x - a.x, b.y - a.y);
  const away = ({ a, b }: PdfSheet['strokes'][number]) =>
    Math.hypot((a.x + b.x) / 2 - middle.x, (a.y + b.y) / 2 - middle.y);
  const found = strokes.filter((stroke) => {
    const { a, b } = stroke;
    const turned = ((b.x - a.x) * along.y - (b.y - a.y) * along.x) / long(stroke);
    return Math.abs(turned) < 0.01 && away(stroke) < CLOSE;
  });
  return found.sort((one, other) => away(one) - away(other))[0] ?? null;
}

/** A dimension's words stand no farther than this from the middle of its line, in points. */
const CLOSE = 6;

/** The straight parts of every path, wherever transformations take them. */
function strokesOf(operators: readonly number[], given: readonly unknown[]): PdfSheet['strokes'] {
  const strokes: { a: SheetPoint; b: SheetPoint }[] = [];
  const kept: Matrix[] = [];
  let now: Matrix = [1, 0, 0, 1, 0, 0];
  operators.forEach((operator, i) => {
    const args = given[i];
    if (operator === OPS.save) kept.push(now);
    else if (operator === OPS.restore || operator === OPS.paintFormXObjectEnd) now = kept.pop() ?? now;
    else if (operator === OPS.transform) now = Util.transform(now, args);
    else if (operator === OPS.paintFormXObjectBegin) {
      kept.push(now);
      const [matrix] = args as [Matrix | null];
      if (matrix) now = Util.transform(now, matrix);
    } else if (operator === OPS.constructPath)
      strokes.push(...partsOf((args as [unknown, [ArrayLike<number> | null]])[1], now));
  });
  return strokes;
}

/** Steps of a path as the library writes them, each with the numbers it takes. */
const LINE = 1;
const TAKES: readonly number[] = [2, 2, 6, 0];

function partsOf([steps]: [ArrayLike<number> | null], matrix: Matrix): { a: SheetPoint; b: SheetPoint }[] {
  const path = Array.from(steps ?? []);
  const parts: { a: SheetPoint; b: SheetPoint }[] = [];
  let from: SheetPoint = { x: 0, y: 0 };
  for (let next = 0; next < path.length;) {
    const step = path[next] ?? -1;
    const takes = TAKES[step];
    if (takes === undefined) throw new Error(`Step ${step} of a path is not known`);
    const own = path.slice(next + 1, next + 1 + takes);
    next += 1 + takes;
    if (takes < 2) continue;
    const to = moved(own.slice(-2), matrix);
    if (step === LINE) parts.push({ a: from, b: to });
    from = to;
  }
  return parts;
}

const moved = (
  [x = 0, y = 0]: readonly number[],
  [a = 1, b = 0, c = 0, d = 1, e = 0, f = 0]: Matrix,
): SheetPoint => ({
  x: a * x + c * y + e,
  y: b * x + d * y + f,
});
