import type { Piece } from '../heating/layout/path.js';
import { element, num } from './svg.js';

/** The cable as seen from above, one line with its bends as arcs; a step down is seen end on. */
export function cableTrace(pieces: readonly Piece[]): string {
  const first = pieces[0];
  if (!first) return '';
  const d = pieces.map((piece) => {
    const end = `${num(piece.to.x)} ${num(piece.to.y)}`;
    if (piece.kind === 'straight' || piece.into.z !== 0 || piece.towards.z !== 0) return `L${end}`;
    const turn = piece.into.x * piece.towards.y - piece.into.y * piece.towards.x;
    return `A${num(piece.radius)} ${num(piece.radius)} 0 ${piece.angle > Math.PI ? 1 : 0} ${turn > 0 ? 1 : 0} ${end}`;
  });
  return element('path', { class: 'cable', d: `M${num(first.from.x)} ${num(first.from.y)}${d.join('')}` });
}
