import { DEFAULT_MIXTURES } from '../../shared/cure/mixture.js';
import type { Prisma } from '../../src/generated/prisma/client.js';
import { enterDemoCompany, ZONE } from '../../prisma/demo/company.js';
import { must } from '../../prisma/demo/hands.js';
import { MEASUREMENTS } from '../../prisma/demo/measurements.js';
import { makeCompany, TEST_PASSWORD } from './company.js';
import type { TestService } from './service.js';

/** The id of one row of each kind, by the name under which inputs of the API ask for it. */
export type RowsByName = Readonly<Record<string, string>>;

/** Makes a company that has at least one row of every kind, through the API, and gives their ids. */
export async function makeWholeCompany(service: TestService, name: string): Promise<RowsByName> {
  const { company, people } = await makeCompany(service.database, name);
  const office = await service.signIn(people.office.email, TEST_PASSWORD);
  const authorityId = await enterDemoCompany(office);
  await must(office, 'createSite', {
    address: '1 First Street',
    town: name,
    zone: ZONE,
    frostDepthInches: 42,
    frostSource: 'rule',
    authorityId,
  });
  const where = { companyId: company.id };
  const db = service.database;
  const site = await db.site.findFirstOrThrow({ where });
  await must(office, 'createJob', {
    siteId: site.id,
    name,
    ownerName: name,
    priority: 1,
    measurement: JSON.stringify(MEASUREMENTS['Larch Street']),
  });
  const job = await db.job.findFirstOrThrow({ where });
  await must(office, 'commitJob', { jobId: job.id });
  const dig = await db.phase.findFirstOrThrow({ where: { ...where, kind: 'dig' } });
  await must(office, 'pinPhase', { phaseId: dig.id, startAt: '2031-03-03T13:00:00Z' });
  await must(office, 'callWeatherHold', {
    siteId: site.id,
    phaseId: dig.id,
    startsAt: '2031-01-07T13:00:00Z',
    endsAt: '2031-01-08T13:00:00Z',
    reason: 'snow in the trench',
  });
  const placement = await db.placement.create({
    data: {
      companyId: company.id,
      jobId: job.id,
      phaseId: (await db.phase.findFirstOrThrow({ where: { ...where, kind: 'footing-pour' } })).id,
      placedAt: new Date('2031-01-06T13:00:00Z'),
      material: 'concrete',
      sectionInches: 10,
      placedTempF: 60,
      mixture: DEFAULT_MIXTURES.concrete as unknown as Prisma.InputJsonObject,
      protection: [],
      requiredPsi: 1500,
    },
  });
  await must(office, 'registerLogger', { siteId: site.id, placementId: placement.id, name: 'Probe' });
  await must(office, 'startImprovement', { seconds: 1 });
  await must(office, 'proposeMove', { phaseId: dig.id, startAt: '2031-01-09T14:00:00Z' });
  const file = { companyId: company.id, hash: 'a', bytes: new Uint8Array([1]), small: new Uint8Array([1]) };
  await db.photoFile.create({ data: { ...file, width: 1, height: 1 } });
  const photo = await db.photo.create({
    data: {
      companyId: company.id,
      jobId: job.id,
      phaseId: dig.id,
      sentHash: 'a',
      fileHash: 'a',
      takenAt: new Date('2031-01-06T13:00:00Z'),
      addedAt: new Date('2031-01-06T13:00:00Z'),
    },
  });
  await must(office, 'makeSignedLink', { jobId: job.id, purpose: 'hookup', recipient: 'Dana Quill' });
  const id = async (row: Promise<{ id: string }>): Promise<string> => (await row).id;
  const set = await id(db.heatingSet.findFirstOrThrow({ where }));
  return {
    siteId: site.id,
    jobId: job.id,
    jobIds: job.id,
    phaseId: dig.id,
    fromId: dig.id,
    toId: await id(db.phase.findFirstOrThrow({ where: { ...where, kind: 'demo' } })),
    areaId: await id(db.area.findFirstOrThrow({ where })),
    crewId: await id(db.crew.findFirstOrThrow({ where })),
    crewIds: await id(db.crew.findFirstOrThrow({ where })),
    memberIds: people.crew.id,
    authorityId,
    templateId: await id(db.template.findFirstOrThrow({ where })),
    linkId: await id(db.link.findFirstOrThrow({ where })),
    holdPointId: await id(db.holdPoint.findFirstOrThrow({ where: { ...where, kind: 'check' } })),
    clearanceId: await id(db.clearance.findFirstOrThrow({ where })),
    inspectionId: await id(db.inspection.findFirstOrThrow({ where })),
    weatherHoldId: await id(db.weatherHold.findFirstOrThrow({ where })),
    proposalId: await id(db.proposal.findFirstOrThrow({ where })),
    placementId: placement.id,
    improvementId: await id(db.improvement.findFirstOrThrow({ where })),
    proposedMoveId: await id(db.proposedMove.findFirstOrThrow({ where })),
    photoId: photo.id,
    signedLinkId: await id(db.signedLink.findFirstOrThrow({ where })),
    loggerId: await id(db.logger.findFirstOrThrow({ where })),
    heatingSetId: set,
    hookupId: await id(db.hookup.findFirstOrThrow({ where })),
    after: dig.id,
    before: dig.id,
  };
}
