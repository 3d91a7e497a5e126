import type { EntryTemplate } from '../template.js';
import { AREA_PHASES } from './area-phases.js';
import { CABLE_HOLD_POINTS } from './cable-hold-points.js';
import { CLEARANCES } from './clearances.js';
import { ELECTRICAL_HOLD_POINTS } from './electrical-hold-points.js';
import { ELECTRICAL_PHASES } from './electrical-phases.js';
import { EQUIPMENT } from './equipment.js';
import { GROUND_HOLD_POINTS } from './ground-hold-points.js';
import { GROUND_PHASES } from './ground-phases.js';
import { LINKS } from './links.js';

/** The template a new company starts from: a heated entry, row by row. Plain data, JSON round-trips it. */
export const HEATED_ENTRY: EntryTemplate = {
  version: 1,
  name: 'Heated entry',
  phases: [...GROUND_PHASES, ...AREA_PHASES, ...ELECTRICAL_PHASES],
  links: LINKS,
  holdPoints: [...GROUND_HOLD_POINTS, ...CABLE_HOLD_POINTS, ...ELECTRICAL_HOLD_POINTS],
  clearances: CLEARANCES,
  equipment: EQUIPMENT,
};
