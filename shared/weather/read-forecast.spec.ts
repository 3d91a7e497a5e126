import { describe, expect, it } from '@jest/globals';
import fc from 'fast-check';
import { readForecast } from './read-forecast.js';

const HEAD = 'issued_at,2026-01-14T05:40-05:00\nat,temperature_f,wind_mph,rain_chance_pct,rain_in\n';
const csv = (...rows: string[]) => readForecast(HEAD + rows.join('\n'));
const at = (hour: number) => `2026-01-14T${String(hour).padStart(2, '0')}:00-05:00`;
const faults = (read: ReturnType<typeof readForecast>) =>
  read.ok ? [] : read.faults.map((fault) => `${fault.line}: ${fault.message}`);

describe('a forecast as CSV', () => {
  it('is read with its units', () => {
    const read = csv(`${at(6)},28,9,10,0`, `${at(7)},29.5,12,20,0.05`);
    expect(read).toEqual({
      ok: true,
      notes: [],
      forecast: {
        issuedAt: Date.UTC(2026, 0, 14, 10, 40),
        hours: [
          {
            at: Date.UTC(2026, 0, 14, 11),
            temperature: 28,
            dewPoint: null,
            wind: 9,
            gust: null,
            rainChance: 10,
            rainAmount: 0,
          },
          {
            at: Date.UTC(2026, 0, 14, 12),
            temperature: 29.5,
            dewPoint: null,
            wind: 12,
            gust: null,
            rainChance: 20,
            rainAmount: 0.05,
          },
        ],
      },
    });
  });

  it('converts metric columns once, at the edge', () => {
    const read = readForecast(
      `issued_at,${at(5)}\nat,temperature_c,dew_point_c,wind_kmh,gust_ms,rain_mm\n${at(6)},-10,-15,36,10,2.54\n`,
    );
    if (!read.ok) throw new Error('refused');
    const [hour] = read.forecast.hours;
    expect(hour?.temperature).toBeCloseTo(14, 10);
    expect(hour?.dewPoint).toBeCloseTo(5, 10);
    expect(hour?.wind).toBeCloseTo(22.369, 3);
    expect(hour?.gust).toBeCloseTo(22.369, 3);
    expect(hour?.rainAmount).toBeCloseTo(0.1, 10);
  });

  it('takes a byte order mark, other line ends, blank lines and spaces', () => {
    const text = `\uFEFFissued_at, ${at(5)}\r\nat , temperature_f\r\n\r\n${at(6)}, 28 \r\n\r\n`;
    expect(readForecast(text)).toMatchObject({ ok: true, forecast: { hours: [{ temperature: 28 }] } });
  });

  it('keeps an empty cell unknown and says so where the temperature is', () => {
    const read = csv(`${at(6)},28,,,`, `${at(7)},,9,10,0`);
    expect(read).toMatchObject({
      ok: true,
      notes: [{ line: 4, message: 'no temperature; the hour is unknown' }],
      forecast: { hours: [{ wind: null, rainAmount: null }, { temperature: null }] },
    });
  });

  it('takes a gap and says how long it is', () => {
    expect(csv(`${at(6)},28,9,10,0`, `${at(10)},28,9,10,0`)).toMatchObject({
      ok: true,
      notes: [{ line: 4, message: '3 hours before this line are missing; they are unknown' }],
    });
  });
});

