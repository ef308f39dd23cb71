import type { Point } from './view.ts';

/** What hands do to a picture under a glass. Points are measured from the middle of the glass. */
export type PointerGestures = {
  readonly move: (by: Point) => void;
  /** So many times nearer, about a point. */
  readonly bring: (times: number, at: Point) => void;
  readonly tap: (at: Point) => void;
};

/** Less than this, in pixels, and a hand has not moved but tapped. */
const STILL = 6;

/** Hears a mouse, a pen, fingers and a wheel over the glass. */
export function followPointer(glass: HTMLElement, { move, bring, tap }: PointerGestures): void {
  const down = new Map<number, Point>();
  let wandered = 0;

  const fromMiddle = ({ x, y }: Point): Point => {
    const { left, top, width, height } = glass.getBoundingClientRect();
    return { x: x - left - width / 2, y: y - top - height / 2 };
  };
  glass.addEventListener('pointerdown', (event) => {
    if (event.button !== 0 || down.size === 2) return;
    glass.setPointerCapture(event.pointerId);
    wandered = down.size === 0 ? 0 : STILL;
    down.set(event.pointerId, { x: event.clientX, y: event.clientY });
    glass.classList.add('grasped');
  });
  glass.addEventListener('pointermove', (event) => {
    const before = down.get(event.pointerId);
    if (before === undefined) return;
    const now = { x: event.clientX, y: event.clientY };
    const other = [...down].find(([id]) => id !== event.pointerId)?.[1];
    down.set(event.pointerId, now);
    wandered += distance(before, now);
    if (other === undefined) {
      move(between(before, now));
      return;
    }
    const middle = half(before, other);
    bring(distance(now, other) / Math.max(1, distance(before, other)), fromMiddle(middle));
    move(between(middle, half(now, other)));
  });
  const lift = (event: PointerEvent): void => {
    if (!down.delete(event.pointerId) || down.size > 0) return;
    glass.classList.remove('grasped');
    if (event.type === 'pointerup' && wandered < STILL) tap(fromMiddle({ x: event.clientX, y: event.clientY }));
  };
  glass.addEventListener('pointerup', lift);
  glass.addEventListener('pointercancel', lift);
  glass.addEventListener(
    'wheel',
    (event) => {
      event.preventDefault();
      const lines = event.deltaMode === WheelEvent.DOM_DELTA_PIXEL ? event.deltaY : event.deltaY * 30;
      // Two fingers on a pad are told as a wheel with Ctrl, in small steps.
      bring(Math.exp(-lines * (event.ctrlKey ? 0.01 : 0.002)), fromMiddle({ x: event.clientX, y: event.clientY }));
    },
    { passive: false },
  );
}

const distance = (a: Point, b: Point): number => Math.hypot(a.x - b.x, a.y - b.y);
const half = (a: Point, b: Point): Point => ({ x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 });
const between = (from: Point, to: Point): Point => ({ x: to.x - from.x, y: to.y - from.y });
