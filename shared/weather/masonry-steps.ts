import { published, type Source } from '../entry/source.js';
import type { Fahrenheit } from '../units/temperature.js';
import type { MilesPerHour } from '../units/weather-units.js';

/** What laying masonry at an air temperature asks for; each step adds to those before it. */
export interface MasonryStep {
  readonly id: 'normal' | 'heat-mortar' | 'keep-mortar' | 'heat-masonry' | 'windbreak' | 'enclosure';
  readonly text: string;
}

/** Where the steps come from. */
export const MASONRY_SOURCE: Source = published('TMS 602-02 as restated in Masonry Magazine, Sept 2004');

/**
 * The steps while laying masonry: over 40 °F none; 40 to 32 heat sand or water; under 32 to 25 also keep mortar from
 * freezing; under 25 to over 20 also heat the masonry, with a windbreak above 15 mph; at 20 and under also an
 * enclosure. Wind unknown asks for the windbreak: unknown is not fair.
 */
export function masonrySteps(air: Fahrenheit, wind: MilesPerHour | null): MasonryStep[] {
  if (air > 40) return [{ id: 'normal', text: 'Lay as usual' }];
  const steps: MasonryStep[] = [{ id: 'heat-mortar', text: 'Heat sand or water: mortar 40–120 °F' }];
  if (air < 32) steps.push({ id: 'keep-mortar', text: 'Keep mortar from freezing; grout 70–120 °F' });
  if (air < 25) {
    steps.push({ id: 'heat-masonry', text: 'Heat the masonry to 40 °F' });
    if (wind === null || wind > 15)
      steps.push({ id: 'windbreak', text: 'Windbreak against wind above 15 mph' });
  }
  if (air <= 20) steps.push({ id: 'enclosure', text: 'Enclosure with the air in it above 32 °F' });
  return steps;
}
