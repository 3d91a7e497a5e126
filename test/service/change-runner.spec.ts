import { randomUUID } from 'node:crypto';
import { afterAll, beforeAll, beforeEach, describe, expect, it } from '@jest/globals';
import type { Change } from '../../src/platform/change/change.js';
import { ChangeRunner } from '../../src/platform/change/change-runner.js';
import { ChangeSteps } from '../../src/platform/change/change-steps.js';
import { contextOf, type Context } from '../../src/platform/context.js';
import { HintBus } from '../../src/platform/hints/hint-bus.js';
import { KeyReused } from '../../src/platform/outcomes/key-reused.js';
import { NotFound } from '../../src/platform/outcomes/not-found.js';
import { Refused } from '../../src/platform/outcomes/refusal.js';
import { makeCompany } from '../support/company.js';
import { startService, type TestService } from '../support/service.js';

describe('a change', () => {
  let service: TestService;
  let runner: ChangeRunner;
  let ctx: Context;

  beforeAll(async () => {
    service = await startService();
    runner = service.app.get(ChangeRunner);
  });
  beforeEach(async () => {
    const { company, people } = await makeCompany(service.database, `Company ${randomUUID()}`);
    ctx = contextOf({ companyId: company.id, personId: people.office.id, role: 'office', name: 'office' });
  });
  afterAll(() => service.stop());

  const rename = (name: string) => async (change: Change) => {
    await change.tx.company.update({
      where: { id: ctx.companyId },
      data: { name, revision: { increment: 1 } },
    });
    await change.later('renamed', { companyId: ctx.companyId });
    change.record({
      action: 'company renamed',
      subjectType: 'company',
      subjectId: ctx.companyId,
      detail: { name },
    });
    return { name };
  };
  const traces = async () => ({
    name: (await service.database.company.findUniqueOrThrow({ where: { id: ctx.companyId } })).name,
    journal: await service.database.journalEntry.count({ where: { companyId: ctx.companyId } }),
    outbox: await service.database.outbox.count({ where: { companyId: ctx.companyId } }),
    keys: await service.database.idempotencyKey.count({ where: { companyId: ctx.companyId } }),
  });

  it('commits rows, journal, outbox and key together', async () => {
    const done = await runner.run(
      ctx,
      { operation: 'rename', input: { clientKey: randomUUID() } },
      rename('New'),
    );
    expect(done).toEqual({ name: 'New' });
    expect(await traces()).toEqual({ name: 'New', journal: 1, outbox: 1, keys: 1 });
  });

  it('leaves nothing when it is refused, and the key may be used again', async () => {
    const before = await traces();
    const request = { operation: 'rename', input: { clientKey: randomUUID() } };
    const refused = await runner.run(ctx, request, async (change) => {
      await rename('Half')(change);
      throw new Refused(new NotFound('job'));
    });
    expect(refused).toBeInstanceOf(NotFound);
    expect(await traces()).toEqual(before);
    expect(await runner.run(ctx, request, rename('Whole'))).toEqual({ name: 'Whole' });
  });

  it('leaves nothing when a step after it fails', async () => {
    const before = await traces();
    const failing = runner.run(
      ctx,
      { operation: 'rename', input: { clientKey: randomUUID() } },
      async (change) => {
        await rename('Half')(change);
        await change.tx.$executeRaw`select 1/0`;
        return {};
      },
    );
    await expect(failing).rejects.toThrow(/division by zero/);
    expect(await traces()).toEqual(before);
  });

  it('has one effect and five equal answers when one key is sent five times at once', async () => {
    const request = { operation: 'rename', input: { clientKey: randomUUID() } };
    let effects = 0;
    const answers = await Promise.all(
      Array.from({ length: 5 }, () =>
        runner.run(ctx, request, async (change) => {
          effects += 1;
          return { ...(await rename('Once')(change)), token: randomUUID() };
        }),
      ),
    );
    expect(effects).toBe(1);
    expect(new Set(answers.map((answer) => JSON.stringify(answer))).size).toBe(1);
    expect(await traces()).toMatchObject({ journal: 1, outbox: 1, keys: 1 });
  });

  it('refuses a key that comes back with another input, another operation', async () => {
    const clientKey = randomUUID();
    await runner.run(ctx, { operation: 'rename', input: { clientKey } }, rename('First'));
    const otherInput = { operation: 'rename', input: { clientKey, name: 'x' } as { clientKey: string } };
    expect(await runner.run(ctx, otherInput, rename('Second'))).toBeInstanceOf(KeyReused);
    expect(
      await runner.run(ctx, { operation: 'other', input: { clientKey } }, rename('Third')),
    ).toBeInstanceOf(KeyReused);
    expect(await traces()).toMatchObject({ name: 'First', journal: 1 });
  });

  describe('sent by an outbox', () => {
    const request = (fromOutbox: boolean, clientKey = randomUUID()) => ({
      operation: 'rename',
      input: { clientKey, fromOutbox },
    });
    const refuse = async (): Promise<Record<string, never>> => {
      throw new Refused(new NotFound('job'));
    };

    it('stays refused under its key, however late a copy comes', async () => {
      const before = await traces();
      const asked = request(true);
      expect(await runner.run(ctx, asked, refuse)).toBeInstanceOf(NotFound);
      const late = await runner.run(ctx, asked, rename('Late'));
      expect(late).toMatchObject({
        code: 'NotFound',
        what: 'job',
        message: expect.stringMatching(/no such job/),
      });
      expect(await traces()).toEqual({ ...before, keys: before.keys + 1 });
    });

    it('keeps the answer that was stored first, if a copy succeeds while the refusal is on its way', async () => {
      const asked = request(true);
      const answers = await Promise.all([
        runner.run(ctx, asked, refuse),
        runner.run(ctx, asked, rename('Once')),
        runner.run(ctx, asked, refuse),
      ]);
      const again = await runner.run(ctx, asked, rename('Twice'));
      const { name } = await traces();
      if (name === 'Once') expect(again).toEqual({ name: 'Once' });
      else expect(again).toBeInstanceOf(NotFound);
      expect(name).not.toBe('Twice');
      expect(answers.some((answer) => JSON.stringify(answer) === JSON.stringify(again))).toBe(true);
    });

    it('is the same change as one sent by hand under the same key', async () => {
      const clientKey = randomUUID();
      await runner.run(ctx, request(false, clientKey), rename('First'));
      expect(await runner.run(ctx, request(true, clientKey), rename('Second'))).toEqual({ name: 'First' });
    });

    it('refuses its key with another input, and keeps the first answer', async () => {
      const asked = request(true);
      await runner.run(ctx, asked, refuse);
      const other = { ...asked, operation: 'other' };
      expect(await runner.run(ctx, other, rename('Other'))).toBeInstanceOf(KeyReused);
      expect(await runner.run(ctx, asked, rename('Late'))).toMatchObject({ code: 'NotFound' });
    });
  });

  it('takes its turn: changes of one company never overlap', async () => {
    let inside = 0;
    let most = 0;
    await Promise.all(
      Array.from({ length: 8 }, () =>
        runner.run(ctx, { operation: 'rename', input: { clientKey: randomUUID() } }, async (change) => {
          inside += 1;
          most = Math.max(most, inside);
          await rename('Turn')(change);
          inside -= 1;
          return {};
        }),
      ),
    );
    expect(most).toBe(1);
    expect((await traces()).journal).toBe(8);
  });

  it('is heard by the company that made it, once it is committed, and by no other', async () => {
    const bus = service.app.get(HintBus);
    const mine = bus.listen(ctx.companyId);
    const other = bus.listen(randomUUID());
    await runner.run(ctx, { operation: 'rename', input: { clientKey: randomUUID() } }, rename('Heard'));
    const hint = (await mine.next()).value;
    const entry = await service.database.journalEntry.findFirstOrThrow({
      where: { companyId: ctx.companyId },
    });
    expect(hint).toEqual({ companyId: ctx.companyId, changeNumber: String(entry.id), jobIds: [] });
    other.push({ companyId: 'sentinel', changeNumber: '0', jobIds: [] });
    expect((await other.next()).value).toMatchObject({ companyId: 'sentinel' });
    mine.end();
    other.end();
  });

  it('writes a journal that nobody can alter', async () => {
    await runner.run(ctx, { operation: 'rename', input: { clientKey: randomUUID() } }, rename('Final'));
    const where = { companyId: ctx.companyId };
    await expect(service.database.journalEntry.updateMany({ where, data: { action: 'x' } })).rejects.toThrow(
      /written once/,
    );
    await expect(service.database.journalEntry.deleteMany({ where })).rejects.toThrow(/written once/);
  });

  it('allows each following step one owner, and demands one for each', () => {
    const steps = new ChangeSteps();
    steps.register('replan', async () => undefined);
    expect(() => steps.register('replan', async () => undefined)).toThrow(/has an owner already/);
    expect(() => steps.demandComplete()).toThrow(/hookupReadiness, cureWatch, weatherHolds, reminders/);
  });
});
