import { describe, expect, it } from '@jest/globals';
import { readPoint } from './read-point.js';
import { readProblem } from './read-problem.js';

describe('the answer of the point lookup', () => {
  it('names where the forecasts are', () => {
    const properties = { forecastGridData: 'http://a/1', forecastHourly: 'http://a/1/hourly', gridX: 1 };
    expect(readPoint({ properties })).toEqual({ gridData: 'http://a/1', hourly: 'http://a/1/hourly' });
  });

  it('may name one of them only', () => {
    expect(readPoint({ properties: { forecastHourly: 'h' } })).toEqual({ gridData: null, hourly: 'h' });
  });

  it.each([[null], ['text'], [{}], [{ properties: { forecastGridData: 7 } }]])('is none in %p', (answer) => {
    expect(readPoint(answer)).toBeNull();
  });
});

describe('the answer of a failed request', () => {
  // Members title and detail: RFC 7807, section 3.1.
  it('says title and detail of a problem', () => {
    const problem = {
      type: 'about:blank',
      title: 'Data Unavailable',
      status: 404,
      detail: 'Outside the grid.',
    };
    expect(readProblem(problem)).toBe('Data Unavailable: Outside the grid.');
  });

  it('says the reason of the hourly service', () => {
    expect(readProblem({ error: true, reason: 'Latitude must be in range' })).toBe(
      'Latitude must be in range',
    );
  });

  it('says nothing where there is nothing to say', () => {
    expect([readProblem('<html>'), readProblem({}), readProblem({ title: ' ' })]).toEqual([null, null, null]);
  });

  it('is cut where it is long', () => {
    expect(readProblem({ detail: 'x'.repeat(5000) })).toHaveLength(300);
  });
});
