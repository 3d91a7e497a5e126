import { element } from './svg.js';

/** Hatches of the cut materials, sized for sections in inches of the real thing. */
const PATTERNS = {
  masonry: { width: 5, height: 5, d: 'M-1 6 6-1M-1 1 1-1M4 6 6 4M-2.5 6 4.5-1' },
  mortar: { width: 1.2, height: 1.2, d: 'M.3 .3h.05M.9 .7h.05M.4 1h.05' },
  stone: { width: 6, height: 3, d: 'M.5 2.5 2.5.5M3.5 2.5 5.5.5' },
  concrete: {
    width: 6,
    height: 6,
    d: 'M1 2 2.5 1.5 1.8 3ZM4 4.5 5.2 4 4.8 5.2M3 1h.05M5 2h.05M1 5h.05M2.6 4.4h.05',
  },
  earth: { width: 8, height: 8, d: 'M.5 3.5 3.5.5M.5 5.5 5.5.5M4.5 4.5 7.5 7.5M4.5 6.5 5.5 7.5' },
} as const;

/** A material that a section cuts. */
export type CutMaterial = keyof typeof PATTERNS;

/** The patterns, to stand once in a drawing. */
export const hatchPatterns = (): string =>
  element(
    'defs',
    {},
    Object.entries(PATTERNS)
      .map(([name, { width, height, d }]) =>
        element(
          'pattern',
          { id: `cut-${name}`, width, height, patternUnits: 'userSpaceOnUse' },
          element('path', {
            d,
            fill: 'none',
            stroke: '#1d1b16',
            'stroke-width': 0.18,
            'stroke-linecap': 'round',
          }),
        ),
      )
      .join(''),
  );

/** A cut rectangle of a material, its corner at `x`, `y`; it hides what was drawn there before. */
export const cutBlock = (
  material: CutMaterial,
  x: number,
  y: number,
  width: number,
  height: number,
): string =>
  element('rect', { x, y, width, height, fill: '#fff' }) +
  element('rect', {
    x,
    y,
    width,
    height,
    fill: `url(#cut-${material})`,
    stroke: '#1d1b16',
    'stroke-width': 0.3,
  });
