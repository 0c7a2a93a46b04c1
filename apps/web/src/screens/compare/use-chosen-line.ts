import type { ElementChange, Pair, Scheme } from "@cornerway/schema";
import { useState } from "react";
import type { Eye } from "../../paper/use-eye.ts";
import { findView } from "./find-view.ts";
import type { NumberedLine } from "./use-clouds.ts";

/** The line of the schedule that is chosen; one that no view shows turns the eye to where it is seen. */
export function useChosenLine({
  numbered,
  eye,
  schemes,
  changes,
}: {
  numbered: readonly NumberedLine[];
  eye: Pick<Eye, "turnTo" | "cutAt">;
  schemes: Pair<Scheme>;
  changes: readonly ElementChange[];
}) {
  const [lineId, choose] = useState<string | null>(null);
  const chosen = numbered.find(({ line }) => lineId !== null && line.ids.includes(lineId)) ?? null;
  const show = (number: number) => {
    const next = numbered.find((each) => each.number === number);
    if (next === undefined) return;
    choose(next.line.ids[0] ?? null);
    if (next.anchor !== null) return;
    const view = findView(changes, schemes, next.line.ids);
    if (view !== null && "side" in view) eye.turnTo(view.side);
    if (view !== null && "storey" in view) eye.cutAt(view.storey);
  };
  const step = (by: 1 | -1) => {
    if (numbered.length === 0) return;
    const at = chosen === null ? (by === 1 ? -1 : 0) : chosen.number - 1;
    show(((at + by + numbered.length) % numbered.length) + 1);
  };
  return { number: chosen?.number ?? null, show, step, letGo: () => choose(null) };
}
