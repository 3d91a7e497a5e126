import drawSvg from 'svg-to-pdfkit';
import type { Figure } from '../document/block.js';
import { PAGE, type Paper, type Style } from './paper.js';
import { paperSvg } from './paper-svg.js';

const POINTS = 72;
const TITLE: Style = { size: 8, bold: true };
const UNIT: Style = { size: 100 };

/** Draws a figure at its size on paper: a sheet alone on its page, anything else in the flow of the text. */
export function drawFigure(paper: Paper, figure: Figure): void {
  const [width, height] = [figure.width * POINTS, figure.height * POINTS];
  if (figure.sheet) {
    paper.newPage();
    // The sheet takes what printers can print on, half an inch from each edge; its title stands in the margin.
    paper.write(paper.shown(figure.title, TITLE), PAGE.left, 24, TITLE);
    put(paper, figure.svg, (PAGE.width - width) / 2, 36, width, height);
    paper.y = PAGE.bottom;
    return;
  }
  paper.need(height + 22);
  paper.write(paper.shown(figure.title, TITLE), PAGE.left, paper.y, TITLE);
  put(paper, figure.svg, PAGE.left, paper.y + 14, width, height);
  paper.y += height + 22;
}

function put(paper: Paper, svg: string, x: number, y: number, width: number, height: number): void {
  const ready = paperSvg(svg, (text) => paper.width(text, UNIT) / UNIT.size);
  drawSvg(paper.doc, ready, x, y, {
    width,
    height,
    fontCallback: () => 'regular',
    warningCallback: (warning) => {
      throw new Error(`A drawing of the record cannot be drawn: ${warning}`);
    },
  });
}
