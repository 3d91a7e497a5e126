import 'fake-indexeddb/auto';
import { randomInt, randomUUID } from 'node:crypto';
import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import type { Delivered } from '../../board/sends/outbox/outbox.js';
import { type Outcome, readOutcome } from '../../board/sends/read-outcome.js';
import type { HoldPoint, Phase } from '../../src/generated/prisma/client.js';
import type { ApiClient } from '../support/api-client.js';
import { BadSignal } from '../support/bad-signal.js';
import { RunningJob } from '../support/running-job.js';
import { seededRandom } from '../../shared/schedule/improve/random.js';
import { startService, type TestService } from '../support/service.js';

/*
 * The promise of the site sheet: whatever the signal does, the records end as if every press had reached the service
 * once, in the order of pressing; and what the service refused or found in conflict is listed to the person, the same
 * presses either way. Two equal jobs are pressed through, one over a bad signal, one over a perfect one.
 */

const ACTIONS = 500;
const ROUNDS = 10;
const MINUTE = 60_000;
const MORNING = Date.parse('2031-01-06T12:00:00Z');
const KINDS = [
  ...(['MarkPhase', 'MarkPhase', 'NotePhase', 'NotePhase', 'TellRemaining', 'TellRemaining'] as const),
  ...(['DecideHoldPoint', 'DecideHoldPoint', 'DecideHoldPoint', 'CallWeatherHold'] as const),
];

/** What a conflict tells; a weather hold can be in none. */
const BOTH = '... on FieldConflict { field theirs mine standing changedBy currentRevision }';

/** One press on the sheet of either job. */
interface Press {
  readonly title: string;
  readonly change: string;
  readonly input: (side: Side) => Record<string, unknown>;
}

/** One of the two jobs. */
interface Side {
  readonly job: RunningJob;
  readonly phases: readonly Phase[];
  readonly points: readonly HoldPoint[];
}

async function makeSide(service: TestService): Promise<Side> {
  const job = await RunningJob.make(service);
  const phases: Phase[] = [];
  const points: HoldPoint[] = [];
  for (let index = 0; index < 6; index += 1) {
    const phase = await job.phase(`Step ${index}`, { requiredCrewId: job.mason.id });
    const before = phases.at(-1);
    if (before) await job.link(before, phase);
    phases.push(phase);
    points.push(await job.holdPoint(phase, `Check ${index}`, { gate: index % 2 ? 'start' : 'finish' }));
  }
  return { job, phases, points };
}

/** What the person presses, each press building on what the sheet showed after the ones before it. */
function presses(chance: () => number): Press[] {
  const shown = new Map<string, unknown>();
  const pick = (count: number) => Math.floor(chance() * count);
  /** The sheet shows what was pressed; the service hears what it had shown before. */
  const over = (name: string, value: unknown): unknown => {
    const seen = shown.get(name) ?? null;
    shown.set(name, value);
    return seen;
  };
  return Array.from({ length: ACTIONS }, (_, number): Press => {
    const [kind, index] = [KINDS[pick(KINDS.length)] ?? 'NotePhase', pick(6)];
    const at = new Date(MORNING + number * MINUTE).toISOString();
    const press = (input: Press['input']): Press => ({
      title: `${number} ${kind} ${index}`,
      change: `${kind[0]?.toLowerCase()}${kind.slice(1)}`,
      input,
    });
    const phaseId = ({ phases }: Side) => phases[index]?.id;
    switch (kind) {
      case 'MarkPhase': {
        const mark = chance() < 0.5 ? 'start' : 'finish';
        const seen = over(`${mark} ${index}`, at);
        return press((side) => ({ phaseId: phaseId(side), mark, at, seen, revision: 1 }));
      }
      case 'NotePhase': {
        const note = chance() < 0.1 ? null : `note ${number}`;
        const seen = over(`note ${index}`, note);
        return press((side) => ({ phaseId: phaseId(side), note, seen, revision: 1 }));
      }
      case 'TellRemaining': {
        const remainingMinutes = pick(600);
        const seen = over(`left ${index}`, remainingMinutes);
        return press((side) => ({ phaseId: phaseId(side), remainingMinutes, seen, revision: 1 }));
      }
      case 'DecideHoldPoint': {
        const decision = chance() < 0.7 ? 'released' : 'refused';
        const seen = over(`point ${index}`, decision) ?? 'open';
        const values = [{ itemId: 'seen', confirmed: decision === 'released' }];
        const remark = `remark ${number}`;
        return press(({ points }) => ({
          holdPointId: points[index]?.id,
          decision,
          seen,
          values,
          remark,
          revision: 1,
        }));
      }
      case 'CallWeatherHold':
        return press(({ job }) => ({ siteId: job.site.id, reason: `gust ${number}`, startsAt: at }));
    }
  });
}

