import { describe, expect, test } from '@jest/globals';
import { NOTICE_KINDS } from '../notices/notice-kind.js';
import { REMINDER_KINDS } from './reminder-kind.js';
import { demandOneDerivationEach, reminderKinds } from './reminder-kinds.js';

describe('the boot', () => {
  test('finds exactly one derivation for each kind of reminder', () => {
    expect(() => demandOneDerivationEach(reminderKinds)).not.toThrow();
  });

  test.each([...REMINDER_KINDS])('refuses %s without a derivation, and with two', (kind) => {
    const others = reminderKinds.filter((one) => one.kind !== kind);
    const its = reminderKinds.filter((one) => one.kind === kind);
    expect(() => demandOneDerivationEach(others)).toThrow(`"${kind}" has 0 derivations instead of one`);
    expect(() => demandOneDerivationEach([...reminderKinds, ...its])).toThrow(
      `"${kind}" has 2 derivations instead of one`,
    );
  });

  test('every reminder is a kind of notice', () => {
    expect(NOTICE_KINDS).toEqual(expect.arrayContaining([...REMINDER_KINDS]));
  });
});
