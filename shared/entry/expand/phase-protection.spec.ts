import { describe, expect, it } from '@jest/globals';
import { fahrenheit } from '../../units/temperature.js';
import { epochMs, HOUR_MS } from '../../units/time.js';
import { DEFAULT_LIMIT_SETS } from '../../weather/default-limit-sets.js';
import { weatherWindows } from '../../weather/weather-windows.js';
import { HEATED_ENTRY } from '../template/default/heated-entry.js';
import { checkedEntry } from '../testing/checked-entry.js';
import { expandTemplate } from './expand-template.js';
import { phaseProtection } from './phase-protection.js';

const start = epochMs(Date.UTC(2026, 0, 14));
const end = epochMs(start + HOUR_MS);
const fairAt = (temperature: number) => ({
  issuedAt: start,
  hours: Array.from({ length: 48 }, (_, i) => ({
    at: epochMs(start + i * HOUR_MS),
    temperature: fahrenheit(temperature),
    dewPoint: null,
    wind: null,
    gust: null,
    rainChance: null,
    rainAmount: null,
  })),
});

const runsAt = (temperature: number, cold: boolean): string[] => {
  const draft = expandTemplate(HEATED_ENTRY, checkedEntry(), { cold });
  return draft.phases
    .filter((phase) => {
      const limits = DEFAULT_LIMIT_SETS.find((set) => set.key === phase.weatherLimitKey)?.limits ?? [];
      const protection = phaseProtection(draft.equipmentHolds, phase.key);
      return weatherWindows(limits, fairAt(temperature), start, end, { protection }).closed.length === 0;
    })
    .map((phase) => phase.kind);
};

describe('protection of a phase', () => {
  it('is what is held from its start, each kind once, in order', () => {
    const holds = [
      { pool: 'heater', from: 'stone.walk' },
      { pool: 'blanket', from: 'stone.walk' },
      { pool: 'blanket', from: 'stone.walk' },
      { pool: 'enclosure', from: 'block' },
    ];
    expect(phaseProtection(holds, 'stone.walk')).toEqual(['blanket', 'heater']);
    expect(phaseProtection(holds, 'demo')).toEqual([]);
  });

  it('lets every phase run at 28 °F when it is planned for the cold', () => {
    const all = HEATED_ENTRY.phases.map((phase) => phase.kind);
    expect(new Set(runsAt(28, true))).toEqual(new Set(all));
  });

  it('is missed at 28 °F when it is not', () => {
    const stopped = HEATED_ENTRY.phases
      .map((phase) => phase.kind)
      .filter((kind) => !runsAt(28, false).includes(kind));
    expect(stopped).toEqual(['footing-pour', 'walk-base', 'veneer', 'stone', 'sealing']);
  });

  it('of blankets alone does not let concrete be placed at 15 °F', () => {
    expect(runsAt(15, true)).not.toContain('footing-pour');
    expect(runsAt(15, true)).toContain('stone');
  });
});
