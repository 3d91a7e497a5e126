import { type RefObject, useEffect, useRef } from 'react';
import type { Axis } from '../board/layout/axis.js';
import { readStop } from '../board/layout/stops.js';
import type { Moving } from './use-moving.js';

/** A bar is dragged once the pointer has gone so far, in pixels; less is a press. */
const THRESHOLD = 6;
/** A finger that rests so long picks the bar up; one that moves before scrolls. Milliseconds. */
const REST = 400;
/** Nearer than this to an edge the drawing goes on by itself, so many pixels a frame. */
const EDGE = 40;
const PACE = 14;

interface Grip {
  readonly phaseId: string;
  readonly pointerId: number;
  readonly x: number;
  readonly y: number;
  /** Where the start of the bar stood, in pixels of the drawing. */
  readonly start: number;
  readonly scrolled: number;
  picked: boolean;
  last: number;
}

/** Drags bars by pointer or finger: the phase follows, the drawing goes on at its edges, and letting go proposes the move. */
export function useDrag(chart: RefObject<HTMLElement | null>, axis: Axis, moving: Moving) {
  const grip = useRef<Grip | null>(null);
  const now = useRef({ axis, moving });
  useEffect(() => {
    now.current = { axis, moving };
  });

  useEffect(() => {
    const element = chart.current;
    if (!element) return;
    let frame = 0;
    let rest: ReturnType<typeof setTimeout> | undefined;
    const follow = () => {
      frame = 0;
      const held = grip.current;
      if (!held?.picked) return;
      const { left, right } = element.getBoundingClientRect();
      const pace = held.last > right - EDGE ? PACE : held.last < left + headOf(element) + EDGE ? -PACE : 0;
      if (pace !== 0) element.scrollLeft += pace;
      const x = held.start + held.last - held.x + element.scrollLeft - held.scrolled;
      now.current.moving.to({ at: now.current.axis.momentAt(x) });
      if (pace !== 0) frame = requestAnimationFrame(follow);
    };
    const end = () => {
      clearTimeout(rest);
      cancelAnimationFrame(frame);
      frame = 0;
      grip.current = null;
      element.classList.remove('chart-dragging');
    };
    const pick = () => {
      const held = grip.current;
      if (!held || held.picked) return;
      held.picked = true;
      element.classList.add('chart-dragging');
      now.current.moving.pickUp(held.phaseId);
    };
    const onMove = (event: PointerEvent) => {
      const held = grip.current;
      if (!held || event.pointerId !== held.pointerId) return;
      held.last = event.clientX;
      const far = Math.hypot(event.clientX - held.x, event.clientY - held.y) >= THRESHOLD;
      if (!held.picked && far) {
        if (event.pointerType === 'touch') return end();
        pick();
      }
      if (held.picked && frame === 0) frame = requestAnimationFrame(follow);
    };
    const onUp = (event: PointerEvent) => {
      const held = grip.current;
      if (!held || event.pointerId !== held.pointerId) return;
      if (held.picked && frame !== 0) follow();
      const dropped = held.picked;
      end();
      // After the last place has been taken over.
      if (dropped) requestAnimationFrame(() => now.current.moving.drop());
    };
    const onCancel = () => {
      if (grip.current?.picked) now.current.moving.giveUp();
      end();
    };
    const onTouchMove = (event: TouchEvent) => {
      if (grip.current?.picked) event.preventDefault();
    };
    const onDown = (event: PointerEvent) => {
      const bar = (event.target as HTMLElement).closest<HTMLElement>('.bar');
      const stop = readStop(bar?.id ?? null);
      if (event.button !== 0 || !event.isPrimary || !bar || stop?.kind !== 'bar') return;
      if (!now.current.moving.canMove(stop.phaseId)) return;
      grip.current = {
        phaseId: stop.phaseId,
        pointerId: event.pointerId,
        x: event.clientX,
        y: event.clientY,
        start: Number.parseFloat(bar.style.left),
        scrolled: element.scrollLeft,
        picked: false,
        last: event.clientX,
      };
      if (event.pointerType === 'touch') rest = setTimeout(pick, REST);
    };
    const onKey = (event: KeyboardEvent) => {
      if (event.key === 'Escape' && grip.current) onCancel();
    };
    element.addEventListener('pointerdown', onDown);
    element.addEventListener('touchmove', onTouchMove, { passive: false });
    addEventListener('pointermove', onMove);
    addEventListener('pointerup', onUp);
    addEventListener('pointercancel', onCancel);
    addEventListener('keydown', onKey);
    return () => {
      end();
      element.removeEventListener('pointerdown', onDown);
      element.removeEventListener('touchmove', onTouchMove);
      removeEventListener('pointermove', onMove);
      removeEventListener('pointerup', onUp);
      removeEventListener('pointercancel', onCancel);
      removeEventListener('keydown', onKey);
    };
  }, [chart]);
}

const headOf = (element: HTMLElement): number =>
  Number.parseFloat(getComputedStyle(element).getPropertyValue('--head')) || 0;
