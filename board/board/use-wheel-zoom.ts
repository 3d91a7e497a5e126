import { type RefObject, useEffect } from 'react';

/** Draws the days closer or wider by the wheel with the control key, or by a pinch, around the pointer. */
export function useWheelZoom(
  chart: RefObject<HTMLElement | null>,
  head: number,
  zoom: (direction: 1 | -1, x: number) => void,
): void {
  useEffect(() => {
    const element = chart.current;
    if (!element) return;
    const onWheel = (event: WheelEvent) => {
      if (!event.ctrlKey || event.deltaY === 0) return;
      // Else the browser would draw the whole page closer.
      event.preventDefault();
      const x = event.clientX - element.getBoundingClientRect().left - head;
      zoom(event.deltaY < 0 ? 1 : -1, Math.max(0, x));
    };
    element.addEventListener('wheel', onWheel, { passive: false });
    return () => element.removeEventListener('wheel', onWheel);
  }, [chart, head, zoom]);
}
