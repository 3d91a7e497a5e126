import { describe, expect, it } from '@jest/globals';
import { checkMeasurement } from '../../../shared/entry/measurement/check-measurement.js';
import { checkJob } from './check-job.js';
import { drawnPlan } from './drawn-plan.js';
import { NEW_JOB } from './job-fields.js';
import { measuredSheet, sheetPaths } from './measured-sheet.js';
import { typedJob } from './testing/typed-job.js';

const SITE = { frostDepthInches: 42, frostSource: 'town rule of 2024' };

describe('the sheet of a site visit from what is typed', () => {
  it('is one that the service takes, with units where they belong', () => {
    const checked = checkMeasurement(measuredSheet(typedJob(), SITE));
    if (!checked.ok) throw new Error(JSON.stringify(checked.faults));
    const { areas, footing, buildUp, heatingSets, frost, sitePlan } = checked.measurement;
    expect(frost).toEqual({ depth: 42, source: 'town rule of 2024' });
    expect(areas.map(({ key, kind, heated }) => [key, kind, heated])).toEqual([
      ['landing', 'landing', true],
      ['steps', 'flight', true],
      ['walk', 'walk', true],
    ]);
    expect(areas[0]).toMatchObject({ length: 60, width: 96, height: 21 });
    expect(areas[1]).toMatchObject({ riserCount: 3, riser: 7, tread: 12, width: 96 });
    expect(areas[2]).toMatchObject({ length: 18, width: 48 });
    expect(footing).toEqual({ length: 28, width: 18, thickness: 10, bottom: 44 });
    expect(buildUp).toEqual({ bed: 1, stone: 1.5, walkBase: 4 });
    expect(heatingSets[0]).toMatchObject({
      areas: ['landing', 'steps', 'walk'],
      watts: 4560,
      ohms: 12.63,
      heatedLength: 380,
      coldLeadLength: 16,
      coldLeadRun: 12,
      cureDays: 28,
    });
    expect(sitePlan?.surfaces.map(({ key }) => key)).toEqual(['landing', 'steps', 'walk']);
  });

  it('leaves out what is not built, not heated or not known', () => {
    const sheet = measuredSheet(
      typedJob({ hasLanding: '', hasSteps: '', heatsWalk: '', walkLong: '12' }),
      SITE,
    );
    expect(sheet).toEqual({
      version: 1,
      frost: { depthInches: 42, source: 'town rule of 2024' },
      buildUp: { bedInches: 1, stoneInches: 1.5, walkBaseInches: 4 },
      areas: [{ key: 'walk', kind: 'walk', name: 'Walk', heated: false, lengthFeet: 12, widthInches: 48 }],
      heatingSets: [],
    });
    expect(checkMeasurement(sheet).ok).toBe(true);
  });

  it('tells the heights at the door with what is planned there', () => {
    const { design } = measuredSheet(typedJob({ sill: '22 1/2', doorDrop: '1.5', handrail: 'yes' }), SITE);
    expect(design).toEqual({
      heights: {
        sillAboveWalkInches: 22.5,
        doorDropInches: 1.5,
        doorSwingsOver: false,
        handrailPlanned: true,
        guardPlanned: false,
      },
    });
  });
});

describe('the drawn plan', () => {
  it('has the steps in the middle of the front, and the walk straight out from their lowest riser', () => {
    const plan = drawnPlan(typedJob({ stepsWide: '60' })) as { surfaces: Record<string, unknown>[] };
    expect(plan.surfaces[1]).toMatchObject({
      topInches: [
        [18, 60],
        [78, 60],
      ],
    });
    // Three risers have two treads of 12 in: the walk begins 60 + 24 in out.
    expect(plan.surfaces[2]).toMatchObject({
      line: [
        { atInches: [48, 84], widthInches: 48 },
        { atInches: [48, 300], widthInches: 48 },
      ],
    });
  });

  it.each([
    ['no landing to begin at', { hasLanding: '' }],
    ['a measure is missing', { riser: '7', risers: '' }],
    ['steps wider than the landing', { stepsWide: '120' }],
    ['the walk has no length', { walkLong: '' }],
  ])('is none where there is %s', (_, change) => expect(drawnPlan(typedJob(change))).toBeNull());

  it('is left out when it is not wanted', () => {
    expect(measuredSheet(typedJob({ drawn: '' }), SITE)).not.toHaveProperty('sitePlan');
  });
});

describe('what is wrong with a job as typed', () => {
  it('is nothing for a whole one', () => {
    expect(checkJob(typedJob(), SITE)).toEqual({ at: {}, rest: [] });
  });

  it('of a new one is every field that is asked for and empty', () => {
    const { at } = checkJob(NEW_JOB, null);
    expect(Object.keys(at).sort()).toEqual(
      [
        'jobName',
        'owner',
        'landingOut',
        'landingWide',
        'landingHigh',
        'risers',
        'riser',
        'stepsWide',
        'walkLong',
        'footingLong',
        'footingBottom',
        'watts',
        'ohms',
        'heatedLong',
        'leadLong',
        'leadRun',
        'site',
      ].sort(),
    );
  });

  it.each([
    [{ riser: '75', risers: '3' }, 'riser', /^Riser height must be 4 to 7¾ in, got 75; did you mean 7.5\?/],
    [{ landingHigh: '30' }, 'risers', /^3 risers of 7 in make 21 in, the landing stands 30 in high/],
    [{ ohms: '126' }, 'ohms', /makes 12.63 Ω, the label says 126 Ω; read the label again/],
    [{ sill: '22.5' }, 'doorDrop', /Give both heights at the door, or neither/],
    [{ sill: '30', doorDrop: '1.5' }, 'sill', /Sill 30 in less 1.5 in makes 28.5 in/],
    [{ hasLanding: '', hasSteps: '', hasWalk: '' }, 'hasLanding', /Tick what is built/],
  ])('%j stands at %s', (change, field, words) => {
    const { at, rest } = checkJob(typedJob(change), SITE);
    expect(Object.keys(at)).toEqual([field]);
    expect(at[field]).toMatch(words);
    expect(rest).toEqual([]);
  });

  it('has a field for every place, whichever areas are built', () => {
    expect(sheetPaths(typedJob({ hasLanding: '' }))).toMatchObject({
      'measurement.areas.0.riserInches': 'riser',
      'measurement.areas.1.lengthFeet': 'walkLong',
      'measurement.heatingSets.0.ohms': 'ohms',
      'measurement.footing': 'footingLong',
      siteId: 'site',
    });
  });
});
