import { describe, expect, it } from '@jest/globals';
import { DEFAULT_WEIGHTS } from '../../../shared/schedule/improve/objective.js';
import { inputWith, work } from '../../../shared/schedule/spec-input.js';
import { runThread } from './run-thread.js';

const input = inputWith({
  jobs: [
    { id: 'a', priority: 1 },
    { id: 'b', priority: 2 },
  ],
  phases: [work('a1', 40, { jobId: 'a' }), work('b1', 8, { jobId: 'b' }), work('a2', 8, { jobId: 'a' })],
});

describe('a thread that searches', () => {
  it('comes to its end with an order of every phase when its time is over', async () => {
    const thread = runThread({ kind: 'improve', input, seed: 1, seconds: 0.2, weights: DEFAULT_WEIGHTS });
    const { order, after, before } = await thread.result;
    expect([...order].sort()).toEqual(['a1', 'a2', 'b1']);
    expect(after.total).toBeLessThanOrEqual(before.total);
  });

  it('tells how far it is, and stops with what it has when it is asked to', async () => {
    const said: number[] = [];
    const thread = runThread(
      { kind: 'improve', input, seed: 1, seconds: 600, weights: DEFAULT_WEIGHTS },
      ({ schedules }) => {
        said.push(schedules);
        thread.stop();
      },
    );
    const { schedules } = await thread.result;
    expect(said.length).toBeGreaterThan(0);
    expect(schedules).toBeGreaterThanOrEqual(said[0] ?? Infinity);
  });

  it('gives no result when it is ended', async () => {
    const thread = runThread({ kind: 'improve', input, seed: 1, seconds: 600, weights: DEFAULT_WEIGHTS });
    await thread.end();
    await expect(thread.result).rejects.toThrow('without a result');
  });

  it('fails with the error of the core, which names what is wrong', async () => {
    const broken = { ...input, phases: [work('a1', 4, { jobId: 'nobody' })] };
    const thread = runThread({
      kind: 'improve',
      input: broken,
      seed: 1,
      seconds: 1,
      weights: DEFAULT_WEIGHTS,
    });
    await expect(thread.result).rejects.toThrow('nobody');
  });
});
