import { useEffect, useRef } from "react";
import type { PointerEvent, RefObject } from "react";
import type { LaidViews } from "./lay-views.ts";
import { viewUnder } from "./use-lens-pointer.ts";

/** A hand that trembles less than this turns nothing, px. */
const leastDragPx = 4;

/**
 * A press on the picture of the whole takes hold of it and turns the building; let go where it was taken, it was only a
 * press. `down` and `move` say whether the event was theirs.
 */
export function useOrbitPointer(
  paper: RefObject<SVGSVGElement | null>,
  views: LaidViews,
  onPicture: (rightPx: number, downPx: number) => void,
) {
  const last = useRef<{ xPx: number; yPx: number; turned: boolean } | null>(null);
  useEffect(() => {
    const on = paper.current;
    if (on === null) return undefined;
    // The focus stays where it is while the picture is turned; a mere press chooses when it ends.
    const keepFocus = (event: MouseEvent) => {
      if (last.current !== null) event.preventDefault();
    };
    on.addEventListener("mousedown", keepFocus);
    return () => on.removeEventListener("mousedown", keepFocus);
  }, [paper]);
  const down = (event: PointerEvent<SVGSVGElement>): boolean => {
    const box = event.currentTarget.getBoundingClientRect();
    const at = { xPx: event.clientX - box.left, yPx: event.clientY - box.top };
    if (event.button !== 0 || viewUnder(views, at) !== "isometric") return false;
    event.currentTarget.setPointerCapture(event.pointerId);
    last.current = { xPx: event.clientX, yPx: event.clientY, turned: false };
    return true;
  };
  const move = (event: PointerEvent<SVGSVGElement>): boolean => {
    const from = last.current;
    if (from === null) return false;
    const farPx = Math.hypot(event.clientX - from.xPx, event.clientY - from.yPx);
    if (!from.turned && farPx < leastDragPx) return true;
    last.current = { xPx: event.clientX, yPx: event.clientY, turned: true };
    onPicture(event.clientX - from.xPx, event.clientY - from.yPx);
    return true;
  };
  const up = (): "turned" | "pressed" | null => {
    const held = last.current;
    last.current = null;
    if (held === null) return null;
    return held.turned ? "turned" : "pressed";
  };
  return { down, move, up };
}
