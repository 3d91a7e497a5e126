import { describe, expect, it } from '@jest/globals';
import fc from 'fast-check';
import type { Loose } from '../testing/entry-fixture.js';
import { checkTemplate } from './check-template.js';
import { HEATED_ENTRY } from './default/heated-entry.js';

const copy = (): Loose => JSON.parse(JSON.stringify(HEATED_ENTRY));
const phase = (template: Loose, kind: string): Loose =>
  template.phases.find((one: Loose) => one.kind === kind);
const point = (template: Loose, key: string): Loose =>
  template.holdPoints.find((one: Loose) => one.key === key);

const faultsAfter = (change: (template: Loose) => void): string[] => {
  const template = copy();
  change(template);
  const check = checkTemplate(template);
  return check.ok ? [] : check.faults.map((fault) => `${fault.path}: ${fault.message}`);
};

describe('the template a company starts from', () => {
  it('is right, and comes back from JSON as it went', () => {
    const check = checkTemplate(copy());
    expect(check).toEqual({ ok: true, template: HEATED_ENTRY });
  });

  it('may be edited: rates, durations, lags, crews and hold points', () => {
    expect(
      faultsAfter((template) => {
        phase(template, 'block').duration.rates[0].minutesPerUnit = 11;
        phase(template, 'block').duration.crewSize = 3;
        phase(template, 'footing-cure').duration.minutes = 4320;
        template.links[0].lag = 60;
        template.links[0].lagIn = 'working';
        point(template, 'layout').items[0].limit = { atLeast: 3.5, atMost: 9 };
        template.holdPoints = template.holdPoints.filter((one: Loose) => one.key !== 'record');
        template.clearances[0].leadDays = 20;
      }),
    ).toEqual([]);
  });

  it('may get phases, links and hold points of the company', () => {
    expect(
      faultsAfter((template) => {
        template.phases.push({
          ...phase(template, 'hand-over'),
          kind: 'rails',
          name: 'Guards and handrails',
          trade: 'labour',
        });
        template.links.push({ ...template.links[0], from: 'bed-cure', to: 'rails' });
        template.holdPoints.push({ ...point(template, 'record'), key: 'rails-tight', phase: 'rails' });
      }),
    ).toEqual([]);
  });
});

describe('what can never be waived', () => {
  it("is an authority's inspection", () => {
    expect(faultsAfter((template) => (point(template, 'footing').waivable = true))).toEqual([
      expect.stringContaining("must be false: an authority's inspection can never be waived"),
    ]);
  });

  it('is a cable reading', () => {
    expect(faultsAfter((template) => (point(template, 'reading-laid').waivable = true))).toEqual([
      expect.stringContaining('must be false: a cable reading can never be waived'),
    ]);
  });
});

