import type { Placement } from '../generated/prisma/client.js';
import { STRENGTH_CAUTION } from '../../shared/cure/placement.js';
import { CAUTIONS } from '../../shared/entry/template/default/cautions.js';
import { mixtureOf, protectionOf } from './stored-placement.js';

/** What people at a placement must mind: its strength, what is in its mixture, and how it is kept warm. */
export function cautionsOf(row: Placement): string[] {
  const heated = protectionOf(row).some((kind) => kind === 'heater' || kind === 'enclosure');
  return [
    STRENGTH_CAUTION,
    ...(mixtureOf(row).accelerated ? [CAUTIONS.chloride] : []),
    ...(heated ? [CAUTIONS.heater] : []),
  ];
}
