import type { HeatFlux } from '../../units/heat.js';
import { hours, type Hours } from '../../units/time.js';
import type { Fahrenheit } from '../../units/temperature.js';
import { FILM_TEMPERATURE } from './film-temperature.js';
import { capacityOf, resistanceOf, type Slab, type SlabLayer } from './slab.js';

/** Depth under the cable that warms with it, in. Common practice, no source. */
const WARMED_BELOW = 4;

/**
 * Time until a cold, dry surface reaches 33 °F, or null when the power never brings it there. One mass that loses heat in
 * proportion to its warmth: the heat that it will hold (the layers over the cable at their mean, four inches under it as
 * warm as the cable), fed by `power`, less what it loses to the air, `loss`, once it is warm. An estimate for choosing
 * when to switch on.
 */
export function warmUpTime(slab: Slab, start: Fahrenheit, power: HeatFlux, loss: HeatFlux): Hours | null {
  if (start >= FILM_TEMPERATURE) return hours(0);
  if (power <= loss) return null;
  const stored = heatHeld(slab, start, power);
  if (loss <= 0) return hours(stored / power);
  return hours((stored / loss) * Math.log(power / (power - loss)));
}

/** Heat over `start` of the slab when its top is at 33 °F and `power` passes up through it, Btu/ft². */
function heatHeld(slab: Slab, start: Fahrenheit, power: HeatFlux): number {
  let held = 0;
  let under = FILM_TEMPERATURE + power * resistanceOf(slab.above);
  const cable = under;
  for (const layer of slab.above) {
    const over = under - power * resistanceOf([layer]);
    held += capacityOf(layer) * ((under + over) / 2 - start);
    under = over;
  }
  return held + warmedBelow(slab.below) * (cable - start);
}

function warmedBelow(layers: readonly SlabLayer[]): number {
  let left = WARMED_BELOW;
  let capacity = 0;
  for (const layer of layers) {
    const part = Math.min(left, layer.thickness);
    capacity += layer.thickness > 0 ? (capacityOf(layer) * part) / layer.thickness : 0;
    left -= part;
  }
  return capacity;
}
