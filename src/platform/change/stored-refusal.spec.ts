import { describe, expect, it } from '@jest/globals';
import { FieldConflict } from '../outcomes/field-conflict.js';
import { InvalidInput } from '../outcomes/invalid-input.js';
import { Refusal } from '../outcomes/refusal.js';
import { refusalIn, storedRefusal } from './stored-refusal.js';

const CONFLICT = new FieldConflict({
  field: 'start of Dig',
  theirs: 'Mon 6 Jan 08:00',
  mine: 'Mon 6 Jan 08:10',
  standing: '2031-01-06T13:00:00.000Z',
  changedBy: 'I. Rowe',
  changedAt: new Date('2031-01-06T13:01:00Z'),
  currentRevision: 3,
});

/** As the database keeps it. */
const kept = (refusal: Refusal): unknown => JSON.parse(JSON.stringify(storedRefusal(refusal)));

describe('a refusal kept under its key', () => {
  it.each([
    ['with an instant and a text that looks like one', CONFLICT],
    ['with a list', new InvalidInput([{ path: 'at', message: 'lies in the future' }])],
  ])('comes back as it was, %s', (_name, refusal) => {
    const back = refusalIn(kept(refusal));
    expect(back).toBeInstanceOf(Refusal);
    expect({ ...back }).toEqual({ ...refusal });
  });

  it('is told apart from what a success answers', () => {
    expect(refusalIn({ phaseId: 'x', answer: 'applied' })).toBeNull();
    expect(refusalIn(null)).toBeNull();
  });
});
