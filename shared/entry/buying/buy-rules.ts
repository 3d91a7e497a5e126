import { COMMON_PRACTICE } from '../source.js';
import type { BuyKey, BuyRule } from './buy-item.js';

const rule = (label: string, unit: string, waste: number, holds: number, soldAs: string): BuyRule => ({
  label,
  unit,
  waste,
  holds,
  soldAs,
  source: COMMON_PRACTICE,
});

/** How things are sold until a company says how its suppliers do. Waste and sizes are common practice, no source. */
export const BUY_RULES: Readonly<Record<BuyKey, BuyRule>> = {
  'footing-concrete': rule('Footing concrete', 'cu yd', 0.05, 0.25, 'quarter yard'),
  'base-concrete': rule('Walk base concrete', 'cu yd', 0.05, 0.25, 'quarter yard'),
  block: rule('Block 8 by 8 by 16 in', 'pieces', 0.05, 1, 'piece'),
  grout: rule('Grout for the block', 'cu yd', 0.1, 0.25, 'quarter yard'),
  cement: rule('Cement for the bed', 'cu ft', 0.1, 1, 'sack of 94 lb'),
  sand: rule('Sand for the bed', 'cu ft', 0.1, 13.5, 'half yard'),
  mesh: rule('Mesh', 'sq ft', 0.1, 50, 'sheet of 5 by 10 ft'),
  screws: rule('Masonry screws with washers', 'pieces', 0.1, 100, 'box of 100'),
  'cable-ties': rule('Cable ties', 'pieces', 0.1, 100, 'bag of 100'),
  stone: rule('Stone', 'sq ft', 0.1, 1, 'square foot'),
  'tread-stock': rule('Tread stock', 'ft', 0.05, 1, 'foot'),
  'veneer-flats': rule('Veneer flats', 'sq ft', 0.1, 10, 'box of 10 sq ft'),
  'veneer-corners': rule('Veneer corners', 'ft', 0.1, 8, 'box of 8 ft'),
  sealant: rule('Sealant, ½ by ¼ in joint', 'ft', 0.15, 12, 'tube of 10 oz'),
  'backer-rod': rule('Backer rod', 'ft', 0.1, 20, 'coil of 20 ft'),
  blankets: rule('Insulated blankets', 'sq ft', 0.2, 150, 'blanket of 6 by 25 ft'),
  sleeves: rule('Wall sleeves', 'pieces', 0, 1, 'piece'),
  'heating-sets': rule('Heating sets', 'pieces', 0, 1, 'set; never cut'),
};