describe('a template that is wrong', () => {
  it.each<[string, (template: Loose) => void, string]>([
    ['another version', (t) => (t.version = 2), 'version: must be 1; this is the only form known'],
    ['no phases', (t) => (t.phases = []), 'phases: needs at least 1, got 0'],
    [
      'no crew',
      (t) => (phase(t, 'demo').duration.crewSize = 0),
      'phases[0].duration.crewSize: must be 1 to 20 people, got 0',
    ],
    [
      'half a person',
      (t) => (phase(t, 'demo').duration.crewSize = 1.5),
      'phases[0].duration.crewSize: must be a whole number, got 1.5',
    ],
    [
      'a negative rate',
      (t) => (phase(t, 'demo').duration.rates[0].minutesPerUnit = -1),
      'phases[0].duration.rates[0].minutesPerUnit: must be 0 to 5000 min, got -1',
    ],
    [
      'a rate of a quantity that does not exist',
      (t) => (phase(t, 'demo').duration.rates[0].quantity = 'bricks'),
      'phases[0].duration.rates[0].quantity: must be one of',
    ],
    [
      'work without a trade',
      (t) => (phase(t, 'demo').trade = null),
      'phases[0].trade: work needs a trade that does it; a wait has a duration of kind elapsed',
    ],
    [
      'an unknown trade',
      (t) => (phase(t, 'demo').trade = 'plumber'),
      'phases[0].trade: must be one of labour',
    ],
    ['an unknown hatch', (t) => (phase(t, 'demo').hatch = 'wood'), 'phases[0].hatch: must be one of earth'],
    [
      'half an elapsed minute',
      (t) => (phase(t, 'footing-cure').duration.minutes = 0.5),
      'phases[4].duration.minutes: must be a whole number, got 0.5',
    ],
    [
      'a kind twice',
      (t) => t.phases.push(phase(t, 'demo')),
      'phases: kind "demo" stands twice; rename one of them',
    ],
    [
      'a link to nowhere',
      (t) => (t.links[0].to = 'garage'),
      'links[0].to: there is no phase "garage"; add it or remove this',
    ],
    [
      'a link that is no number of minutes',
      (t) => (t.links[0].lag = 'soon'),
      'links[0].lag: must be a number in min, got "soon"',
    ],
    [
      'a circle',
      (t) => t.links.push({ ...t.links[0], from: 'hand-over', to: 'demo' }),
      'links: these wait for each other in a circle: demo → dig',
    ],
    [
      'a hold point of no phase',
      (t) => (point(t, 'record').phase = 'party'),
      'there is no phase "party"; add it or remove this',
    ],
    [
      'a hold point twice',
      (t) => t.holdPoints.push(point(t, 'record')),
      'holdPoints: hold point "hand-over/record" stands twice; rename one of them',
    ],
    [
      'an inspection twice',
      (t) => t.holdPoints.push({ ...point(t, 'final'), phase: 'energise' }),
      'holdPoints: inspection "final" stands twice; rename one of them',
    ],
    [
      'an item twice',
      (t) => point(t, 'layout').items.push(point(t, 'layout').items[0]),
      'item "spacing" stands twice; rename one of them',
    ],
    [
      'a clearance that does not exist',
      (t) => (point(t, 'permit').clearance = 'blessing'),
      'there is no clearance "blessing"; add it or remove this',
    ],
    [
      'a cure of something that is not placed',
      (t) => (point(t, 'block-strength').placement = 'demo'),
      '"demo" places nothing; give it a placement',
    ],
    [
      'a reading at a phase of no heating set',
      (t) => (point(t, 'reading-laid').phase = 'demo'),
      '"demo" belongs to no heating set; gate a phase of an area or set',
    ],
    [
      'limits that leave nothing',
      (t) => (point(t, 'layout').items[0].limit = { atLeast: 12, atMost: 3 }),
      'at least 12 and at most 3 leave nothing; swap them',
    ],
    [
      'an item confirmed and measured at once',
      (t) => (point(t, 'layout').items[2].limit.atLeast = 3),
      'is either confirmed or measured, not both',
    ],
    [
      'yes or no with a unit',
      (t) => (point(t, 'layout').items[2].unit = 'in'),
      'yes or no has no unit; use null',
    ],
    [
      'a mark nobody knows',
      (t) => (point(t, 'layout').items[0].source.mark = 'X'),
      'must be one of P, C, M, T, got "X"',
    ],
    [
      'equipment until nothing',
      (t) => (t.equipment[0].until = 'spring'),
      'equipment[0].until: there is no phase "spring"; add it or remove this',
    ],
    [
      'part of a blanket',
      (t) => (t.equipment.find((one: Loose) => one.count.fixed).count.fixed = 0.5),
      'must be 1 to 1000, got 0.5',
    ],
    [
      'a clearance that lives no day',
      (t) => (t.clearances[0].lifeDays = 0),
      'clearances[0].lifeDays: must be 1 to 1000 days, got 0',
    ],
    [
      'a name nobody reads',
      (t) => (t.phases[0].colour = 'grey'),
      'phases[0].colour: unknown name; remove it',
    ],
    [
      'a name of another kind of hold point',
      (t) => (point(t, 'record').stage = 'laid'),
      'unknown name; remove it or use one of',
    ],
  ])('%s is refused with its place', (_, change, message) => {
    const faults = faultsAfter(change);
    expect(faults.join('\n')).toContain(message);
  });

  it.each([null, [], 4, 'template'])('%p is none', (value) => {
    expect(checkTemplate(value)).toMatchObject({ ok: false, faults: [{ path: '' }] });
  });

  it('nothing at all can make it throw', () => {
    fc.assert(
      fc.property(fc.anything({ maxDepth: 4 }), (value) => {
        const check = checkTemplate(value);
        expect(check.ok || check.faults.length > 0).toBe(true);
      }),
    );
  });

  it('losing any member of any part is noticed, save those that may be left out', () => {
    const mayGo = new Set([
      'where',
      'placement',
      'caution',
      'firstOfSet',
      'many',
      'trade',
      'weatherLimits',
      'lifeDays',
      'unit',
    ]);
    for (const list of ['phases', 'links', 'holdPoints', 'clearances', 'equipment'] as const) {
      HEATED_ENTRY[list].forEach((part, i) => {
        for (const name of Object.keys(part)) {
          if (mayGo.has(name)) continue;
          expect([
            list,
            i,
            name,
            faultsAfter((template) => delete template[list][i][name]).length > 0,
          ]).toEqual([list, i, name, true]);
        }
      });
    }
  });
});
