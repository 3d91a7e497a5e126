import { buildBoard } from '../house/build-board.mjs';
import { firstLoad, judgeFirstLoad } from '../house/first-load.mjs';

/** Builds the client where it is stale, and holds what its pages load at first against their budgets. */
export async function bundle() {
  await buildBoard(() => undefined);
  const { ok, text } = judgeFirstLoad(firstLoad().kB);
  return { ok, output: text };
}
