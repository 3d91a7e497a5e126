import { COMMON_PRACTICE } from '../../source.js';
import type { TemplatePhase } from '../template.js';

const HEATED = { heated: true } as const;

/** Minutes of one pair of hands, whatever the quantity. */
const plain = (setUpMinutes: number): TemplatePhase['duration'] => ({
  kind: 'work',
  crewSize: 1,
  setUpMinutes,
  rates: [],
  source: COMMON_PRACTICE,
});

/** A moment that an authority's visit gates. */
const moment: TemplatePhase['duration'] = { kind: 'elapsed', minutes: 0, source: COMMON_PRACTICE };

/** The way through the wall, the connection and the end of the job. */
export const ELECTRICAL_PHASES: readonly TemplatePhase[] = [
  {
    kind: 'penetrations',
    name: 'Wall penetrations',
    scope: 'job',
    where: HEATED,
    hatch: 'masonry',
    trade: 'mason',
    duration: {
      kind: 'work',
      crewSize: 2,
      setUpMinutes: 15,
      rates: [{ quantity: 'sleeves', minutesPerUnit: 75 }],
      source: COMMON_PRACTICE,
    },
    continuity: 'interruptible',
    weatherLimits: null,
  },
  {
    kind: 'sealing',
    name: 'Seal the penetrations',
    scope: 'set',
    hatch: 'sealant',
    trade: 'mason',
    duration: {
      kind: 'work',
      crewSize: 1,
      setUpMinutes: 15,
      rates: [{ quantity: 'sleeves', minutesPerUnit: 30 }],
      source: COMMON_PRACTICE,
    },
    continuity: 'interruptible',
    weatherLimits: 'sealant',
  },
  {
    kind: 'electrical-rough',
    name: 'Electrical rough',
    scope: 'job',
    where: HEATED,
    hatch: 'electrical',
    trade: 'electrician',
    duration: {
      kind: 'work',
      crewSize: 1,
      setUpMinutes: 60,
      rates: [{ quantity: 'heatingSets', minutesPerUnit: 150 }],
      source: COMMON_PRACTICE,
    },
    continuity: 'interruptible',
    weatherLimits: null,
  },
  {
    kind: 'rough-inspection',
    name: 'Electrical rough inspected',
    scope: 'job',
    where: HEATED,
    hatch: 'none',
    trade: 'authority',
    duration: moment,
    continuity: 'continuous',
    weatherLimits: null,
  },
  {
    kind: 'hookup',
    name: 'Electrical hookup',
    scope: 'set',
    hatch: 'electrical',
    trade: 'electrician',
    duration: plain(180),
    continuity: 'interruptible',
    weatherLimits: null,
  },
  {
    kind: 'final-inspection',
    name: 'Final inspection',
    scope: 'job',
    hatch: 'none',
    trade: 'authority',
    duration: moment,
    continuity: 'continuous',
    weatherLimits: null,
  },
  {
    kind: 'energise',
    name: 'Energise',
    scope: 'set',
    hatch: 'electrical',
    trade: 'electrician',
    duration: plain(60),
    continuity: 'interruptible',
    weatherLimits: null,
  },
  {
    kind: 'hand-over',
    name: 'Hand over',
    scope: 'job',
    hatch: 'none',
    trade: 'office',
    duration: plain(60),
    continuity: 'interruptible',
    weatherLimits: null,
  },
];
