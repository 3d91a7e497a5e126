import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { root } from '../house/root.mjs';
import { trackedFiles } from './tracked-files.mjs';

/*
 * The house numbers: how long files are and how much of the code is tests. A number that may stand outside its bound
 * is argued in docs/decisions/house-numbers.md, in a row "| measure | bound | reason |".
 */

const PAGE = 'docs/decisions/house-numbers.md';

const isCode = (path) => /\.(ts|tsx|mjs|cjs)$/.test(path) && !/\.d\.ts$/.test(path);
// What only tests use stands in `testing` folders beside the core.
const isTest = (path) => /\.spec\.tsx?$/.test(path) || path.startsWith('test/') || path.includes('/testing/');
const isWritten = (path) =>
  !/^Written by|^\/\/ Written by|^# Written by/.test(readFileSync(join(root, path), 'utf8').slice(0, 200));

const linesOf = (path) => {
  const text = readFileSync(join(root, path), 'utf8');
  return text === '' ? 0 : text.split('\n').length - (text.endsWith('\n') ? 1 : 0);
};

const sum = (numbers) => numbers.reduce((total, number) => total + number, 0);

/** The value that the given part of the numbers does not exceed. */
function quantile(numbers, part) {
  const sorted = [...numbers].sort((a, b) => a - b);
  return sorted[Math.max(0, Math.ceil(part * sorted.length) - 1)] ?? 0;
}

/** Bounds that the decision page allows beside the house's. */
function argued() {
  let page = '';
  try {
    page = readFileSync(join(root, PAGE), 'utf8');
  } catch {
    return new Map();
  }
  const rows = [...page.matchAll(/^\| *([a-z0-9][^|]*?) *\| *([\d.]+) *\| *(\S[^|]*?) *\|$/gm)];
  return new Map(rows.map(([, measure, bound]) => [measure, Number(bound)]));
}

/** @returns {{ok: boolean, output: string}} */
export function houseNumbers() {
  const code = trackedFiles().filter((path) => isCode(path) && isWritten(path));
  const source = code.filter((path) => !isTest(path));
  const tests = code.filter(isTest);
  const core = source.filter((path) => path.startsWith('shared/'));
  const coreTests = tests.filter((path) => /^(shared|test\/standards)\//.test(path));
  const total = (paths) => sum(paths.map(linesOf));
  const atMost = (measure, value, bound) => ({
    measure,
    value,
    bound,
    fits: (limit) => value <= limit,
    sign: '<=',
  });
  const atLeast = (measure, value, bound) => ({
    measure,
    value,
    bound,
    fits: (limit) => value >= limit,
    sign: '>=',
  });
  const measures = [
    atMost('median lines of a source file', quantile(source.map(linesOf), 0.5), 60),
    atMost('95th percentile of a source file', quantile(source.map(linesOf), 0.95), 350),
    atMost('95th percentile of a test file', quantile(tests.map(linesOf), 0.95), 350),
    atLeast('lines of tests per line of source', total(tests) / total(source), 1),
    atLeast('lines of tests per line of the core', total(coreTests) / total(core), 1.7),
  ];
  const allowed = argued();
  const rows = measures.map(({ measure, value, bound, fits, sign }) => {
    const limit = allowed.get(measure) ?? bound;
    const note = allowed.has(measure) ? ` (the house says ${bound}; see ${PAGE})` : '';
    return {
      ok: fits(limit),
      text: `${fits(limit) ? '  ' : '! '}${measure}: ${+value.toFixed(2)} ${sign} ${limit}${note}`,
    };
  });
  const longest = source
    .map((path) => ({ path, lines: linesOf(path) }))
    .sort((a, b) => b.lines - a.lines)
    .slice(0, 5)
    .map(({ path, lines }) => `    ${lines} ${path}`);
  const byFolder = ['shared', 'src', 'board', 'prisma', 'scripts', 'bench', 'test'].map((folder) => {
    const within = (paths) => total(paths.filter((path) => path.startsWith(`${folder}/`)));
    return `${folder} ${within(source)}/${within(tests)}`;
  });
  return {
    ok: rows.every(({ ok }) => ok),
    output: [
      `${source.length} source files of ${total(source)} lines, ${tests.length} test files of ${total(tests)}`,
      ...rows.map(({ text }) => text),
      `  lines of source/tests: ${byFolder.join(', ')}`,
      '  the longest:',
      ...longest,
    ].join('\n'),
  };
}
