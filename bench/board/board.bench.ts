import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import type { Browser, Page } from 'playwright-core';
import { build } from 'vite';
import { bench } from '../runner/bench.js';
import { count } from '../runner/option.js';
import { medianOf, quantileOf, rounded } from '../runner/timing.js';
import { answersOf } from './answers.js';
import { startChromium } from './chromium.js';
import { dragPreviews, nodesOf, panFrames, zoomFrames } from './in-page.js';
import { serve } from './serve.js';

/** Seen from the project's folder, where every benchmark runs. */
const CONFIG = resolve('board/vite.config.ts');
const SCREEN = { width: 1440, height: 900 };
/** Loads that count, and what is measured on each. */
const LOADS = 3;
const FRAMES = 240;
const ZOOMS = 12;
const MOVES = 60;

/** What was measured on one way of drawing; times in milliseconds. */
interface Measured {
  readonly firstPaintMs: number;
  readonly framesP95Ms: number;
  readonly previewP95Ms: number;
  readonly nodes: number;
}

/**
 * The office's board in a real browser without a graphics card, with the built client and answers of an invented portfolio over a year, beside the same board with
 * everything in the document.
 */
export const board = bench({
  name: 'board',
  says: 'the board of an invented portfolio over a year in a real browser: first paint, previews of a drag, frames, nodes; windowed and whole',
  options: { jobs: count('jobs in the portfolio, sixteen phases each', 1, 313) },
  async run({ jobs }, progress) {
    const folder = mkdtempSync(join(tmpdir(), 'flagway-board-'));
    progress('building the client');
    await build({ configFile: CONFIG, logLevel: 'error', build: { outDir: folder } });
    progress('planning the portfolio');
    const { answers, phases } = answersOf(jobs);
    const served = await serve(folder, answers);
    const browser = await startChromium();
    try {
      const fortnight = await measured(browser, served.url, '', progress);
      const year = await measured(browser, served.url, '?days=182', progress);
      const whole = await measured(browser, served.url, '?days=182&draw=whole', progress);
      return {
        figures: { jobs, phases, fortnight, year, whole },
        text: [
          `${jobs} jobs, ${phases} phases`,
          line('two weeks side by side', fortnight),
          line('half a year side by side, a year to pan over', year),
          line('the same with everything in the document', whole),
        ].join('\n'),
        ok: true,
      };
    } finally {
      await browser.close();
      await served.stop();
      rmSync(folder, { recursive: true });
    }
  },
});

async function measured(
  browser: Browser,
  url: string,
  query: string,
  progress: (line: string) => void,
): Promise<Measured> {
  progress(`measuring ${query || 'the usual view'}`);
  const paints: number[] = [];
  let page: Page | null = null;
  for (let load = 0; load < LOADS; load++) {
    await page?.close();
    page = await browser.newPage({ viewport: SCREEN });
    page.setDefaultTimeout(120_000);
    await page.goto(`${url}/${query}`);
    await page.locator('.bar').first().waitFor({ state: 'attached' });
    paints.push(
      await page.evaluate<number>(
        'new Promise((done) => requestAnimationFrame(() => done(performance.now())))',
      ),
    );
  }
  if (!page) throw new Error('No page was loaded.');
  // The engine is made while nobody waits; a person has looked at the board by then.
  await page.waitForFunction('document.querySelectorAll(".bar-movable").length > 0');
  await page.waitForTimeout(3000);
  const nodes = await nodesOf(page);
  const previews = await dragPreviews(page, MOVES);
  const frames = [...(await panFrames(page, FRAMES)), ...(await zoomFrames(page, ZOOMS))];
  const most = Math.max(nodes, await nodesOf(page));
  await page.close();
  return {
    firstPaintMs: rounded(medianOf(paints), 0),
    framesP95Ms: rounded(quantileOf(frames, 0.95), 1),
    previewP95Ms: rounded(quantileOf(previews, 0.95), 1),
    nodes: most,
  };
}

const line = (what: string, { firstPaintMs, framesP95Ms, previewP95Ms, nodes }: Measured): string =>
  `${what}: first paint ${firstPaintMs} ms, preview of a drag p95 ${previewP95Ms} ms, frame p95 ${framesP95Ms} ms, ${nodes} nodes`;
