/** What a drawing needs to know of the font that its words are set in: the width of a text one unit high. */
export type WidthOf = (text: string) => number;

const TEXT = /<text\b([^>]*)>([^<]*)<\/text>/g;
const HALO = /paint-order:stroke;stroke:#fff;stroke-width:[\d.]+/g;

/**
 * A drawing as the writer of the document can draw it. Drawings keep their words clear of lines by a white rim around each
 * letter, which that writer would lay over the letters: here a white ground lies under each text instead.
 */
export function paperSvg(svg: string, widthOf: WidthOf): string {
  return svg
    .replaceAll(HALO, '')
    .replaceAll(TEXT, (text, attributes: string, words: string) => ground(attributes, words, widthOf) + text);
}

function ground(attributes: string, words: string, widthOf: WidthOf): string {
  const said = new Map(
    [...attributes.matchAll(/([\w-]+)="([^"]*)"/g)].map(([, name, value]) => [name, value]),
  );
  const number = (name: string): number => Number(said.get(name) ?? 0);
  const size = number('font-size');
  const width = size * widthOf(unescaped(words));
  const anchor = said.get('text-anchor');
  const back = anchor === 'middle' ? width / 2 : anchor === 'end' ? width : 0;
  const at = [number('x') - back, number('y') + number('dy') - 0.8 * size, width, size];
  const [x, y, w, h] = at.map((value) => value.toFixed(3));
  const turned = said.has('transform') ? ` transform="${said.get('transform')}"` : '';
  return `<rect x="${x}" y="${y}" width="${w}" height="${h}" fill="#fff"${turned}/>`;
}

const unescaped = (text: string): string =>
  text.replaceAll('&lt;', '<').replaceAll('&gt;', '>').replaceAll('&quot;', '"').replaceAll('&amp;', '&');
