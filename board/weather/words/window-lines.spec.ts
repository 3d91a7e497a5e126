import { describe, expect, it } from '@jest/globals';
import { trialClosed, trialWindows } from '../testing/trial-weather.js';
import { windowLines } from './window-lines.js';

const ZONE = 'America/New_York';
const FROM = Date.parse('2031-01-15T05:00:00Z');
const TO = Date.parse('2031-01-16T05:00:00Z');
const said = (more: Parameters<typeof trialWindows>[0]) =>
  windowLines(trialWindows(more), FROM, TO, ZONE).map(({ head, text }) => `${head}: ${text}`);

describe('what the weather means for a kind of work', () => {
  it('names the limit with its value, its hour, its source and how far that can be trusted', () => {
    expect(said({ closed: [trialClosed('2031-01-15T10:00:00Z', '2031-01-15T15:00:00Z')] })).toEqual([
      'Closed for Bed and stone, Wed 15 Jan 05:00 to 10:00: Too cold: 30 °F, under 50 °F, at worst 05:00 (ANSI A108; from memory)',
    ]);
  });

  it('is cut to what was asked about, and gives the day of a worst hour that lies elsewhere', () => {
    const [line] = said({
      closed: [
        trialClosed('2031-01-15T10:00:00Z', '2031-01-18T15:00:00Z', 'Too cold: 9 °F', '2031-01-17T11:00:00Z'),
      ],
    });
    expect(line).toContain('Wed 15 Jan 05:00 to Thu 16 Jan 00:00');
    expect(line).toContain('at worst Fri 17 Jan 06:00');
  });

  it('says what must be done, and not what nobody can know yet', () => {
    const requirement = (known: boolean) => ({
      requirementId: 'heat-sand',
      from: '2031-01-15T05:00:00Z',
      to: '2031-01-15T13:00:00Z',
      text: 'Heat sand or water',
      known,
      mark: 'P',
      source: 'TMS 602-02',
      cause: known ? { text: 'Air: 36 °F, under 40 °F', hour: '2031-01-15T11:00:00Z' } : null,
    });
    expect(said({ requirements: [requirement(true)] })).toEqual([
      'Bed and stone asks, Wed 15 Jan 00:00 to 08:00: Heat sand or water (Air: 36 °F, under 40 °F, at worst 06:00; TMS 602-02; published)',
    ]);
    expect(said({ requirements: [requirement(false)] })).toEqual([]);
  });

  it('never calls unknown time open', () => {
    expect(said({ unknown: [{ from: '2031-01-15T15:00:00Z', to: '2031-01-20T05:00:00Z' }] })).toEqual([
      'Unknown for Bed and stone, Wed 15 Jan 10:00 to Thu 16 Jan 00:00: the forecast says too little to call it open',
    ]);
  });

  it('is nothing where nothing is closed, asked for or unknown', () => {
    expect(said({})).toEqual([]);
  });
});
