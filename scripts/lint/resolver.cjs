const { existsSync, statSync } = require('node:fs');
const { createRequire, isBuiltin } = require('node:module');
const { dirname, resolve } = require('node:path');

/*
 * Tells the import rules which file an import means: `./x.js` is written for `./x.ts` or `./x.tsx`, as Node's ES
 * modules demand.
 */

const isFile = (path) => existsSync(path) && statSync(path).isFile();

exports.interfaceVersion = 2;

exports.resolve = (source, importer) => {
  if (isBuiltin(source)) return { found: true, path: null };
  if (source.startsWith('.')) {
    const bare = resolve(dirname(importer), source);
    const path = [bare, bare.replace(/\.js$/, '.ts'), bare.replace(/\.js$/, '.tsx')].find(isFile);
    return path ? { found: true, path } : { found: false };
  }
  try {
    return { found: true, path: createRequire(importer).resolve(source) };
  } catch {
    return { found: false };
  }
};
