import type { GateFieldsFragment } from '../../api/documents.js';

/** The hold points at one end of a phase, as one mark. */
export interface GateMark {
  readonly end: 'start' | 'finish';
  /** The hold point that decides how the mark looks: an open one before a decided one. */
  readonly shown: GateFieldsFragment;
  readonly count: number;
  readonly open: number;
}

const URGENCY: readonly GateFieldsFragment['state'][] = ['refused', 'open', 'waived', 'released'];

/** One mark for each end of a phase that has hold points. */
export function gateMarks(holdPoints: readonly GateFieldsFragment[]): GateMark[] {
  return (['start', 'finish'] as const).flatMap((end) => {
    const here = holdPoints.filter(({ gate }) => gate === end);
    const [shown] = [...here].sort((a, b) => URGENCY.indexOf(a.state) - URGENCY.indexOf(b.state));
    if (!shown) return [];
    const open = here.filter(({ state }) => state === 'open' || state === 'refused').length;
    return [{ end, shown, count: here.length, open }];
  });
}
