import { between, distance, type Point } from '../entry/geometry/point.js';
import type { SitePlan, Surface } from '../entry/geometry/site-plan.js';
import { treads } from '../entry/geometry/treads.js';
import { walkLegs } from '../entry/geometry/walk-legs.js';
import type { CableLayout } from '../heating/layout/lay-cable.js';
import { cableTrace } from './cable-trace.js';
import { closed, dimension, stroke } from './dimension.js';
import { sayInches } from './say-inches.js';
import { drawMark, spacingMarks } from './spacing-marks.js';
import { drawing, element, label, wordHeight } from './svg.js';

/** Room around what is drawn, in heights of a word: dimensions and words stand in it. */
const MARGIN = 10.5;
/** Lines of words under the plan, and the least width that they take. */
const FOOT = 11;
const LEAST_WIDTH = 60;

/**
 * The dimensioned plan that a cable hand works from, seen from above with the house at the top: areas, setbacks, keep-outs,
 * cable, cold joint and sleeve, sensor, places to hold the tape. `scale` is inches of the real thing to one of paper.
 */
export function cablePlan(site: SitePlan, layout: CableLayout, scale: number): string {
  const shapes = outlines(site);
  const t = wordHeight(scale);
  const { left, bottom, sheet } = extent(site, t);
  const content = [
    wall(site, t),
    ...shapes.map((shape) => closed(shape, 'cut')),
    ...layout.chain.fields.flatMap(({ keepOuts }) =>
      keepOuts.map((out) =>
        out.kind === 'round'
          ? element('circle', { class: 'cut', cx: out.centre.x, cy: out.centre.y, r: out.radius })
          : closed(out.outline, 'cut'),
      ),
    ),
    cableTrace(layout.pieces),
    lead(layout),
    ends(layout, t),
    sensor(layout, t),
    ...spacingMarks(layout.pieces, layout.cable.greatestSpacing).map((mark) => drawMark(mark, t * 0.8)),
    ...site.surfaces.flatMap((surface) => dimensions(surface, site, t)),
    words(layout, scale, left, bottom + 4.4 * t),
  ].join('');
  return drawing({ ...sheet, title: 'Plan of the heating cable', scale }, content);
}

/** Width and height of the plan with its words, in inches of the real thing. */
export function cablePlanSize(site: SitePlan, scale: number): readonly [number, number] {
  const { width, height } = extent(site, wordHeight(scale)).sheet;
  return [width, height];
}

function extent(site: SitePlan, t: number) {
  const all = [...outlines(site).flat(), ...site.wall];
  const [left, right] = [Math.min(...all.map((p) => p.x)), Math.max(...all.map((p) => p.x))];
  const [top, bottom] = [Math.min(...all.map((p) => p.y)), Math.max(...all.map((p) => p.y))];
  const sheet = {
    x: left - MARGIN * t,
    y: top - MARGIN * t,
    width: Math.max(right - left + 2 * MARGIN * t, LEAST_WIDTH * t),
    height: bottom - top + (MARGIN + FOOT) * t,
  };
  return { left, bottom, sheet };
}

function outlines({ surfaces, penetration }: SitePlan): Point[][] {
  let source = penetration;
  return surfaces.flatMap((surface) => {
    const parts = partsOf(surface, source);
    const last = parts[parts.length - 1];
    if (last) source = between(last[0]!, last[2] ?? last[1]!, 0.5);
    return parts;
  });
}

function partsOf(surface: Surface, source: Point): Point[][] {
  if (surface.kind === 'landing') return [[...surface.outline]];
  return (surface.kind === 'flight' ? treads(surface, source) : walkLegs(surface)).map((part) => [...part]);
}

function wall({ wall: [a, b], penetration }: SitePlan, t: number): string {
  const strokes = Math.floor(distance(a, b) / (2 * t));
  const hatch = Array.from({ length: strokes }, (_, i) => {
    const p = between(a, b, (i + 0.5) / strokes);
    return stroke(p, { x: p.x + 1.5 * t, y: p.y - 1.5 * t });
  });
  return (
    stroke(a, b, 'cut') +
    hatch.join('') +
    label(penetration.x + 0.7 * t, penetration.y - 2.8 * t, 'sleeve for the cold lead', { 'font-size': t }) +
    dimension(a, penetration, -5 * t, t)
  );
}

