import { describe, expect, it } from '@jest/globals';
import { HintStream } from './hint-stream.js';

const hint = (changeNumber: string, jobIds: string[]) => ({ companyId: 'c', changeNumber, jobIds });

describe('a stream of hints', () => {
  it('hands a hint to whoever waits', async () => {
    const stream = new HintStream('c', () => undefined);
    const next = stream.next();
    stream.push(hint('1', ['a']));
    expect(await next).toEqual({ done: false, value: hint('1', ['a']) });
  });

  it('merges hints that nobody has read yet', async () => {
    const stream = new HintStream('c', () => undefined);
    stream.push(hint('1', ['a']));
    stream.push(hint('2', ['b', 'a']));
    expect((await stream.next()).value).toEqual(hint('2', ['a', 'b']));
    stream.push(hint('3', ['a']));
    stream.push(hint('4', []));
    stream.push(hint('5', ['b']));
    expect((await stream.next()).value).toEqual(hint('5', []));
  });

  it('ends at once when its reader leaves, even while waiting', async () => {
    let ended = 0;
    const stream = new HintStream('c', () => {
      ended += 1;
    });
    const waiting = stream.next();
    await stream.return();
    expect((await waiting).done).toBe(true);
    expect((await stream.next()).done).toBe(true);
    stream.end();
    expect(ended).toBe(1);
  });
});
