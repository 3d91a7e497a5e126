import { COMMON_PRACTICE, fromMemory, published } from '../../source.js';
import type { TemplateHoldPoint } from '../template-hold-point.js';
import { CAUTIONS } from './cautions.js';
import { confirm, measure } from './item.js';

const GFPE = published('NEC 426.28');

/** Hold points from sealing to hand-over. */
export const ELECTRICAL_HOLD_POINTS: readonly TemplateHoldPoint[] = [
  {
    kind: 'check',
    key: 'sealed',
    phase: 'sealing',
    gate: 'finish',
    title: 'Penetrations sealed',
    items: [
      confirm('backer', 'Backer in, sealant on dry clean faces'),
      confirm('flashing', 'Flashing laps the sleeve'),
      measure(
        'face-temperature',
        'Temperature of the faces',
        '°F',
        { atLeast: 40, atMost: 90 },
        published('UFGS 07 92 00'),
      ),
    ],
    waivable: true,
  },
  {
    kind: 'inspection',
    key: 'electrical-rough',
    phase: 'rough-inspection',
    gate: 'start',
    title: 'Electrical rough, before anything conceals it',
    items: [],
    caution: CAUTIONS.electrical,
    waivable: false,
  },
  {
    kind: 'reading',
    key: 'reading-before-hookup',
    phase: 'hookup',
    gate: 'start',
    title: 'Reading before the hookup',
    stage: 'beforeHookup',
    items: [],
    caution: CAUTIONS.electrical,
    waivable: false,
  },
  {
    kind: 'check',
    key: 'connection',
    phase: 'hookup',
    gate: 'finish',
    title: 'Disconnect and ground-fault protection',
    items: [
      confirm('disconnect', 'Disconnect in place and marked', fromMemory('NEC 426.50')),
      confirm('ground-fault', 'Ground-fault protection of equipment in place and tested', GFPE),
      confirm('marking', 'Marked as electric snow-melting where it must be', fromMemory('NEC 426.13')),
    ],
    caution: CAUTIONS.electrical,
    waivable: false,
  },
  {
    kind: 'check',
    key: 'guards',
    phase: 'final-inspection',
    gate: 'start',
    title: 'Guards and handrails',
    items: [
      confirm(
        'rails',
        'Handrail at four risers and more, guard over 30 in',
        published('IRC R311.7.8, R312.1'),
      ),
      confirm('posts', 'Posts drilled clear of the cable', COMMON_PRACTICE),
    ],
    caution: CAUTIONS.code,
    waivable: false,
  },
  {
    kind: 'inspection',
    key: 'final',
    phase: 'final-inspection',
    gate: 'start',
    title: 'Final inspection',
    items: [],
    caution: CAUTIONS.code,
    waivable: false,
  },
  {
    kind: 'check',
    key: 'run-test',
    phase: 'energise',
    gate: 'finish',
    title: 'Run test and set points',
    items: [
      measure('run-amperes', 'Current drawn in the run test', 'A', { atLeast: 0.1 }),
      confirm('set-points', 'Set points of the control entered'),
    ],
    caution: CAUTIONS.energise,
    waivable: false,
  },
  {
    kind: 'check',
    key: 'record',
    phase: 'hand-over',
    gate: 'finish',
    title: 'Record handed over',
    items: [confirm('record-given', 'Closing record and instructions given to the owner of the house')],
    waivable: true,
  },
];
