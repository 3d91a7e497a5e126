import { cableCover } from './cable-cover.js';
import { cableDepth } from './cable-depth.js';
import { cableSpacing } from './cable-spacing.js';
import { footingFrostDepth } from './footing-frost-depth.js';
import { powerDensity } from './power-density.js';
import { riserHeight } from './riser-height.js';
import { riserSpread } from './riser-spread.js';
import { shallowFooting } from './shallow-footing.js';
import { treadDepth } from './tread-depth.js';
import { uncutCable } from './uncut-cable.js';
import { walkBase } from './walk-base.js';

/** Every rule by its name, which is its file's name and what its findings carry. */
export const RULES = {
  'cable-cover': cableCover,
  'cable-depth': cableDepth,
  'cable-spacing': cableSpacing,
  'footing-frost-depth': footingFrostDepth,
  'power-density': powerDensity,
  'riser-height': riserHeight,
  'riser-spread': riserSpread,
  'shallow-footing': shallowFooting,
  'tread-depth': treadDepth,
  'uncut-cable': uncutCable,
  'walk-base': walkBase,
} as const;
