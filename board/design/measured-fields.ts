/** A measured value that the office may correct, by its place on the sheet. */
export interface MeasuredField {
  /** Keys and numbers from the sheet down to the value, with dots between. */
  readonly path: string;
  readonly label: string;
  readonly unit: string;
  readonly value: number | string;
}

/** Values that belong together, such as those of one area. */
export interface FieldGroup {
  readonly title: string;
  readonly fields: readonly MeasuredField[];
}

type Sheet = Readonly<Record<string, unknown>>;
type Value = { readonly at: readonly string[]; readonly value: number | string };

/** Words of the trade for names that say too little by themselves, and units. */
const WORDS: Readonly<Record<string, readonly [string, string]>> = {
  watts: ['Power', 'W'],
  volts: ['Voltage', 'V'],
  ohms: ['Resistance on the label', 'Ω'],
  heatedFeet: ['Heated length', 'ft'],
  coldLeadFeet: ['Cold lead', 'ft'],
  coldLeadRunFeet: ['From the sleeve to the box', 'ft'],
  coldLeadOhmsPerFoot: ['Cold lead, one conductor', 'Ω/ft'],
  labelTemperatureF: ['Temperature of the label', '°F'],
  temperatureCoefficientPerK: ['Resistance rises by', 'per K'],
  toleranceLow: ['Tolerance below the label', ''],
  toleranceHigh: ['Tolerance above the label', ''],
  minMegaohms: ['Least insulation', 'MΩ'],
  minBendInches: ['Least bend', 'in'],
  cureDays: ['Cure before energising', 'days'],
  riserCount: ['Risers', ''],
  bottomInches: ['Bottom below grade', 'in'],
  inches: ['Setback', 'in'],
  airF: ['Air', '°F'],
  snowInchesPerHour: ['Snow as water', 'in/h'],
  terminalsC: ['Terminals rated for', '°C'],
  panelAmperes: ['Panel', 'A'],
  panelCarriedAmperes: ['Panel carries already', 'A'],
  source: ['Who says so', ''],
};

const UNITS: readonly (readonly [string, string])[] = [
  ['Inches', 'in'],
  ['Feet', 'ft'],
  ['Mph', 'mph'],
  ['Volts', 'V'],
  ['F', '°F'],
];

/** Values that only say which part of the sheet is meant. */
const REFERENCES = ['version', 'side'];

/** Every number of a sheet, and who says how deep frost goes, in groups and with words and units. */
export function measuredFields(sheet: Sheet): FieldGroup[] {
  const groups = new Map<string, MeasuredField[]>();
  for (const { at, value } of valuesIn(sheet)) {
    if (REFERENCES.includes(at[at.length - 1] ?? '') || (typeof value === 'string' && at[0] !== 'frost'))
      continue;
    const { title, within } = groupOf(sheet, at);
    const fields = groups.get(title) ?? [];
    groups.set(title, fields);
    fields.push({ path: at.join('.'), ...wordsOf(at.slice(within), at, sheet), value });
  }
  return [...groups].map(([title, fields]) => ({ title, fields }));
}

/** The sheet with other values at some places, and whether any of them differs. */
export function correctedSheet(
  sheet: Sheet,
  values: ReadonlyMap<string, number | string>,
): { readonly sheet: Sheet; readonly changed: boolean } {
  let changed = false;
  const copy = (part: unknown, path: string): unknown => {
    if (Array.isArray(part)) return part.map((one, i) => copy(one, join(path, String(i))));
    if (typeof part === 'object' && part !== null)
      return Object.fromEntries(Object.entries(part).map(([key, one]) => [key, copy(one, join(path, key))]));
    const value = values.get(path);
    if (value === undefined || value === part) return part;
    changed = true;
    return value;
  };
  return { sheet: copy(sheet, '') as Sheet, changed };
}

const join = (path: string, key: string): string => (path === '' ? key : `${path}.${key}`);

function valuesIn(part: unknown, at: readonly string[] = []): Value[] {
  if (typeof part === 'number' || typeof part === 'string') return [{ at, value: part }];
  if (typeof part !== 'object' || part === null) return [];
  return Object.entries(part).flatMap(([key, one]) => valuesIn(one, [...at, key]));
}

/** The title of the group that a place belongs to, and how many of its keys that is. */
function groupOf(sheet: Sheet, at: readonly string[]): { title: string; within: number } {
  const [first = '', second = '', third = ''] = at;
  switch (first) {
    case 'areas':
    case 'heatingSets':
      return { title: textAt(sheet, [first, second, 'name']), within: 2 };
    case 'design':
      return { title: PARTS[second] ?? phrase(second), within: at.length > 2 ? 2 : 1 };
    case 'sitePlan': {
      if (second !== 'surfaces') return { title: 'Plan: wall and sleeve', within: 1 };
      const key = textAt(sheet, ['sitePlan', 'surfaces', third, 'area']);
      return { title: `Plan: ${areaName(sheet, key)}`, within: 3 };
    }
    default:
      return { title: phrase(first), within: 1 };
  }
}

const PARTS: Readonly<Record<string, string>> = {
  weather: 'Weather to melt snow in',
  supply: 'Supply',
  heights: 'Heights at the door',
};

function areaName(sheet: Sheet, key: string): string {
  const areas = Array.isArray(sheet['areas']) ? (sheet['areas'] as Sheet[]) : [];
  const found = areas.find((area) => area['key'] === key)?.['name'];
  return typeof found === 'string' ? found : key;
}

/** The words for what remains of a place inside its group: "Outline 3, out from the wall" in inches. */
function wordsOf(
  rest: readonly string[],
  at: readonly string[],
  sheet: Sheet,
): { label: string; unit: string } {
  const words: string[] = [];
  let unit = '';
  rest.forEach((key, i) => {
    const own = at.slice(0, at.length - rest.length + i);
    if (!/^\d+$/.test(key)) {
      const [word, ofWord] = named(key);
      words.push(word);
      unit = ofWord;
    } else if (isPlace(sheet, own)) {
      words.push(key === '0' ? 'along the wall' : 'out from the wall');
    } else {
      const name = textAt(sheet, [...own, key, 'name']);
      words[words.length - 1] = name || `${words[words.length - 1]} ${Number(key) + 1}`;
    }
  });
  const label = words.map((word, i) => (i === 0 ? word : word.toLowerCase())).join(', ');
  return { label, unit };
}

/** Whether two numbers at a place are how far along the wall and how far out from it. */
function isPlace(sheet: Sheet, at: readonly string[]): boolean {
  const part = partAt(sheet, at);
  return (
    at[0] === 'sitePlan' &&
    at[at.length - 1] !== 'jointsAtInches' &&
    Array.isArray(part) &&
    part.length === 2 &&
    part.every((one) => typeof one === 'number')
  );
}

function named(key: string): readonly [string, string] {
  const known = WORDS[key];
  if (known) return known;
  const unit = UNITS.find(([end]) => key.endsWith(end) && key !== end);
  return unit ? [phrase(key.slice(0, -unit[0].length)), unit[1]] : [phrase(key), ''];
}

/** "dewPoint" as "Dew point". */
const phrase = (key: string): string => {
  const spaced = key.replace(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`);
  return spaced.charAt(0).toUpperCase() + spaced.slice(1);
};

function partAt(sheet: unknown, at: readonly string[]): unknown {
  return at.reduce<unknown>(
    (part, key) => (part as Readonly<Record<string, unknown>> | undefined)?.[key],
    sheet,
  );
}

const textAt = (sheet: Sheet, at: readonly string[]): string => {
  const found = partAt(sheet, at);
  return typeof found === 'string' ? found : '';
};
