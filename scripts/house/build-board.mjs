import { firstLoad, judgeFirstLoad } from './first-load.mjs';
import { runNode } from './run.mjs';
import { upToDate } from './up-to-date.mjs';

/** Builds the board's client into board/dist. */
export function buildBoard(say) {
  return upToDate(
    {
      name: 'board',
      from: ['board', 'shared', 'package-lock.json'],
      without: ['dist'],
      to: 'board/dist/index.html',
    },
    async () => {
      say('Building the board ...');
      await runNode(
        ['node_modules/vite/bin/vite.js', 'build', '--config', 'board/vite.config.ts', '--logLevel', 'warn'],
        { quiet: true },
      );
      say(judgeFirstLoad(firstLoad().kB).text);
    },
  );
}
