import type { Table } from '../document/block.js';
import { LINE, PAGE, type Paper, PENCIL, type Style } from './paper.js';

const CELL: Style = { size: 8 };
const HEAD: Style = { size: 8, bold: true };
const ROW = CELL.size * LINE;
const PAD = 3;
const GAP = 6;
/** A row that has to be broken keeps at least so many lines together. */
const KEPT = 5;

/** Draws a table over as many pages as it needs, with its heads on each. */
export function drawTable(paper: Paper, { heads, shares, rows, none }: Table): void {
  const columns = columnsOf(shares);
  const head = () => {
    const cells = columns.map(({ width }, i) => paper.lines(heads[i] ?? '', width, HEAD));
    const height = Math.max(...cells.map((lines) => lines.length)) * ROW + 2 * PAD;
    paper.need(height + KEPT * ROW);
    paper.rule(paper.y, 1.2);
    writeCells(paper, columns, cells, PAD, () => HEAD);
    paper.y += height;
    paper.rule(paper.y, 0.8);
  };
  head();
  if (rows.length === 0) {
    paper.y += PAD;
    paper.paragraph(none, CELL);
  }
  for (const row of rows) {
    const cells = columns.map(({ width }, i) => paper.lines(row[i] ?? '', width, i === 0 ? HEAD : CELL));
    const count = Math.max(1, ...cells.map((lines) => lines.length));
    if (paper.y + Math.min(count, KEPT) * ROW + 2 * PAD > PAGE.bottom) nextPage(paper, head);
    paper.y += PAD;
    // Cell after cell as far as the page reaches, so that who copies or hears a row gets it in its order.
    for (let from = 0; from < count;) {
      if (paper.y + ROW > PAGE.bottom) nextPage(paper, head);
      const fit = Math.min(count - from, Math.floor((PAGE.bottom - paper.y) / ROW));
      const part = cells.map((lines) => lines.slice(from, from + fit));
      writeCells(paper, columns, part, 0, (i) => (i === 0 ? HEAD : CELL));
      paper.y += fit * ROW;
      from += fit;
    }
    paper.y += PAD;
    paper.rule(paper.y, 0.4, PENCIL);
  }
  paper.y += 10;
}

/** Writes the lines of each cell below each other, cell after cell. */
function writeCells(
  paper: Paper,
  columns: readonly Column[],
  cells: readonly (readonly string[])[],
  below: number,
  style: (column: number) => Style,
): void {
  columns.forEach(({ x }, i) =>
    cells[i]?.forEach((line, n) => paper.write(line, x, paper.y + below + n * ROW, style(i))),
  );
}

interface Column {
  readonly x: number;
  readonly width: number;
}

function nextPage(paper: Paper, head: () => void): void {
  paper.newPage();
  head();
}

function columnsOf(shares: readonly number[]): Column[] {
  const all = shares.reduce((sum, share) => sum + share, 0);
  let x: number = PAGE.left;
  return shares.map((share) => {
    const whole = (share / all) * PAGE.inner;
    const column = { x, width: whole - GAP };
    x += whole;
    return column;
  });
}
