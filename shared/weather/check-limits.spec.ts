import { describe, expect, it } from '@jest/globals';
import { checkLimits } from './check-limits.js';
import { FREEZE_THAW_LIMIT } from './freeze-thaw-limit.js';
import { coldLimit } from './testing/hour-values.js';

const faults = (value: unknown) => {
  const check = checkLimits(value);
  return check.ok ? [] : check.faults.map((fault) => `${fault.path}: ${fault.message}`);
};
const edited = (more: Record<string, unknown>) =>
  faults([{ ...coldLimit({ id: 'a' }), ...more }, coldLimit()]);

describe('limits that a company edits', () => {
  it('may leave out what they do not ask', () => {
    const { id, measure, stop, value, text, source } = coldLimit();
    expect(checkLimits([{ id, measure, stop, value, text, source }])).toEqual({
      ok: true,
      limits: [coldLimit()],
    });
  });

  it.each<Record<string, unknown>>([
    { value: 25, inclusive: false, aheadHours: 12, backHours: 96 },
    { dailyMean: 'before', lastingHours: 72, reopen: { value: 50, hours: 13, within: 24 } },
    { reopen: { value: 45 } },
    { measure: 'evaporation', stop: 'above', value: 0.2 },
    { and: { measure: 'gust', above: 30 }, liftedBy: ['enclosure'] },
    { reopen: null, and: null, dailyMean: null },
  ])('may be %j', (more) => {
    expect(edited(more)).toEqual([]);
  });

  it('take a row of fair hours for the hours among which they are counted', () => {
    const check = checkLimits([{ ...coldLimit(), reopen: { value: 45, hours: 3 } }]);
    expect(check).toMatchObject({ limits: [{ reopen: { inclusive: false, hours: 3, within: 3 } }] });
  });

  it('may be the one that is offered beside the defaults', () => {
    expect(checkLimits(JSON.parse(JSON.stringify([FREEZE_THAW_LIMIT])))).toEqual({
      ok: true,
      limits: [FREEZE_THAW_LIMIT],
    });
  });

  it.each<[Record<string, unknown>, string]>([
    [{ id: 'Cold' }, '[0].id: must be 1 to 40 small letters, digits and hyphens, got "Cold"'],
    [{ id: 'cold' }, ': two of them have the id "cold"; rename one'],
    [{ value: 200 }, '[0].value: must be -60 to 130 °F, got 200'],
    [{ value: '20' }, '[0].value: must be a number in °F, got "20"'],
    [{ measure: 'snow' }, '[0].measure: must be one of temperature, wind'],
    [{ stop: 'near' }, '[0].stop: must be one of below, above'],
    [{ aheadHours: 1.5 }, '[0].aheadHours: must be a whole number'],
    [{ aheadHours: 169 }, '[0].aheadHours: must be 0 to 168 h, got 169'],
    [{ backHours: 97 }, '[0].backHours: must be 0 to 96 h, got 97'],
    [{ lastingHours: -1 }, '[0].lastingHours: must be 0 to 96 h, got -1'],
    [{ dailyMean: 'noon' }, '[0].dailyMean: must be one of before, after'],
    [{ reopen: { value: 400 } }, '[0].reopen.value: must be -60 to 130 °F, got 400'],
    [{ reopen: { value: 50, hours: 25 } }, '[0].reopen.hours: must be 0 to 24 h, got 25'],
    [{ reopen: { value: 50, hours: 13, within: 12 } }, '[0].reopen.within: must be 13 to 96 h, got 12'],
    [{ reopen: { value: 50, days: 1 } }, '[0].reopen.days: unknown name'],
    [{ liftedBy: 'tent' }, '[0].liftedBy: must be a list'],
    [{ liftedBy: Array.from('abcdefghi') }, '[0].liftedBy: names 9 kinds; at most 8'],
    [{ and: { measure: 'wind', above: -1 } }, '[0].and.above: must be 0 to 150 mph'],
    [{ text: 'x'.repeat(161) }, '[0].text: has 161 letters; at most 160 are shown'],
    [{ source: 'me' }, '[0].source: must be an object'],
    [{ source: { mark: 'X', text: 'me' } }, '[0].source.mark: must be one of P, C, M, T'],
    [{ colour: 'grey' }, '[0].colour: unknown name'],
  ])('%j are refused with their place', (more, message) => {
    expect(edited(more).join('\n')).toContain(message);
  });

  it('are at most forty', () => {
    const many = Array.from({ length: 41 }, (_, i) => coldLimit({ id: `l${i}` }));
    expect(faults(many)).toEqual([': has 41; at most 40 can be kept']);
  });

  it.each([null, {}, 'limits'])('%p are none', (value) => {
    expect(faults(value)).toHaveLength(1);
  });
});
