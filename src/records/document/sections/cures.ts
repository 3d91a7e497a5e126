import type { Block } from '../block.js';
import { CHART_HEIGHT, CHART_WIDTH, drawChart } from '../chart.js';
import type { RecordFacts, RecordJob } from '../../record-facts.js';
import { joined, when } from '../words.js';

type Placement = RecordJob['placements'][number];

/** A logger reads every few minutes for days: with more readings than this, the table has the first of each hour. */
export const MOST_ROWS = 200;
const HOUR = 3_600_000;

/** What was placed, with the temperatures read in it and the strength that they show; predictions have no place here. */
export function cures(facts: RecordFacts): Block[] {
  const { placements } = facts.job;
  return [
    { kind: 'section', text: 'Cure logs' },
    ...(placements.length === 0 ? [{ kind: 'text', text: 'No placement is on record.' } as const] : []),
    ...placements.flatMap((placement) => placementBlocks(placement, facts)),
  ];
}

function placementBlocks(placement: Placement, { company: { zone }, cures: all }: RecordFacts): Block[] {
  const cure = all.find(({ placementId }) => placementId === placement.id);
  const { readings } = placement;
  const last = cure?.course.at(-1);
  const shown = readings.length > MOST_ROWS ? firstOfEachHour(readings) : readings;
  return [
    { kind: 'heading', text: `${placement.phase.name}, placed ${when(placement.placedAt, zone)}` },
    {
      kind: 'pairs',
      rows: [
        ['Placed', `${placement.material} at ${placement.placedTempF} °F`],
        ['Protection', placement.protection.join(', ') || 'none'],
        ['Strength asked for', `${cure?.requiredPsi ?? 0} psi`],
        [
          'Strength by what was measured',
          last && cure?.words
            ? `${Math.floor(last.psi)} psi at the last reading. ${cure.words}`
            : 'nothing was measured, so nothing is shown',
        ],
      ],
    },
    ...(cure ? curves(placement, cure) : []),
    {
      kind: 'table',
      heads: ['Read', `In the ${placement.material}`, 'Air', 'By'],
      shares: [30, 22, 18, 30],
      rows: shown.map((reading) => [
        when(reading.at, zone),
        `${reading.concreteF} °F`,
        reading.airF === null ? '' : `${reading.airF} °F`,
        joined([reading.logger?.name, reading.by?.name]),
      ]),
      none: 'No temperature was read.',
    },
    ...(shown.length < readings.length
      ? [
          {
            kind: 'text',
            tone: 'small',
            text: `Of ${readings.length} readings the first of each hour is shown; the curve of the temperature has all.`,
          } as const,
        ]
      : []),
    ...[...new Set(placement.cautions)].map((text): Block => ({ kind: 'text', tone: 'caution', text })),
  ];
}

function firstOfEachHour(readings: Placement['readings']): Placement['readings'] {
  const hours = new Set<number>();
  return readings.filter(({ at }) => {
    const hour = Math.floor(Date.parse(at) / HOUR);
    if (hours.has(hour)) return false;
    hours.add(hour);
    return true;
  });
}

function curves(
  { placedAt, readings }: Placement,
  { course, requiredPsi }: RecordFacts['cures'][number],
): Block[] {
  const start = Date.parse(placedAt);
  const hours = (at: number): number => (at - start) / HOUR;
  const shared = {
    xWords: (x: number) => `${Math.round(x)} h`,
    yWords: (y: number) => String(Math.round(y)),
  };
  const charts = [
    {
      title: 'Temperature by the hours from placing, °F',
      lines: [{ points: readings.map(({ at, concreteF }) => [hours(Date.parse(at)), concreteF] as const) }],
      levels: [[32, '32 °F, freezing'] as const],
    },
    {
      title: 'Estimated strength by the hours from placing, psi',
      lines: [{ points: course.map(({ at, psi }) => [hours(at), psi] as const) }],
      levels: [[requiredPsi, `${requiredPsi} psi, asked for`] as const],
    },
  ];
  return charts.flatMap((chart): Block[] => {
    const svg = drawChart({ ...chart, ...shared });
    return svg
      ? [{ kind: 'figure', title: chart.title, svg, width: CHART_WIDTH, height: CHART_HEIGHT, sheet: false }]
      : [];
  });
}
