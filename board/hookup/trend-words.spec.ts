import { describe, expect, it } from '@jest/globals';
import { trendSteps } from './trend-words.js';

const reading = (stage: string, ohms: number, megaohms: number) =>
  ({ id: stage, stage, ohms, megaohms }) as unknown as Parameters<typeof trendSteps>[1][number];

describe('the trend of readings', () => {
  it('sets resistance against the label and insulation against the reading before', () => {
    const steps = trendSteps(20, [
      reading('received', 20, 900),
      reading('laid', 20.5, 900),
      reading('covered', 19.8, 40),
    ]);
    expect(steps.map(({ ohms }) => ohms)).toEqual(['20 Ω (+0.0 %)', '20.5 Ω (+2.5 %)', '19.8 Ω (−1.0 %)']);
    expect(steps.map(({ megaohms }) => megaohms)).toEqual(['900 MΩ', '900 MΩ', '40 MΩ, was 900']);
  });

  it('says no percent of a label that has none', () => {
    expect(trendSteps(0, [reading('laid', 20, 900)])[0]?.ohms).toBe('20 Ω');
    expect(trendSteps(20, [])).toEqual([]);
  });
});
