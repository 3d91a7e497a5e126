import { KEY, repeated } from '../entry/read/key.js';
import type { Fault } from '../entry/read/fault.js';
import { readFrom, type Reader } from '../entry/read/reader.js';
import { readSource } from '../entry/template/read-common.js';
import { LIMIT_UNITS, type LimitMeasure, type WeatherLimit, type WeatherLimitSet } from './weather-limit.js';

/** Checked limits, or everything that is wrong with them. */
export type LimitSetsCheck =
  | { readonly ok: true; readonly sets: readonly WeatherLimitSet[] }
  | { readonly ok: false; readonly faults: readonly Fault[] };

const MEASURES = Object.keys(LIMIT_UNITS) as LimitMeasure[];

/** What a limit of each measure may be. */
const RANGE: Record<LimitMeasure, { min: number; max: number }> = {
  temperature: { min: -60, max: 130 },
  wind: { min: 0, max: 150 },
  gust: { min: 0, max: 200 },
  rainChance: { min: 0, max: 100 },
  rainAmount: { min: 0, max: 5 },
};

/** Reads limit sets as a company edits them. */
export function checkLimitSets(value: unknown): LimitSetsCheck {
  const root = readFrom(value);
  const sets = root.list().map(readSet);
  for (const key of repeated(sets.map((set) => set.key))) {
    root.fault(`two sets have the key "${key}"; rename one of them`);
  }
  return root.faults.length === 0 ? { ok: true, sets } : { ok: false, faults: root.faults };
}

function readSet(reader: Reader): WeatherLimitSet {
  reader.object(['key', 'name', 'limits']);
  const limits = reader.at('limits');
  const set = {
    key: reader.at('key').text(KEY),
    name: reader.at('name').text(),
    limits: limits.list().map(readLimit),
  };
  for (const id of repeated(set.limits.map((limit) => limit.id))) {
    limits.fault(`two limits have the id "${id}"; rename one of them`);
  }
  return set;
}

function readLimit(reader: Reader): WeatherLimit {
  reader.object([
    'id',
    'measure',
    'stop',
    'value',
    'inclusive',
    'aheadHours',
    'liftedBy',
    'and',
    'text',
    'source',
  ]);
  const measure = reader.at('measure').oneOf(MEASURES);
  const and = reader.at('and');
  return {
    id: reader.at('id').text(KEY),
    measure,
    stop: reader.at('stop').oneOf(['below', 'above'] as const),
    value: reader.at('value').number({ ...RANGE[measure], unit: LIMIT_UNITS[measure] }),
    inclusive: reader.at('inclusive').flag(),
    aheadHours: reader.at('aheadHours').number({ min: 0, max: 168, whole: true, unit: 'h' }),
    liftedBy: reader
      .at('liftedBy')
      .list()
      .map((kind) => kind.text(KEY)),
    ...(and.missing ? {} : { and: readAnd(and) }),
    text: reader.at('text').text(),
    source: readSource(reader.at('source')),
  };
}

function readAnd(reader: Reader): { measure: LimitMeasure; above: number } {
  reader.object(['measure', 'above']);
  const measure = reader.at('measure').oneOf(MEASURES);
  return { measure, above: reader.at('above').number({ ...RANGE[measure], unit: LIMIT_UNITS[measure] }) };
}
