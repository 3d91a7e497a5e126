import { cableCover } from './cable-cover.js';
import { cableDepth } from './cable-depth.js';
import { cableLayout } from './cable-layout.js';
import { cableSpacing } from './cable-spacing.js';
import { coldLeadReach } from './cold-lead-reach.js';
import { concreteStrength } from './concrete-strength.js';
import { doorDrop } from './door-drop.js';
import { drainageSlope } from './drainage-slope.js';
import { excavationProtection } from './excavation-protection.js';
import { footingFrostDepth } from './footing-frost-depth.js';
import { guard } from './guard.js';
import { handrail } from './handrail.js';
import { heatSupplied } from './heat-supplied.js';
import { landingDepth } from './landing-depth.js';
import { landingSlope } from './landing-slope.js';
import { lapLength } from './lap-length.js';
import { powerDensity } from './power-density.js';
import { rebarCover } from './rebar-cover.js';
import { riserHeight } from './riser-height.js';
import { riserSpread } from './riser-spread.js';
import { shallowFooting } from './shallow-footing.js';
import { silicaRespirator } from './silica-respirator.js';
import { treadDepth } from './tread-depth.js';
import { uncutCable } from './uncut-cable.js';
import { walkBase } from './walk-base.js';

/** Every rule by its name, which is its file's name and what its findings carry. */
export const RULES = {
  'cable-cover': cableCover,
  'cable-depth': cableDepth,
  'cable-layout': cableLayout,
  'cable-spacing': cableSpacing,
  'cold-lead-reach': coldLeadReach,
  'concrete-strength': concreteStrength,
  'door-drop': doorDrop,
  'drainage-slope': drainageSlope,
  'excavation-protection': excavationProtection,
  'footing-frost-depth': footingFrostDepth,
  guard,
  handrail,
  'heat-supplied': heatSupplied,
  'landing-depth': landingDepth,
  'landing-slope': landingSlope,
  'lap-length': lapLength,
  'power-density': powerDensity,
  'rebar-cover': rebarCover,
  'riser-height': riserHeight,
  'riser-spread': riserSpread,
  'shallow-footing': shallowFooting,
  'silica-respirator': silicaRespirator,
  'tread-depth': treadDepth,
  'uncut-cable': uncutCable,
  'walk-base': walkBase,
} as const;
