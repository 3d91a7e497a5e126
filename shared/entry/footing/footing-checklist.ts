import { COMMON_PRACTICE, fromMemory, published, type Source } from '../source.js';

/** Something to look at in a footing before concrete. */
export interface FootingItem {
  readonly key: string;
  readonly text: string;
  readonly source: Source;
}

/** What is looked at before the footing is poured, in the order of the work. */
export const FOOTING_CHECKLIST: readonly FootingItem[] = [
  {
    key: 'bearing',
    text: 'Bottom on undisturbed ground, level, free of loose soil, water, ice and frost',
    source: fromMemory('IRC R403.1'),
  },
  {
    key: 'cover',
    text: 'Bars chaired 3 in off the earth and tied',
    source: published('ACI 318, cover of bars cast in place'),
  },
  {
    key: 'laps',
    text: 'Laps as long as size and grade ask, tied at both ends',
    source: published('IRC R608.5.4(1)'),
  },
  {
    key: 'dowel-holes',
    text: 'Dowel holes drilled into the existing wall, cleaned by brush and air, filled from the back as the adhesive asks',
    source: COMMON_PRACTICE,
  },
  {
    key: 'dowels',
    text: 'Dowels embedded as deep as drawn and lapped with the bars of the footing; none bent in place',
    source: COMMON_PRACTICE,
  },
  {
    key: 'starters',
    text: 'Starter bars for the block stand in its cells, capped',
    source: COMMON_PRACTICE,
  },
  {
    key: 'inspection',
    text: 'Footing inspection passed before concrete',
    source: published('IRC R109.1'),
  },
];
