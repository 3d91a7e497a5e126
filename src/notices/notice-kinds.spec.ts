import { describe, expect, test } from '@jest/globals';
import { NOTICE_KINDS, type NoticeKind } from './notice-kind.js';
import { NoticeKinds } from './notice-kinds.js';

const handler = (kind: string): NoticeKind =>
  ({ kind, urgent: false, announce: () => Promise.resolve(null) }) as unknown as NoticeKind;

/** A registry with a handler for every kind but those left out. */
function registryWithout(...left: string[]): NoticeKinds {
  const kinds = new NoticeKinds();
  kinds.register(...NOTICE_KINDS.filter((kind) => !left.includes(kind)).map(handler));
  return kinds;
}

describe('the boot', () => {
  test('takes exactly one handler for each kind', () => {
    expect(() => registryWithout().onApplicationBootstrap()).not.toThrow();
  });

  test.each([...NOTICE_KINDS])('refuses to go on without a handler for %s', (kind) => {
    expect(() => registryWithout(kind).onApplicationBootstrap()).toThrow(
      `the notice kind "${kind}" has 0 handlers instead of one`,
    );
  });

  test.each([...NOTICE_KINDS])('refuses two handlers for %s', (kind) => {
    const kinds = registryWithout();
    kinds.register(handler(kind));
    expect(() => kinds.onApplicationBootstrap()).toThrow(`"${kind}" has 2 handlers instead of one`);
  });

  test('names every fault at once, unknown kinds too', () => {
    const kinds = registryWithout('visit-today', 'reading-due');
    kinds.register(handler('moonrise'));
    expect(() => kinds.demandComplete()).toThrow(/visit-today.*reading-due.*"moonrise" is no kind of notice/);
  });
});

describe('a handler', () => {
  test('is found by its kind, and asking for an unknown one says so', () => {
    expect(registryWithout().of('visit-today').kind).toBe('visit-today');
    expect(() => registryWithout().of('moonrise')).toThrow('No handler for notices of the kind "moonrise"');
  });
});
