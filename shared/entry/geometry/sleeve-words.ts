import type { SitePlan } from './site-plan.js';

/**
 * Where the leads come through, for whoever looks for them: how far along the wall of the house from its left end as one
 * faces it from outside.
 */
export function sleeveWords({ wall, penetration }: Pick<SitePlan, 'wall' | 'penetration'>): string {
  const [a, b] = wall;
  const left = a.x < b.x || (a.x === b.x && a.y <= b.y) ? a : b;
  const along = Math.round(Math.hypot(penetration.x - left.x, penetration.y - left.y));
  return `Through the wall of the house, ${feetAndInches(along)} along it from its left end as drawn, facing the house from outside.`;
}

function feetAndInches(whole: number): string {
  const feet = Math.floor(whole / 12);
  const inches = whole % 12;
  if (feet === 0) return `${inches} in`;
  return inches === 0 ? `${feet} ft` : `${feet} ft ${inches} in`;
}
