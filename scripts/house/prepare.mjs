import { join } from 'node:path';
import { buildBoard } from './build-board.mjs';
import { BENCHMARKS, compile } from './compile.mjs';
import { demandNode } from './demand-node.mjs';
import { generate } from './generate.mjs';
import { install } from './install.mjs';
import { withLock } from './lock.mjs';
import { root } from './root.mjs';

export const say = (text) => process.stdout.write(`${text}\n`);

const lockFile = join(root, '.flagway', 'prepare.lock');

/**
 * Does what is missing between a fresh clone and a running service; each step only when its sources changed. Two
 * callers at once take turns.
 *
 * @param {{upTo?: 'install' | 'benchmarks' | 'generate' | 'compile' | 'build', say?: (text: string) => void}} [options] last step to do, and
 *   where it tells what it does
 */
export function prepare({ upTo = 'build', say: tell = say } = {}) {
  demandNode();
  return withLock(
    lockFile,
    async () => {
      await install(tell);
      if (upTo === 'install') return undefined;
      if (upTo === 'benchmarks') return compile(tell, BENCHMARKS);
      await generate(tell);
      if (upTo === 'generate') return undefined;
      if (upTo === 'compile') return compile(tell);
      return Promise.all([compile(tell), buildBoard(tell)]);
    },
    () => tell('Waiting for another command to finish its preparations ...'),
  );
}