/** The records that the presses are about, without ids and without what names the order of asking only. */
async function records({ job, phases, points }: Side) {
  const rows = await Promise.all(phases.map((phase) => job.phaseNow(phase)));
  const gates = await Promise.all(points.map((point) => job.holdPointNow(point)));
  const holds = await job.database.weatherHold.findMany({
    where: { companyId: job.company.id },
    orderBy: { reason: 'asc' },
  });
  const lines = await job.database.journalEntry.groupBy({
    by: ['action'],
    where: { companyId: job.company.id },
    _count: true,
    orderBy: { action: 'asc' },
  });
  return {
    phases: rows.map(({ state, actualStart, actualFinish, note, remainingMinutes, revision }) => ({
      state,
      actualStart,
      actualFinish,
      note,
      remainingMinutes,
      revision,
    })),
    gates: gates.map(({ state, reason, measured, revision }) => ({ state, reason, measured, revision })),
    holds: holds.map(({ reason, startsAt }) => ({ reason, startsAt })),
    journal: lines.map(({ action, _count }) => [action, _count]),
  };
}

/** One request of a client, answered in the words of the sheet. */
async function request(
  client: ApiClient,
  { change, input, key }: { readonly change: string; readonly input: object; readonly key: string },
): Promise<Delivered> {
  const type = `${change[0]?.toUpperCase()}${change.slice(1)}Input`;
  const { outcome } = await client.data<{ outcome: Outcome }>(
    `mutation($input: ${type}!) { outcome: ${change}(input: $input) {
      __typename ... on Refusal { code message } ${change === 'callWeatherHold' ? '' : BOTH} } }`,
    { input: { ...input, clientKey: key, fromOutbox: true } },
  );
  return readOutcome(outcome);
}

describe('500 presses over a bad signal', () => {
  let service: TestService;

  beforeAll(async () => {
    service = await startService({ now: '2031-01-07T12:00:00Z' });
  });
  afterAll(() => service.stop());

  it('end as if each had been done once in order, and list what was refused', async () => {
    const seed = Number(process.env['SEED'] ?? randomInt(2 ** 31));
    process.stdout.write(`seed of the bad signal: ${seed} (SEED=${seed} plays it again)\n`);
    const chance = seededRandom(seed);
    const [bad, good] = [await makeSide(service), await makeSide(service)];
    const all = presses(chance);
    const phone = new BadSignal(
      bad.job.people.foreman.id,
      (record) => request(bad.job.foreman, record),
      chance,
    );
    const refused: [string, string][] = [];
    const perRound = ACTIONS / ROUNDS;
    for (let round = 0; round < ROUNDS; round += 1) {
      for (const { change, title, input } of all.slice(round * perRound, (round + 1) * perRound)) {
        await phone.press(change, title, input(bad));
        const answer = await request(good.job.foreman, { change, input: input(good), key: randomUUID() });
        if (answer.state !== 'done') refused.push([title, answer.state]);
      }
      await phone.allSent();
      // Meanwhile the office writes as well, so that later presses meet what the person has not seen.
      for (const { job, phases } of [bad, good]) {
        const phase = phases[round % phases.length];
        const { note } = await job.phaseNow({ id: phase?.id ?? '' });
        await job.office.change('notePhase', { phaseId: phase?.id, note: `office ${round}`, seen: note });
      }
    }
    const { sends, unsent } = (await phone.allSent()).snapshot();
    expect(unsent).toBe(0);
    expect(await records(bad)).toEqual(await records(good));
    const listed = sends.filter(({ state }) => state !== 'done').map(({ title, state }) => [title, state]);
    expect(listed.toReversed()).toEqual(refused);
    // Each kind of trouble did come, and presses of every fate were among them.
    expect(Math.min(...Object.values(phone.troubles))).toBeGreaterThan(5);
    expect(new Set(refused.map(([, state]) => state))).toEqual(new Set(['refused', 'conflict']));
    expect(refused.length).toBeLessThan(ACTIONS - 50);
  }, 600_000);
});
