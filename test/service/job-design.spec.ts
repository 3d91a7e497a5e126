import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import { MEASUREMENTS } from '../../prisma/demo/measurements.js';
import type { Loose } from '../../shared/entry/testing/entry-fixture.js';
import { makeBareJob } from '../support/bare-job.js';
import { makeOffice, type Office } from '../support/office.js';
import { startService, type TestService } from '../support/service.js';

const DESIGN = `design {
  heat { areaKey sensible melting convectionAndRadiation evaporation back edge total given warmUpHours sources }
  cables { setKey asMeasured feet closest tightestBend coldLeadOutside fields { key feet meanSpacing wattsPerSquareFoot widestGap } }
  circuits { zone sets watts load designLoad breaker conductorAwg terminals source caution }
  risers { rise count riser steps { riser finished blockTop courses } advice }
  footing { bottom frostDepth frostSource concrete checklist { key text source } }
  drawings { key title scale width height svg }
}`;

/** The invented sheet with a small landing and one step: quick to lay. */
const sheet = (): Loose => JSON.parse(JSON.stringify(MEASUREMENTS['Quarry Road']));

describe('the design of a job', () => {
  let service: TestService;
  let mine: Office;
  let theirs: Office;
  let jobId: string;

  const enter = (change: (entry: Loose) => void = () => undefined) =>
    mine.enterJob('Quarry Road', (entry) => {
      Object.assign(entry, sheet(), { frost: { depthInches: 48, source: 'town rule' } });
      entry.footing.bottomInches = 50;
      change(entry);
    });
  const ask = async (office: Office, id: string, fields = DESIGN) => {
    const { data } = await office.client.ask<{ job: { design: Loose } | null }>(
      `query ($id: ID!) { job(id: $id) { ${fields} } }`,
      { id },
    );
    return data?.job;
  };

  beforeAll(async () => {
    service = await startService();
    mine = await makeOffice(service);
    theirs = await makeOffice(service, 'Tamarack Stone');
    jobId = await enter();
  });
  afterAll(() => service.stop());

  it('has heat by parts that add up, and what the set gives', async () => {
    const { design } = (await ask(mine, jobId))!;
    for (const area of design.heat) {
      const { sensible, melting, convectionAndRadiation, evaporation, back, edge, total } = area;
      expect(sensible + melting + convectionAndRadiation + evaporation + back + edge).toBeCloseTo(total, 9);
      expect(area.given).toBeGreaterThan(total);
    }
    expect(design.heat.map(({ areaKey }: { areaKey: string }) => areaKey)).toEqual(['landing', 'steps']);
  });

  it('has the set on the plan as measured, circuits, risers and footing', async () => {
    const { design } = (await ask(mine, jobId))!;
    const [cable] = design.cables;
    expect(cable).toMatchObject({ setKey: 'a', asMeasured: true, feet: 98 });
    expect(cable.closest).toBeGreaterThan(2.98);
    const feet = cable.fields.reduce((sum: number, field: { feet: number }) => sum + field.feet, 0);
    expect(feet).toBeCloseTo(98, 1);
    // 1176 W at 240 V: 4.9 A, 6.125 A as a continuous load, the least breaker of 15 A. Source: NEC 426.4, 240.6(A).
    expect(design.circuits).toMatchObject([{ load: 4.9, designLoad: 6.125, breaker: 15, terminals: 75 }]);
    expect(design.risers).toMatchObject({ rise: 14, count: 2, riser: 7, advice: [] });
    expect(design.footing).toMatchObject({ bottom: 50, frostDepth: 48, frostSource: 'town rule' });
    expect(design.footing.concrete).toContain('IRC R402.2 [published]');
  });

  it('has both drawings, to scale', async () => {
    const { design } = (await ask(mine, jobId))!;
    expect(design.drawings.map(({ key }: { key: string }) => key)).toEqual(['cable-a', 'section']);
    for (const { svg, width } of design.drawings)
      expect(Number(/width="([\d.]+)in"/.exec(svg as string)?.[1])).toBeCloseTo(width as number, 2);
  });

  it('is empty and null for what nothing was measured for', async () => {
    const bare = await enter((entry) => {
      delete entry.sitePlan;
      delete entry.design;
    });
    const { design } = (await ask(mine, bare))!;
    expect(design).toMatchObject({ heat: [], cables: [], circuits: [], risers: null });
    expect(design.drawings.map(({ key }: { key: string }) => key)).toEqual(['section']);
  });

  it('is null for a measurement that cannot be read', async () => {
    const { job } = await makeBareJob(service.database, theirs.company.id);
    expect(await ask(theirs, job.id)).toEqual({ design: null });
  });

  it('is not there for another company', async () => {
    expect(await ask(theirs, jobId)).toBeNull();
  });
});
