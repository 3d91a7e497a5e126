import { KEY } from '../read/key.js';
import type { Reader } from '../read/reader.js';
import { readSource, readWhere } from './read-common.js';
import type { TemplateHoldPoint, TemplateItem, TemplateLimit } from './template-hold-point.js';
import { GATES, HOLD_POINT_KINDS, READING_STAGES, type HoldPointKind } from './words.js';

const NAMES = [
  'kind',
  'key',
  'phase',
  'gate',
  'title',
  'items',
  'caution',
  'waivable',
  'where',
  'firstOfSet',
];
const OWN: Record<HoldPointKind, readonly string[]> = {
  check: [],
  inspection: [],
  clearance: ['clearance'],
  cure: ['placement', 'requiredPsi'],
  reading: ['stage'],
};

/** Reads a hold point. An authority's inspection and a cable reading are refused the mark waivable. */
export function readHoldPoint(reader: Reader): TemplateHoldPoint {
  const kind = reader.at('kind').oneOf(HOLD_POINT_KINDS);
  reader.object([...NAMES, ...OWN[kind]]);
  const waivable = reader.at('waivable').flag();
  const caution = reader.at('caution');
  const first = reader.at('firstOfSet');
  const common = {
    key: reader.at('key').text(KEY),
    phase: reader.at('phase').text(KEY),
    gate: reader.at('gate').oneOf(GATES),
    title: reader.at('title').text(),
    items: reader.at('items').list().map(readItem),
    ...(caution.missing ? {} : { caution: caution.text() }),
    ...readWhere(reader.at('where')),
    ...(first.missing || !first.flag() ? {} : { firstOfSet: true as const }),
  };
  switch (kind) {
    case 'check':
      return { ...common, kind, waivable };
    case 'clearance':
      return { ...common, kind, waivable, clearance: reader.at('clearance').text(KEY) };
    case 'cure':
      return {
        ...common,
        kind,
        waivable,
        placement: reader.at('placement').text(KEY),
        requiredPsi: reader.at('requiredPsi').number({ min: 1, max: 10_000, unit: 'psi' }),
      };
    case 'inspection':
      refuseWaiver(reader, waivable, "an authority's inspection");
      return { ...common, kind, waivable: false };
    case 'reading':
      refuseWaiver(reader, waivable, 'a cable reading');
      return { ...common, kind, waivable: false, stage: reader.at('stage').oneOf(READING_STAGES) };
  }
}

function refuseWaiver(reader: Reader, waivable: boolean, what: string): void {
  if (waivable) reader.at('waivable').fault(`must be false: ${what} can never be waived`);
}

function readItem(reader: Reader): TemplateItem {
  reader.object(['id', 'label', 'unit', 'many', 'limit', 'required', 'source']);
  const unit = reader.at('unit');
  const many = reader.at('many');
  const item = {
    id: reader.at('id').text(KEY),
    label: reader.at('label').text(),
    unit: unit.missing ? null : unit.text(),
    ...(many.missing || !many.flag() ? {} : { many: true as const }),
    limit: readLimit(reader.at('limit')),
    required: reader.at('required').flag(),
    source: readSource(reader.at('source')),
  };
  if (item.limit.confirmed && item.unit !== null) unit.fault('yes or no has no unit; use null');
  return item;
}

function readLimit(reader: Reader): TemplateLimit {
  reader.object(['confirmed', 'atLeast', 'atMost', 'equalWithin', 'atLeastFrom']);
  const at = (name: string): Reader => reader.at(name);
  const limit: TemplateLimit = {
    ...(at('confirmed').missing || !at('confirmed').flag() ? {} : { confirmed: true as const }),
    ...(at('atLeast').missing ? {} : { atLeast: at('atLeast').number() }),
    ...(at('atMost').missing ? {} : { atMost: at('atMost').number() }),
    ...(at('equalWithin').missing ? {} : { equalWithin: at('equalWithin').number({ min: 0 }) }),
    ...(at('atLeastFrom').missing ? {} : { atLeastFrom: at('atLeastFrom').oneOf(['frostDepth'] as const) }),
  };
  if (limit.atLeast !== undefined && limit.atMost !== undefined && limit.atLeast > limit.atMost) {
    reader.fault(`at least ${limit.atLeast} and at most ${limit.atMost} leave nothing; swap them`);
  }
  if (limit.confirmed && Object.keys(limit).length > 1)
    reader.fault('is either confirmed or measured, not both');
  return limit;
}
