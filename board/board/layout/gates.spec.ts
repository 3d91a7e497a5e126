import { describe, expect, it } from '@jest/globals';
import type { GateFieldsFragment } from '../../api/documents.js';
import { gateMarks } from './gates.js';

const point = (
  id: string,
  gate: 'start' | 'finish',
  state: GateFieldsFragment['state'],
): GateFieldsFragment => ({
  id,
  kind: 'check',
  gate,
  title: id,
  state,
});

describe('the marks of hold points', () => {
  it('stand at the end they guard', () => {
    const marks = gateMarks([point('a', 'finish', 'open'), point('b', 'start', 'released')]);
    expect(marks.map(({ end, shown }) => [end, shown.id])).toEqual([
      ['start', 'b'],
      ['finish', 'a'],
    ]);
  });

  it('show what still stands in the way before what is decided, and a refusal first of all', () => {
    const [mark] = gateMarks([
      point('a', 'start', 'released'),
      point('b', 'start', 'open'),
      point('c', 'start', 'refused'),
      point('d', 'start', 'waived'),
    ]);
    expect(mark).toMatchObject({ count: 4, open: 2, shown: { id: 'c' } });
  });

  it('are none without hold points', () => {
    expect(gateMarks([])).toEqual([]);
  });
});
