import { COMMON_PRACTICE } from '../../source.js';
import type { TemplateEquipment } from '../template.js';

const cold = { season: 'cold', source: COMMON_PRACTICE } as const;

const ONE = { fixed: 1 } as const;

/** What stays on a placement until it has cured, and what keeps work going, in cold weather. A blanket covers 48 ft². */
export const EQUIPMENT: readonly TemplateEquipment[] = [
  {
    pool: 'blanket',
    from: 'footing-pour',
    until: 'footing-cure',
    count: { quantity: 'footingFeet', perUnit: 1 / 12 },
    ...cold,
  },
  {
    pool: 'blanket',
    from: 'block',
    until: 'block-cure',
    count: { quantity: 'topSquareFeet', perUnit: 1 / 48 },
    ...cold,
  },
  {
    pool: 'blanket',
    from: 'walk-base',
    until: 'base-cure',
    count: { quantity: 'baseSquareFeet', perUnit: 1 / 48 },
    ...cold,
  },
  { pool: 'enclosure', from: 'veneer', until: 'veneer', count: ONE, ...cold },
  { pool: 'heater', from: 'veneer', until: 'veneer', count: ONE, ...cold },
  { pool: 'enclosure', from: 'sealing', until: 'sealing', count: ONE, ...cold },
  { pool: 'enclosure', from: 'stone', until: 'bed-cure', count: ONE, ...cold },
  { pool: 'heater', from: 'stone', until: 'bed-cure', count: ONE, ...cold },
  {
    pool: 'blanket',
    from: 'stone',
    until: 'bed-cure',
    count: { quantity: 'topSquareFeet', perUnit: 1 / 48 },
    ...cold,
  },
];
