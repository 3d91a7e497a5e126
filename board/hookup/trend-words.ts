import type { HeatingSetFieldsFragment } from '../api/documents.js';
import { STAGE_WORDS } from '../words/state-words.js';

type Reading = HeatingSetFieldsFragment['readings'][number];

/** One step of the trend: the reading, and what it is against the one before. */
export interface TrendStep {
  readonly stage: string;
  readonly ohms: string;
  readonly megaohms: string;
}

const signed = (value: number, digits: number): string =>
  `${value < 0 ? '−' : '+'}${Math.abs(value).toFixed(digits)}`;

/** The readings in turn: resistance against the label in percent, insulation against the reading before. */
export function trendSteps(labelOhms: number, readings: readonly Reading[]): TrendStep[] {
  return readings.map((reading, index) => {
    const before = readings[index - 1];
    const off = labelOhms > 0 ? ` (${signed((100 * (reading.ohms - labelOhms)) / labelOhms, 1)} %)` : '';
    const fell = before && before.megaohms !== reading.megaohms ? `, was ${before.megaohms}` : '';
    return {
      stage: STAGE_WORDS[reading.stage],
      ohms: `${reading.ohms} Ω${off}`,
      megaohms: `${reading.megaohms} MΩ${fell}`,
    };
  });
}
