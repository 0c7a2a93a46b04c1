import type { Operation, PointMm, Scheme } from "@cornerway/schema";
import type { Projection } from "../drawing/view-transform.ts";
import { cutOpening } from "../tools/cut-opening.ts";
import { facePoint } from "../tools/face-point.ts";
import { newBeam } from "../tools/new-beam.ts";
import { placeUnit } from "../tools/place-unit.ts";
import { resizeOpening } from "../tools/resize-opening.ts";
import { beamEnd } from "./beam-end.ts";
import { unitAt } from "./first-unit.ts";
import type { Held } from "./held.ts";
import { moveElement, moveGroup } from "./move-element.ts";

export interface Point {
  at: PointMm;
  projection: Projection;
  reachMm: number;
  /** True while Shift is down: what is pressed is taken into the choice. */
  also?: boolean;
}

/** What is held after the pointer has moved to a place. */
export function carried(scheme: Scheme, held: Held, point: Point): Held {
  const { at, projection, reachMm } = point;
  switch (held.kind) {
    case "unit":
      return { kind: "unit", unit: unitAt(scheme, held.unit, projection, at, reachMm) };
    case "element":
      if (projection !== held.projection) return held;
      return { ...held, operations: moveElement(scheme, held.id, projection, held.from, at, reachMm, held.places) };
    case "group":
      if (projection !== held.projection) return held;
      return { ...held, operations: moveGroup(scheme, held, projection, held.from, at, reachMm) };
    case "cut": {
      const unit = scheme.containers.find(({ id }) => id === held.containerId);
      if (unit === undefined) return held;
      const to = facePoint(unit, held.face, at);
      const opening = cutOpening(scheme, unit, held.face, held.from, to, reachMm);
      return { ...held, to, operations: opening === null ? [] : [{ kind: "opening.cut", opening }] };
    }
    case "edges": {
      const opening = scheme.openings.find(({ id }) => id === held.id);
      const unit = scheme.containers.find(({ id }) => id === opening?.containerId);
      if (opening === undefined || unit === undefined) return held;
      return {
        ...held,
        operations: resizeOpening(unit, opening, held.edges, facePoint(unit, opening.face, at), reachMm),
      };
    }
    case "beam":
      return { ...held, operations: beamTo(scheme, held.from, point) };
    case "band":
      return projection === held.projection ? { ...held, to: at } : held;
    case "steps":
      return held;
  }
}

/** The beam from where it was begun to a place. */
export function beamTo(scheme: Scheme, from: PointMm | null, point: Point): Operation[] {
  const beam = from === null ? null : newBeam(scheme, from, beamEnd(scheme, point, from));
  return beam === null ? [] : [{ kind: "beam.set", beam }];
}

export function heldOperations(scheme: Scheme, held: Held | null): Operation[] {
  if (held === null) return [];
  return held.kind === "unit" ? placeUnit(scheme, held.unit) : held.operations;
}
