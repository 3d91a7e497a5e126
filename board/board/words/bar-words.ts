import { stretchWords } from '../../time/moment-words.js';
import type { PlacedBar } from '../layout/lay-out-row.js';
import { gateWords } from '../../words/gate-words.js';
import { crewWords, phaseTitle, stateWords } from '../../words/phase-words.js';

/** Everything a bar shows, as one sentence after the other. */
export function barWords({ phase, times, rule }: PlacedBar, zone: string): string {
  const sentences = [
    `Job ${phase.job.number}, ${phaseTitle(phase)}: ${stateWords(phase)}`,
    stretchWords(times.from, times.to, zone),
    crewWords(phase),
    phase.planned?.critical && phase.state !== 'done' ? 'Critical' : '',
    phase.planned?.weatherUnknown && phase.state === 'waiting' ? 'Weather unknown' : '',
    ...phase.holdPoints.map(gateWords),
    rule ? `Committed ${stretchOf(phase.commitment, zone)}` : '',
  ];
  return `${sentences.filter(Boolean).join('. ')}.`;
}

function stretchOf(commitment: PlacedBar['phase']['commitment'], zone: string): string {
  if (!commitment) return '';
  return stretchWords(Date.parse(commitment.startAt), Date.parse(commitment.finishAt), zone);
}
