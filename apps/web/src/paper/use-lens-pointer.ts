import { useEffect, useRef } from "react";
import type { PointerEvent, RefObject } from "react";
import type { ScreenPoint } from "../drawing/view-transform.ts";
import type { LaidViews } from "./lay-views.ts";
import { isWithin } from "./lens.ts";
import type { ViewName } from "./lens.ts";
import type { LookedAt } from "./use-lenses.ts";

/** A notch of a wheel of 100 px magnifies by about a sixth; a pinch on a pad tells far fewer px. */
const perWheelPx = 0.0015;
const perPinchPx = 0.01;
const pxPerLine = 16;

type Looking = Pick<LookedAt, "magnify" | "move">;

/** What holds the drawing itself: the middle button, or two fingers. */
type Grip = { view: ViewName; fingers: Map<number, ScreenPoint> };

/**
 * Wheel and pinch magnify the view they are over; the middle button and two fingers move it. `down`, `move` and `up` say
 * whether the event was theirs.
 */
export function useLensPointer(
  paper: RefObject<SVGSVGElement | null>,
  views: LaidViews,
  { magnify, move }: Looking,
  onCancel: () => void,
) {
  const grip = useRef<Grip | null>(null);
  const touches = useRef(new Map<number, ScreenPoint>());
  useWheel(paper, views, { magnify, move });

  const down = (event: PointerEvent<SVGSVGElement>): boolean => {
    const at = placeOn(event.currentTarget, event);
    if (event.pointerType === "touch") touches.current.set(event.pointerId, at);
    const view = viewUnder(views, at);
    if (view === null || (event.button !== 1 && touches.current.size !== 2)) return grip.current !== null;
    if (touches.current.size === 2) onCancel();
    event.preventDefault();
    event.currentTarget.setPointerCapture(event.pointerId);
    grip.current = {
      view,
      fingers: new Map(touches.current.size === 2 ? touches.current : [[event.pointerId, at]]),
    };
    return true;
  };

  const drag = (event: PointerEvent<SVGSVGElement>): boolean => {
    const at = placeOn(event.currentTarget, event);
    if (touches.current.has(event.pointerId)) touches.current.set(event.pointerId, at);
    const held = grip.current;
    if (held === null) return false;
    if (!held.fingers.has(event.pointerId)) return true;
    const before = [...held.fingers.values()];
    held.fingers.set(event.pointerId, at);
    const after = [...held.fingers.values()];
    const [from, to] = [middleOf(before), middleOf(after)];
    move(held.view, to.xPx - from.xPx, to.yPx - from.yPx);
    if (before.length === 2) magnify(held.view, to, spreadOf(after) / Math.max(1, spreadOf(before)));
    return true;
  };

  const up = (event: PointerEvent<SVGSVGElement>): boolean => {
    touches.current.delete(event.pointerId);
    if (grip.current === null) return false;
    grip.current.fingers.delete(event.pointerId);
    if (grip.current.fingers.size === 0) grip.current = null;
    return true;
  };
  return { down, move: drag, up };
}

/** Listens to the wheel itself, since a page may not otherwise be kept from scrolling under it. */
function useWheel(paper: RefObject<SVGSVGElement | null>, views: LaidViews, { magnify, move }: Looking): void {
  const latest = useRef({ views, magnify, move });
  useEffect(() => {
    latest.current = { views, magnify, move };
  });
  useEffect(() => {
    const on = paper.current;
    if (on === null) return undefined;
    const turn = (event: WheelEvent) => {
      const at = placeOn(on, event);
      const view = viewUnder(latest.current.views, at);
      if (view === null || (!event.ctrlKey && pageScrolls())) return;
      event.preventDefault();
      const px = event.deltaMode === WheelEvent.DOM_DELTA_LINE ? pxPerLine : 1;
      if (event.shiftKey) return latest.current.move(view, -(event.deltaX + event.deltaY) * px, 0);
      latest.current.magnify(view, at, Math.exp(-event.deltaY * px * (event.ctrlKey ? perPinchPx : perWheelPx)));
    };
    on.addEventListener("wheel", turn, { passive: false });
    return () => on.removeEventListener("wheel", turn);
  }, [paper]);
}

/** On a page longer than the window the wheel turns the page; with Ctrl it magnifies there too. */
const pageScrolls = (): boolean => document.documentElement.scrollHeight > innerHeight + 1;

/** The view a place of the field belongs to. */
export function viewUnder({ elevation, plan, isometric, oneView }: LaidViews, at: ScreenPoint): ViewName | null {
  if (isWithin(elevation.rect, at)) return "elevation";
  if (oneView) return null;
  if (isWithin(plan.rect, at)) return "plan";
  return isWithin(isometric.rect, at) ? "isometric" : null;
}

function placeOn(paper: SVGSVGElement, { clientX, clientY }: { clientX: number; clientY: number }): ScreenPoint {
  const box = paper.getBoundingClientRect();
  return { xPx: clientX - box.left, yPx: clientY - box.top };
}

const middleOf = (points: readonly ScreenPoint[]): ScreenPoint => ({
  xPx: points.reduce((sum, { xPx }) => sum + xPx, 0) / points.length,
  yPx: points.reduce((sum, { yPx }) => sum + yPx, 0) / points.length,
});

const spreadOf = ([a, b]: readonly ScreenPoint[]): number =>
  a === undefined || b === undefined ? 1 : Math.hypot(a.xPx - b.xPx, a.yPx - b.yPx);
