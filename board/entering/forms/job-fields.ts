import { type FormField, ticked, usualValues, type Values } from './field.js';

/** A field of the measurement, and its place in the sheet; in an area the place begins with the area's key. */
export interface MeasureField extends FormField {
  readonly path: string;
}

/** Fields that are measured together, and whether they are asked for. */
export interface MeasureGroup {
  readonly key: string;
  readonly title: string;
  readonly note: string;
  readonly fields: readonly MeasureField[];
  readonly asked: (values: Values) => boolean;
}

/** The areas of an entry from the door outwards: their keys in the sheet, their boxes, and which part of a job they are. */
export const AREAS = [
  { key: 'landing', kind: 'landing', name: 'Landing', has: 'hasLanding', heated: 'heatsLanding' },
  { key: 'steps', kind: 'flight', name: 'Steps', has: 'hasSteps', heated: 'heatsSteps' },
  { key: 'walk', kind: 'walk', name: 'Walk', has: 'hasWalk', heated: 'heatsWalk' },
] as const;

/** Whether landing or steps are built, which stand on a footing. */
export const builds = (values: Values): boolean => ticked(values, 'hasLanding') || ticked(values, 'hasSteps');

/** Whether any area that is built is heated. */
export const heats = (values: Values): boolean =>
  AREAS.some(({ has, heated }) => ticked(values, has) && ticked(values, heated));

const inches = (
  name: string,
  label: string,
  path: string,
  more: Partial<MeasureField> = {},
): MeasureField => ({
  name,
  label,
  path,
  unit: 'in',
  ...more,
});
const feet = (name: string, label: string, path: string, more: Partial<MeasureField> = {}): MeasureField => ({
  ...inches(name, label, path, more),
  unit: 'ft',
});

/**
 * Everything that is measured, in the order of a visit. What is usual is common practice without a source, and stands in
 * the form as such; what differs from site to site begins empty.
 */
export const MEASURES: readonly MeasureGroup[] = [
  {
    key: 'landing',
    title: 'Landing',
    note: 'The level platform at the door.',
    asked: (values) => ticked(values, 'hasLanding'),
    fields: [
      inches('landingOut', 'Landing, out from the wall', 'landing.lengthInches'),
      inches('landingWide', 'Landing, along the wall', 'landing.widthInches'),
      inches('landingHigh', 'Landing, finished top above the finished walk', 'landing.heightInches'),
    ],
  },
  {
    key: 'steps',
    title: 'Steps',
    note: 'Count every rise, the last one onto the landing among them.',
    asked: (values) => ticked(values, 'hasSteps'),
    fields: [
      { name: 'risers', label: 'Number of risers', path: 'steps.riserCount', whole: true },
      inches('riser', 'Riser height', 'steps.riserInches'),
      inches('tread', 'Tread depth', 'steps.treadInches', { usual: '12' }),
      inches('stepsWide', 'Width of the steps', 'steps.widthInches'),
    ],
  },
  {
    key: 'walk',
    title: 'Walk',
    note: 'On grade, from the lowest riser on.',
    asked: (values) => ticked(values, 'hasWalk'),
    fields: [
      feet('walkLong', 'Length of the walk', 'walk.lengthFeet'),
      inches('walkWide', 'Width of the walk', 'walk.widthInches', { usual: '48' }),
      inches('walkBase', 'Base under the walk', 'buildUp.walkBaseInches', { usual: '4' }),
    ],
  },
  {
    key: 'footing',
    title: 'Footing',
    note: 'Its bottom lies at the frost depth or below.',
    asked: builds,
    fields: [
      feet('footingLong', 'Length of the footing', 'footing.lengthFeet', {
        hint: 'All of it that is poured: along the landing and the steps.',
      }),
      inches('footingWide', 'Width of the footing', 'footing.widthInches', { usual: '18' }),
      inches('footingThick', 'Thickness of the footing', 'footing.thicknessInches', { usual: '10' }),
      inches('footingBottom', 'Bottom of the footing below grade', 'footing.bottomInches'),
    ],
  },
  {
    key: 'buildUp',
    title: 'Build-up',
    note: 'The layers over block and base.',
    asked: () => true,
    fields: [
      inches('bed', 'Mortar bed over mesh and cable', 'buildUp.bedInches', { usual: '1' }),
      inches('stone', 'Stone', 'buildUp.stoneInches', { usual: '1.5' }),
    ],
  },
  {
    key: 'heating',
    title: 'Heating set',
    note: 'From the label and the order sheet. One uncut cable through all heated areas.',
    asked: heats,
    fields: [
      { name: 'watts', label: 'Watts', unit: 'W', path: 'heating.watts' },
      { name: 'volts', label: 'Volts', unit: 'V', path: 'heating.volts', usual: '240' },
      { name: 'ohms', label: 'Resistance on the label', unit: 'Ω', path: 'heating.ohms' },
      feet('heatedLong', 'Heated length', 'heating.heatedFeet'),
      feet('leadLong', 'Cold lead, length', 'heating.coldLeadFeet'),
      feet('leadRun', 'Cold lead, from the sleeve to the box', 'heating.coldLeadRunFeet'),
      {
        name: 'cureDays',
        label: 'Cure of the bed before energising',
        unit: 'days',
        path: 'heating.cureDays',
        usual: '28',
        hint: 'As the instructions of the cable say.',
      },
    ],
  },
  {
    key: 'door',
    title: 'At the door',
    note: 'May stay empty; then nothing is said about the step under the sill.',
    asked: (values) => ticked(values, 'hasLanding'),
    fields: [
      inches('sill', 'Top of the sill above the finished walk', 'heights.sillAboveWalkInches', {
        optional: true,
      }),
      inches('doorDrop', 'Landing under the sill', 'heights.doorDropInches', { optional: true }),
    ],
  },
];

/** What the job is beside its measures. */
export const JOB_FIELDS: readonly FormField[] = [
  {
    name: 'jobName',
    label: 'Name of the job',
    text: true,
    hint: 'Short, as crews will say it: the street, say.',
  },
  { name: 'owner', label: 'Owner of the house', text: true },
];

/** The fields that are asked for as the form stands. */
export const askedFields = (values: Values): MeasureField[] =>
  MEASURES.filter(({ asked }) => asked(values)).flatMap(({ fields }) => fields);

/**
 * What the form begins with; the footing's bottom is not among it: until it is typed, it is the frost depth of the site.
 */
export const NEW_JOB: Values = {
  ...usualValues(JOB_FIELDS),
  ...usualValues(MEASURES.flatMap(({ fields }) => fields).filter(({ name }) => name !== 'footingBottom')),
  ...Object.fromEntries(AREAS.flatMap(({ has, heated }) => [has, heated]).map((box) => [box, 'yes'])),
  priority: '5',
  due: '',
  cold: 'yes',
  drawn: 'yes',
};
