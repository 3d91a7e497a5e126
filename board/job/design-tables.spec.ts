import { describe, expect, it } from '@jest/globals';
import { createElement } from 'react';
import { renderToStaticMarkup } from 'react-dom/server';
import { BuyTable } from './buy-table.js';
import { DesignTable } from './design-table.js';
import type { JobDesign } from './job-types.js';

const finding = (more: Partial<JobDesign['findings'][number]>): JobDesign['findings'][number] => ({
  rule: 'cable-depth',
  ok: true,
  text: 'Landing: Cable lies near enough to the top',
  measured: '2.5 in',
  limit: 'at most about 2.5 in',
  mark: 'T',
  source: 'rule of the trade, no source',
  caution: null,
  blocks: [],
  waived: null,
  waivedAt: null,
  waivedBy: null,
  ...more,
});
const cellsOf = (markup: string): string[][] =>
  [...markup.matchAll(/<tr>(.*?)<\/tr>/g)]
    .map(([, row = '']) => [...row.matchAll(/<t[hd][^>]*>(.*?)<\/t[hd]>/g)].map(([, cell = '']) => cell))
    .slice(1);

describe('the table of the design', () => {
  it('has broken rules first, whole, with what should wait for them', () => {
    const short = finding({
      rule: 'footing-frost-depth',
      ok: false,
      text: 'Footing: Footing is 1 in short of frost: dig deeper',
      measured: '47 in',
      limit: 'at least 48 in',
      caution: 'Protect the excavation.',
      blocks: ['footing-pour'],
    });
    const rows = cellsOf(
      renderToStaticMarkup(
        createElement(DesignTable, { findings: [finding({}), short], zone: 'America/New_York' }),
      ),
    );
    expect(rows.map(([kept, , waits]) => [kept, waits])).toEqual([
      ['No', 'footing pour'],
      ['Yes', ''],
    ]);
    expect(rows[0]?.[1]).toContain('Found 47 in; limit: at least 48 in');
    expect(rows[0]?.[1]).toContain('Caution: Protect the excavation.');
  });

  it('says who goes on against a broken rule, when and why, and that nothing waits for it', () => {
    const wide = finding({
      rule: 'cable-spacing',
      ok: false,
      blocks: ['cable'],
      waived: 'the instructions allow 14 in',
      waivedAt: '2026-11-28T15:12:00.000Z',
      waivedBy: { id: 'p', name: 'R. Alder' },
    });
    const wayOut = () => 'a way out';
    const table = (one: JobDesign['findings'][number]) =>
      cellsOf(
        renderToStaticMarkup(
          createElement(DesignTable, { findings: [one], zone: 'America/New_York', wayOut }),
        ),
      )[0]!;
    const [kept, found, waits] = table(wide);
    expect([kept, waits]).toEqual(['Waived', '']);
    expect(found).toContain('Waived by R. Alder, Sat 28 Nov 10:12: the instructions allow 14 in');
    expect(found).not.toContain('a way out');
    expect(table({ ...wide, waived: null })[1]).toContain('a way out');
  });

  it('takes findings that say nothing of phases', () => {
    const rows = cellsOf(
      renderToStaticMarkup(
        createElement(DesignTable, { findings: [finding({ blocks: null })], zone: 'America/New_York' }),
      ),
    );
    expect(rows).toHaveLength(1);
  });
});

describe('the table of what to buy', () => {
  it('says how many, of what, for how much, with the waste and its mark', () => {
    const line = {
      key: 'mesh',
      label: 'Mesh',
      measured: 98,
      needed: 107.80000000000001,
      unit: 'sq ft',
      waste: 0.1,
      pieces: 3,
      soldAs: 'sheet of 5 by 10 ft',
      mark: 'C',
    };
    const rows = cellsOf(renderToStaticMarkup(createElement(BuyTable, { lines: [line] })));
    expect(rows).toEqual([['Mesh', '3', 'sheet of 5 by 10 ft', '98 sq ft', '107.8 sq ft (10 %, C)']]);
  });
});
