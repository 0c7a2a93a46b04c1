import type { PointMm } from "@cornerway/schema";
import { useLayoutEffect, useRef, type RefObject } from "react";
import { project, type Projection, type ViewTransform } from "../drawing/view-transform.ts";
import { LiftedSheet } from "./lifted-sheet.ts";
import { liftedShifts } from "./lifted-shifts.ts";
import type { SchemePaperProps } from "./paper-props.ts";

/**
 * Has what is drawn of the thing in hand where the hand has it, on elevation and plan, without drawing anything anew: what
 * goes along is taken off the paper and laid on a sheet of its own, so that the paper under it stays as it is painted; what
 * is gone meanwhile is hidden. A drawing made anew has it where it is, and nothing is lifted any longer.
 */
export function useLiftedShift(
  paper: RefObject<SVGSVGElement | null>,
  sheet: RefObject<SVGSVGElement | null>,
  { lift, scheme, views, side }: Pick<SchemePaperProps, "lift" | "scheme" | "views" | "side">,
): void {
  const lifted = useRef<ReadonlySet<SVGElement>>(new Set());
  useLayoutEffect(() => {
    const drawn = new DrawnParts(paper);
    const over = new LiftedSheet(sheet.current);
    const shift = () => {
      const carried = lift.now();
      const shifts = carried === null ? none : liftedShifts(scheme, carried.scheme);
      const now = new Set<SVGElement>();
      const layAll = (view: "elevation" | "plan", projection: Projection) => {
        for (const part of drawn.outermost(view, shifts)) {
          const by = shifts.get(idOf(part)) ?? null;
          part.dataset["lifted"] = by === null ? "gone" : "along";
          if (by !== null) over.lay(part, shiftPx(by, projection, views[view].transform));
          now.add(part);
        }
      };
      layAll("elevation", side);
      layAll("plan", "plan");
      over.keep(now);
      for (const part of lifted.current) if (!now.has(part)) delete part.dataset["lifted"];
      lifted.current = now;
    };
    shift();
    return lift.listen(shift);
  });
}

const none: ReadonlyMap<string, PointMm | null> = new Map();

/** What of each view goes along with an element, looked for once for each drawing, when it is first shifted. */
class DrawnParts {
  readonly #paper: RefObject<SVGSVGElement | null>;
  readonly #found = new Map<string, readonly SVGElement[]>();

  constructor(paper: RefObject<SVGSVGElement | null>) {
    this.#paper = paper;
  }

  /** Those that go along, but for what is drawn within another of them. */
  outermost(view: string, shifts: ReadonlyMap<string, unknown>): SVGElement[] {
    const along = [...shifts.keys()].flatMap((id) => this.#of(view, id));
    return along.filter((part) => !along.some((other) => other !== part && other.contains(part)));
  }

  /** The element, and what is lettered or outlined of it. */
  #of(view: string, elementId: string): readonly SVGElement[] {
    const key = `${view} ${elementId}`;
    const known = this.#found.get(key);
    if (known !== undefined) return known;
    const id = CSS.escape(elementId);
    const parts = `[data-view="${view}"] :is([data-element="${id}"], [data-of="${id}"])`;
    const found = [...(this.#paper.current?.querySelectorAll<SVGElement>(parts) ?? [])];
    this.#found.set(key, found);
    return found;
  }
}

const idOf = ({ dataset }: SVGElement): string => dataset["element"] ?? dataset["of"] ?? "";

function shiftPx(shift: PointMm, projection: Projection, { pxPerM }: ViewTransform): string {
  const { uMm, vMm } = project(projection, shift);
  return `translate(${(uMm * pxPerM) / 1000}px, ${(-vMm * pxPerM) / 1000}px)`;
}
