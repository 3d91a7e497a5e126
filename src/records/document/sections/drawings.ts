import type { Block } from '../block.js';
import type { RecordFacts } from '../../record-facts.js';

/** The plan of every heating set and the section, each a sheet to measure from. */
export function drawings({ job }: RecordFacts): Block[] {
  const sheets = job.design?.drawings ?? [];
  return [
    { kind: 'section', text: 'Cable layout and section' },
    {
      kind: 'text',
      text:
        sheets.length > 0
          ? 'The next sheets are to scale when they are printed without fitting to the page; the stroke of one inch under each shows whether they are. They are drawn from the measurement on record, corrected where it was corrected; photos and readings show what was laid.'
          : 'No drawing can be made from the measurement on record.',
    },
    ...sheets.map(({ title, scale, svg, width, height }): Block => ({
      kind: 'figure',
      title: `${title}, 1 : ${scale}`,
      svg,
      width,
      height,
      sheet: true,
    })),
  ];
}
