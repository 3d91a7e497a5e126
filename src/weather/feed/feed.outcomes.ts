import { outcomeUnion } from '../../platform/outcomes/outcome-union.js';
import { ForecastSourceChosen } from './feed.model.js';

/** What `chooseForecastSource` answers. */
export const ChooseForecastSourceOutcome = outcomeUnion('ChooseForecastSourceOutcome', ForecastSourceChosen);
