import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import { Temporal } from 'temporal-polyfill';
import type { Phase } from '../../src/generated/prisma/client.js';
import { startService, type TestService } from '../support/service.js';
import { makeWorld, type PlanningWorld } from './planning-world.js';

/*
 * The record of a whole day is posted hour by hour, as a forecast that is right for six hours and mild after that. After
 * every post the holds that stand must cover exactly the hours that a plain reading of the limits closes, in a loop of its
 * own over the same numbers. The day is an ordinary one, and those on which clocks go forward and back in New York
 * (9 March and 2 November 2031), in °F and in °C. The limits are the defaults; `pointing` opens again later than it closes.
 */

const ZONE = 'America/New_York';
const HOUR = 3_600_000;
const RIGHT_FOR = 6;
const DAYS_POSTED = 4;

/** What the thermometer shows at each hour of the clock, in the unit of the record; rain in inches, chance in percent. */
const FAHRENHEIT = [
  38, 36, 34, 33, 31, 30, 29, 31, 35, 39, 42, 46, 50, 51, 53, 54, 52, 49.9, 45, 41, 38, 34, 32, 19,
];
const CELSIUS = [
  3, 2, 1, 0.5, -0.5, -1, -1.5, -0.6, 1.5, 4.4, 4.5, 8, 10, 10.5, 12, 12, 11, 9.9, 7, 5, 3, 1, 0, -7,
];
const RAIN: Record<number, number> = { 12: 0.03, 13: 0.2, 14: 0.06, 20: 0.02 };
const CHANCE: Record<number, number> = { 12: 55, 13: 90, 14: 80 };
const MILD = { F: 56, C: 13 };

type Unit = keyof typeof MILD;

/** One hour as it is posted. */
interface Row {
  readonly at: number;
  readonly t: number;
  readonly rain: number;
  readonly chance: number;
}

/** Whether the hour numbered `i` is closed, read plainly. */
type Reading = (rows: readonly Row[], i: number, inF: (t: number) => number) => boolean;

const somewhere = (rows: readonly Row[], from: number, to: number, test: (row: Row) => boolean) =>
  rows.slice(Math.max(0, from), to + 1).some(test);

/** The limits of the house as sentences in code; written without those of the product. */
const PLAIN: Record<string, Reading> = {
  // Sealant: 40 to 90 °F [published, UFGS 07 92 00]; dry for six hours, chance of rain to 50 % [common practice].
  sealant: (rows, i, inF) =>
    inF(rows[i]!.t) < 40 ||
    inF(rows[i]!.t) > 90 ||
    rows[i]!.chance > 50 ||
    somewhere(rows, i - 6, i, ({ rain }) => rain > 0.01),
  // Bed and stone: 50 °F [from memory, ANSI A108]; no rain of 0.05 in then and four hours after [common practice].
  stone: (rows, i, inF) => inF(rows[i]!.t) < 50 || somewhere(rows, i, i + 4, ({ rain }) => rain > 0.05),
  // Masonry: an enclosure at 20 °F [published, TMS 602-02]; rain 0.05 in, chance 80 % [common practice].
  masonry: (rows, i, inF) => inF(rows[i]!.t) <= 20 || rows[i]!.rain > 0.05 || rows[i]!.chance > 80,
  // Invented: closes under 32 °F, opens when two hours before were over 40 °F.
  pointing: (rows, i, inF) => {
    let closed = false;
    for (let k = 0; k <= i; k++) {
      if (inF(rows[k]!.t) < 32) closed = true;
      else if (closed && k >= 2 && inF(rows[k - 1]!.t) > 40 && inF(rows[k - 2]!.t) > 40) closed = false;
    }
    return closed;
  },
};

const POINTING = [
  {
    id: 'frost',
    measure: 'temperature',
    stop: 'below',
    value: 32,
    reopen: { value: 40, hours: 2 },
    text: 'Frost in the joint',
    source: { mark: 'C', text: 'common practice, no source' },
  },
];

const KINDS = Object.keys(PLAIN);
const WHOLE_DAY = Object.fromEntries(
  ['mon', 'tue', 'wed', 'thu', 'fri', 'sat', 'sun'].map((day) => [day, [['00:00', '24:00']]]),
);

