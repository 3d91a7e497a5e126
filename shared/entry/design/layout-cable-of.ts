import type { LayoutCable } from '../../heating/layout/cable.js';
import type { MeasuredSet } from '../measurement/measurement.js';
import { LEAST_SPACING, MOST_SPACING } from '../rules/cable-spacing.js';

/** What the layout asks of a measured set. Where its label names no bend, a half turn at the least spacing is taken. */
export const layoutCableOf = (set: MeasuredSet): LayoutCable => ({
  length: set.heatedLength * 12,
  watts: set.watts,
  leastBend: set.minBend ?? LEAST_SPACING / 2,
  leastSpacing: LEAST_SPACING,
  greatestSpacing: MOST_SPACING,
  coldLead: set.coldLeadLength * 12,
});
