import { describe, expect, it } from '@jest/globals';
import { DEFAULT_LIMIT_SETS } from '../../../weather/default-limit-sets.js';
import { HEATED_ENTRY } from './heated-entry.js';

const points = (phase: string) =>
  HEATED_ENTRY.holdPoints
    .filter((point) => point.phase === phase)
    .map((point) => `${point.gate} ${point.kind} ${point.key}`);
const before = (kind: string) => [
  ...new Set(HEATED_ENTRY.links.filter((link) => link.to === kind).map((link) => link.from)),
];

/** The phases of a heated entry row by row, common practice, no source: done by, waits for, hold points. */
const ROWS: [string, string | null, string[], string[]][] = [
  ['demo', 'labour', [], ['start clearance permit', 'start check services']],
  ['dig', 'labour', ['demo'], ['start clearance mark-out', 'finish check depth']],
  ['footing-form', 'mason', ['dig'], ['finish check formwork']],
  ['footing-pour', 'mason', ['footing-form'], ['start inspection footing', 'finish check placing']],
  ['footing-cure', null, ['footing-pour'], ['finish cure footing-strength']],
  ['block', 'mason', ['footing-cure'], ['finish check risers', 'finish check block-filled']],
  ['block-cure', null, ['block'], ['finish cure block-strength']],
  ['penetrations', 'mason', ['block', 'demo'], ['finish check sleeves']],
  ['mesh', 'mason', ['block-cure'], ['finish check mesh-flat']],
  [
    'cable',
    'cable',
    ['mesh', 'base-cure', 'penetrations', 'cable'],
    [
      'start clearance cable-delivered',
      'start reading reading-received',
      'finish check layout',
      'finish check leads',
    ],
  ],
  ['cable-test', 'cable', ['cable'], ['finish reading reading-laid', 'finish check layout-photo']],
  [
    'veneer',
    'mason',
    ['block-cure', 'cable-test'],
    ['start clearance veneer-delivered', 'finish check corners'],
  ],
  [
    'stone',
    'mason',
    ['block-cure', 'base-cure', 'cable-test', 'veneer', 'rough-inspection'],
    ['start clearance stone-delivered', 'finish check cover', 'finish reading reading-covered'],
  ],
  ['bed-cure', null, ['stone'], ['finish check bed-kept-warm']],
  ['walk-base', 'mason', ['demo', 'block'], ['finish check base']],
  ['base-cure', null, ['walk-base'], ['finish cure base-strength']],
  ['sealing', 'mason', ['cable'], ['finish check sealed']],
  ['electrical-rough', 'electrician', ['penetrations'], []],
  ['rough-inspection', 'authority', ['electrical-rough'], ['start inspection electrical-rough']],
  [
    'hookup',
    'electrician',
    ['cable-test', 'rough-inspection'],
    ['start reading reading-before-hookup', 'finish check connection'],
  ],
  [
    'final-inspection',
    'authority',
    ['hookup', 'sealing', 'bed-cure'],
    ['start check guards', 'start inspection final'],
  ],
  ['energise', 'electrician', ['final-inspection', 'stone'], ['finish check run-test']],
  ['hand-over', 'office', ['final-inspection', 'energise'], ['finish check record']],
];

describe('the heated entry row by row', () => {
  it('has these phases and no others', () => {
    expect(HEATED_ENTRY.phases.map((phase) => phase.kind).sort()).toEqual(ROWS.map(([kind]) => kind).sort());
  });

  it.each(ROWS)('%s: done by %p after %p with %p', (kind, trade, waitsFor, holdPoints) => {
    expect(HEATED_ENTRY.phases.find((phase) => phase.kind === kind)?.trade).toBe(trade);
    expect(before(kind)).toEqual(waitsFor);
    expect(points(kind)).toEqual(holdPoints);
  });
});

describe('the template', () => {
  it('pours concrete in one stretch', () => {
    expect(HEATED_ENTRY.phases.find((phase) => phase.kind === 'footing-pour')?.continuity).toBe('continuous');
  });

  it('counts cures by the clock and never by a crew', () => {
    for (const phase of HEATED_ENTRY.phases.filter((one) => one.trade === null)) {
      expect(phase.duration.kind).toBe('elapsed');
      expect(phase.weatherLimits).toBeNull();
    }
  });

  it('names only weather limits that exist', () => {
    const keys = DEFAULT_LIMIT_SETS.map((set) => set.key);
    for (const { weatherLimits } of HEATED_ENTRY.phases) {
      if (weatherLimits !== null) expect(keys).toContain(weatherLimits);
    }
  });

  it('has a source with every duration, item, clearance and piece of equipment', () => {
    const sources = [
      ...HEATED_ENTRY.phases.map((phase) => phase.duration.source),
      ...HEATED_ENTRY.holdPoints.flatMap((point) => point.items.map((item) => item.source)),
      ...HEATED_ENTRY.clearances.map((clearance) => clearance.source),
      ...HEATED_ENTRY.equipment.map((need) => need.source),
    ];
    expect(sources.every((source) => source.text.length > 0)).toBe(true);
  });

  it('shows a caution wherever the work can hurt someone', () => {
    const must = ['services', 'mark-out', 'depth', 'placing', 'footing-strength', 'block-strength', 'risers'];
    const also = [
      'reading-received',
      'reading-laid',
      'reading-before-hookup',
      'connection',
      'run-test',
      'cover',
    ];
    for (const key of [...must, ...also]) {
      expect([key, HEATED_ENTRY.holdPoints.find((point) => point.key === key)?.caution]).toEqual([
        key,
        expect.any(String),
      ]);
    }
  });

  it('lets nobody waive what keeps people safe', () => {
    const waivable = HEATED_ENTRY.holdPoints.filter((point) => point.waivable).map((point) => point.key);
    for (const key of [
      'permit',
      'services',
      'mark-out',
      'depth',
      'risers',
      'layout',
      'cover',
      'connection',
      'guards',
      'run-test',
    ]) {
      expect(waivable).not.toContain(key);
    }
  });

  it('keeps protection on until the cure is over', () => {
    const until = (from: string) =>
      HEATED_ENTRY.equipment.filter((need) => need.from === from).map((need) => need.until);
    expect(new Set(until('footing-pour'))).toEqual(new Set(['footing-cure']));
    expect(new Set(until('block'))).toEqual(new Set(['block-cure']));
    expect(new Set(until('walk-base'))).toEqual(new Set(['base-cure']));
    expect(new Set(until('stone'))).toEqual(new Set(['bed-cure']));
  });

  it('orders the cable two to three weeks ahead', () => {
    const cable = HEATED_ENTRY.clearances.find((clearance) => clearance.key === 'cable');
    expect(cable?.leadDays).toBeGreaterThanOrEqual(14);
    expect(cable?.leadDays).toBeLessThanOrEqual(21);
  });

  it('has a mark-out that lapses', () => {
    expect(
      HEATED_ENTRY.clearances.find((clearance) => clearance.kind === 'markOut')?.lifeDays,
    ).toBeGreaterThan(0);
  });
});
