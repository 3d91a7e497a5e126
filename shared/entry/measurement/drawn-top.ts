import { squareFeet } from '../../units/length.js';
import { signedArea } from '../geometry/outline.js';
import type { SitePlan } from '../geometry/site-plan.js';
import { walkLegs } from '../geometry/walk-legs.js';
import type { MeasuredArea } from './area.js';

/** The area with the surface that its outline has: an L or a flare is not the rectangle around it. A flight stays as it is. */
export function withDrawnTop(area: MeasuredArea, plan: SitePlan | null): MeasuredArea {
  const surface = plan?.surfaces.find(({ key }) => key === area.key);
  if (!surface || surface.kind === 'flight') return area;
  const outlines = surface.kind === 'landing' ? [surface.outline] : walkLegs(surface);
  const squareInches = outlines.reduce((sum, outline) => sum + Math.abs(signedArea(outline)), 0);
  return { ...area, drawnTop: squareFeet(squareInches / 144) };
}
