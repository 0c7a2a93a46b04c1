import {
  crossingsAt,
  elevationFaces,
  onSection,
  pathInSection,
  pathOnPicture,
  strandsOnElevation,
  type Crossing,
  type PlacedStrand,
  type RunForces,
  type SolvedStretch,
} from "@cornerway/engine";
import type { PointMm } from "@cornerway/schema";
import type { LayerPlace } from "../drawing/contract.ts";
import { project, toScreen, type ScreenPoint } from "../drawing/view-transform.ts";

/** What one view shows of a run: strands and uprights by their ways on paper, or what its cut goes through. */
export interface SeenForces {
  strands: readonly PlacedStrand[];
  /** Of views whose posts bear no strokes of their own. */
  uprights: readonly SolvedStretch[];
  crossings: readonly Crossing[];
  toPx: (at: PointMm) => ScreenPoint;
}

/** The run as a view sees it, from the same strands and stretches as every other. */
export function seenForces(forces: Pick<RunForces, "strands" | "path">, place: LayerPlace): SeenForces {
  const { transform } = place;
  const none = { strands: [], uprights: [], crossings: [] };
  switch (place.view) {
    case "elevation": {
      const toPx = (at: PointMm) => toScreen(transform, project(place.side, at));
      return { ...none, strands: strandsOnElevation(forces.strands, elevationFaces(place.scheme, place.side)), toPx };
    }
    case "plan": {
      const toPx = (at: PointMm) => toScreen(transform, project("plan", at));
      return { ...none, crossings: crossingsAt(place.cutMm, forces.strands, forces.path), toPx };
    }
    case "section": {
      const toPx = (at: PointMm) => toScreen(transform, onSection(place.model.line, at));
      return { ...none, ...pathInSection(forces, place.model), toPx };
    }
    case "picture":
      return { ...none, ...pathOnPicture(forces, place.unit, place.eye), toPx: place.toPx };
  }
}