describe('a forecast that is refused', () => {
  it('with an hour twice', () => {
    expect(faults(csv(`${at(6)},28,9,10,0`, `${at(6)},29,9,10,0`))).toEqual([
      '4: the same hour as line 3; keep one of them',
    ]);
  });

  it('with hours out of order', () => {
    expect(faults(csv(`${at(7)},28,9,10,0`, `${at(6)},29,9,10,0`))).toEqual([
      '4: earlier than line 3; put the hours in order',
    ]);
  });

  it('with rows that are not hourly', () => {
    expect(faults(csv(`${at(6)},28,9,10,0`, '2026-01-14T06:30-05:00,29,9,10,0'))).toEqual([
      '4: 30 minutes after line 3; hourly rows are needed',
    ]);
  });

  it('with times that are on no quarter', () => {
    expect(faults(csv('2026-01-14T06:07-05:00,29,9,10,0'))[0]).toContain('hourly rows are needed');
  });

  it('with °C under a name of °F, where they cannot be °F', () => {
    expect(faults(csv(`${at(6)},-95,9,10,0`))).toEqual([
      '3: temperature_f must be a number from -80 to 135 °F, or empty for unknown, got -95; is the unit right?',
    ]);
  });

  it('with a chance over 100 and a wind under 0', () => {
    expect(faults(csv(`${at(6)},28,-1,101,0`))).toHaveLength(2);
  });

  it.each(['warm', '28F', '1e3', '--4', '0x10'])('with the word %p for a number', (word) => {
    expect(faults(csv(`${at(6)},${word},9,10,0`))[0]).toContain(`got ${word}`);
  });

  it('with a time that has no offset: on a clock change it could be two', () => {
    expect(faults(csv('2026-11-01T01:00,28,9,10,0'))[0]).toBe(
      '3: "at" is no instant with an offset (2026-11-01T01:00); write it as 2026-01-14T06:00-05:00',
    );
  });

  it('with a day that does not exist', () => {
    expect(faults(csv('2026-02-30T01:00-05:00,28,9,10,0'))[0]).toContain('no instant');
  });

  it('cut short in the middle of a row', () => {
    expect(faults(csv(`${at(6)},28,9,10,0`, `${at(7)},28`))).toEqual([
      '4: has 2 cells, the head has 5; the file may be cut short',
    ]);
  });

  it('with quotes', () => {
    expect(faults(csv(`"${at(6)}",28,9,10,0`))).toEqual([
      '3: quotes are not read; write plain cells between commas',
    ]);
  });

  it('with a column nobody knows', () => {
    const read = readForecast(`issued_at,${at(5)}\nat,temperature\n${at(6)},28`);
    expect(faults(read)[0]).toContain(
      '2: unknown column "temperature"; known are at, temperature_f, temperature_c',
    );
  });

  it('with a name that every object has', () => {
    expect(
      faults(readForecast(`issued_at,${at(5)}\nat,temperature_f,constructor\n${at(6)},28,1`))[0],
    ).toContain('unknown column "constructor"');
  });

  it('with one thing in two units', () => {
    const read = readForecast(`issued_at,${at(5)}\nat,temperature_f,temperature_c\n${at(6)},28,-2`);
    expect(faults(read)).toEqual(['2: "temperature_f" and "temperature_c" say the same; keep one']);
  });

  it('without a temperature or a time', () => {
    expect(faults(readForecast(`issued_at,${at(5)}\nwind_mph\n9`))).toEqual(
      expect.arrayContaining([
        '2: column "at" is missing; it says when the hour begins',
        '2: add a column temperature_f or temperature_c',
      ]),
    );
  });

  it('without hours', () => {
    expect(faults(csv())).toEqual(['0: there are no hours; one row an hour is needed']);
  });

  it('without saying when it was issued', () => {
    expect(faults(readForecast(`at,temperature_f\n${at(6)},28`))[0]).toContain(
      '1: the first line must be issued_at',
    );
    expect(faults(readForecast(`issued_at,yesterday\nat,temperature_f\n${at(6)},28`))[0]).toContain(
      'issued_at',
    );
  });

  it.each(['', ' ', 'hello', ',,,\n,,,'])('that is %p', (text) => {
    expect(readForecast(text).ok).toBe(false);
  });

  it('names every fault, not the first', () => {
    expect(faults(csv(`${at(6)},hot,9,10,0`, `${at(6)},28,fast,10,0`))).toHaveLength(3);
  });
});

describe('a forecast as JSON', () => {
  const json = (value: unknown) => readForecast(JSON.stringify(value));

  it('says the same as the CSV', () => {
    const rows = [
      { at: at(6), temperature_f: 28, wind_mph: 9, rain_chance_pct: 10, rain_in: 0 },
      { at: at(7), temperature_f: 29, wind_mph: null, rain_chance_pct: 10, rain_in: 0 },
    ];
    const read = json({ issued_at: '2026-01-14T05:40-05:00', hours: rows });
    expect(read).toEqual(csv(`${at(6)},28,9,10,0`, `${at(7)},29,,10,0`));
  });

  it('takes a name left out as unknown', () => {
    const read = json({
      issued_at: at(5),
      hours: [
        { at: at(6), temperature_f: 28, gust_mph: 20 },
        { at: at(7), temperature_f: 28 },
      ],
    });
    expect(read).toMatchObject({ ok: true, forecast: { hours: [{ gust: 20 }, { gust: null }] } });
  });

  it('counts hours from 1 in its faults', () => {
    const hours = [
      { at: at(6), temperature_f: 28 },
      { at: at(7), temperature_f: 'hot' },
    ];
    expect(faults(json({ issued_at: at(5), hours }))[0]).toContain('2: temperature_f must be a number');
  });

  it.each<[string, string]>([
    ['{"issued_at": "2026-01-14T05:40-05:00", "hours": [', 'is no JSON; the file may be cut short'],
    ['[]', 'must be an object with issued_at and hours'],
    ['{"issued_at": 4, "hours": {}}', 'hours must be a list'],
    ['{"hours": [], "units": "F"}', 'unknown name "units"'],
    ['{"issued_at": "2026-01-14T05:40-05:00", "hours": [4]}', 'must be an object with at and values'],
  ])('%s is refused', (text, message) => {
    expect(faults(readForecast(text)).join()).toContain(message);
  });
});

describe('any text', () => {
  it('is read or refused, and never throws', () => {
    fc.assert(
      fc.property(
        fc.oneof(
          fc.string(),
          fc.json(),
          fc.string().map((rest) => HEAD + rest),
        ),
        (text) => {
          const read = readForecast(text);
          if (!read.ok) expect(read.faults.length).toBeGreaterThan(0);
        },
      ),
    );
  });

  it('of hours that are right comes back hour by hour', () => {
    const temperatures = fc.array(fc.integer({ min: -40, max: 110 }), { minLength: 1, maxLength: 17 });
    fc.assert(
      fc.property(temperatures, (values) => {
        const read = csv(...values.map((value, i) => `${at(6 + i)},${value},5,0,0`));
        if (!read.ok) throw new Error('refused');
        expect(read.forecast.hours.map((hour) => hour.temperature)).toEqual(values);
      }),
    );
  });
});
