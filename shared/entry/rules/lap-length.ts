import type { Inches } from '../../units/length.js';
import { leastLap, type BarGrade } from '../footing/rebar.js';
import { published } from '../source.js';
import type { Finding } from './finding.js';
import { say } from './say.js';
import { HAIR } from './spread.js';

/** Bars that carry on in one another lap by the length of their size and grade. */
export function lapLength(lap: Inches, bar: number, grade: BarGrade): Finding {
  const limit = leastLap(bar, grade);
  const ok = lap >= limit - HAIR;
  return {
    rule: 'lap-length',
    ok,
    measured: say(lap, 'in'),
    limit: `at least ${say(limit, 'in')} for #${bar} of grade ${grade}`,
    source: published('IRC R608.5.4(1)'),
    text: ok ? 'Bars lap enough' : 'Laps are too short: take longer bars or move the lap',
    caution: 'Where the engineer draws a longer lap, that one holds.',
  };
}
