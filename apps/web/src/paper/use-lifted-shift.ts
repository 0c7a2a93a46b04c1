import type { PointMm } from "@cornerway/schema";
import { useLayoutEffect, useRef, type RefObject } from "react";
import { project, type Projection, type ViewTransform } from "../drawing/view-transform.ts";
import { liftedShifts } from "./lifted-shifts.ts";
import type { SchemePaperProps } from "./paper-props.ts";

/** What of the drawing goes along with what is lifted: the elements, and what is lettered or outlined of them. */
const goesAlong = "[data-element], [data-of]";

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

/** The parts of each view by the element they are of, gathered once for each drawing, when something is first shifted. */
class DrawnParts {
  readonly #paper: RefObject<SVGSVGElement | null>;
  readonly #gathered = new Map<string, ReadonlyMap<string, SVGElement[]>>();

  constructor(paper: RefObject<SVGSVGElement | null>) {
    this.#paper = paper;
  }

  /** Those that go along, but for what is drawn within another of them. */
  outermost(view: string, shifts: ReadonlyMap<string, unknown>): SVGElement[] {
    if (shifts.size === 0) return [];
    const parts = this.#gathered.get(view) ?? this.#gather(view);
    const along = [...shifts.keys()].flatMap((id) => parts.get(id) ?? []);
    return along.filter((part) => !along.some((other) => other !== part && other.contains(part)));
  }

  #gather(view: string): ReadonlyMap<string, SVGElement[]> {
    const parts = new Map<string, SVGElement[]>();
    const drawn = this.#paper.current?.querySelectorAll<SVGElement>(`[data-view="${view}"] :is(${goesAlong})`) ?? [];
    for (const part of drawn) parts.set(idOf(part), [...(parts.get(idOf(part)) ?? []), part]);
    this.#gathered.set(view, parts);
    return parts;
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
