import { describe, expect, it } from '@jest/globals';
import fc from 'fast-check';
import { READING_STAGES } from '../entry/template/words.js';
import { megaohms, ohms, ohmsPerFoot, volts } from '../units/electrical.js';
import { fahrenheit } from '../units/temperature.js';
import { epochMs } from '../units/time.js';
import { insulationTrend } from './insulation-trend.js';
import { judgeReading } from './judge-reading.js';
import { labelOf, readingOf } from './testing/set-fixture.js';

describe('a good reading', () => {
  const judged = judgeReading(labelOf(), readingOf());

  it('is accepted and forbids nothing', () => {
    expect(judged).toMatchObject({ ok: true, reasons: [], warnings: [], forbids: null });
  });

  it('shows resistance and insulation with limit, source and caution', () => {
    expect(judged.findings).toEqual([
      {
        rule: 'resistance',
        ok: true,
        measured: "19.20 Ω at the label's temperature (meter 19.2 Ω)",
        limit: '18.24 to 21.12 Ω',
        source: { mark: 'M', text: expect.stringContaining('IEC 60800') },
        text: 'Resistance agrees with the label',
        caution: expect.stringContaining('De-energise'),
      },
      {
        rule: 'insulation',
        ok: true,
        measured: '500 MΩ at 500 V',
        limit: 'at least 20 MΩ at 500 V or more',
        source: { mark: 'M', text: expect.stringContaining('IEEE 515.1') },
        text: 'Insulation is good',
        caution: expect.stringContaining('test voltage can hurt'),
      },
    ]);
  });
});

describe('a bad reading', () => {
  it('of a short or shortened cable is too low', () => {
    const judged = judgeReading(labelOf(), readingOf({ ohms: ohms(17) }));
    expect(judged).toMatchObject({ ok: false, forbids: 'covering the cable' });
    expect(judged.reasons).toEqual([expect.stringContaining('too low')]);
  });

  it('of a break is too high', () => {
    expect(judgeReading(labelOf(), readingOf({ ohms: ohms(2000) })).reasons).toEqual([
      expect.stringContaining('too high'),
    ]);
  });

  it('of damaged insulation says not to cover', () => {
    expect(judgeReading(labelOf(), readingOf({ megaohms: megaohms(2) })).reasons).toEqual([
      expect.stringContaining('do not cover'),
    ]);
  });

  it('at too low a test voltage does not count, however high it reads', () => {
    const judged = judgeReading(labelOf(), readingOf({ testVolts: volts(50), megaohms: megaohms(9999) }));
    expect(judged.ok).toBe(false);
    expect(judged.reasons).toEqual(['Tested at too low a voltage: test again at 500 V']);
  });

  it('names both faults where there are two', () => {
    const judged = judgeReading(labelOf(), readingOf({ ohms: ohms(5), megaohms: megaohms(0) }));
    expect(judged.reasons).toHaveLength(2);
  });

  it.each([
    ['received', 'laying the cable'],
    ['laid', 'covering the cable'],
    ['covered', 'finishing the stone over it and hooking the set up'],
    ['beforeHookup', 'hooking the set up'],
  ] as const)('at the stage %s forbids %s', (stage, forbids) => {
    expect(judgeReading(labelOf(), readingOf({ stage, ohms: ohms(1) })).forbids).toBe(forbids);
  });

  it('forbids something at every stage there is', () => {
    for (const stage of READING_STAGES) {
      expect(judgeReading(labelOf(), readingOf({ stage, ohms: ohms(1) })).forbids).toEqual(
        expect.any(String),
      );
    }
  });
});

describe("the set's own tolerance", () => {
  it('goes before the common one, and says so', () => {
    const tight = labelOf({ toleranceLow: -0.02, toleranceHigh: 0.02 });
    const judged = judgeReading(tight, readingOf({ ohms: ohms(20) }));
    expect(judged.ok).toBe(false);
    expect(judged.findings[0]?.source).toEqual({
      mark: 'P',
      text: expect.stringContaining("set's own label"),
    });
  });

  it('of insulation too', () => {
    const strict = labelOf({ minInsulation: megaohms(100) });
    expect(judgeReading(strict, readingOf({ megaohms: megaohms(99) })).ok).toBe(false);
    expect(judgeReading(strict, readingOf({ megaohms: megaohms(100) })).ok).toBe(true);
  });
});

