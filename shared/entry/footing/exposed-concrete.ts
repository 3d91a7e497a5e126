import { psi, type Psi } from '../../units/stress.js';
import { percent, type Percent } from '../../units/weather-units.js';
import { published, type Source } from '../source.js';

/** How hard the weather of the place is on concrete, by the code's map. */
export type Weathering = 'negligible' | 'moderate' | 'severe';

/** What concrete of steps in the weather must be. */
export interface ExposedConcrete {
  readonly strength: Psi;
  /** Null where no air is asked for. */
  readonly air: { readonly least: Percent; readonly most: Percent } | null;
  readonly source: Source;
}

const STRENGTH: Readonly<Record<Weathering, number>> = { negligible: 2500, moderate: 3000, severe: 3500 };

/** Steps and landings in the weather: 2500, 3000 or 3500 psi; where it freezes, 5 to 7 % of air. */
export const exposedConcrete = (weathering: Weathering): ExposedConcrete => ({
  strength: psi(STRENGTH[weathering]),
  air: weathering === 'negligible' ? null : { least: percent(5), most: percent(7) },
  source: published('IRC R402.2'),
});
