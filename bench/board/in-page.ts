import type { Page } from 'playwright-core';

/*
 * What is measured within the page. The scripts are text, because what a build tool adds to functions is not there.
 */

/** Times of the frames, in milliseconds, while the drawing is panned across and down, so many frames each. */
export function panFrames(page: Page, frames: number): Promise<number[]> {
  return page.evaluate(`(async () => {
    const chart = document.querySelector('.chart');
    const frame = () => new Promise((done) => requestAnimationFrame(done));
    const times = [];
    for (const [side, step] of [['scrollTop', 23], ['scrollLeft', 17], ['scrollTop', -31], ['scrollLeft', -13]]) {
      let before = await frame();
      for (let i = 0; i < ${Math.ceil(frames / 4)}; i++) {
        chart[side] += step;
        const now = await frame();
        times.push(now - before);
        before = now;
      }
    }
    return times;
  })()`);
}

/** Times of the frames while the days are drawn closer and wider by turns, so many times; a few frames follow each step. */
export function zoomFrames(page: Page, steps: number): Promise<number[]> {
  return page.evaluate(`(async () => {
    const chart = document.querySelector('.chart');
    const frame = () => new Promise((done) => requestAnimationFrame(done));
    const times = [];
    for (let i = 0; i < ${steps}; i++) {
      const box = chart.getBoundingClientRect();
      const at = { clientX: box.left + 700, clientY: box.top + 200, bubbles: true, cancelable: true };
      let before = await frame();
      chart.dispatchEvent(new WheelEvent('wheel', { ...at, ctrlKey: true, deltaY: i % 2 === 0 ? -100 : 100 }));
      for (let after = 0; after < 12; after++) {
        const now = await frame();
        times.push(now - before);
        before = now;
      }
    }
    return times;
  })()`);
}

/**
 * Times from a move of the pointer to the words and marks that say what it would do, in milliseconds, while a bar is dragged; the page has planned and drawn all of it
 * by then.
 */
export function dragPreviews(page: Page, moves: number): Promise<number[]> {
  return page.evaluate(`(async () => {
    const bar = [...document.querySelectorAll('.bar-movable')].find((one) => {
      const box = one.getBoundingClientRect();
      return box.left > 260 && box.left < 700 && box.top > 190 && box.top < 560;
    });
    if (!bar) throw new Error('No bar in sight can be moved.');
    const box = bar.getBoundingClientRect();
    const [x, y] = [box.left + 4, box.top + 20];
    const pointer = (type, clientX) =>
      bar.dispatchEvent(new PointerEvent(type, { clientX, clientY: y, pointerId: 7, pointerType: 'mouse', isPrimary: true, button: 0, bubbles: true, cancelable: true }));
    const said = () => document.querySelector('.move [role=status]')?.textContent ?? '';
    const frame = () => new Promise((done) => requestAnimationFrame(done));
    pointer('pointerdown', x);
    pointer('pointermove', x + 8);
    while (said() === '') await frame();
    const times = [];
    for (let i = 1; i <= ${moves}; i++) {
      const before = said();
      const start = performance.now();
      pointer('pointermove', x + 8 + i * 5);
      while (said() === before && performance.now() - start < 2000) await frame();
      times.push(performance.now() - start);
    }
    dispatchEvent(new KeyboardEvent('keydown', { key: 'Escape' }));
    return times;
  })()`);
}

/** Elements in the document. */
export const nodesOf = (page: Page): Promise<number> =>
  page.evaluate('document.querySelectorAll("*").length');
