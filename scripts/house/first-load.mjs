import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { root } from './root.mjs';

/** Most that a page may load at first, compressed, in kB of 1000 bytes. Both pages are of one client, and load the same. */
export const BUDGETS = [
  { page: 'board', kB: 400 },
  { page: 'site sheet', kB: 250 },
];

const BUILT = join(root, 'board', 'dist');

/**
 * What the built client loads before a page can be drawn: the scripts and style sheets that its document names, compressed.
 *
 * @returns {{files: {name: string, kB: number}[], kB: number}}
 */
export function firstLoad(folder = BUILT) {
  const document = readFileSync(join(folder, 'index.html'), 'utf8');
  const names = [...document.matchAll(/(?:src|href)="\/?\.?\/?([^"]+\.(?:js|css))"/g)].map(
    ([, name]) => name,
  );
  const files = names.map((name) => ({ name, kB: gzipSync(readFileSync(join(folder, name))).length / 1000 }));
  return { files, kB: files.reduce((sum, file) => sum + file.kB, 0) };
}

/** One line for people, and whether every page is within its budget. */
export function judgeFirstLoad(kB, budgets = BUDGETS) {
  const over = budgets.filter((budget) => kB > budget.kB);
  const each = budgets.map((budget) => `${budget.page} ${kB.toFixed(0)} of ${budget.kB} kB`).join(', ');
  const what =
    over.length === 0
      ? ''
      : `\nToo much: ${over.map(({ page }) => page).join(', ')}. Take out what is not needed at first, or load it when it is (import() in board/).`;
  return { ok: over.length === 0, text: `first load, compressed: ${each}${what}` };
}
