import { KEY } from '../read/key.js';
import type { Reader } from '../read/reader.js';
import { QUANTITY_NAMES } from '../quantities/quantity-names.js';
import { readSource, readWhere } from './read-common.js';
import type { TemplateDuration, TemplatePhase, TemplatePlacement } from './template.js';
import { CONTINUITIES, HATCHES, TRADES } from './words.js';

const NAMES = [
  'kind',
  'name',
  'scope',
  'where',
  'hatch',
  'trade',
  'duration',
  'continuity',
  'weatherLimits',
  'placement',
];

/** Reads one kind of phase. A wait has no trade, and what takes working time has one. */
export function readPhase(reader: Reader): TemplatePhase {
  reader.object(NAMES);
  const trade = reader.at('trade');
  const weather = reader.at('weatherLimits');
  const placement = reader.at('placement');
  const phase: TemplatePhase = {
    kind: reader.at('kind').text(KEY),
    name: reader.at('name').text(),
    scope: reader.at('scope').oneOf(['job', 'area', 'set'] as const),
    ...readWhere(reader.at('where')),
    hatch: reader.at('hatch').oneOf(HATCHES),
    trade: trade.missing ? null : trade.oneOf(TRADES),
    duration: readDuration(reader.at('duration')),
    continuity: reader.at('continuity').oneOf(CONTINUITIES),
    weatherLimits: weather.missing ? null : weather.text(KEY),
    ...(placement.missing ? {} : { placement: readPlacement(placement) }),
  };
  if (phase.duration.kind === 'work' && phase.trade === null) {
    trade.fault('work needs a trade that does it; a wait has a duration of kind elapsed');
  }
  return phase;
}

function readDuration(reader: Reader): TemplateDuration {
  const kind = reader.at('kind').oneOf(['work', 'elapsed'] as const);
  const source = readSource(reader.at('source'));
  if (kind === 'elapsed') {
    reader.object(['kind', 'minutes', 'source']);
    const minutes = reader.at('minutes').number({ min: 0, max: 90 * 24 * 60, unit: 'min', whole: true });
    return { kind, minutes, source };
  }
  reader.object(['kind', 'crewSize', 'setUpMinutes', 'rates', 'source']);
  return {
    kind,
    crewSize: reader.at('crewSize').number({ min: 1, max: 20, whole: true, unit: 'people' }),
    setUpMinutes: reader.at('setUpMinutes').number({ min: 0, max: 2880, unit: 'min' }),
    rates: reader
      .at('rates')
      .list()
      .map((rate) => {
        rate.object(['quantity', 'minutesPerUnit']);
        return {
          quantity: rate.at('quantity').oneOf(QUANTITY_NAMES),
          minutesPerUnit: rate.at('minutesPerUnit').number({ min: 0, max: 5000, unit: 'min' }),
        };
      }),
    source,
  };
}

function readPlacement(reader: Reader): TemplatePlacement {
  reader.object(['material', 'sectionInches']);
  const section = reader.at('sectionInches');
  const measured = ['footingThickness', 'bedThickness', 'walkBaseThickness'] as const;
  return {
    material: reader.at('material').oneOf(['concrete', 'grout', 'mortar'] as const),
    sectionInches:
      typeof section.value === 'string'
        ? section.oneOf(measured)
        : section.number({ min: 0.25, max: 120, unit: 'in' }),
  };
}
