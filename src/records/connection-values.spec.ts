import { describe, expect, it } from '@jest/globals';
import { connectionValues } from './connection-values.js';

describe('the record of a connection in words', () => {
  it('has its known values in their order, and nothing of what is not known by name', () => {
    const stored = {
      note: 'box at the left',
      groundFault: true,
      breakerAmperes: 20,
      disconnect: false,
      more: {},
    };
    expect(connectionValues(stored)).toEqual([
      ['Breaker, A', '20'],
      ['Disconnect in place and marked', 'no'],
      ['Ground-fault protection of equipment, tested', 'yes'],
      ['Note of the electrician', 'box at the left'],
    ]);
  });

  it.each([[null], [undefined], ['text'], [{}], [{ note: null, breakerAmperes: { value: 20 } }]])(
    'has none of %j',
    (stored) => {
      expect(connectionValues(stored)).toEqual([]);
    },
  );
});
