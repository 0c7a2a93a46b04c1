import { memo } from "react";
import { hatchFill } from "../../look/hatch.ts";
import { ink, verdictInk } from "../../look/ink.ts";
import { rectToPx } from "../paper-to-px.ts";
import { rectPath } from "../px-path.ts";
import { sameDrawn } from "../same-drawn.ts";
import type { ViewTransform } from "../view-transform.ts";
import type { HatchedPlace } from "./hatched-places.ts";

type HatchedPlacesProps = { places: readonly HatchedPlace[]; view: ViewTransform; answered: ReadonlySet<string> };

/** Verdict hatches with an edge line in their colour; at pencil weight until an engineer has answered. */
export const HatchedPlaces = memo(function HatchedPlaces({ places, view, answered }: HatchedPlacesProps) {
  return places.map((place) => {
    const screening = !answered.has(place.markId);
    const d = rectPath(rectToPx(view, place));
    return (
      <g key={place.key}>
        {place.size === "small" && place.verdict !== "not checked" && (
          <path d={d} fill={ink.paper} fillOpacity={0.85} />
        )}
        <path
          d={d}
          fill={hatchFill(place.verdict, place.size, screening ? "pencil" : "ink")}
          stroke={verdictInk[place.verdict]}
          strokeWidth={screening ? 0.75 : 1.1}
          strokeDasharray={place.verdict === "not checked" ? "3 2" : undefined}
        />
      </g>
    );
  });
}, sameDrawn);
