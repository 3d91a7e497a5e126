import type { MeasuredArea } from '../measurement/area.js';
import type { AreaFilter } from '../template/template.js';

/** Whether an area passes a filter; a filter left out passes every area. */
export function areaFits(area: MeasuredArea, filter: AreaFilter | undefined): boolean {
  if (filter?.kinds && !filter.kinds.includes(area.kind)) return false;
  return filter?.heated === undefined || filter.heated === area.heated;
}

/** Whether any of the areas passes. */
export const anyFits = (areas: readonly MeasuredArea[], filter: AreaFilter | undefined): boolean =>
  areas.some((area) => areaFits(area, filter));