describe('correction', () => {
  it('takes the cold lead off, both conductors of it', () => {
    // Computed by hand: 2 × 25 ft × 0.02 Ω/ft = 1 Ω.
    const label = labelOf({ coldLeadOhmsPerFoot: ohmsPerFoot(0.02) });
    expect(judgeReading(label, readingOf({ ohms: ohms(22) })).ok).toBe(true);
    expect(judgeReading(labelOf(), readingOf({ ohms: ohms(22) })).ok).toBe(false);
    expect(judgeReading(label, readingOf({ ohms: ohms(19) })).ok).toBe(false);
  });

  it('brings a cold reading back to the temperature of the label', () => {
    // Computed by hand: 14 °F is 30 K under 68 °F; 1 − 0.004 × 30 = 0.88 of the label.
    const label = labelOf({ temperatureCoefficient: 0.004 });
    const cold = readingOf({ ohms: ohms(19.2 * 0.88), cableTemperature: fahrenheit(14) });
    expect(judgeReading(label, cold).findings[0]?.measured).toContain('19.20 Ω');
    expect(judgeReading(label, cold).ok).toBe(true);
    expect(judgeReading(labelOf(), cold).ok).toBe(false);
  });

  it('accepts a true cable at any temperature and cold lead', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -20, max: 120, noNaN: true }),
        fc.double({ min: 0, max: 0.005, noNaN: true }),
        fc.double({ min: 0, max: 0.02, noNaN: true }),
        (temperature, coefficient, perFoot) => {
          const label = labelOf({
            temperatureCoefficient: coefficient,
            coldLeadOhmsPerFoot: ohmsPerFoot(perFoot),
          });
          const grown = 19.2 * (1 + (coefficient * (temperature - 68) * 5) / 9);
          const meter = ohms(grown + 50 * perFoot);
          const reading = readingOf({ ohms: meter, cableTemperature: fahrenheit(temperature) });
          expect(judgeReading(label, reading).ok).toBe(true);
        },
      ),
    );
  });
});

describe('the trend of the insulation', () => {
  const before = [readingOf({ megaohms: megaohms(1000) }), readingOf({ megaohms: megaohms(5000) })];

  it('warns of a fall of a decade though the reading passes', () => {
    const judged = judgeReading(labelOf(), readingOf({ megaohms: megaohms(500) }), before);
    expect(judged.ok).toBe(true);
    expect(judged.warnings).toEqual([expect.stringContaining('fell from 5000 to 500 MΩ')]);
  });

  it('does not warn of less', () => {
    expect(insulationTrend(readingOf({ megaohms: megaohms(501) }), before)).toBeUndefined();
  });

  it('does not warn at the first reading', () => {
    expect(insulationTrend(readingOf({ megaohms: megaohms(20) }), [])).toBeUndefined();
  });

  it('leaves a dead short to the limit: that is no trend', () => {
    expect(insulationTrend(readingOf({ megaohms: megaohms(0) }), before)).toBeUndefined();
    expect(judgeReading(labelOf(), readingOf({ megaohms: megaohms(0) }), before).ok).toBe(false);
  });
});

describe('a resistance that wanders inside its tolerance', () => {
  const first = readingOf({ stage: 'received', at: epochMs(0), ohms: ohms(19.2) });
  const warningsAt = (now: number, earlier = [first]) =>
    judgeReading(labelOf(), readingOf({ at: epochMs(1), ohms: ohms(now) }), earlier).warnings;

  it.each([
    [19.2, 0],
    [19.77, 0],
    [18.63, 0],
    [19.8, 1],
    [18.6, 1],
  ])('of %p Ω after 19.2 Ω: %p warnings', (now, count) => {
    expect(warningsAt(now)).toHaveLength(count);
  });

  it('is held against the first reading, not the last, and says both', () => {
    const between = readingOf({ at: epochMs(0.5), ohms: ohms(19.7) });
    expect(warningsAt(20.2, [between, first])[0]).toContain('from 19.20 to 20.20 Ω');
  });

  it('warns of nothing by itself, and the reading stays accepted', () => {
    expect(warningsAt(20, [])).toEqual([]);
    expect(judgeReading(labelOf(), readingOf({ ohms: ohms(20) }), [first]).ok).toBe(true);
  });

  it('is compared with the temperature taken out', () => {
    const label = labelOf({ temperatureCoefficient: 0.004 });
    const warm = readingOf({ at: epochMs(1), ohms: ohms(19.2 * 1.08), cableTemperature: fahrenheit(104) });
    expect(judgeReading(label, warm, [first]).warnings).toEqual([]);
  });
});
