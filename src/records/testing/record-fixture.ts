import { entryDrawings } from '../../../shared/drawing/entry-drawings.js';
import { designEntry } from '../../../shared/entry/design/design-entry.js';
import { checkMeasurement } from '../../../shared/entry/measurement/check-measurement.js';
import { drawnEntryFixture } from '../../../shared/entry/testing/site-plan-fixture.js';
import type { RecordFacts, RecordFinding } from '../record-facts.js';

/** The drawings of an invented entry, made once. */
const drawings = () => {
  const entry = drawnEntryFixture() as { heatingSets: object[] };
  Object.assign(entry.heatingSets[0] ?? {}, { heatedFeet: 260, watts: 3120, ohms: 18.46, minBendInches: 1 });
  const check = checkMeasurement(entry);
  if (!check.ok) throw new Error(JSON.stringify(check.faults));
  return entryDrawings(designEntry(check.measurement));
};
let drawn: ReturnType<typeof drawings> | undefined;

const finding = (more: Partial<RecordFinding> = {}): RecordFinding => ({
  ok: true,
  text: 'The resistance agrees with the label',
  measured: '18.52 Ω',
  limit: '17.54 to 20.31 Ω',
  mark: 'T',
  source: 'label of the set',
  caution: null,
  waived: null,
  ...more,
});

const at = (day: number, hour: number): string => new Date(Date.UTC(2031, 0, day, hour)).toISOString();
const ines = { name: 'I. Rowe' };
const STAGES = ['received', 'laid', 'covered', 'beforeHookup'] as const;
const cureReadings = Array.from({ length: 49 }, (_, i) => ({
  at: at(9, 14 + i),
  concreteF: Math.round((58 + 14 * Math.sin(i / 9) - i / 10) * 10) / 10,
  airF: i % 4 === 0 ? 24 : null,
  by: i === 0 ? ines : null,
  logger: i === 0 ? null : { name: 'Probe 3' },
}));

