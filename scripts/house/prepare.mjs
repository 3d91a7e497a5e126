import { join } from 'node:path';
import { buildBoard } from './build-board.mjs';
import { compile } from './compile.mjs';
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
 * @param {{upTo?: 'install' | 'generate' | 'build'}} [options] last step to do
 */
export function prepare({ upTo = 'build' } = {}) {
  demandNode();
  return withLock(
    lockFile,
    async () => {
      await install(say);
      if (upTo === 'install') return;
      await generate(say);
      if (upTo === 'generate') return;
      await Promise.all([compile(say), buildBoard(say)]);
    },
    () => say('Waiting for another command to finish its preparations ...'),
  );
}
