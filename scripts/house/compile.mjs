import { existsSync, mkdirSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { dirname, join, relative } from 'node:path';
import { filesUnder } from './fingerprint.mjs';
import { root } from './root.mjs';
import { upToDate } from './up-to-date.mjs';

const SOURCES = ['shared', 'src', 'prisma'];

const options = {
  module: { type: 'es6' },
  sourceMaps: true,
  jsc: {
    target: 'es2022',
    keepClassNames: true,
    parser: { syntax: 'typescript', decorators: true },
    transform: { legacyDecorator: true, decoratorMetadata: true },
  },
};

const wanted = (file) => file.endsWith('.ts') && !file.endsWith('.d.ts') && !file.endsWith('.spec.ts');

/** Compiles one file into the folder. */
async function compileFile(swc, file, folder) {
  const path = relative(root, file);
  const target = join(folder, path.replace(/\.ts$/, '.js'));
  const { code, map } = await swc.transform(readFileSync(file, 'utf8'), {
    ...options,
    filename: path,
    // Seen from where the folder will stand.
    sourceFileName: relative(dirname(join(root, 'dist', path)), file),
  });
  mkdirSync(dirname(target), { recursive: true });
  writeFileSync(
    target,
    `${code}\n//# sourceMappingURL=${path.split('/').at(-1).replace(/\.ts$/, '.js.map')}\n`,
  );
  if (map) writeFileSync(`${target}.map`, map);
}

/**
 * Compiles the service into dist/, by the same compiler as the tests. Types are checked elsewhere (npm run check).
 * The folder is replaced as a whole, so it never holds a file whose source is gone.
 */
export function compile(say) {
  return upToDate(
    {
      name: 'service',
      from: [...SOURCES, 'package-lock.json', 'scripts/house/compile.mjs'],
      to: 'dist/src/main.js',
    },
    async () => {
      say('Compiling the service ...');
      const { default: swc } = await import('@swc/core');
      const fresh = join(root, '.flagway', 'dist.new');
      rmSync(fresh, { recursive: true, force: true });
      const files = SOURCES.flatMap((source) => filesUnder(join(root, source))).filter(wanted);
      await Promise.all(files.map((file) => compileFile(swc, file, fresh)));
      const dist = join(root, 'dist');
      const old = join(root, '.flagway', 'dist.old');
      rmSync(old, { recursive: true, force: true });
      if (existsSync(dist)) renameSync(dist, old);
      renameSync(fresh, dist);
      rmSync(old, { recursive: true, force: true });
    },
  );
}
