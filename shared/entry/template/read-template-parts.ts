import { QUANTITY_NAMES } from '../quantities/quantity-names.js';
import { KEY } from '../read/key.js';
import type { Reader } from '../read/reader.js';
import { readSource, readWhere } from './read-common.js';
import type { TemplateClearance, TemplateEquipment, TemplateLink } from './template.js';
import { CLEARANCE_KINDS, LAG_IN, LINK_KINDS } from './words.js';

const PAIRINGS = ['every', 'sameArea', 'sameSet', 'nextInSet', 'firstOfSet', 'lastOfSet'] as const;
const MONTH = 31 * 24 * 60;

/** Reads a dependency between two kinds. */
export function readLink(reader: Reader): TemplateLink {
  reader.object(['from', 'to', 'kind', 'pairing', 'where', 'lag', 'lagIn']);
  const lag = reader.at('lag');
  return {
    from: reader.at('from').text(KEY),
    to: reader.at('to').text(KEY),
    kind: reader.at('kind').oneOf(LINK_KINDS),
    pairing: reader.at('pairing').oneOf(PAIRINGS),
    ...readWhere(reader.at('where')),
    lag:
      lag.value === 'setCureDays' ? 'setCureDays' : lag.number({ min: -MONTH, max: 3 * MONTH, unit: 'min' }),
    lagIn: reader.at('lagIn').oneOf(LAG_IN),
  };
}

/** Reads leave from outside. */
export function readClearance(reader: Reader): TemplateClearance {
  reader.object(['key', 'kind', 'title', 'leadDays', 'lifeDays', 'where', 'source']);
  const life = reader.at('lifeDays');
  return {
    key: reader.at('key').text(KEY),
    kind: reader.at('kind').oneOf(CLEARANCE_KINDS),
    title: reader.at('title').text(),
    leadDays: reader.at('leadDays').number({ min: 0, max: 365, unit: 'days' }),
    lifeDays: life.missing ? null : life.number({ min: 1, max: 1000, unit: 'days', whole: true }),
    ...readWhere(reader.at('where')),
    source: readSource(reader.at('source')),
  };
}

/** Reads equipment kept across phases. */
export function readEquipment(reader: Reader): TemplateEquipment {
  reader.object(['pool', 'from', 'until', 'count', 'season', 'source']);
  const count = reader.at('count');
  const counted = count.at('fixed').missing;
  count.object(counted ? ['quantity', 'perUnit'] : ['fixed']);
  return {
    pool: reader.at('pool').text(KEY),
    from: reader.at('from').text(KEY),
    until: reader.at('until').text(KEY),
    count: counted
      ? {
          quantity: count.at('quantity').oneOf(QUANTITY_NAMES),
          perUnit: count.at('perUnit').number({ min: 0, max: 1000 }),
        }
      : { fixed: count.at('fixed').number({ min: 1, max: 1000, whole: true }) },
    season: reader.at('season').oneOf(['any', 'cold'] as const),
    source: readSource(reader.at('source')),
  };
}
