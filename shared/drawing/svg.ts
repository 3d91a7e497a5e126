/** Attributes of an SVG element; numbers are rounded to a thousandth. */
export type Attributes = Readonly<Record<string, string | number>>;

/** A number as drawings write it: a thousandth of a unit is less than any printer shows. */
export const num = (value: number): string => String(Math.round(value * 1000) / 1000 + 0);

const escaped = (text: string): string =>
  text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;').replaceAll('"', '&quot;');

/** An element with its content. */
export function element(name: string, attributes: Attributes, content = ''): string {
  const written = Object.entries(attributes)
    .map(([key, value]) => ` ${key}="${typeof value === 'number' ? num(value) : escaped(value)}"`)
    .join('');
  return content === '' ? `<${name}${written}/>` : `<${name}${written}>${content}</${name}>`;
}

/** A text, whatever it holds. */
export const label = (x: number, y: number, text: string, attributes: Attributes = {}): string =>
  element('text', { x, y, ...attributes }, escaped(text));

/** A part of the real thing, and how it is put on paper. */
export interface Sheet {
  readonly title: string;
  /** What is drawn, in inches of the real thing. */
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
  /** Inches of the real thing to an inch of paper. */
  readonly scale: number;
}

/** Height of words on paper, in: about 7 points. */
const WORDS = 0.1;

/** Height of words in inches of the real thing, so that they print alike at every scale. */
export const wordHeight = (scale: number): number => scale * WORDS;

/** Lines print alike at every scale too: cut edges about 1.8 points, the cable 1.4, dimensions 0.7. */
function style(scale: number): string {
  const [cut, thin, cable, dash] = [0.025, 0.01, 0.02, 0.1].map((inches) => num(inches * scale));
  const ink = (width: string | undefined) => `fill:none;stroke:#1d1b16;stroke-width:${width}`;
  return (
    `text{font-family:"Liberation Sans",Arial,sans-serif;fill:#1d1b16;paint-order:stroke;stroke:#fff;stroke-width:${num(scale * 0.03)}}` +
    `.cut{${ink(cut)}}.thin{${ink(thin)}}.dash{${ink(thin)};stroke-dasharray:${dash} ${num(scale * 0.06)}}` +
    `.cable{fill:none;stroke:#a3341f;stroke-width:${cable}}`
  );
}

/** A drawing that prints to scale: its width and height are inches of paper, its inner units inches of the real thing. */
export function drawing(sheet: Sheet, content: string): string {
  const { x, y, width, height, scale, title } = sheet;
  return element(
    'svg',
    {
      xmlns: 'http://www.w3.org/2000/svg',
      width: `${num(width / scale)}in`,
      height: `${num(height / scale)}in`,
      viewBox: [x, y, width, height].map(num).join(' '),
      role: 'img',
    },
    `${element('title', {}, escaped(title))}${element('style', {}, style(scale))}${element('rect', { x, y, width, height, fill: '#fff' })}${content}`,
  );
}
