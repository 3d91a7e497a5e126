import { describe, expect, it } from '@jest/globals';
import { HintStream } from '../platform/hints/hint-stream.js';
import { hintsOfJobs } from './hints-of-jobs.js';

const hint = (changeNumber: string, ...jobIds: string[]) => ({ companyId: 'c', changeNumber, jobIds });

describe('hints of jobs', () => {
  it('passes over hints about other jobs', async () => {
    const stream = new HintStream('c', () => undefined);
    const hints = hintsOfJobs(stream, ['a', 'b']);
    const next = hints.next();
    stream.push(hint('1', 'x'));
    await Promise.resolve();
    stream.push(hint('2', 'x', 'b'));
    expect((await next).value).toEqual({ changed: { changeNumber: '2', jobIds: ['x', 'b'] } });
  });

  it('passes on a hint without jobs, which concerns everybody', async () => {
    const stream = new HintStream('c', () => undefined);
    stream.push(hint('0'));
    expect((await hintsOfJobs(stream, ['a']).next()).value).toEqual({
      changed: { changeNumber: '0', jobIds: [] },
    });
  });

  it('passes on everything when no jobs are named', async () => {
    const stream = new HintStream('c', () => undefined);
    stream.push(hint('7', 'x'));
    expect((await hintsOfJobs(stream, null).next()).value?.changed.changeNumber).toBe('7');
  });

  it('hears nothing when an empty list of jobs is named, save what concerns everybody', async () => {
    const stream = new HintStream('c', () => undefined);
    const next = hintsOfJobs(stream, []).next();
    stream.push(hint('8', 'x'));
    await Promise.resolve();
    stream.push(hint('9'));
    expect((await next).value?.changed.changeNumber).toBe('9');
  });

  it('ends at once when the subscriber leaves, and leaves the source', async () => {
    let left = 0;
    const hints = hintsOfJobs(
      new HintStream('c', () => {
        left += 1;
      }),
      null,
    );
    const waiting = hints.next();
    await hints.return?.();
    expect(await waiting).toEqual({ done: true, value: undefined });
    expect(left).toBe(1);
  });
});
