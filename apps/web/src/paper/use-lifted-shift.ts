import type { PointMm } from "@cornerway/schema";
import { useLayoutEffect, useRef, type RefObject } from "react";
import { project, type Projection, type ViewTransform } from "../drawing/view-transform.ts";
import { liftedShifts } from "./lifted-shifts.ts";
import type { SchemePaperProps } from "./paper-props.ts";

/**
 * Shifts what is drawn of the thing in hand to where the hand has it, on elevation and plan, without drawing anything anew;
 * what is gone meanwhile is hidden. A drawing made anew has it where it is, and nothing is shifted any longer.
 */
export function useLiftedShift(
  paper: RefObject<SVGSVGElement | null>,
  { lift, scheme, views, side }: Pick<SchemePaperProps, "lift" | "scheme" | "views" | "side">,
): void {
  const shifted = useRef<ReadonlySet<SVGElement>>(new Set());
  useLayoutEffect(() => {
    const drawn = new DrawnParts(paper);
    const shift = () => {
      const carried = lift.now();
      const shifts = carried === null ? none : liftedShifts(scheme, carried.scheme);
      const now = new Set<SVGElement>();
      const layAll = (view: "elevation" | "plan", projection: Projection) => {
        for (const part of drawn.outermost(view, shifts)) {
          lay(part, shifts.get(idOf(part)) ?? null, projection, views[view].transform);
          now.add(part);
        }
      };
      layAll("elevation", side);
      layAll("plan", "plan");
      for (const part of shifted.current) if (!now.has(part)) layBack(part);
      shifted.current = now;
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

function lay(part: SVGElement, shift: PointMm | null, projection: Projection, { pxPerM }: ViewTransform): void {
  part.dataset["lifted"] = shift === null ? "gone" : "along";
  if (shift === null) return;
  const { uMm, vMm } = project(projection, shift);
  part.style.transform = `translate(${(uMm * pxPerM) / 1000}px, ${(-vMm * pxPerM) / 1000}px)`;
}

function layBack(part: SVGElement): void {
  delete part.dataset["lifted"];
  part.style.transform = "";
}
