import { repeated } from '../entry/read/key.js';
import type { Fault } from '../entry/read/fault.js';
import { readFrom, type Reader } from '../entry/read/reader.js';
import { readSource } from '../entry/template/read-common.js';
import { DAY_HOURS } from './daily-means.js';
import { MOST_BACK_HOURS } from './earlier-hours.js';
import { LIMIT_UNITS, type LimitMeasure, type Reopening, type WeatherLimit } from './weather-limit.js';

/** Checked limits, or everything that is wrong with them. */
export type LimitsCheck =
  | { readonly ok: true; readonly limits: readonly WeatherLimit[] }
  | { readonly ok: false; readonly faults: readonly Fault[] };

const MEASURES = Object.keys(LIMIT_UNITS) as LimitMeasure[];

/** What a limit of each measure may be: what lies outside is a slip of unit or key. */
const RANGE: Record<LimitMeasure, { min: number; max: number }> = {
  temperature: { min: -60, max: 130 },
  wind: { min: 0, max: 150 },
  gust: { min: 0, max: 200 },
  rainChance: { min: 0, max: 100 },
  rainAmount: { min: 0, max: 10 },
  evaporation: { min: 0, max: 2 },
};

const ID = {
  like: /^[a-z0-9][a-z0-9-]{0,39}$/,
  say: 'must be 1 to 40 small letters, digits and hyphens',
};
const MOST_LIMITS = 40;
const MOST_KINDS = 8;
/** A week: no forecast tells an hour further ahead. */
const MOST_HOURS = 168;

const NAMES = [
  'id',
  'measure',
  'stop',
  'value',
  'inclusive',
  'aheadHours',
  'backHours',
  'dailyMean',
  'lastingHours',
  'reopen',
  'turningHours',
  'and',
  'liftedBy',
  'text',
  'source',
];

/** Reads the limits, or the requirements, of one kind of work as a company edits them. What is left out is not asked. */
export function checkLimits(value: unknown): LimitsCheck {
  const root = readFrom(value);
  const list = root.list();
  if (list.length > MOST_LIMITS) root.fault(`has ${list.length}; at most ${MOST_LIMITS} can be kept`);
  const limits = list.map(readLimit);
  for (const id of repeated(limits.map((limit) => limit.id)))
    root.fault(`two of them have the id "${id}"; rename one`);
  return root.faults.length === 0 ? { ok: true, limits } : { ok: false, faults: root.faults };
}

function readLimit(reader: Reader): WeatherLimit {
  reader.object(NAMES);
  const measure = reader.at('measure').oneOf(MEASURES);
  const inclusive = reader.at('inclusive');
  const liftedBy = reader.at('liftedBy');
  return {
    id: reader.at('id').text(ID),
    measure,
    stop: reader.at('stop').oneOf(['below', 'above'] as const),
    value: readFigure(reader.at('value'), measure),
    inclusive: inclusive.missing ? false : inclusive.flag(),
    aheadHours: reader.at('aheadHours').numberOr(0, hours(0)),
    backHours: reader.at('backHours').numberOr(0, back(0)),
    ...given(reader, 'dailyMean', (one) => one.oneOf(['before', 'after'] as const)),
    ...given(reader, 'lastingHours', (one) => one.number(back(0))),
    ...given(reader, 'reopen', (one) => readReopening(one, measure)),
    ...given(reader, 'turningHours', (one) => one.number(hours(0))),
    ...given(reader, 'and', readAnd),
    liftedBy: liftedBy.missing ? [] : readKinds(liftedBy),
    text: readWords(reader.at('text'), 160),
    source: readSource(reader.at('source')),
  };
}

/** A member that may be left out, as a part to be spread into its owner. */
function given<N extends string, T>(reader: Reader, name: N, read: (at: Reader) => T): { [K in N]?: T } {
  const at = reader.at(name);
  return at.missing ? {} : ({ [name]: read(at) } as { [K in N]?: T });
}

const hours = (min: number) => ({ min, max: MOST_HOURS, whole: true, unit: 'h' });
const back = (min: number) => ({ min, max: MOST_BACK_HOURS, whole: true, unit: 'h' });

const readFigure = (reader: Reader, measure: LimitMeasure): number =>
  reader.number({ ...RANGE[measure], unit: LIMIT_UNITS[measure] });

function readAnd(reader: Reader): { measure: LimitMeasure; above: number } {
  reader.object(['measure', 'above']);
  const measure = reader.at('measure').oneOf(MEASURES);
  return { measure, above: readFigure(reader.at('above'), measure) };
}

function readReopening(reader: Reader, measure: LimitMeasure): Reopening {
  reader.object(['value', 'inclusive', 'hours', 'within']);
  const inclusive = reader.at('inclusive');
  const fair = reader.at('hours').numberOr(0, { ...back(0), max: DAY_HOURS });
  return {
    value: readFigure(reader.at('value'), measure),
    inclusive: inclusive.missing ? false : inclusive.flag(),
    hours: fair,
    within: reader.at('within').numberOr(fair, back(fair)),
  };
}

function readKinds(reader: Reader): string[] {
  const kinds = reader.list();
  if (kinds.length > MOST_KINDS) reader.fault(`names ${kinds.length} kinds; at most ${MOST_KINDS}`);
  return kinds.map((kind) => readWords(kind, 40));
}

function readWords(reader: Reader, most: number): string {
  const text = reader.text().trim();
  if (text.length > most) reader.fault(`has ${text.length} letters; at most ${most} are shown`);
  return text;
}
