import type { Opening, Scheme } from "@cornerway/schema";
import type { FaceRect } from "../catalog/container-dimensions.ts";
import { openingRect } from "../fabric/opening-rect.ts";
import type { BuildingFrame, UnitBox } from "./building-frame.ts";
import { compartments } from "./compartments.ts";
import { exposedFaces, type ExposedFace } from "./exposed-faces.ts";
import { even, facePatch } from "./face-patch.ts";
import { areaOf } from "./uncovered.ts";
import { windDirections, type Envelope } from "./wind-shape.ts";

/**
 * The envelope of each compartment from what is drawn. Passages and walls taken out are open; doors drawn, and the
 * container's own end doors where no wall replaces them, may stand open; windows are shut, so that glass has to hold.
 * Roof hatches are shut: open ones would lower the pressure inside.
 */
export function envelopes(building: BuildingFrame, scheme: Scheme): Envelope[] {
  const exposed = exposedFaces(building);
  return compartments(building, scheme).map((units) => envelopeOf(building, scheme, units, exposed));
}

function envelopeOf(
  building: BuildingFrame,
  scheme: Scheme,
  units: readonly UnitBox[],
  all: readonly ExposedFace[],
): Envelope {
  const exposed = all.filter(({ unit }) => units.includes(unit));
  const openM2 = (parts: readonly ExposedFace[], counts: (opening: Opening) => boolean) =>
    sum(
      parts.flatMap((part) =>
        openingsOf(scheme, part)
          .filter(counts)
          .map((opening) => lapM2(building, part, openingRect(opening))),
      ),
    );
  return {
    sides: windDirections.map((side) => {
      const parts = exposed.filter((part) => part.side === side);
      return {
        side,
        grossM2: sum(parts.map(({ rect }) => areaOf(rect))) / 1e6,
        openM2: openM2(parts, ({ use }) => use === "passage" || use === "open-wall"),
        doorsM2:
          openM2(parts, ({ use }) => use === "door") + sum(parts.map((part) => endDoorsM2(building, scheme, part))),
      };
    }),
    roof: {
      grossM2: sum(exposed.filter(({ side }) => side === "up").map(({ rect }) => areaOf(rect))) / 1e6,
      openM2: openM2(
        exposed.filter(({ side }) => side === "up"),
        ({ use }) => use === "passage" || use === "open-wall",
      ),
    },
  };
}

const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0);

const openingsOf = (scheme: Scheme, { unit, face }: ExposedFace): Opening[] =>
  scheme.openings.filter((opening) => opening.containerId === unit.id && opening.face === face);

/** The doors a container comes with; an opening drawn over the door end replaces them. */
function endDoorsM2(building: BuildingFrame, scheme: Scheme, part: ExposedFace): number {
  if (part.face !== "door" || openingsOf(scheme, part).length > 0) return 0;
  return lapM2(building, part, part.unit.placed.dimensions.sheetZone("door"));
}

function lapM2(building: BuildingFrame, part: ExposedFace, hole: FaceRect): number {
  const { rect } = facePatch(building.axes, part, part.rect, even(0));
  const u = Math.min(rect.u1, hole.u1) - Math.max(rect.u0, hole.u0);
  const v = Math.min(rect.v1, hole.v1) - Math.max(rect.v0, hole.v0);
  return u > 0 && v > 0 ? (u * v) / 1e6 : 0;
}
