import { COMMON_PRACTICE, fromMemory, published } from '../entry/source.js';
import { CONCRETE_REQUIREMENTS, CONCRETE_SOURCE } from './concrete-requirements.js';
import { over, under } from './given-limit.js';
import { MASONRY_REQUIREMENTS, MASONRY_SOURCE } from './masonry-requirements.js';
import type { WeatherLimit, WeatherLimitSet } from './weather-limit.js';

const TENT = ['enclosure'] as const;

/** Rain from an amount in an hour; a tent keeps it off where the work stands under one. */
const rain = (value: number, more: Partial<WeatherLimit> = {}): WeatherLimit =>
  over(COMMON_PRACTICE, { id: 'rain-amount', measure: 'rainAmount', value, text: 'Rain', ...more });
const rainChance = (value: number, more: Partial<WeatherLimit> = {}): WeatherLimit =>
  over(COMMON_PRACTICE, { id: 'rain-chance', measure: 'rainChance', value, text: 'Chance of rain', ...more });
/** Faces that sealant must stick to are dry so long after rain: common practice. */
const DRYING_HOURS = 6;
const gust = (value: number): WeatherLimit =>
  over(COMMON_PRACTICE, { id: 'gust', measure: 'gust', value, text: 'Gusts' });

const HOT_SOURCE = fromMemory('TMS 602, hot weather: over 100 °F, or over 90 °F with wind over 8 mph');

const HOT: WeatherLimit[] = [
  over(HOT_SOURCE, {
    id: 'hot',
    measure: 'temperature',
    value: 100,
    text: 'Too hot for mortar',
  }),
  over(HOT_SOURCE, {
    id: 'hot-wind',
    measure: 'temperature',
    value: 90,
    and: { measure: 'wind', above: 8 },
    text: 'Too hot for mortar in wind over 8 mph',
  }),
];

/** Where a company starts: a set of limits for each kind of work that the template names. All of it may be edited. */
export const DEFAULT_LIMIT_SETS: readonly WeatherLimitSet[] = [
  { key: 'demolition', name: 'Demo', limits: [rain(0.1), gust(35)], requirements: [] },
  {
    key: 'digging',
    name: 'Digging',
    limits: [
      rain(0.1),
      under(COMMON_PRACTICE, {
        id: 'ground-frozen',
        measure: 'temperature',
        value: 10,
        text: 'Ground freezes while open',
      }),
    ],
    requirements: [],
  },
  {
    key: 'concrete',
    name: 'Concrete',
    limits: [
      under(CONCRETE_SOURCE, {
        id: 'concrete-cold',
        measure: 'temperature',
        value: 40,
        liftedBy: ['blanket', 'enclosure'],
        text: 'Too cold to place without protection',
      }),
      under(COMMON_PRACTICE, {
        id: 'concrete-severe',
        measure: 'temperature',
        value: 20,
        liftedBy: TENT,
        text: 'Too cold to place without a heated enclosure',
      }),
      rain(0.05, { aheadHours: 4, liftedBy: TENT }),
      over(COMMON_PRACTICE, {
        id: 'concrete-hot',
        measure: 'temperature',
        value: 100,
        text: 'Too hot to place',
      }),
    ],
    requirements: CONCRETE_REQUIREMENTS,
  },
  {
    key: 'masonry',
    name: 'Masonry',
    limits: [
      under(MASONRY_SOURCE, {
        id: 'masonry-enclosure',
        measure: 'temperature',
        value: 20,
        inclusive: true,
        liftedBy: TENT,
        text: 'Masonry needs an enclosure above 32 °F',
      }),
      rain(0.05, { liftedBy: TENT }),
      rainChance(80, { liftedBy: TENT }),
      ...HOT,
    ],
    requirements: MASONRY_REQUIREMENTS,
  },
  {
    key: 'dry',
    name: 'Dry work',
    limits: [rain(0.01, { liftedBy: TENT }), rainChance(60, { liftedBy: TENT })],
    requirements: [],
  },
  {
    key: 'cable',
    name: 'Cable',
    limits: [
      under(COMMON_PRACTICE, {
        id: 'cable-bending',
        measure: 'temperature',
        value: 23,
        liftedBy: TENT,
        text: "Under the cable's minimum bending temperature",
      }),
      rain(0.01, { liftedBy: TENT }),
      rainChance(60, { liftedBy: TENT }),
    ],
    requirements: [],
  },
  {
    key: 'veneer',
    name: 'Veneer',
    limits: [
      under(fromMemory('ASTM C1780: 40 °F and kept from freezing 24–48 h'), {
        id: 'veneer-cold',
        measure: 'temperature',
        value: 40,
        liftedBy: TENT,
        text: 'Too cold for adhered veneer',
      }),
      under(fromMemory('ASTM C1780: kept from freezing 24–48 h'), {
        id: 'veneer-freeze',
        measure: 'temperature',
        value: 32,
        inclusive: true,
        aheadHours: 24,
        liftedBy: ['enclosure', 'blanket'],
        text: 'Freezes within 24 h',
      }),
      rain(0.05, { aheadHours: 4, liftedBy: TENT }),
      ...HOT,
    ],
    requirements: [],
  },
  {
    key: 'stone',
    name: 'Bed and stone',
    limits: [
      under(fromMemory('ANSI A108: 50–100 °F for 72 h'), {
        id: 'stone-cold',
        measure: 'temperature',
        value: 50,
        liftedBy: TENT,
        text: 'Too cold for bed and stone without an enclosure',
      }),
      rain(0.05, { aheadHours: 4, liftedBy: TENT }),
      ...HOT,
    ],
    requirements: [],
  },
  {
    key: 'sealant',
    name: 'Sealant',
    limits: [
      under(published('UFGS 07 92 00'), {
        id: 'sealant-cold',
        measure: 'temperature',
        value: 40,
        liftedBy: TENT,
        text: 'Too cold for sealant',
      }),
      over(published('UFGS 07 92 00'), {
        id: 'sealant-hot',
        measure: 'temperature',
        value: 90,
        text: 'Too hot for sealant',
      }),
      rain(0.01, { backHours: DRYING_HOURS, liftedBy: TENT, text: 'Rain, or faces still wet from it' }),
      rainChance(50, { liftedBy: TENT }),
    ],
    requirements: [],
  },
];
