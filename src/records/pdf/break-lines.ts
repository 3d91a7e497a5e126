/**
 * Breaks a text into lines that are no wider than `width`. A word that is wider than a line is broken between its letters; a
 * letter that is wider than a line stands alone.
 *
 * @param measure width of a piece of text, in the unit of `width`.
 */
export function breakLines(text: string, width: number, measure: (piece: string) => number): string[] {
  const lines: string[] = [];
  let line = '';
  for (const word of text.split(' ').filter(Boolean)) {
    const longer = line === '' ? word : `${line} ${word}`;
    if (measure(longer) <= width) {
      line = longer;
      continue;
    }
    if (line !== '') lines.push(line);
    const pieces = measure(word) <= width ? [word] : breakWord(word, width, measure);
    lines.push(...pieces.slice(0, -1));
    line = pieces.at(-1) ?? '';
  }
  if (line !== '') lines.push(line);
  return lines;
}

function breakWord(word: string, width: number, measure: (piece: string) => number): string[] {
  const pieces: string[] = [];
  let piece = '';
  for (const letter of word) {
    if (piece !== '' && measure(piece + letter) > width) {
      pieces.push(piece);
      piece = '';
    }
    piece += letter;
  }
  return [...pieces, piece];
}
