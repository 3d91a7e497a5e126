import { dimension, stroke } from './dimension.js';
import { cutBlock, hatchPatterns } from './hatch-patterns.js';
import { sayInches } from './say-inches.js';
import { drawing, element, label, wordHeight } from './svg.js';

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

/** Room around what is drawn and under it, in heights of a word. */
const MARGIN = 11;
const FOOT = 9;
/** How much of the walk is shown, in. */
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
  const t = wordHeight(scale);
  const under = facts.footing.bottom + 2.5 * t;
  const content = [
    hatchPatterns(),
    cutBlock('earth', -10, 0, foot + WALK_SHOWN + 10, under),
    footings(facts, foot),
    walk(facts, foot),
    ...steps.map((step) => layers(step, facts)),
    wall(height, t),
    ...riserMarks(steps, facts, t),
    dimension({ x: foot + WALK_SHOWN, y: 0 }, { x: foot + WALK_SHOWN, y: facts.footing.bottom }, -2.5 * t, t),
    dimension({ x: 0, y: -height }, { x: facts.landing, y: -height }, -2.5 * t, t),
    frost(facts, foot, t),
    legend(facts, steps[0]!, t),
    ...[
      `Section through landing and steps. Scale 1 : ${scale}; finished heights from the walk.`,
      `The stroke below is one inch of paper, ${sayInches(scale)} on site.`,
      'Local code and the authority having jurisdiction decide on risers, footing and frost.',
    ].map((text, i) => label(0, under + (2 + 1.4 * i) * t, text, { 'font-size': t })),
    element(
      'g',
      { class: 'rule' },
      stroke({ x: 0, y: under + 5.8 * t }, { x: scale, y: under + 5.8 * t }, 'cut'),
    ),
  ].join('');
  const [w, h] = entrySectionSize(facts, scale);
  const sheet = { x: -MARGIN * t, y: -height - MARGIN * t, width: w, height: h, scale };
  return drawing({ ...sheet, title: 'Section through landing and steps' }, content);
}

/** Width and height of the section with its words at a scale, in inches of the real thing. */
export function entrySectionSize(facts: SectionFacts, scale: number): readonly [number, number] {
  const t = wordHeight(scale);
  const steps = stepsOf(facts);
  const [first, last] = [steps[0]!, steps[steps.length - 1]!];
  return [last.to + WALK_SHOWN + 2 * MARGIN * t, first.top + facts.footing.bottom + (MARGIN + FOOT) * t];
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

const wall = (height: number, t: number): string =>
  cutBlock('masonry', -8, -height - 7 * t, 8, height + 7 * t);

function riserMarks(steps: readonly Step[], facts: SectionFacts, t: number): string[] {
  const below = [...steps.slice(1).map(({ top }) => top), 0];
  return steps.map(({ to, top }, i) => {
    const x = to + facts.nosing;
    return dimension({ x, y: -below[i]! }, { x, y: -top }, 1.5 * t, t * 0.85);
  });
}

const frost = ({ frostDepth }: SectionFacts, foot: number, t: number): string =>
  element('line', { class: 'dash', x1: -10, y1: frostDepth, x2: foot + WALK_SHOWN, y2: frostDepth }) +
  label(foot / 2, frostDepth - 0.4 * t, `frost ${sayInches(frostDepth)}`, {
    'font-size': t,
    'text-anchor': 'middle',
  });

/** The layers of the landing, named over its front with their thicknesses. */
function legend({ bed, stone, landing, cableSpacing }: SectionFacts, { top }: Step, t: number): string {
  const lines = [
    `stone ${sayInches(stone)}`,
    `bed ${sayInches(bed)} over mesh${cableSpacing === null ? '' : ' and cable'}`,
    `block to ${sayInches(top - bed - stone)}`,
  ];
  const heights = [top - stone / 2, top - stone - bed / 2, top - stone - bed - 0.7 * t];
  return lines
    .map((text, i) => {
      const y = -top - (6.5 - i * 1.4) * t;
      const from = { x: landing + 4.8 * t, y: y - 0.35 * t };
      return (
        stroke(from, { x: landing - (3 - i) * 0.8 * t, y: -heights[i]! }) +
        label(landing + 5 * t, y, text, { 'font-size': t })
      );
    })
    .join('');
}
