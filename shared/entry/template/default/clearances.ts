import { COMMON_PRACTICE, type Source } from '../../source.js';
import type { TemplateClearance } from '../template.js';

const STATE_RULE: Source = {
  mark: 'C',
  text: "common practice, no source; notice and life differ by state: enter the state's own",
};

/** Leave from outside and what has to be ordered, with the lead times of common practice. */
export const CLEARANCES: readonly TemplateClearance[] = [
  { key: 'permit', kind: 'permit', title: 'Permit', leadDays: 10, lifeDays: 180, source: COMMON_PRACTICE },
  {
    key: 'mark-out',
    kind: 'markOut',
    title: 'Utility mark-out',
    leadDays: 4,
    lifeDays: 30,
    where: { kinds: ['landing', 'flight'] },
    source: STATE_RULE,
  },
  {
    key: 'cable',
    kind: 'material',
    title: 'Heating cable, made to length',
    leadDays: 18,
    lifeDays: null,
    where: { heated: true },
    source: COMMON_PRACTICE,
  },
  { key: 'stone', kind: 'material', title: 'Stone', leadDays: 12, lifeDays: null, source: COMMON_PRACTICE },
  {
    key: 'veneer-corners',
    kind: 'material',
    title: 'Veneer flats and corners',
    leadDays: 14,
    lifeDays: null,
    where: { kinds: ['landing', 'flight'] },
    source: COMMON_PRACTICE,
  },
];
