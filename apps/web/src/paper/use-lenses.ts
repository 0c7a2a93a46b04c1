import { useMemo, useState } from "react";
import type { Side } from "../drawing/contract.ts";
import type { ScreenPoint } from "../drawing/view-transform.ts";
import type { LaidView, LaidViews } from "./lay-views.ts";
import { broughtIntoView, magnified, moved, plainLens, plainLenses, stepped, throughLenses } from "./lens.ts";
import type { Lens, ViewName } from "./lens.ts";

/** The views as laid and as looked at: each can be magnified and moved within its own place. */
export function useLenses(laid: LaidViews | null, side: Side) {
  const [lenses, setLenses] = useState(plainLenses);
  const [last, setLast] = useState<ViewName>("elevation");
  const [seenSide, setSeenSide] = useState(side);
  if (side !== seenSide) {
    setSeenSide(side);
    setLenses({ ...lenses, elevation: plainLens });
  }
  const change = (name: ViewName, by: (lens: Lens, view: LaidView) => Lens) => {
    setLast(name);
    if (laid !== null) setLenses((all) => ({ ...all, [name]: by(all[name], laid[name]) }));
  };
  const views = useMemo(() => (laid === null ? null : throughLenses(laid, lenses)), [laid, lenses]);
  const inHand = () => focusedView() ?? last;
  return {
    lenses,
    views,
    magnify: (name: ViewName, at: ScreenPoint, by: number) =>
      change(name, (lens, view) => magnified(lens, view, at, by)),
    move: (name: ViewName, byXPx: number, byYPx: number) => change(name, (lens) => moved(lens, byXPx, byYPx)),
    step: (by: 1 | -1) => change(inHand(), (lens, view) => stepped(lens, view, by)),
    stepAside: (byXPx: number, byYPx: number) => change(inHand(), (lens) => moved(lens, byXPx, byYPx)),
    /** The view in hand as a whole again; all of them where it is whole already. */
    whole: () => setLenses((all) => (all[inHand()] === plainLens ? plainLenses : { ...all, [inHand()]: plainLens })),
    /** Brings a place of the elevation, px as now drawn, into its view. */
    bring: (at: ScreenPoint) => change("elevation", (lens, view) => broughtIntoView(lens, view, at)),
  };
}

export type LookedAt = ReturnType<typeof useLenses>;

/** The view the focus is in: by key one looks closer at that one. */
function focusedView(): ViewName | null {
  const view = document.activeElement?.closest<SVGGElement>("[data-view]")?.dataset["view"];
  return view === "elevation" || view === "plan" || view === "isometric" ? view : null;
}

/** A step aside by key, px. */
const asidePx = 80;

/** Keys by which one looks closer, farther, aside, and at the whole again. */
export const lensKeys = ({ step, stepAside, whole }: LookedAt) => ({
  "+": () => step(1),
  "Shift++": () => step(1),
  "=": () => step(1),
  "-": () => step(-1),
  "0": whole,
  "Ctrl+ArrowLeft": () => stepAside(asidePx, 0),
  "Ctrl+ArrowRight": () => stepAside(-asidePx, 0),
  "Ctrl+ArrowUp": () => stepAside(0, asidePx),
  "Ctrl+ArrowDown": () => stepAside(0, -asidePx),
});