describe('the record of a day', () => {
  let service: TestService;

  beforeAll(async () => {
    service = await startService();
  });
  afterAll(() => service.stop());

  /** A company that works around the clock, with a week of work of each kind. */
  async function workAround(from: number): Promise<{ world: PlanningWorld; phases: Phase[] }> {
    service.setClock(new Date(from).toISOString());
    const world = await makeWorld(service);
    await world.db.crew.updateMany({ where: { companyId: world.companyId }, data: { active: false } });
    const phases: Phase[] = [];
    for (const kind of KINDS) {
      const requiredCrewId = await world.crew(`Around the clock ${kind}`, ['mason'], { week: WHOLE_DAY });
      const chain = await world.chain(kind, {
        [kind]: { weatherLimitKey: kind, hours: 168, requiredCrewId },
      });
      phases.push(...Object.values(chain.phases));
    }
    const limits = JSON.stringify(POINTING);
    await world.office.change('saveWeatherLimits', { key: 'pointing', limits });
    return { world, phases };
  }

  /** The hours of the day as the clock shows them, and mild days after it. */
  function recordOf(date: string, unit: Unit): { rows: Row[]; hoursOfDay: number; start: number } {
    const day = Temporal.PlainDate.from(date);
    const start = day.toZonedDateTime({ timeZone: ZONE }).epochMilliseconds;
    const end = day.add({ days: 1 }).toZonedDateTime({ timeZone: ZONE }).epochMilliseconds;
    const hoursOfDay = (end - start) / HOUR;
    const table = unit === 'F' ? FAHRENHEIT : CELSIUS;
    const rows = Array.from({ length: hoursOfDay + 24 * DAYS_POSTED }, (_, i): Row => {
      const at = start + i * HOUR;
      if (i >= hoursOfDay) return { at, t: MILD[unit], rain: 0, chance: 0 };
      const { hour } = Temporal.Instant.fromEpochMilliseconds(at).toZonedDateTimeISO(ZONE);
      return { at, t: table[hour] ?? NaN, rain: RAIN[hour] ?? 0, chance: CHANCE[hour] ?? 0 };
    });
    return { rows, hoursOfDay, start };
  }

  /** A time as the site's clock shows it, with its offset: "2031-03-09T03:00:00-04:00". */
  const local = (at: number) =>
    Temporal.Instant.fromEpochMilliseconds(at)
      .toZonedDateTimeISO(ZONE)
      .toString({ timeZoneName: 'never', smallestUnit: 'second' });

  function post(world: PlanningWorld, rows: readonly Row[], issued: number, unit: Unit) {
    const lines = rows.map(({ at, t, rain, chance }) => `${local(at)},${t},5,5,${chance},${rain}`);
    const head = `at,temperature_${unit === 'F' ? 'f' : 'c'},wind_mph,gust_mph,rain_chance_pct,rain_in`;
    const text = [`issued_at,${local(issued)}`, head, ...lines].join('\n');
    const input = { siteId: world.siteId, source: 'record', text, format: 'csv' };
    return world.foreman.change('uploadForecast', input, '... on ForecastReceived { site { id } }');
  }

  /** Begins of the hours from now on that standing holds of a phase cover. */
  async function heldHours(world: PlanningWorld, phase: Phase, now: number): Promise<string[]> {
    const holds = await world.db.weatherHold.findMany({
      where: { phaseId: phase.id, liftedAt: null, endsAt: { gt: new Date(now) } },
      orderBy: { startsAt: 'asc' },
    });
    return holds.flatMap(({ startsAt, endsAt }) => {
      const from = Math.max(now, startsAt.getTime());
      const to = endsAt?.getTime() ?? Infinity;
      return Array.from({ length: (to - from) / HOUR }, (_, i) => local(from + i * HOUR));
    });
  }

  const heldBy = (phases: readonly Phase[], hours: readonly string[][]) =>
    Object.fromEntries(phases.map((phase, i) => [phase.kind, hours[i]]));

  it.each<[string, string, Unit, number, number]>([
    ['an ordinary day', '2031-01-14', 'F', 24, 4],
    ['the day clocks go forward', '2031-03-09', 'C', 23, 1],
    ['the day clocks go forward', '2031-03-09', 'F', 23, 4],
    ['the day clocks go back', '2031-11-02', 'C', 25, 4],
    ['the day clocks go back', '2031-11-02', 'F', 25, 1],
  ])(
    'on %s (%s, °%s, %i hours, posted every %i) opens and lifts holds where a plain reading of the limits says',
    async (_name, date, unit, length, step) => {
      const { rows, hoursOfDay, start } = recordOf(date, unit);
      expect(hoursOfDay).toBe(length);
      const { world, phases } = await workAround(start);
      const inF = (t: number) => (unit === 'F' ? t : t * 1.8 + 32);
      const seen = new Map<string, Set<string>>(KINDS.map((kind) => [kind, new Set()]));
      for (let hour = 0; hour < hoursOfDay; hour += step) {
        const now = start + hour * HOUR;
        service.setClock(new Date(now).toISOString());
        // What has been posted so far is right; what lies further ahead than six hours is forecast to be mild.
        const told = rows.map((row, i) =>
          i < hour + RIGHT_FOR ? row : { ...row, t: MILD[unit], rain: 0, chance: 0 },
        );
        expect(await post(world, told.slice(hour), now, unit)).toMatchObject({ site: { id: world.siteId } });
        const expected = phases.map(({ kind }) =>
          told.flatMap((row, i) => (i >= hour && PLAIN[kind]!(told, i, inF) ? [local(row.at)] : [])),
        );
        const held: string[][] = [];
        for (const phase of phases) held.push(await heldHours(world, phase, now));
        expect([local(now), heldBy(phases, held)]).toEqual([local(now), heldBy(phases, expected)]);
        phases.forEach(({ kind }, i) => {
          if (held[i]?.[0] === local(now)) seen.get(kind)?.add(local(now));
        });
      }
      if (step > 1) return;
      // The table must close and open each kind of work, or it would prove nothing.
      for (const kind of KINDS) {
        expect(seen.get(kind)!.size).toBeGreaterThan(0);
        expect(seen.get(kind)!.size).toBeLessThan(hoursOfDay);
      }
      // Frost from 4:00 on the clock holds pointing until two hours over 40 °F are over, whatever the clock did before.
      const pointing = [...seen.get('pointing')!].map((at) => at.slice(11, 16));
      expect(pointing.slice(0, 8)).toEqual([
        '04:00',
        '05:00',
        '06:00',
        '07:00',
        '08:00',
        '09:00',
        '10:00',
        '11:00',
      ]);
      expect(pointing).not.toContain('12:00');
    },
    60_000,
  );

  it('has the hour that comes twice, twice, and the one that is skipped not at all', async () => {
    for (const [date, hours] of [
      ['2031-03-09', ['00:00-05:00', '01:00-05:00', '03:00-04:00', '04:00-04:00']],
      ['2031-11-02', ['00:00-04:00', '01:00-04:00', '01:00-05:00', '02:00-05:00']],
    ] as const) {
      const { rows, start } = recordOf(date, 'F');
      const { world, phases } = await workAround(start);
      await post(world, rows, start, 'F');
      const sealant = phases.find(({ kind }) => kind === 'sealant')!;
      const held = await heldHours(world, sealant, start);
      expect(held.slice(0, 4).map((at) => `${at.slice(11, 16)}${at.slice(19)}`)).toEqual(hours);
    }
  });

  it('sends nothing when the same hour is posted again', async () => {
    const { rows, start } = recordOf('2031-11-02', 'C');
    const { world } = await workAround(start);
    await post(world, rows, start, 'C');
    const where = { companyId: world.companyId, topic: { startsWith: 'weather' } };
    const first = await world.db.outbox.count({ where });
    expect(first).toBe(KINDS.length);
    for (let minute = 1; minute <= 5; minute++) {
      service.setClock(new Date(start + minute * 60_000).toISOString());
      await post(world, rows, start + minute * 60_000, 'C');
    }
    expect(await world.db.outbox.count({ where })).toBe(first);
  });
});
