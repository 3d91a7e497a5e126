import { distanceToLine } from '../geometry/point.js';
import type { SitePlan, Surface } from '../geometry/site-plan.js';
import type { Fault } from '../read/fault.js';
import { repeated } from '../read/key.js';
import type { MeasuredArea } from './area.js';
import { checkFlightSurface } from './check-flight-surface.js';
import { checkLandingSurface } from './check-landing-surface.js';
import { checkWalkSurface } from './check-walk-surface.js';

/** How far the sleeve may be drawn off the wall before the tape is to be read again, in. */
const WALL_SLACK = 0.5;

/** Faults of a plan as a whole, and of each surface against its area: what no single value has. */
export function checkSitePlan(plan: SitePlan, areas: readonly MeasuredArea[]): Fault[] {
  return [
    ...checkSleeve(plan),
    ...checkDrawn(plan, areas),
    ...plan.surfaces.flatMap((surface, i) =>
      checkSurface(surface, areas).map(({ path, message }) => ({ path: `surfaces[${i}].${path}`, message })),
    ),
  ];
}

function checkSleeve({ wall, penetration }: SitePlan): Fault[] {
  const off = distanceToLine(penetration, ...wall);
  if (off <= WALL_SLACK) return [];
  const message = `lies ${Math.round(off * 100) / 100} in off the wall; measure both again from one corner`;
  return [{ path: 'penetrationInches', message }];
}

function checkDrawn({ surfaces }: SitePlan, areas: readonly MeasuredArea[]): Fault[] {
  const drawn = surfaces.map(({ key }) => key);
  const missing = areas.filter(({ key }) => !drawn.includes(key));
  return [
    ...repeated(drawn).map((key) => ({
      path: 'surfaces',
      message: `area "${key}" is drawn twice; draw each once`,
    })),
    ...missing.map(({ key }) => ({
      path: 'surfaces',
      message: `area "${key}" is not drawn; draw it, or leave the whole plan out`,
    })),
  ];
}

function checkSurface(surface: Surface, areas: readonly MeasuredArea[]): Fault[] {
  const area = areas.find(({ key }) => key === surface.key);
  if (surface.kind === 'landing' && area?.kind === 'landing') return checkLandingSurface(surface, area);
  if (surface.kind === 'flight' && area?.kind === 'flight') return checkFlightSurface(surface, area);
  if (surface.kind === 'walk' && area?.kind === 'walk') return checkWalkSurface(surface, area);
  return [];
}
