import { storeysOf } from "@cornerway/engine";
import { useCallback, useRef } from "react";
import type { PointerEvent, RefObject } from "react";
import type { PickedElement, Side } from "../drawing/contract.ts";
import { screenToSite } from "../drawing/view-transform.ts";
import type { Point } from "../hand/use-hand.ts";
import { viewAt, type LaidViews } from "./lay-views.ts";
import type { SchemePaperProps } from "./paper-props.ts";
import { showsDetails } from "./shows-details.ts";
import { useLensPointer } from "./use-lens-pointer.ts";
import { useOrbitPointer } from "./use-orbit-pointer.ts";

/** Pointer reach of snapping, px on the paper. */
const reachPx = 12;

/**
 * The pointer on the paper: it looks closer, turns the picture, or presses, moves and drops at a place in the site frame.
 * `pick` is told what lies under it before the press itself.
 */
export function usePaperPointer(paper: RefObject<SVGSVGElement | null>, props: SchemePaperProps) {
  const { views, scheme, side, storey } = props;
  const picked = useRef<PickedElement | null>(null);
  const orbit = useOrbitPointer(paper, views, props.onPicture);
  const lens = useLensPointer(paper, views, props.looking, props.onCancel);
  const pick = useCallback((found: PickedElement) => {
    picked.current = found;
  }, []);
  const turns = props.isometric && props.section === null && !showsDetails(props);
  const levelMm = storeysOf(scheme)[storey]?.levelMm ?? scheme.site.groundZUm / 1000;
  const point = (event: PointerEvent<SVGSVGElement>) => pointOf(event, views, side, levelMm);
  const on = {
    onPointerDown: (event: PointerEvent<SVGSVGElement>) => {
      if (lens.down(event) || (turns && orbit.down(event))) return;
      const at = point(event);
      if (at !== null && event.button === 0) {
        event.currentTarget.setPointerCapture(event.pointerId);
        props.onPress(picked.current, at);
      }
      picked.current = null;
    },
    onPointerMove: (event: PointerEvent<SVGSVGElement>) => {
      if (lens.move(event) || orbit.move(event)) return;
      const at = point(event);
      if (at !== null) props.onMove(at);
    },
    onPointerUp: (event: PointerEvent<SVGSVGElement>) => {
      if (lens.up(event)) return;
      const orbited = orbit.up();
      if (orbited === "pressed" && picked.current !== null) props.onFocusElement(picked.current.id);
      if (orbited === null) props.onDrop();
      picked.current = null;
    },
    onPointerCancel: lens.up,
  };
  return { pick, on };
}

function pointOf(event: PointerEvent<SVGSVGElement>, views: LaidViews, side: Side, levelMm: number): Point | null {
  const box = event.currentTarget.getBoundingClientRect();
  const at = { xPx: event.clientX - box.left, yPx: event.clientY - box.top };
  const view = viewAt(views, at);
  if (view === null) return null;
  const projection = view === "plan" ? "plan" : side;
  const { transform } = views[view];
  return {
    projection,
    at: screenToSite(transform, projection, at, view === "plan" ? -levelMm : 0),
    reachMm: (reachPx * 1000) / transform.pxPerM,
    also: event.shiftKey,
  };
}
