import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import { firstLoad, judgeFirstLoad } from '../../../scripts/house/first-load.mjs';

describe('what the pages load at first', () => {
  let folder = '';
  beforeAll(() => {
    folder = mkdtempSync(join(tmpdir(), 'flagway-load-'));
    mkdirSync(join(folder, 'assets'));
    writeFileSync(
      join(folder, 'index.html'),
      '<link rel="icon" href="/assets/icon.svg"><script type="module" src="/assets/a.js"></script><link rel="stylesheet" href="/assets/a.css">',
    );
    // Nothing can be made shorter in what a counter mixes up; what repeats nearly vanishes.
    const mixed = Array.from({ length: 20_000 }, (_, i) => ((i * 2_654_435_761) >>> 7).toString(36)).join('');
    writeFileSync(join(folder, 'assets/a.js'), mixed);
    writeFileSync(join(folder, 'assets/a.css'), 'a'.repeat(100_000));
    writeFileSync(join(folder, 'assets/later.js'), mixed);
  });
  afterAll(() => rmSync(folder, { recursive: true }));

  it('is the scripts and style sheets of the document, compressed, and nothing else', () => {
    const { files, kB } = firstLoad(folder);
    expect(files.map(({ name }) => name)).toEqual(['assets/a.js', 'assets/a.css']);
    expect(files[0]?.kB).toBeGreaterThan(20);
    expect(files[1]?.kB).toBeLessThan(1);
    expect(kB).toBeCloseTo((files[0]?.kB ?? 0) + (files[1]?.kB ?? 0), 9);
  });

  it('is refused over the budget of a page, with what to do', () => {
    const budgets = [
      { page: 'board', kB: 400 },
      { page: 'site sheet', kB: 250 },
    ];
    expect(judgeFirstLoad(250, budgets)).toMatchObject({ ok: true });
    const over = judgeFirstLoad(251, budgets);
    expect(over.ok).toBe(false);
    expect(over.text).toMatch(/Too much: site sheet\. .*import\(\)/);
    expect(judgeFirstLoad(401, budgets).text).toMatch(/Too much: board, site sheet/);
  });
});
