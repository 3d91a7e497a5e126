import { between, distance, type Point } from '../entry/geometry/point.js';
import type { SitePlan, Surface } from '../entry/geometry/site-plan.js';
import { treads } from '../entry/geometry/treads.js';
import { walkLegs } from '../entry/geometry/walk-legs.js';
import type { CableLayout } from '../heating/layout/lay-cable.js';
import { cableTrace } from './cable-trace.js';
import { closed, dimension, stroke } from './dimension.js';
import { sayInches } from './say-inches.js';
import { drawMark, spacingMarks } from './spacing-marks.js';
import { drawing, element, label } from './svg.js';

/** Room around what is drawn, in inches of the real thing: dimensions and words stand in it. */
const MARGIN = 34;
const TEXT = 3.2;
/** Lines of words under the plan. */
const FOOT = 32;

/**
 * The dimensioned plan that a cable hand works from, seen from above with the house at the top: areas, setbacks, keep-outs,
 * cable, cold joint and sleeve, sensor, places to hold the tape. `scale` is inches of the real thing to one of paper.
 */
export function cablePlan(site: SitePlan, layout: CableLayout, scale: number): string {
  const shapes = outlines(site);
  const all = [...shapes.flat(), ...site.wall];
  const [left, right] = [Math.min(...all.map((p) => p.x)), Math.max(...all.map((p) => p.x))];
  const [top, bottom] = [Math.min(...all.map((p) => p.y)), Math.max(...all.map((p) => p.y))];
  const content = [
    wall(site),
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
    ends(layout),
    sensor(layout),
    ...spacingMarks(layout.pieces, layout.cable.greatestSpacing).map((mark) => drawMark(mark, TEXT * 0.8)),
    ...site.surfaces.flatMap((surface) => dimensions(surface, site)),
    words(layout, scale, left, bottom + 14),
  ].join('');
  const sheet = {
    title: 'Plan of the heating cable',
    x: left - MARGIN,
    y: top - MARGIN,
    width: Math.max(right - left + 2 * MARGIN, 150),
    height: bottom - top + MARGIN + FOOT,
    scale,
  };
  return drawing(sheet, content);
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

function wall({ wall: [a, b], penetration }: SitePlan): string {
  const strokes = Math.floor(distance(a, b) / 6);
  const hatch = Array.from({ length: strokes }, (_, i) => {
    const p = between(a, b, (i + 0.5) / strokes);
    return stroke(p, { x: p.x + 5, y: p.y - 5 });
  });
  return (
    stroke(a, b, 'cut') +
    hatch.join('') +
    label(penetration.x + 2, penetration.y - 9, 'sleeve for the cold lead', { 'font-size': TEXT }) +
    dimension(a, penetration, -16, TEXT)
  );
}

/** The cold lead from the sleeve to the joint. */
const lead = ({ penetration, pieces }: CableLayout): string =>
  stroke({ x: penetration.x, y: penetration.y - 6 }, penetration, 'dash') +
  stroke(penetration, pieces[0]!.from, 'dash');

function ends({ pieces }: CableLayout): string {
  const [from, to] = [pieces[0]!.from, pieces[pieces.length - 1]!.to];
  return (
    element('rect', { x: from.x - 1, y: from.y - 1, width: 2, height: 2, fill: '#a3341f' }) +
    label(from.x + 1.6, from.y - 1, 'cold joint', { 'font-size': TEXT * 0.75 }) +
    element('circle', { cx: to.x, cy: to.y, r: 1, fill: '#a3341f' }) +
    label(to.x + 1.6, to.y + 3, 'end', { 'font-size': TEXT * 0.75 })
  );
}

function sensor({ sensor: place }: CableLayout): string {
  if (!place) return '';
  const { x, y } = place.at;
  return (
    element('circle', { cx: x, cy: y, r: 0.9, fill: '#fff', stroke: '#1d1b16', 'stroke-width': 0.5 }) +
    label(x + 1.5, y + 0.9, 'sensor', {
      'font-size': TEXT * 0.8,
      'paint-order': 'stroke',
      stroke: '#fff',
      'stroke-width': 1,
    })
  );
}

function dimensions(surface: Surface, site: SitePlan): string[] {
  switch (surface.kind) {
    case 'landing': {
      const xs = surface.outline.map((p) => p.x);
      const ys = surface.outline.map((p) => p.y);
      const [x1, x2, y1, y2] = [Math.min(...xs), Math.max(...xs), Math.min(...ys), Math.max(...ys)];
      return [
        dimension({ x: x1, y: y2 }, { x: x1, y: y1 }, -10, TEXT),
        dimension({ x: x2, y: y1 }, { x: x1, y: y1 }, 24, TEXT),
      ];
    }
    case 'flight':
      return treads(surface, site.penetration).map(([, b, c]) => dimension(b!, c!, -8, TEXT));
    case 'walk':
      return [
        ...walkLegs(surface).map(([, b, c]) => dimension(b!, c!, 8, TEXT)),
        ...[surface.line[surface.line.length - 1]!].map(({ at, width }) =>
          label(at.x, at.y + 5, `${sayInches(width)} wide`, { 'font-size': TEXT, 'text-anchor': 'middle' }),
        ),
      ];
  }
}

function words(layout: CableLayout, scale: number, x: number, y: number): string {
  const { measure, cable } = layout;
  const sorted = measure.fields.map(({ wattsPerSquareFoot }) => wattsPerSquareFoot).sort((a, b) => a - b);
  const lines = [
    `Heating cable ${Math.round((measure.length / 12) * 10) / 10} ft, uncut; runs no closer than ${sayInches(measure.closest)} on centres; least bend ${sayInches(cable.leastBend)}.`,
    `Power ${Math.round(sorted[0]!)} to ${Math.round(sorted[sorted.length - 1]!)} W/ft². Scale 1 : ${scale}; check with a rule: ${sayInches(scale)} are one inch here.`,
    "Never cut or cross the heating cable; test it before anything covers it; the set's instructions and local code go first.",
  ];
  return (
    lines.map((text, i) => label(x, y + i * 4.4, text, { 'font-size': TEXT })).join('') +
    stroke({ x, y: y + 12 }, { x: x + scale, y: y + 12 }, 'cut')
  );
}
