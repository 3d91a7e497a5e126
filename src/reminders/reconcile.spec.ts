import { describe, expect, test } from '@jest/globals';
import fc from 'fast-check';
import type { Reminder } from '../generated/prisma/client.js';
import { reconcile, type WantedReminder } from './reconcile.js';

const now = new Date('2031-01-06T14:00:00Z');
const hours = (count: number): Date => new Date(now.getTime() + count * 3_600_000);

const detail = (subject: string) => ({
  crewId: null,
  message: { subject, opening: '', facts: [], lists: [], cautions: [], link: { words: '', path: '/' } },
});

const wanted = (changes: Partial<WantedReminder> = {}): WantedReminder => ({
  kind: 'visit-today',
  subjectType: 'inspection',
  subjectId: 's1',
  jobId: 'j1',
  dueAt: hours(10),
  usefulUntil: hours(20),
  detail: detail('a'),
  ...changes,
});

const stored = (changes: Partial<Reminder> = {}): Reminder => ({
  id: 'r1',
  companyId: 'c1',
  jobId: 'j1',
  kind: 'visit-today',
  subjectType: 'inspection',
  subjectId: 's1',
  dueAt: hours(10),
  usefulUntil: hours(20),
  state: 'pending',
  generation: 1,
  detail: detail('a'),
  queuedAt: null,
  ...changes,
});

const nothing = { create: [], move: [], reword: [], cancel: [] };

describe('a wanted reminder that is not there', () => {
  test('is created', () => {
    expect(reconcile([], [wanted()], now)).toEqual({ ...nothing, create: [wanted()] });
  });

  test('is left out when it could no longer be of use', () => {
    expect(reconcile([], [wanted({ usefulUntil: now })], now)).toEqual(nothing);
  });

  test('is created when it is due already but still of use', () => {
    expect(reconcile([], [wanted({ dueAt: hours(-1) })], now).create).toHaveLength(1);
  });
});

describe('a pending reminder', () => {
  test('stays when nothing changed, whatever the order of its keys', () => {
    const turned = JSON.parse('{"message":{},"crewId":null}') as Record<string, unknown>;
    const { message, crewId } = detail('a');
    expect(reconcile([stored({ detail: { ...turned, message, crewId } as never })], [wanted()], now)).toEqual(
      nothing,
    );
  });

  test('moves when its time moved, to earlier or later', () => {
    for (const dueAt of [hours(2), hours(12), hours(-5)]) {
      const one = wanted({ dueAt });
      expect(reconcile([stored()], [one], now)).toEqual({ ...nothing, move: [{ id: 'r1', wanted: one }] });
    }
  });

  test('is worded anew without being due anew when only its words changed', () => {
    const one = wanted({ detail: detail('b') });
    expect(reconcile([stored()], [one], now)).toEqual({ ...nothing, reword: [{ id: 'r1', wanted: one }] });
    const longer = wanted({ usefulUntil: hours(30) });
    expect(reconcile([stored()], [longer], now).reword).toHaveLength(1);
  });

  test('is cancelled when it is no longer wanted', () => {
    expect(reconcile([stored()], [], now)).toEqual({ ...nothing, cancel: ['r1'] });
  });

  test('past its use is left to be marked too late', () => {
    const late = { dueAt: hours(-10), usefulUntil: hours(-1) };
    expect(reconcile([stored(late)], [wanted(late)], now)).toEqual(nothing);
  });
});

describe('a sent reminder', () => {
  test('is left alone while its time stays, moves to earlier, or later by less than half a day', () => {
    for (const dueAt of [hours(10), hours(5), hours(21)]) {
      expect(reconcile([stored({ state: 'sent' })], [wanted({ dueAt })], now)).toEqual(nothing);
    }
  });

  test('fires again when its time moved to half a day later or more', () => {
    const one = wanted({ dueAt: hours(34), usefulUntil: hours(44) });
    expect(reconcile([stored({ state: 'sent' })], [one], now).move).toEqual([{ id: 'r1', wanted: one }]);
  });

  test('is left alone when it is no longer wanted', () => {
    expect(reconcile([stored({ state: 'sent' })], [], now)).toEqual(nothing);
  });
});

describe('a cancelled or missed reminder', () => {
  test('fires when it is wanted again and still of use', () => {
    expect(reconcile([stored({ state: 'cancelled' })], [wanted()], now).move).toHaveLength(1);
    const past = wanted({ usefulUntil: now });
    expect(reconcile([stored({ state: 'cancelled' })], [past], now)).toEqual(nothing);
  });

  test('that was missed fires only when its time moved to half a day later or more', () => {
    expect(reconcile([stored({ state: 'tooLate' })], [wanted()], now)).toEqual(nothing);
    expect(reconcile([stored({ state: 'tooLate' })], [wanted({ dueAt: hours(22) })], now).move).toHaveLength(
      1,
    );
  });
});

describe('for any stored and wanted reminders', () => {
  const subject = fc.constantFrom('s1', 's2', 's3', 's4');
  const kind = fc.constantFrom('visit-today' as const, 'reading-due' as const);
  const hour = fc.integer({ min: -30, max: 30 });
  const wantedList = fc.uniqueArray(
    fc
      .tuple(kind, subject, hour, hour)
      .map(([k, s, due, useful]) =>
        wanted({ kind: k, subjectId: s, dueAt: hours(due), usefulUntil: hours(useful) }),
      ),
    { selector: (one) => `${one.kind} ${one.subjectId}` },
  );
  const storedList = fc
    .uniqueArray(
      fc.tuple(kind, subject, hour, hour, fc.constantFrom('pending', 'sent', 'cancelled', 'tooLate')),
      { selector: ([k, s]) => `${k} ${s}` },
    )
    .map((rows) =>
      rows.map(([k, s, due, useful, state], index) =>
        stored({
          id: `r${index}`,
          kind: k,
          subjectId: s,
          dueAt: hours(due),
          usefulUntil: hours(useful),
          state: state,
        }),
      ),
    );

  test('doing what it says leaves nothing more to do', () => {
    fc.assert(
      fc.property(storedList, wantedList, (rows, list) => {
        const first = reconcile(rows, list, now);
        expect(reconcile(applied(rows, first), list, now)).toEqual(nothing);
      }),
    );
  });

  test('a stored reminder is touched in one way at most', () => {
    fc.assert(
      fc.property(storedList, wantedList, (rows, list) => {
        const { move, reword, cancel } = reconcile(rows, list, now);
        const touched = [...move.map(({ id }) => id), ...reword.map(({ id }) => id), ...cancel];
        expect(new Set(touched).size).toBe(touched.length);
      }),
    );
  });

  /** The rows after the changes were written. */
  function applied(rows: readonly Reminder[], changes: ReturnType<typeof reconcile>): Reminder[] {
    const columns = ({ jobId, dueAt, usefulUntil, detail: words }: WantedReminder) => ({
      jobId,
      dueAt,
      usefulUntil,
      detail: words as never,
    });
    return [
      ...rows.map((row): Reminder => {
        const moved = changes.move.find(({ id }) => id === row.id);
        if (moved)
          return { ...row, ...columns(moved.wanted), state: 'pending', generation: row.generation + 1 };
        const reworded = changes.reword.find(({ id }) => id === row.id);
        if (reworded) return { ...row, ...columns(reworded.wanted) };
        return changes.cancel.includes(row.id) ? { ...row, state: 'cancelled' } : row;
      }),
      ...changes.create.map((one, index) =>
        stored({ id: `new${index}`, kind: one.kind, subjectId: one.subjectId, ...columns(one) }),
      ),
    ];
  }
});
