import { describe, expect, it } from '@jest/globals';
import { sourceWords } from './source-words.js';

describe('the source of a limit', () => {
  it('is told with how far it can be trusted', () => {
    expect(sourceWords({ source: '29 CFR 1926.651', mark: 'P' })).toBe('29 CFR 1926.651; published');
    expect(sourceWords({ source: 'IEC 60800', mark: 'M' })).toBe('IEC 60800; from memory');
  });

  it('is not told twice', () => {
    expect(sourceWords({ source: 'common practice, no source', mark: 'C' })).toBe(
      'common practice, no source',
    );
  });
});
