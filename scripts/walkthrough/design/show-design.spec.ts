import { existsSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from '@jest/globals';
import { showDesign } from './show-design.js';

const sheet = JSON.parse(readFileSync(new URL('../entry.json', import.meta.url), 'utf8')) as {
  areas: { key: string }[];
};
const folder = join(mkdtempSync(join(tmpdir(), 'flagway-design-test-')), 'drawings');
afterAll(() => rmSync(join(folder, '..'), { recursive: true, force: true }));

describe('the design of the walkthrough entry', () => {
  const { words, files, data } = showDesign(sheet, folder);

  it('has every part, and every rule kept', () => {
    for (const title of [
      'Heat asked for',
      'Cable',
      'Circuits',
      'Finished risers',
      'Footing',
      'To buy',
      'Rules',
    ])
      expect(words).toContain(`\n${title}`.slice(title === 'Heat asked for' ? 1 : 0));
    expect(words).not.toContain('nothing known');
    expect(words).not.toContain('BROKEN');
  });

  it('says the figures of the trade: the label, the breaker, the risers, the footing under frost', () => {
    expect(words).toContain('Set A: 350 ft, runs no closer than 3');
    // 4200 W at 240 V: 17.5 A, 21.875 A continuous, a 25 A breaker. Source: NEC 426.4, 240.6(A).
    expect(words).toContain('a: 4200 W, 17.5 A, 21.9 A as a continuous load: 25 A breaker');
    expect(words).toContain('1: 7.25 in, finished at 7.25 in');
    expect(words).toContain('bottom 50 in down; frost 48 in');
  });

  it('names a source for every rule', () => {
    const rules = words.slice(words.indexOf('\nRules')).match(/^ {2}kept .*$/gm) ?? [];
    expect(rules.length).toBeGreaterThan(15);
    for (const rule of rules)
      expect(rule).toMatch(
        /\[(published|common practice|from memory, verify against the text|rule of the trade)\]/,
      );
  });

  it('writes the plan of the cable and the section as files that print to scale', () => {
    expect(files).toEqual([join(folder, 'cable-a.svg'), join(folder, 'section.svg')]);
    for (const file of files) expect(readFileSync(file, 'utf8')).toMatch(/^<svg [^>]*width="[\d.]+in"/);
  });

  it('is the same for a machine', () => {
    expect(JSON.parse(JSON.stringify(data))).toMatchObject({
      sets: [{ setKey: 'a', instead: null }],
      risers: { count: 2, riser: 7.25 },
      files,
    });
  });
});

describe('a sheet that cannot be used', () => {
  it('is refused with every fault and its place, and nothing is written', () => {
    const elsewhere = join(folder, 'nothing');
    const [landing, ...rest] = sheet.areas;
    const wrong = { ...sheet, areas: [{ ...landing, lengthInches: 6 }, ...rest] };
    expect(() => showDesign(wrong, elsewhere)).toThrow('areas[0].lengthInches: must be 24 to 480 in, got 6');
    expect(existsSync(elsewhere)).toBe(false);
  });
});
