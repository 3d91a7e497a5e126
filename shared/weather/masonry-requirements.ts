import { fromMemory, published, type Source } from '../entry/source.js';
import { under } from './given-limit.js';
import type { WeatherLimit } from './weather-limit.js';

/** Where the steps while laying come from. */
export const MASONRY_SOURCE: Source = published('TMS 602-02 as restated in Masonry Magazine, Sept 2004');

/** Where the protection of new masonry comes from. */
const AFTER_SOURCE = fromMemory(
  'TMS 602, protection of new masonry; which temperature to watch is published in NCMA TEK 3-1C',
);

const step = (id: string, value: number, text: string, more: Partial<WeatherLimit> = {}): WeatherLimit =>
  under(MASONRY_SOURCE, { id, measure: 'temperature', value, text, ...more });

/** What laying masonry at an air temperature asks for; each step adds to those before it. */
const LAYING: readonly WeatherLimit[] = [
  step('heat-mortar', 40, 'Heat sand or water: mortar 40–120 °F', { inclusive: true }),
  step('keep-mortar', 32, 'Keep mortar from freezing; grout 70–120 °F'),
  step('heat-masonry', 25, 'Heat the masonry to 40 °F'),
  step('windbreak', 25, 'Windbreak against wind above 15 mph', { and: { measure: 'wind', above: 15 } }),
  step('enclosure', 20, 'Enclosure with the air in it above 32 °F', { inclusive: true }),
];

const AFTER: readonly (readonly [string, number, boolean, string])[] = [
  ['cover', 40, false, 'Cover it against rain and snow'],
  ['wrap', 32, false, 'Cover it completely with a membrane that keeps weather off'],
  ['blanket', 25, false, 'Cover it completely with insulating blankets'],
  ['heat', 20, true, 'Keep it above 32 °F with an enclosure and heat'],
];

/** Masonry without grout is watched by the mean daily temperature of the 24 hours after laying. */
const AFTER_LAYING = AFTER.map(([id, value, inclusive, text]) =>
  under(AFTER_SOURCE, {
    id: `laid-${id}`,
    measure: 'temperature',
    value,
    inclusive,
    dailyMean: 'after',
    text: `New masonry without grout, for 24 h: ${text}`,
  }),
);

/** Grouted masonry is watched by the lowest temperature of the 48 hours after grouting. */
const AFTER_GROUTING = AFTER.map(([id, value, inclusive, text]) =>
  under(AFTER_SOURCE, {
    id: `grouted-${id}`,
    measure: 'temperature',
    value,
    inclusive,
    aheadHours: 48,
    text: `New grouted masonry, for 48 h: ${text}`,
  }),
);

/** What masonry asks for in the cold, while it is laid and afterwards. */
export const MASONRY_REQUIREMENTS: readonly WeatherLimit[] = [...LAYING, ...AFTER_LAYING, ...AFTER_GROUTING];