/** The cold lead from the sleeve to the joint. */
const lead = ({ penetration, pieces }: CableLayout): string =>
  stroke({ x: penetration.x, y: penetration.y - 6 }, penetration, 'dash') +
  stroke(penetration, pieces[0]!.from, 'dash');

function ends({ pieces }: CableLayout, t: number): string {
  const [from, to] = [pieces[0]!.from, pieces[pieces.length - 1]!.to];
  return (
    element('rect', {
      x: from.x - 0.3 * t,
      y: from.y - 0.3 * t,
      width: 0.6 * t,
      height: 0.6 * t,
      fill: '#a3341f',
    }) +
    label(from.x + 0.5 * t, from.y - 0.3 * t, 'cold joint', { 'font-size': t * 0.75 }) +
    element('circle', { cx: to.x, cy: to.y, r: 0.3 * t, fill: '#a3341f' }) +
    label(to.x + 0.5 * t, to.y + t, 'end', { 'font-size': t * 0.75 })
  );
}

function sensor({ sensor: place }: CableLayout, t: number): string {
  if (!place) return '';
  const { x, y } = place.at;
  const ring = { fill: '#fff', stroke: '#1d1b16', 'stroke-width': 0.15 * t };
  return (
    element('circle', { cx: x, cy: y, r: 0.28 * t, ...ring }) +
    label(x + 0.5 * t, y + 0.28 * t, 'sensor', { 'font-size': t * 0.8 })
  );
}

function dimensions(surface: Surface, site: SitePlan, t: number): string[] {
  switch (surface.kind) {
    case 'landing': {
      const xs = surface.outline.map((p) => p.x);
      const ys = surface.outline.map((p) => p.y);
      const [x1, x2, y1, y2] = [Math.min(...xs), Math.max(...xs), Math.min(...ys), Math.max(...ys)];
      return [
        dimension({ x: x1, y: y2 }, { x: x1, y: y1 }, -3 * t, t),
        dimension({ x: x2, y: y1 }, { x: x1, y: y1 }, 7.5 * t, t),
      ];
    }
    case 'flight': {
      const all = treads(surface, site.penetration);
      const [first, last] = [all[0]!, all[all.length - 1]!];
      const text = all.length > 1 ? `${all.length} × ${sayInches(surface.tread)}` : sayInches(surface.tread);
      return [dimension(first[1]!, last[2]!, -2.5 * t, t, text)];
    }
    case 'walk':
      return [
        ...walkLegs(surface).map(([, b, c]) => dimension(b!, c!, 2.5 * t, t)),
        ...[surface.line[surface.line.length - 1]!].map(({ at, width }) =>
          label(at.x, at.y + 1.6 * t, `${sayInches(width)} wide`, {
            'font-size': t,
            'text-anchor': 'middle',
          }),
        ),
      ];
  }
}

function words(layout: CableLayout, scale: number, x: number, y: number): string {
  const { measure, cable } = layout;
  const t = wordHeight(scale);
  const sorted = measure.fields.map(({ wattsPerSquareFoot }) => wattsPerSquareFoot).sort((a, b) => a - b);
  const lines = [
    `Heating cable ${Math.round((measure.length / 12) * 10) / 10} ft, uncut; runs no closer than ${sayInches(measure.closest)} on centres; least bend ${sayInches(cable.leastBend)}.`,
    `Power ${Math.round(sorted[0]!)} to ${Math.round(sorted[sorted.length - 1]!)} W/ft². Scale 1 : ${scale}; the stroke below is one inch of paper, ${sayInches(scale)} on site.`,
    'Never cut or cross the heating cable; test it before anything covers it.',
    "The set's instructions and local code go first.",
  ];
  return (
    lines.map((text, i) => label(x, y + i * 1.4 * t, text, { 'font-size': t })).join('') +
    element('g', { class: 'rule' }, stroke({ x, y: y + 5.2 * t }, { x: x + scale, y: y + 5.2 * t }, 'cut'))
  );
}
