import { spawn } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from '@jest/globals';
import { projectRoot } from '../../../scripts/project-root.js';

/** A program that takes the lock, notes that it came and went, and lets go. */
const PROGRAM = `
import { appendFileSync } from 'node:fs';
import { setTimeout as sleep } from 'node:timers/promises';
import { withLock } from '${projectRoot}/scripts/house/lock.mjs';
const [lock, log] = process.argv.slice(2);
await withLock(lock, async () => {
  appendFileSync(log, 'in ');
  await sleep(20);
  appendFileSync(log, 'out ');
  if (process.env.DIES) process.kill(process.pid, 'SIGKILL');
});
`;

describe('a lock between processes', () => {
  let folder: string;
  const run = (env: NodeJS.ProcessEnv = {}) =>
    new Promise<NodeJS.Signals | number | null>((resolve) => {
      const child = spawn(
        process.execPath,
        [join(folder, 'holder.mjs'), join(folder, 'lock'), join(folder, 'log')],
        {
          env: { ...process.env, ...env },
          stdio: 'inherit',
        },
      );
      child.once('exit', (code, signal) => resolve(signal ?? code));
    });
  const log = () => readFileSync(join(folder, 'log'), 'utf8').trim();

  beforeEach(() => {
    folder = mkdtempSync(join(tmpdir(), 'flagway-lock-'));
    writeFileSync(join(folder, 'holder.mjs'), PROGRAM);
  });
  afterEach(() => rmSync(folder, { recursive: true, force: true }));

  it('lets one in at a time, and everyone in the end', async () => {
    expect(await Promise.all([run(), run(), run(), run()])).toEqual([0, 0, 0, 0]);
    expect(log()).toBe('in out in out in out in out');
  });

  it('is free again when its holder was killed', async () => {
    expect(await run({ DIES: 'yes' })).toBe('SIGKILL');
    expect(await run()).toBe(0);
    expect(log()).toBe('in out in out');
  });

  it('is free when its holder’s number has gone to another process', async () => {
    writeFileSync(join(folder, 'lock'), JSON.stringify({ pid: process.pid, start: 'another time' }));
    expect(await run()).toBe(0);
    expect(log()).toBe('in out');
  });
});
