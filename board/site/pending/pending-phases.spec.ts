import { describe, expect, it } from '@jest/globals';
import type { Send } from '../../sends/send.js';
import type { SitePhase } from '../day-sections.js';
import { pendingPhases } from './pending-phases.js';

const POINT = { id: 'h1', title: 'Bottom', gate: 'finish', state: 'open', kind: 'check' };
const PHASE = {
  id: 'f1',
  name: 'Dig',
  state: 'waiting',
  actualStart: null,
  actualFinish: null,
  note: null,
  remainingMinutes: null,
  revision: 3,
  holdPoints: [POINT],
  obstacles: [{ code: 'HoldPointOpen', message: 'x', liftedBy: null, holdPoint: { id: 'h1' } }],
  job: { site: { id: 's1', weatherHolds: [] } },
} as unknown as SitePhase;

let keys = 0;
const send = (change: string, input: object, state: Send['state'] = 'unsent'): Send => ({
  key: `k${(keys += 1)}`,
  change: change as Send['change'],
  title: '',
  input: { ...input },
  state,
  message: '',
  details: [],
});
const AT = '2031-01-06T13:00:00.000Z';
const start = (state?: Send['state'], revision = 3) =>
  send('markPhase', { phaseId: 'f1', mark: 'start', at: AT, seen: null, revision }, state);
const finish = send('markPhase', { phaseId: 'f1', mark: 'finish', at: AT, seen: null, revision: 3 });
/** Newest first, as an outbox shows them. */
const one = (...sends: Send[]) => pendingPhases([PHASE], sends.toReversed())[0];

describe('the sheet with what is still to be sent', () => {
  it('has a started phase, with what is then in the way of finishing it', () => {
    expect(one(start())).toMatchObject({
      state: 'started',
      actualStart: AT,
      pending: true,
      obstacles: [{ message: 'Bottom is not released yet.', holdPoint: { id: 'h1' } }],
    });
  });

  it('follows the order of pressing', () => {
    const release = send('decideHoldPoint', { holdPointId: 'h1', decision: 'released', values: [] });
    expect(one(start(), release)).toMatchObject({
      state: 'started',
      obstacles: [],
      holdPoints: [{ state: 'released' }],
    });
    expect(one(start(), release, finish)).toMatchObject({ state: 'done', actualFinish: AT });
  });

  it('keeps a refused hold point in the way', () => {
    const refuse = send('decideHoldPoint', { holdPointId: 'h1', decision: 'refused', values: [] });
    expect(one(refuse)).toMatchObject({ obstacles: [{}], holdPoints: [{ state: 'refused' }] });
  });

  it('leaves out what the service refused, and what waits for a choice', () => {
    expect(one(start('refused'))).toMatchObject({ state: 'waiting', pending: false });
    expect(one(start('conflict'))).toMatchObject({ state: 'waiting' });
  });

  it('counts what the service has just taken until the newer sheet is there', () => {
    expect(one(start('done'))).toMatchObject({ state: 'started', pending: false });
    expect(one(start('done', 2))).toMatchObject({ state: 'waiting' });
  });

  it('shows the note and the work left as entered', () => {
    const note = send('notePhase', { phaseId: 'f1', note: 'Rock', seen: null, revision: 3 });
    const left = send('tellRemaining', { phaseId: 'f1', remainingMinutes: 90, seen: null, revision: 3 });
    expect(one(note, left)).toMatchObject({ note: 'Rock', remainingMinutes: 90, pending: true });
  });

  it('counts the photos that lie on this phone only', () => {
    const photo = (state?: Send['state']) =>
      send('addPhoto', { phaseId: 'f1', caption: null, takenAt: AT }, state);
    expect(one(photo(), photo('sending'), photo('refused'))).toMatchObject({
      photosUnsent: 2,
      pending: true,
    });
    expect(one(photo('done'))).toMatchObject({ photosUnsent: 0, pending: false });
    expect(one(send('addPhoto', { phaseId: 'f2' }))).toMatchObject({ photosUnsent: 0, pending: false });
  });

  it('shows a called hold at its site alone, and takes away one that is lifted', () => {
    const call = send('callWeatherHold', { siteId: 's1', reason: 'Rain', startsAt: AT, endsAt: null });
    const other = send('callWeatherHold', { siteId: 's2', reason: 'Wind', startsAt: AT, endsAt: null });
    const holds = one(call, other)?.job.site.weatherHolds;
    expect(holds).toMatchObject([{ id: call.key, reason: 'Rain', revision: 0 }]);
    const lift = send('liftWeatherHold', { weatherHoldId: call.key });
    expect(one(call, lift)?.job.site.weatherHolds).toEqual([]);
  });
});
