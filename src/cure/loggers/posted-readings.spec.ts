import { describe, expect, it } from '@jest/globals';
import fc from 'fast-check';
import { MOST_READINGS, type PostedReadings, readPost } from './posted-readings.js';

const AT = '2031-01-06T14:00:00Z';
const read = (...readings: unknown[]) => readPost({ readings }) as PostedReadings;

describe('a post of a logger', () => {
  it('is read in °F as it stands and from °C by 9/5 and 32', () => {
    expect(
      read({ at: AT, concreteF: 55.4, airF: 28 }, { at: '2031-01-06T10:00-05:00', concreteC: 13, airC: -40 }),
    ).toEqual({
      good: [
        { index: 0, at: new Date(AT), concreteF: 55.4, airF: 28, placementId: null },
        { index: 1, at: new Date('2031-01-06T15:00:00Z'), concreteF: 55.4, airF: -40, placementId: null },
      ],
      refused: [],
    });
  });

  it.each([null, 3, 'text', [], {}, { readings: {} }])('that is %j says what a post looks like', (body) => {
    expect(readPost(body)).toMatch(/list "readings", such as/);
  });

  it('has at least one reading and at most so many', () => {
    expect(readPost({ readings: [] })).toMatch(/at least one/);
    const reading = { at: AT, concreteF: 50 };
    expect(read(...Array<object>(MOST_READINGS).fill(reading)).good).toHaveLength(MOST_READINGS);
    expect(readPost({ readings: Array<object>(MOST_READINGS + 1).fill(reading) })).toMatch(/at most 500/);
  });

  it.each<[unknown, RegExp]>([
    [7, /A reading is an object/],
    [{ at: AT }, /Give the temperature of the concrete/],
    [{ concreteF: 50 }, /"at" must be an instant/],
    [{ at: '2031-01-06T14:00:00', concreteF: 50 }, /with its offset/],
    [{ at: '2031-02-30T14:00:00Z', concreteF: 50 }, /with its offset/],
    [{ at: AT, concreteF: '50' }, /must be a number/],
    [{ at: AT, concreteF: 50, concreteC: 10 }, /not both/],
    [{ at: AT, concreteF: 212.1 }, /check the sensor/],
    [{ at: AT, concreteC: -40.1 }, /°C, which no sensor in use reads/],
    [{ at: AT, concreteF: 50, airF: 500 }, /"air" is 500/],
    [{ at: AT, concreteF: 50, placementId: 4 }, /must be a text/],
    [{ at: AT, concreteF: 50, humidity: 4 }, /"humidity" is not known/],
  ])('refuses %j and says what to do', (reading, message) => {
    expect(read({ at: AT, concreteF: 40 }, reading)).toEqual({
      good: [expect.objectContaining({ index: 0 })],
      refused: [{ index: 1, message: expect.stringMatching(message) }],
    });
  });

  it('gives each reading of any list back once, as good or as refused, and throws at nothing', () => {
    fc.assert(
      fc.property(fc.array(fc.anything(), { minLength: 1, maxLength: 20 }), (readings) => {
        const { good, refused } = readPost({ readings }) as PostedReadings;
        const indices = [...good, ...refused].map(({ index }) => index).sort((a, b) => a - b);
        expect(indices).toEqual(readings.map((_, index) => index));
      }),
    );
  });
});
