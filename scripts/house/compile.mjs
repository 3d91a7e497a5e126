import { existsSync, mkdirSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { basename, dirname, join, relative } from 'node:path';
import { filesUnder } from './fingerprint.mjs';
import { root } from './root.mjs';
import { upToDate } from './up-to-date.mjs';

/** The service as it runs. */
const SERVICE = { name: 'service', sources: ['shared', 'src', 'prisma'], to: 'dist', entry: 'src/main.js' };

/** The benchmarks, which are to measure what the service runs and not what a loader makes of it on the way. */
export const BENCHMARKS = {
  name: 'benchmarks',
  sources: ['shared', 'bench'],
  to: '.flagway/bench',
  entry: 'bench/main.js',
};

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

const wanted = (file) => /\.m?[jt]s$/.test(file) && !file.endsWith('.d.ts') && !file.endsWith('.spec.ts');

/** Compiles one file into the folder, which will stand at `to`. */
async function compileFile(swc, file, folder, to) {
  const path = relative(root, file);
  const target = join(folder, path.replace(/\.ts$/, '.js'));
  const { code, map } = await swc.transform(readFileSync(file, 'utf8'), {
    ...options,
    filename: path,
    // Seen from where the folder will stand.
    sourceFileName: relative(dirname(join(root, to, path)), file),
  });
  mkdirSync(dirname(target), { recursive: true });
  writeFileSync(target, `${code}\n//# sourceMappingURL=${basename(target)}.map\n`);
  if (map) writeFileSync(`${target}.map`, map);
}

/**
 * Compiles the service into dist/, or other sources into a folder of theirs, by the same compiler as the tests. Types
 * are checked elsewhere (npm run check). The folder is replaced as a whole, so it never holds a file whose source is
 * gone.
 */
export function compile(say, { name, sources, to, entry } = SERVICE) {
  return upToDate(
    {
      name,
      from: [...sources, 'package-lock.json', 'scripts/house/compile.mjs'],
      to: join(to, entry),
    },
    async () => {
      say(`Compiling the ${name} ...`);
      const { default: swc } = await import('@swc/core');
      const fresh = join(root, '.flagway', `${name}.new`);
      rmSync(fresh, { recursive: true, force: true });
      const files = sources.flatMap((source) => filesUnder(join(root, source))).filter(wanted);
      await Promise.all(files.map((file) => compileFile(swc, file, fresh, to)));
      const compiled = join(root, to);
      const old = join(root, '.flagway', `${name}.old`);
      rmSync(old, { recursive: true, force: true });
      if (existsSync(compiled)) renameSync(compiled, old);
      renameSync(fresh, compiled);
      rmSync(old, { recursive: true, force: true });
    },
  );
}