/** The facts of an invented job that is done, with something in every section; a part of the job may be set otherwise. */
export function recordFixture(
  more: Partial<RecordFacts> = {},
  job: Partial<RecordFacts['job']> = {},
): RecordFacts {
  drawn ??= drawings();
  return {
    audience: 'company',
    company: { name: 'Larkspur Entries', zone: 'America/New_York' },
    asOf: at(28, 15),
    job: {
      id: 'job',
      number: 101,
      name: 'Larch Street',
      ownerName: 'R. Alder',
      state: 'done',
      site: {
        address: '4 Larch Street',
        town: 'Alder Mills',
        frostDepthInches: 48,
        frostSource: 'building department',
        authority: { name: 'Building office' },
      },
      areas: [
        { name: 'Landing', kind: 'landing', heated: true },
        { name: 'Steps', kind: 'flight', heated: true },
        { name: 'Walk', kind: 'walk', heated: false },
      ],
      quantities: [{ label: 'Block', value: 212.4, unit: 'pieces' }],
      findings: [
        finding({
          ok: false,
          text: 'The landing is shallow',
          measured: '34 in',
          limit: 'at least 36 in',
          mark: 'P',
          source: 'model code',
          waived: 'agreed with the authority by phone',
        }),
        finding(),
      ],
      design: { drawings: drawn.map((one) => ({ ...one })) },
      phases: [
        {
          id: 'p1',
          name: 'Dig',
          state: 'done',
          actualStart: at(6, 13),
          actualFinish: at(7, 20),
          note: 'Rock at the north end',
          actualCrew: { name: 'Diggers' },
          area: null,
        },
        {
          id: 'p2',
          name: 'Stone',
          state: 'done',
          actualStart: at(20, 13),
          actualFinish: at(22, 20),
          note: null,
          actualCrew: { name: 'Masons' },
          area: { name: 'Landing' },
        },
      ],
      holdPoints: [
        {
          key: 'bottom',
          title: 'Bottom of the footing',
          kind: 'check',
          gate: 'finish',
          state: 'released',
          reason: null,
          caution: 'Codes differ by place and edition; the authority having jurisdiction decides.',
          decidedAt: at(7, 19),
          decidedBy: { name: 'T. Hale' },
          phase: { name: 'Dig' },
          items: [{ id: 'depth', label: 'Depth below grade', unit: 'in', limitText: 'at least 48 in' }],
          measured: [{ itemId: 'depth', text: '50 in' }],
          findings: [],
        },
        {
          key: 'record',
          title: 'Photos in the file',
          kind: 'check',
          gate: 'finish',
          state: 'waived',
          reason: 'nothing to see under the snow',
          caution: null,
          decidedAt: at(22, 15),
          decidedBy: ines,
          phase: { name: 'Stone' },
          items: [],
          measured: [],
          findings: [],
        },
        {
          key: 'run-test',
          title: 'Run test and set points',
          kind: 'check',
          gate: 'finish',
          state: 'released',
          reason: null,
          caution: null,
          decidedAt: at(28, 14),
          decidedBy: { name: 'M. Voss' },
          phase: { name: 'Energise' },
          items: [
            { id: 'run', label: 'Current drawn in the run test', unit: 'A', limitText: 'at least 0.1 A' },
            { id: 'set', label: 'Set points of the control entered', unit: null, limitText: 'yes' },
          ],
          measured: [
            { itemId: 'run', text: '12.9 A' },
            { itemId: 'set', text: 'yes' },
          ],
          findings: [],
        },
      ],
      inspections: [
        {
          title: 'Footing inspected before concrete',
          attempt: 2,
          state: 'passed',
          visitFrom: at(8, 14),
          resultAt: at(8, 15),
          inspector: 'C. Penn',
          note: 'bars tied',
        },
      ],
      clearances: [
        { title: 'Utility mark-out', state: 'cleared', clearedAt: at(3, 15), reference: 'T-4471' },
      ],
      heatingSets: [
        {
          name: 'Set 1',
          watts: 3120,
          volts: 240,
          ohms: 18.46,
          labelTempF: 68,
          heatedFeet: 260,
          coldLeadFeet: 25,
          cureDays: 28,
          receivedAt: at(5, 15),
          cautions: ['Never energise the cable to test it coiled or to cure mortar.'],
          areas: [{ name: 'Landing' }, { name: 'Steps' }],
          readings: STAGES.map((stage, i) => ({
            stage,
            at: at(5 + 5 * i, 15),
            ohms: 18.52 + i * 0.11,
            megaohms: 1200 - i * 180,
            testVolts: 1000,
            cableTempF: 41 + i,
            accepted: true,
            warnings:
              i === 3 ? ['The insulation has fallen by half: test it again before it is covered.'] : [],
            area: i === 1 ? { name: 'Landing' } : null,
            by: { name: 'T. Hale' },
            findings: [finding({ measured: `${(18.52 + i * 0.11).toFixed(2)} Ω` })],
          })),
        },
      ],
      hookups: [
        {
          id: 'h1',
          state: 'done',
          doneAt: at(25, 16),
          energiseAllowedAt: at(27, 15),
          energisedAt: at(28, 14),
          cautions: ['Electrical work by a licensed electrician under permit; de-energise, lock, verify.'],
          coldLeadFreeInches: 84,
          electrician: { name: 'M. Voss' },
          heatingSet: { name: 'Set 1' },
          circuit: { text: '13.0 A at 240 V: a 20 A breaker', source: 'NEC 426.4' },
        },
      ],
      placements: [
        {
          id: 'c1',
          placedAt: at(9, 13),
          material: 'concrete',
          placedTempF: 62,
          protection: ['blanket', 'enclosure'],
          cautions: ['A strength figure is an estimate from temperature.'],
          phase: { name: 'Footing pour' },
          readings: cureReadings,
        },
      ],
      photos: [
        {
          id: 'f1',
          caption: 'North end, 50 in deep',
          takenAt: at(7, 18),
          releasedAt: at(8, 12),
          width: 800,
          height: 600,
          takenBy: { name: 'T. Hale' },
          phase: { name: 'Dig' },
        },
      ],
      ...job,
    },
    cures: [
      {
        placementId: 'c1',
        requiredPsi: 1500,
        course: cureReadings.map(({ at: moment }, i) => ({
          at: Date.parse(moment),
          psi: 2600 * (1 - Math.exp(-i / 22)),
        })),
        words: 'Method: equivalent age (published). Caution: an estimate from temperature.',
      },
    ],
    connections: [{ hookupId: 'h1', values: [['Breaker, A', '20']] }],
    pictures: [],
    journal: [
      { at: at(6, 13), action: 'phase started', reason: null, person: { name: 'T. Hale' } },
      { at: at(22, 15), action: 'hold point waived', reason: 'nothing to see under the snow', person: ines },
      { at: at(28, 14), action: 'energised', reason: null, person: null },
    ],
    ...more,
  };
}
