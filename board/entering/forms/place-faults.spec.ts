import { describe, expect, it } from '@jest/globals';
import { placeFaults } from './place-faults.js';

const PATHS = {
  name: 'name',
  week: 'from',
  'measurement.areas.1': 'risers',
  'measurement.areas.1.riserInches': 'riser',
};
const LABELS = { name: 'Name', from: 'Opening time', risers: 'Risers', riser: 'Riser height' };
const place = (...faults: [path: string, message: string][]) =>
  placeFaults(
    faults.map(([path, message]) => ({ path, message })),
    PATHS,
    LABELS,
  );

describe('the faults of a refusal', () => {
  it('stand at the field that the place in the input means, with its label', () => {
    expect(place(['name', 'must not be empty'])).toEqual({
      at: { name: 'Name must not be empty.' },
      rest: [],
    });
  });

  it('stand at the nearest field that holds the place', () => {
    expect(
      place(
        ['week.0.hours.0.to', 'must be a time of day as HH:MM, 00:00 to 24:00'],
        ['measurement.areas[1].riserInches', 'must be 4 to 7¾ in, got 75; did you mean 7.5?'],
        [
          'measurement.areas[1]',
          '3 risers of 7 in make 21 in, the landing stands 30 in high; measure both again',
        ],
      ).at,
    ).toEqual({
      from: 'Opening time must be a time of day as HH:MM, 00:00 to 24:00.',
      riser: 'Riser height must be 4 to 7¾ in, got 75; did you mean 7.5?',
      risers: '3 risers of 7 in make 21 in, the landing stands 30 in high; measure both again.',
    });
  });

  it('are joined where a field has several', () => {
    expect(
      place(
        ['name', 'There is a crew "Reed" already; choose another name.'],
        ['name', 'has at most 80 letters'],
      ).at,
    ).toEqual({ name: 'There is a crew "Reed" already; choose another name. Name has at most 80 letters.' });
  });

  it('stand over the form where no field can mend them', () => {
    expect(
      place(['', 'give all of it'], ['measurement', 'the bed is too thin'], ['names', 'is odd']),
    ).toEqual({
      at: {},
      rest: ['Give all of it.', 'The bed is too thin.', 'Is odd.'],
    });
  });
});
