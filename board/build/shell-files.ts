import { createHash } from 'node:crypto';
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Plugin } from 'vite';

/** Name of the worker's script, and of the list that stands in its source. */
const WORKER = 'service-worker.js';
const LIST = 'SHELL_FILES';

/** Puts the list of everything that was built into the service worker, each file with a revision of its content. */
export function shellFiles(publicFolder: string): Plugin {
  return {
    name: 'shell-files',
    enforce: 'post',
    apply: 'build',
    generateBundle(_options, bundle) {
      const worker = bundle[WORKER];
      if (worker?.type !== 'chunk') throw new Error(`The build made no ${WORKER}`);
      const built = Object.values(bundle)
        .filter(({ fileName }) => fileName !== WORKER)
        .map((file) => entry(file.fileName, file.type === 'chunk' ? file.code : file.source));
      const copied = readdirSync(publicFolder).map((name) =>
        entry(name, readFileSync(join(publicFolder, name))),
      );
      const list = JSON.stringify([...built, ...copied].sort((a, b) => (a.url < b.url ? -1 : 1)));
      if (!worker.code.includes(LIST)) throw new Error(`${WORKER} does not read ${LIST}`);
      worker.code = worker.code.replaceAll(LIST, list);
    },
  };
}

function entry(name: string, content: string | Uint8Array): { url: string; revision: string } {
  return { url: `/${name}`, revision: createHash('sha256').update(content).digest('hex').slice(0, 16) };
}
