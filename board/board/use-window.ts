import { type RefObject, useCallback, useEffect, useLayoutEffect, useRef, useState } from 'react';
import { dateAt } from '../time/zone-days.js';
import type { Axis } from './layout/axis.js';
import { sameWindow, stretchAround, type Window } from './layout/window.js';

/** The scroll has ended when nothing has moved for so long, in milliseconds. */
const REST = 180;

interface WindowOf {
  readonly chart: RefObject<HTMLElement | null>;
  readonly axis: Axis;
  /** Width of the heads of the rows, and height of the heads of the days, which stay in sight. */
  readonly head: number;
  /** Whether its width is known. */
  readonly ready: boolean;
  readonly top: number;
  /** First day wanted at the left edge, and what to do when a person has scrolled to another. */
  readonly from: string;
  readonly onScrolled: (from: string) => void;
  readonly zone: string;
}

/**
 * What of the drawing is to be drawn, followed as it scrolls; and the left edge held in its place when the days around it change or are drawn closer. `hold`
 * names the moment that is to stay where it is across, for the next change of the axis.
 */
export function useWindow({ chart, axis, head, ready, top, from, onScrolled, zone }: WindowOf) {
  const [window, setWindow] = useState<Window>(() => around(0, 0, 2000, 1200));
  // The moment at the left edge, and the day that the address was told of it.
  const edge = useRef<{ moment: number; told: string | null }>({ moment: axis.start, told: null });
  // Where the drawing was last put by this, so that its own scrolling is not taken for a person's.
  const put = useRef(0);
  const held = useRef<{ moment: number; x: number } | null>(null);

  const look = useCallback(() => {
    const element = chart.current;
    if (!element) return;
    const { scrollLeft, scrollTop, clientWidth, clientHeight } = element;
    const next = around(scrollLeft, scrollTop, clientWidth - head, clientHeight - top);
    setWindow((now) => (sameWindow(now, next) ? now : next));
  }, [chart, head, top]);

  useLayoutEffect(() => {
    const element = chart.current;
    const first = axis.days.find(({ date }) => date === from);
    if (!element || !ready) return;
    if (held.current) {
      element.scrollLeft = axis.x(held.current.moment) - held.current.x;
      held.current = null;
      edge.current = { moment: axis.momentAt(element.scrollLeft), told: from };
    } else {
      if (edge.current.told !== from && first) edge.current = { moment: first.start, told: from };
      element.scrollLeft = axis.x(edge.current.moment);
    }
    put.current = element.scrollLeft;
    look();
  }, [chart, axis, from, look, ready]);

  useEffect(() => {
    const element = chart.current;
    if (!element) return;
    let timer: ReturnType<typeof setTimeout> | undefined;
    let frame = 0;
    const settle = () => {
      const date = dateAt(axis.momentAt(element.scrollLeft + 1), zone);
      if (date === edge.current.told) return;
      edge.current.told = date;
      onScrolled(date);
    };
    const onScroll = () => {
      if (frame === 0)
        frame = requestAnimationFrame(() => {
          frame = 0;
          look();
        });
      if (Math.abs(element.scrollLeft - put.current) < 2) return;
      put.current = -1;
      edge.current.moment = axis.momentAt(element.scrollLeft);
      clearTimeout(timer);
      timer = setTimeout(settle, REST);
    };
    const watch = new ResizeObserver(look);
    watch.observe(element);
    element.addEventListener('scroll', onScroll, { passive: true });
    return () => {
      clearTimeout(timer);
      cancelAnimationFrame(frame);
      watch.disconnect();
      element.removeEventListener('scroll', onScroll);
    };
  }, [chart, axis, look, onScrolled, zone]);

  /** Keeps the moment that stands so far from the left edge of the days where it is; the middle when nothing is said. */
  const hold = useCallback(
    (x?: number) => {
      const element = chart.current;
      if (!element) return;
      const at = x ?? (element.clientWidth - head) / 2;
      held.current = { moment: axis.momentAt(element.scrollLeft + at), x: at };
    },
    [chart, axis, head],
  );
  return { window, hold };
}

const around = (left: number, top: number, width: number, height: number): Window => ({
  rows: stretchAround(top, height),
  days: stretchAround(left, width),
});
