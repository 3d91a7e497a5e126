import type { Change } from '../../platform/change/change.js';
import { Refused } from '../../platform/outcomes/refusal.js';
import { clearanceFault } from '../clearance-standing.js';
import { ClearanceMissing } from '../errors/clearance-missing.js';
import { InspectionOutstanding } from '../errors/inspection-outstanding.js';
import { ReadingMissing } from '../errors/reading-missing.js';
import type { Finding } from '../finding.model.js';
import { demandCure } from './demand-cure.js';
import type { GatedHoldPoint } from './hold-point-with-gate.js';

/**
 * Checks what the kind of a hold point asks for besides its items: only a passed inspection, a standing clearance, an
 * accepted reading, or a measured strength releases its own kind.
 *
 * @returns what was found besides the items, to be kept with the release.
 * @throws Refused with the refusal that names what is missing.
 */
export async function demandKind(change: Change, point: GatedHoldPoint): Promise<Finding[]> {
  switch (point.kind) {
    case 'check':
      return [];
    case 'inspection': {
      if (point.inspection?.state === 'passed') return [];
      const message = `${point.title} is released by the authority alone: record that the inspection passed.`;
      throw new Refused(new InspectionOutstanding(point.inspectionId ? [point.inspectionId] : [], message));
    }
    case 'clearance': {
      const fault = point.clearance ? clearanceFault(point.clearance, change.now) : null;
      if (point.clearance && fault) throw new Refused(new ClearanceMissing([point.clearance.id], fault));
      return [];
    }
    case 'reading': {
      const message = `${point.title} is released by an accepted reading alone: record the reading of the heating set.`;
      if (!point.heatingSetId || !point.readingStage)
        throw new Error(`Hold point ${point.id} waits for a reading but names no heating set and stage`);
      throw new Refused(
        new ReadingMissing(point.heatingSetId, point.readingStage, point.phase.areaId, message),
      );
    }
    case 'cure':
      return demandCure(change, point);
  }
}
