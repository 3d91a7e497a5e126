import { drawnPlan } from './drawn-plan.js';
import { ticked, type Values } from './field.js';
import { AREAS, askedFields, heats } from './job-fields.js';
import { typedNumber } from './typed-number.js';

/** How deep frost goes at the site, and who says so. */
export interface SiteFrost {
  readonly frostDepthInches: number;
  readonly frostSource: string;
}

type Part = Record<string, unknown>;

/** The sheet of a site visit, as the service takes it, from what is typed. Numbers that are none are left out. */
export function measuredSheet(values: Values, site: SiteFrost): Part {
  const parts: Record<string, Part> = {};
  for (const { name, path } of askedFields(values)) {
    const number = typedNumber(values[name] ?? '');
    const [part = '', member = ''] = path.split('.');
    if (number !== null) (parts[part] ??= {})[member] = number;
  }
  const areas = AREAS.filter(({ has }) => ticked(values, has));
  const heated = areas.filter((area) => ticked(values, area.heated));
  return {
    version: 1,
    frost: { depthInches: site.frostDepthInches, source: site.frostSource },
    ...(parts['footing'] && { footing: parts['footing'] }),
    buildUp: parts['buildUp'] ?? {},
    areas: areas.map(({ key, kind, name, heated: box }) => ({
      key,
      kind,
      name,
      heated: ticked(values, box),
      ...parts[key],
    })),
    heatingSets: heats(values)
      ? [{ key: 'a', name: 'Set A', areas: heated.map(({ key }) => key), ...parts['heating'] }]
      : [],
    ...designOf(values, parts['heights']),
    ...planOf(values),
  };
}

/** What is known of the door; one height without the other says nothing. */
function designOf(values: Values, heights: Part | undefined): Part {
  if (!heights) return {};
  const boxes = {
    doorSwingsOver: ticked(values, 'doorSwings'),
    handrailPlanned: ticked(values, 'handrail'),
    guardPlanned: ticked(values, 'guard'),
  };
  return { design: { heights: { ...heights, ...boxes } } };
}

function planOf(values: Values): Part {
  const sitePlan = ticked(values, 'drawn') ? drawnPlan(values) : null;
  return sitePlan ? { sitePlan } : {};
}

/** The field that stands for each place of the input, for the faults that the service finds. */
export function sheetPaths(values: Values): Record<string, string> {
  const areas = AREAS.filter(({ has }) => ticked(values, has));
  const index = (key: string) => areas.findIndex((area) => area.key === key);
  const placeOf = (path: string): string => {
    const [part = '', member = ''] = path.split('.');
    if (index(part) >= 0) return `areas.${index(part)}.${member}`;
    if (part === 'heating') return `heatingSets.0.${member}`;
    return part === 'heights' ? `design.heights.${member}` : path;
  };
  const measured = askedFields(values).map(({ name, path }) => [placeOf(path), name]);
  const first = (key: string): string =>
    ({ landing: 'landingHigh', steps: 'risers', walk: 'walkLong' })[key] ?? 'landingHigh';
  const inSheet: [string, string][] = [
    ...areas.map((area): [string, string] => [`areas.${index(area.key)}`, first(area.key)]),
    ['footing', 'footingLong'],
    ['frost', 'site'],
    ['heatingSets', 'heatedLong'],
    ['design.heights', 'sill'],
    ['sitePlan', 'drawn'],
    ...measured.map(([path = '', name = '']): [string, string] => [path, name]),
  ];
  return {
    siteId: 'site',
    name: 'jobName',
    ownerName: 'owner',
    priority: 'priority',
    dueAt: 'due',
    ...Object.fromEntries(inSheet.map(([path, name]) => [`measurement.${path}`, name])),
  };
}
