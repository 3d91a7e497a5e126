import { describe, expect, it } from '@jest/globals';
import fc from 'fast-check';
import { makeAxis } from '../../board/layout/axis.js';
import { daysFrom } from '../../time/zone-days.js';
import { trialClosed, trialWindows } from '../testing/trial-weather.js';
import { commonBand, kindBands } from './closed-bands.js';

const axis = makeAxis(daysFrom('2031-01-13', 3, 'America/New_York'), 80);
const at = (hour: number) => new Date(Date.parse('2031-01-13T05:00:00Z') + hour * 3_600_000).toISOString();
const x = (hour: number) => axis.x(Date.parse(at(hour)));

const stone = trialWindows({ closed: [trialClosed(at(8), at(12))] });
const sealant = trialWindows({
  limitKey: 'sealant',
  name: 'Sealant',
  closed: [trialClosed(at(10), at(16))],
});

describe('one band for all work to come', () => {
  it('tells apart where some of it is closed and where all is', () => {
    expect(commonBand([stone, sealant], axis).map(({ kinds, all }) => [kinds.join(), all])).toEqual([
      ['Bed and stone', false],
      ['Bed and stone,Sealant', true],
      ['Sealant', false],
    ]);
    expect(commonBand([stone, sealant], axis)[1]).toMatchObject({ left: x(10), width: x(12) - x(10) });
  });

  it('is all closed where the only kind of work is', () => {
    expect(commonBand([stone], axis)).toMatchObject([{ all: true }]);
  });

  it('is empty where nothing is closed, and outside the days', () => {
    expect(commonBand([trialWindows()], axis)).toEqual([]);
    expect(commonBand([trialWindows({ closed: [trialClosed(at(-30), at(-2))] })], axis)).toEqual([]);
  });

  it('closes exactly the hours in which any kind of work is closed, hour by hour', () => {
    const stretch = fc
      .tuple(fc.integer({ min: 0, max: 60 }), fc.integer({ min: 1, max: 11 }))
      .map(([from, length]) => [from, from + length] as const);
    fc.assert(
      fc.property(fc.array(stretch, { maxLength: 4 }), fc.array(stretch, { maxLength: 4 }), (one, two) => {
        const kinds = [one, two].map((list, i) =>
          trialWindows({
            name: `kind ${i}`,
            closed: list.map(([from, to]) => trialClosed(at(from), at(to))),
          }),
        );
        const band = commonBand(kinds, axis);
        for (let hour = 0; hour < 71; hour += 1) {
          const middle = (x(hour) + x(hour + 1)) / 2;
          const drawn = band.find(({ left, width }) => middle > left && middle < left + width);
          const closed = [one, two].filter((list) => list.some(([from, to]) => hour >= from && hour < to));
          expect(new Set(drawn?.kinds ?? []).size).toBe(closed.length);
          expect(drawn?.all ?? false).toBe(closed.length === 2);
        }
      }),
    );
  });
});

describe('a band for each kind of work', () => {
  it('shows what is closed, what is asked for and known to be, and what is unknown', () => {
    const [band] = kindBands(
      [
        trialWindows({
          closed: [trialClosed(at(8), at(12))],
          requirements: [
            {
              requirementId: 'heat',
              from: at(0),
              to: at(8),
              text: 'Heat the sand',
              known: true,
              mark: 'P',
              source: 'TMS 602-02',
              cause: null,
            },
            {
              requirementId: 'blanket',
              from: at(30),
              to: at(40),
              text: 'Blankets ready',
              known: false,
              mark: 'P',
              source: 'TMS 602-02',
              cause: null,
            },
          ],
          unknown: [{ from: at(50), to: at(100) }],
        }),
      ],
      axis,
    );
    expect(band?.closed).toMatchObject([{ left: x(8) }]);
    expect(band?.required).toEqual([{ left: x(0), width: x(8) - x(0) }]);
    expect(band?.unknown).toEqual([{ left: x(50), width: axis.width - x(50) }]);
  });
});
