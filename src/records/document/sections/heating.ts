import type { Block } from '../block.js';
import { CHART_HEIGHT, CHART_WIDTH, drawChart } from '../chart.js';
import type { RecordFacts, RecordJob } from '../../record-facts.js';
import { figure, findingWords, joined, STAGES, when } from '../words.js';

type HeatingSet = RecordJob['heatingSets'][number];
type Reading = HeatingSet['readings'][number];

/** The label of every heating set, its readings at each stage with their limits, and how they moved. */
export function heating({ job, company }: RecordFacts): Block[] {
  return [
    { kind: 'section', text: 'Heating sets' },
    ...(job.heatingSets.length === 0
      ? [{ kind: 'text', text: 'This job has no heating set.' } as const]
      : []),
    ...job.heatingSets.flatMap((set) => setBlocks(set, company.zone)),
  ];
}

function setBlocks(set: HeatingSet, zone: string): Block[] {
  return [
    { kind: 'heading', text: set.name },
    {
      kind: 'pairs',
      rows: [
        [
          set.receivedAt ? 'Label' : 'Design, not delivered',
          `${set.watts} W at ${set.volts} V, ${set.ohms} Ω at ${set.labelTempF} °F`,
        ],
        ['Lengths', `${set.heatedFeet} ft of heating cable, ${set.coldLeadFeet} ft of cold lead`],
        ['Runs through', set.areas.map(({ name }) => name).join(', then ')],
        ['Received', when(set.receivedAt, zone) || 'not yet'],
        ['Cure of the bed', `${set.cureDays} days before it is energised`],
      ],
    },
    {
      kind: 'table',
      heads: ['Stage', 'When', 'By', 'Ω', 'MΩ', 'Test V', 'Cable °F', 'Against its limits'],
      shares: [13, 12, 10, 6, 6, 6, 7, 40],
      rows: set.readings.map((reading) => [
        joined([STAGES[reading.stage], reading.area?.name], ': '),
        when(reading.at, zone),
        reading.by?.name ?? '',
        figure(reading.ohms),
        figure(reading.megaohms),
        figure(reading.testVolts),
        figure(reading.cableTempF),
        joined(
          [
            reading.accepted ? 'Within.' : 'OUTSIDE.',
            change(set, reading),
            ...reading.findings.map(findingWords),
            ...reading.warnings,
          ],
          ' ',
        ),
      ]),
      none: 'No reading is on record.',
    },
    ...trend(set),
    ...[...new Set(set.cautions)].map((text): Block => ({ kind: 'text', tone: 'caution', text })),
  ];
}

/** How far a resistance has moved since the first reading of the set. */
function change({ readings }: HeatingSet, { ohms }: Reading): string {
  const first = readings[0]?.ohms;
  if (!first || ohms === first) return '';
  const moved = ((ohms - first) / first) * 100;
  return `${moved > 0 ? '+' : ''}${moved.toFixed(1)} % since the first reading.`;
}

/** Resistance and insulation from reading to reading. */
function trend({ readings, ohms, labelTempF }: HeatingSet): Block[] {
  const xTicks = readings.map((_, i) => i + 1);
  const charts = [
    {
      title: 'Resistance from reading to reading, Ω',
      of: (one: Reading) => one.ohms,
      levels: [[ohms, `${figure(ohms)} Ω, label at ${labelTempF} °F`] as const],
    },
    {
      title: 'Insulation from reading to reading, MΩ',
      of: (one: Reading) => one.megaohms,
      levels: [],
    },
  ];
  return charts.flatMap(({ title, of, levels }): Block[] => {
    const svg = drawChart({
      title,
      lines: [{ points: readings.map((reading, i) => [i + 1, of(reading)]), marked: true }],
      levels,
      xTicks,
      xWords: (x) => `no. ${x}`,
      yWords: figure,
    });
    return svg
      ? [{ kind: 'figure', title, svg, width: CHART_WIDTH, height: CHART_HEIGHT, sheet: false }]
      : [];
  });
}
