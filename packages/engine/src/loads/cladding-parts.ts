import type { Face, Scheme } from "@cornerway/schema";
import type { FaceRect } from "../catalog/container-dimensions.ts";
import { openingRect } from "../fabric/opening-rect.ts";
import type { BuildingFrame } from "./building-frame.ts";
import type { DesignBasis } from "./design-basis.ts";
import { exposedFaces, type ExposedFace } from "./exposed-faces.ts";
import { even, facePatch } from "./face-patch.ts";
import type { SiteHazards } from "./site-hazards.ts";
import type { CladdingPart, CladdingPressure, CladdingZone } from "./wind-pressures.ts";
import { claddingZone } from "./cladding-zone.ts";

/** Parts of the skin that carry wind by themselves. */
export type SkinPart = "wall sheet" | "jamb" | "header" | "glazing" | "roof sheet" | "underside";

export type SkinPressure = {
  readonly containerId: string;
  /** Absent for a unit that is not parallel to the building's axes. */
  readonly face?: Face;
  readonly openingId?: string;
  readonly part: SkinPart;
  readonly spanMm: number;
  readonly cladding: CladdingPart;
  readonly pressure: CladdingPressure;
};

/**
 * Component pressures of every exposed part: sheets of walls, roofs and undersides, and of each opening its jambs, its
 * header and what fills it. Effective areas are span × the width carried, at least a third of the span; each part takes
 * the worst zone its face touches.
 */
export function skinPressures(
  building: BuildingFrame,
  scheme: Scheme,
  basis: DesignBasis,
  hazards: SiteHazards,
  internalCoefficient: number,
): SkinPressure[] {
  const heightMm = building.outline.z1 - building.groundZMm;
  const { x0, x1, y0, y1 } = building.outline;
  const widths = basis.wind.claddingZones(heightMm, Math.min(x1 - x0, y1 - y0));
  return exposedFaces(building).flatMap((exposed) =>
    partsOf(building, scheme, exposed, claddingZone(building, exposed, widths)).map(
      ({ part, spanMm, widthMm, openingId, zone, surface }) => {
        const areaMm2 = spanMm * Math.max(widthMm, spanMm / 3);
        const cladding: CladdingPart = { surface, zone, effectiveAreaM2: areaMm2 / 1e6 };
        return {
          containerId: exposed.unit.id,
          ...(exposed.face === undefined ? {} : { face: exposed.face }),
          ...(openingId === undefined ? {} : { openingId }),
          part,
          spanMm,
          cladding,
          pressure: basis.wind.cladding(hazards, heightMm, internalCoefficient, cladding),
        };
      },
    ),
  );
}

type Part = {
  readonly part: SkinPart;
  readonly spanMm: number;
  readonly widthMm: number;
  readonly openingId?: string;
  readonly zone: CladdingZone;
  readonly surface: CladdingPart["surface"];
};

function partsOf(building: BuildingFrame, scheme: Scheme, exposed: ExposedFace, zone: CladdingZone): Part[] {
  const { unit, side, face } = exposed;
  const { dimensions } = unit.placed;
  if (side === "up" || side === "down") {
    const part = side === "up" ? "roof sheet" : "underside";
    const surface = side === "up" ? "roof" : "soffit";
    return [{ part, spanMm: dimensions.widthMm, widthMm: 0, zone, surface }];
  }
  const high = dimensions.sheetZone(face ?? "left").v1 - dimensions.sheetZone(face ?? "left").v0;
  const sheet: Part = { part: "wall sheet", spanMm: high, widthMm: 0, zone, surface: "wall" };
  const openings = scheme.openings.filter(
    (opening) => opening.containerId === unit.id && opening.face === face && face !== undefined,
  );
  const open = openings.filter((opening) =>
    laps(facePatch(building.axes, exposed, exposed.rect, even(0)).rect, openingRect(opening)),
  );
  return [
    sheet,
    ...open.flatMap(({ id, widthUm, heightUm }): Part[] => {
      const [wide, tall] = [widthUm / 1000, heightUm / 1000];
      const of = { openingId: id, zone, surface: "wall" as const };
      return [
        { part: "jamb", spanMm: high, widthMm: wide / 2, ...of },
        { part: "header", spanMm: wide, widthMm: tall / 2, ...of },
        { part: "glazing", spanMm: Math.min(wide, tall), widthMm: Math.max(wide, tall), ...of },
      ];
    }),
  ];
}

const laps = (a: FaceRect, b: FaceRect): boolean =>
  Math.min(a.u1, b.u1) > Math.max(a.u0, b.u0) && Math.min(a.v1, b.v1) > Math.max(a.v0, b.v0);
