import type { Scheme } from "@cornerway/schema";
import { LastMade } from "../numerics/last-made.ts";
import { openWorking } from "../working/open-working.ts";
import type { Working } from "../working/working.ts";
import type { ActionCase, ActionLoad } from "./action-case.ts";
import type { BuildingFrame } from "./building-frame.ts";
import type { DesignBasis } from "./design-basis.ts";
import { exposedFaces, type ExposedFace } from "./exposed-faces.ts";
import { even, roofPatch } from "./face-patch.ts";
import { freeLoadsOf } from "./free-loads.ts";
import { drawnPa } from "./imposed-working.ts";
import { areaOf } from "./uncovered.ts";

/** Load of people on the roofs, with the working of each unit's roof. */
export type RoofLiveLoading = { readonly action: ActionCase; readonly workings: readonly Working[] };

/**
 * What the scheme draws or the use of a deck asks for, else the code's roof live load for the exposed roof of that unit
 * (one unit is the smallest part that carries it). Roofs under another unit take none.
 */
export const roofLive = (scheme: Scheme, building: BuildingFrame, basis: DesignBasis): RoofLiveLoading =>
  last.take(building, [basis, scheme.loads, scheme.uses, scheme.freeLoads], () => loadingOf(scheme, building, basis));

const last = new LastMade<RoofLiveLoading>();

function loadingOf(scheme: Scheme, building: BuildingFrame, basis: DesignBasis): RoofLiveLoading {
  const roofs = exposedFaces(building).filter(({ side }) => side === "up");
  const units = building.boxes.filter((box) => roofs.some(({ unit }) => unit === box));
  const workings = new Map(units.map((unit) => [unit.id, roofWorking(scheme, basis, unit.id, roofs)]));
  const pressure = ({ unit }: ExposedFace) => even(workings.get(unit.id)?.result.value ?? 0);
  return {
    action: {
      id: "Lr everywhere",
      symbol: "Lr",
      loads: [
        ...roofs.map((roof): ActionLoad => ({
          kind: "on",
          containerId: roof.unit.id,
          surface: "roof",
          patch: roofPatch(building.axes, roof, roof.rect, pressure(roof)),
        })),
        ...roofLoadsOf(scheme),
      ],
    },
    workings: [...workings.values()],
  };
}

/** Imposed loads someone put on a roof. */
const roofLoadsOf = (scheme: Scheme): ActionLoad[] =>
  freeLoadsOf({ ...scheme, freeLoads: scheme.freeLoads.filter(({ surface }) => surface === "roof") }, "imposed");

function roofWorking(scheme: Scheme, basis: DesignBasis, unitId: string, roofs: readonly ExposedFace[]): Working {
  const decks = scheme.uses
    .filter((use) => use.containerId === unitId && use.surface === "roof" && use.occupancy !== "roof")
    .map(({ occupancy }) => basis.gravity.occupancy(occupancy).pressurePa);
  const areaM2 = roofs.filter(({ unit }) => unit.id === unitId).reduce((sum, { rect }) => sum + areaOf(rect), 0) / 1e6;
  const byCode = basis.gravity.roofLive(areaM2);
  const w = openWorking(`Roof live load of ${unitId}`, byCode.clause);
  w.take("L_c", byCode);
  w.let("L_d", drawnPa(scheme, unitId, "roof"), "Pa", "as drawn", "common practice", "entered in the scheme");
  w.let("L_o", Math.max(0, ...decks), "Pa", "use as a deck", byCode.clause.certainty);
  w.compute("L_r", "max(L_c, L_d, L_o)", "Pa");
  return w.giving("L_r");
}
