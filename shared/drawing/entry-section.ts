import { dimension, stroke } from './dimension.js';
import { cutBlock, hatchPatterns } from './hatch-patterns.js';
import { sayInches } from './say-inches.js';
import { drawing, element, label } from './svg.js';

/** What a section through landing and steps shows; all in inches. */
export interface SectionFacts {
  /** Out from the wall, over the stone. */
  readonly landing: number;
  readonly riserCount: number;
  /** Finished, from the walk up: every riser with its own height. */
  readonly risers: readonly number[];
  readonly tread: number;
  readonly nosing: number;
  readonly bed: number;
  readonly stone: number;
  readonly walkBase: number;
  readonly footing: { readonly width: number; readonly thickness: number; readonly bottom: number };
  readonly frostDepth: number;
  /** Mean spacing of the cable across the section; null when it is not heated. */
  readonly cableSpacing: number | null;
}

const TEXT = 2.6;
const MARGIN = 30;
const WALK_SHOWN = 30;

/** One level of the entry: a tread, or the landing. */
interface Step {
  readonly from: number;
  readonly to: number;
  /** Finished top above the finished walk. */
  readonly top: number;
}

/** Landing first, then the treads downwards. */
function stepsOf({ landing, risers, tread }: SectionFacts): Step[] {
  const tops = risers.map((_, i) => risers.slice(0, i + 1).reduce((sum, rise) => sum + rise, 0)).reverse();
  return tops.map((top, i) => ({
    from: i === 0 ? 0 : landing + (i - 1) * tread,
    to: landing + i * tread,
    top,
  }));
}

/**
 * The cut through landing and steps, out from the wall, with every layer and the heights of the finished risers. Heights
 * count from the finished walk; on paper up is up. Throws when the risers are not as many as said.
 */
export function entrySection(facts: SectionFacts, scale: number): string {
  if (facts.risers.length !== facts.riserCount)
    throw new RangeError(`${facts.riserCount} risers need as many heights, got ${facts.risers.length}`);
  const steps = stepsOf(facts);
  const foot = steps[steps.length - 1]!.to;
  const height = steps[0]!.top;
  const content = [
    hatchPatterns(),
    cutBlock('earth', -10, 0, foot + WALK_SHOWN + 10, facts.footing.bottom + 6),
    footings(facts, foot),
    walk(facts, foot),
    ...steps.map((step) => layers(step, facts)),
    wall(height),
    ...riserMarks(steps, facts),
    dimension({ x: foot + WALK_SHOWN, y: 0 }, { x: foot + WALK_SHOWN, y: facts.footing.bottom }, -6, TEXT),
    dimension({ x: 0, y: -height }, { x: facts.landing, y: -height }, -8, TEXT),
    frost(facts, foot),
    legend(facts, steps[0]!),
    label(
      0,
      facts.footing.bottom + 14,
      `Section through landing and steps. Scale 1 : ${scale}; finished heights from the walk.`,
      {
        'font-size': TEXT,
      },
    ),
    label(
      0,
      facts.footing.bottom + 18,
      'Local code and the authority having jurisdiction decide on risers, footing and frost.',
      {
        'font-size': TEXT,
      },
    ),
    stroke({ x: 0, y: facts.footing.bottom + 21 }, { x: scale, y: facts.footing.bottom + 21 }, 'cut'),
  ].join('');
  return drawing(
    {
      title: 'Section through landing and steps',
      x: -MARGIN,
      y: -height - MARGIN,
      width: foot + WALK_SHOWN + 2 * MARGIN,
      height: height + facts.footing.bottom + MARGIN + 26,
      scale,
    },
    content,
  );
}

/** Block, bed with mesh and cable, and stone of one step; the stone stands out by the nosing. */
function layers({ from, to, top }: Step, { bed, stone, nosing, cableSpacing }: SectionFacts): string {
  const width = to - from;
  const block = top - bed - stone;
  const mesh = -block - 0.15;
  const parts = [
    cutBlock('masonry', from, -block, width, block),
    cutBlock('mortar', from, -block - bed, width, bed),
    cutBlock('stone', from, -top, width + nosing, stone),
    element('line', { class: 'dash', x1: from, y1: mesh, x2: to, y2: mesh }),
  ];
  if (cableSpacing !== null) {
    const count = Math.max(1, Math.floor((width - 6) / cableSpacing) + 1);
    for (let i = 0; i < count; i++) {
      parts.push(
        element('circle', { cx: from + 3 + i * cableSpacing, cy: mesh - 0.25, r: 0.22, fill: '#a3341f' }),
      );
    }
  }
  return parts.join('');
}

function footings({ footing }: SectionFacts, foot: number): string {
  const y = footing.bottom - footing.thickness;
  const under = (x: number) =>
    cutBlock('concrete', x, y, footing.width, footing.thickness) +
    cutBlock('masonry', x + footing.width / 2 - 4, 0, 8, y);
  return under(0) + under(foot - footing.width);
}

const walk = ({ bed, stone, walkBase }: SectionFacts, foot: number): string =>
  cutBlock('concrete', foot, bed + stone, WALK_SHOWN, walkBase) +
  cutBlock('mortar', foot, stone, WALK_SHOWN, bed) +
  cutBlock('stone', foot, 0, WALK_SHOWN, stone);

const wall = (height: number): string => cutBlock('masonry', -8, -height - 18, 8, height + 18);

function riserMarks(steps: readonly Step[], facts: SectionFacts): string[] {
  const below = [...steps.slice(1).map(({ top }) => top), 0];
  return steps.map(({ to, top }, i) => {
    const x = to + facts.nosing;
    return dimension({ x, y: -below[i]! }, { x, y: -top }, 4, TEXT * 0.85);
  });
}

const frost = ({ frostDepth }: SectionFacts, foot: number): string =>
  element('line', { class: 'dash', x1: -10, y1: frostDepth, x2: foot + WALK_SHOWN, y2: frostDepth }) +
  label(foot / 2, frostDepth - 1, `frost ${sayInches(frostDepth)}`, {
    'font-size': TEXT,
    'text-anchor': 'middle',
  });

/** The layers of the landing, named at its front with their thicknesses. */
function legend({ bed, stone, landing, cableSpacing }: SectionFacts, { top }: Step): string {
  const lines = [
    `stone ${sayInches(stone)}`,
    `bed ${sayInches(bed)} over mesh${cableSpacing === null ? '' : ' and cable'}`,
    `block to ${sayInches(top - bed - stone)}`,
  ];
  const heights = [top - stone / 2, top - stone - bed / 2, top - stone - bed - 2];
  return lines
    .map((text, i) => {
      const y = -top - 22 + i * 3.4;
      return (
        stroke({ x: landing / 2 - 2, y: y - 0.8 }, { x: landing / 2 - 12 + i * 4, y: -heights[i]! }) +
        label(landing / 2 - 1, y, text, { 'font-size': TEXT })
      );
    })
    .join('');
}
