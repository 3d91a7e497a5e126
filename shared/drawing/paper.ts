/** A sheet of paper, upright or laid on its side, and what a printer leaves white around it; all in inches. */
export interface Paper {
  readonly name: string;
  readonly width: number;
  readonly height: number;
  readonly margin: number;
}

/** Letter, upright. */
export const LETTER: Paper = { name: 'Letter', width: 8.5, height: 11, margin: 0.5 };

/** Scales that a drafting rule has, in inches of the real thing to one of paper: 1 in = 1 ft and so on. */
const RULE_SCALES = [8, 12, 16, 24, 32, 48, 64, 96, 128];

/** Width and height of a drawing at a scale, in inches of the real thing. */
type SizeAt = (scale: number) => readonly [width: number, height: number];

/** The largest scale of a drafting rule at which a drawing fits the paper upright. Throws where none does. */
export function scaleFor(size: SizeAt, { width: w, height: h, margin, name }: Paper): number {
  const scale = RULE_SCALES.find((one) => {
    const [width, height] = size(one);
    return width / one <= w - 2 * margin && height / one <= h - 2 * margin;
  });
  if (scale === undefined)
    throw new RangeError(`the drawing fits ${name} at no scale of a rule; take larger paper`);
  return scale;
}
