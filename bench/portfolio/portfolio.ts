import { calendarFromWeek } from '../../shared/schedule/calendar-from-week.js';
import type { Link, Phase, PlanInput, WeatherSet } from '../../shared/schedule/model.js';
import { slot } from '../../shared/schedule/slot.js';
import { comingInTurn } from './coming-in-turn.js';
import { seeded } from './seeded.js';

const TRADES = ['labour', 'mason', 'mason', 'cable', 'mason', 'electrician'];

/** How the jobs of a portfolio come in. */
export interface Coming {
  /** Over the horizon, so that the mason crews are about 80 % busy; all at once when left out. */
  readonly staggered?: boolean | undefined;
}

/** An invented portfolio: chains of sixteen phases with cures, weather, blankets held over cures and both kinds of lag. */
export function portfolio(jobs: number, { staggered = false }: Coming = {}): PlanInput {
  const pick = seeded(20_240_111);
  const horizon = 96 * 7 * 52 * 3;
  const hours = [{ from: '07:00', to: '15:30' }];
  const week = {
    zone: 'America/New_York',
    weekly: { monday: hours, tuesday: hours, wednesday: hours, thursday: hours, friday: hours },
    exceptions: {},
  };
  const open = calendarFromWeek(week, Date.UTC(2024, 0, 8, 5), horizon);
  const weather: WeatherSet[] = [];
  const phases: Phase[] = [];
  const links: Link[] = [];
  for (let j = 0; j < jobs; j++) {
    const holds = Array.from({ length: 6 }, () => {
      const from = slot(pick(96 * 60));
      const cause = { kind: 'limit', limitId: 'air', value: 30, hour: from, text: 'below 40 °F' } as const;
      return { from, to: slot(from + 8 + pick(60)), cause };
    });
    weather.push({ id: `site-${j}`, holds });
    for (let p = 0; p < 16; p++) {
      const id = `${j}-${String(p).padStart(2, '0')}`;
      const cure = p === 5 || p === 12;
      const pour = p === 4 || p === 11;
      phases.push({
        id,
        jobId: `job-${j}`,
        duration: cure
          ? { kind: 'elapsed', slots: 96 * (1 + pick(3)) }
          : {
              kind: 'work',
              slots: 4 + pick(40 - (pour ? 20 : 0)),
              mode: pour ? 'continuous' : 'interruptible',
            },
        ...(cure
          ? {}
          : { trade: TRADES[p % TRADES.length] ?? 'mason', weatherIds: p % 3 === 0 ? [] : [`site-${j}`] }),
        ...(pour
          ? {
              holds: [
                {
                  poolId: `pool-${pick(3)}`,
                  quantity: 1 + pick(3),
                  untilPhaseId: `${j}-${String(p + 1).padStart(2, '0')}`,
                },
              ],
            }
          : {}),
      });
      if (p === 0) continue;
      const lag = pick(4) === 0 ? pick(16) : 0;
      const lagIn = pick(2) === 0 ? 'working' : 'elapsed';
      const from = `${j}-${String(p - 1).padStart(2, '0')}`;
      links.push({ id: `link-${id}`, from, to: id, kind: pick(8) === 0 ? 'SS' : 'FS', lag, lagIn });
    }
  }
  const input: PlanInput = {
    horizon,
    now: slot(0),
    freezeUntil: slot(0),
    calendars: [{ id: 'weekdays', open }],
    crews: Array.from({ length: 12 }, (_, i) => ({
      id: `crew-${i}`,
      trades: i < 6 ? ['mason'] : i < 9 ? ['labour'] : i < 11 ? ['cable'] : ['electrician'],
      calendarId: 'weekdays',
    })),
    pools: [0, 1, 2].map((i) => ({ id: `pool-${i}`, quantity: 12 })),
    weather,
    inspections: [],
    jobs: Array.from({ length: jobs }, (_, j) => ({ id: `job-${j}`, priority: pick(3) })),
    phases,
    links,
  };
  return staggered ? comingInTurn(input, 'mason', 0.8) : input;
}
