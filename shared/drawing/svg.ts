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

const STYLE =
  'text{font-family:"Liberation Sans",Arial,sans-serif;fill:#1d1b16}.line{fill:none;stroke:#1d1b16}.cut{fill:none;stroke:#1d1b16;stroke-width:.8}' +
  '.thin{fill:none;stroke:#1d1b16;stroke-width:.3}.dash{fill:none;stroke:#1d1b16;stroke-width:.3;stroke-dasharray:3 2}.cable{fill:none;stroke:#a3341f;stroke-width:.6}';

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
    `${element('title', {}, escaped(title))}${element('style', {}, STYLE)}${element('rect', { x, y, width, height, fill: '#fff' })}${content}`,
  );
}
