import { describe, expect, it } from '@jest/globals';
import { readOutcome } from './read-outcome.js';

/** The rest of a finding, which these tests do not look at. */
const HELD = { measured: '44 in', limit: 'at least 48 in', mark: 'C', source: 'common practice, no source' };
const HELD_WORDS = 'Found 44 in; limit: at least 48 in (common practice, no source).';

describe('an outcome in words', () => {
  it('is the whole refusal with every failing finding and its caution', () => {
    expect(
      readOutcome({
        __typename: 'LimitExceeded',
        code: 'LimitExceeded',
        message: 'Two values are outside their limits.',
        findings: [
          {
            ...HELD,
            ok: false,
            text: 'Footing 2 is 44 in deep.',
            caution: 'Protect the excavation from 5 ft.',
          },
          { ...HELD, ok: true, text: 'Footing 1 is 49 in deep.' },
        ],
      }),
    ).toEqual({
      state: 'refused',
      message: 'Two values are outside their limits.',
      details: [`Footing 2 is 44 in deep. ${HELD_WORDS} Caution: Protect the excavation from 5 ft.`],
    });
  });

  it('is done when the service changed the row', () => {
    expect(readOutcome({ __typename: 'PhaseChanged' })).toMatchObject({
      state: 'done',
      message: 'Recorded.',
    });
  });

  it('says that a recorded reading outside its limits releases nothing', () => {
    const text = readOutcome({
      __typename: 'HeatingSetChanged',
      reading: {
        accepted: false,
        findings: [{ ...HELD, ok: false, text: 'Insulation 3 MΩ, at least 20 MΩ.' }],
      },
    });
    expect(text).toEqual({
      state: 'done',
      message: expect.stringMatching(/stays open/),
      details: [`Insulation 3 MΩ, at least 20 MΩ. ${HELD_WORDS}`],
    });
  });

  it('says when it was so on record already', () => {
    expect(readOutcome({ __typename: 'PhaseSettled', answer: 'alreadyApplied' })).toMatchObject({
      state: 'done',
      message: 'It was so on record already.',
    });
  });

  it('is both values where somebody else set the same field', () => {
    const both = {
      field: 'note of Dig',
      theirs: '“Rock”',
      mine: '“Water”',
      standing: 'Rock',
      currentRevision: 4,
    };
    expect(
      readOutcome({
        __typename: 'FieldConflict',
        code: 'FieldConflict',
        message: 'Choose.',
        ...both,
        changedBy: null,
      }),
    ).toEqual({ state: 'conflict', message: 'Choose.', conflict: { ...both, changedBy: null } });
  });
});
