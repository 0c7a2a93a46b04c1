import type { Scheme } from "@cornerway/schema";
import { containerDimensions } from "../catalog/container-dimensions.ts";
import { gravity } from "../catalog/gravity.ts";
import { inOrder } from "../geometry/in-order.ts";
import { analyse } from "../load-path/analysis.ts";
import { evenPatch, type ActionCase, type ActionLoad } from "../loads/action-case.ts";
import type { AnalyticalModel } from "./analytical-model.ts";
import { buildModel, type ModelNote } from "./build-model.ts";
import { mergeBuilding } from "./merge-building.ts";

export interface SchemeModel {
  readonly model: AnalyticalModel;
  readonly notes: readonly ModelNote[];
}

/**
 * A scheme as one line model of the exchange format, N and mm, under what is drawn on it: tare at the middle of its range
 * and finishes as case D, imposed floor and roof loads as case L, unfactored. Locks at play.
 */
export function schemeModel(given: Scheme): SchemeModel {
  const scheme = inOrder(given);
  const { model, notes } = buildModel(analyse(scheme), [drawnDead(scheme), drawnImposed(scheme)], DRAWN);
  return { model: mergeBuilding(model), notes };
}

const DRAWN = { D: { D: 1 }, "D+L": { D: 1, L: 1 } };

function drawnDead(scheme: Scheme): ActionCase {
  const own = scheme.containers.map(({ id: containerId, type }): ActionLoad => {
    const { least, most } = containerDimensions(type).tareKg;
    return { kind: "own weight", containerId, weightN: ((least + most) / 2) * gravity.value };
  });
  return { id: "D", symbol: "D", loads: [...own, ...drawnOn(scheme, "finish")] };
}

function drawnImposed(scheme: Scheme): ActionCase {
  return { id: "L", symbol: "L", loads: drawnOn(scheme, "imposed") };
}

/** Floor and roof loads act on the whole face, as in the load path. */
function drawnOn({ containers, loads }: Scheme, which: Scheme["loads"][number]["case"]): ActionLoad[] {
  const typeOf = new Map(containers.map(({ id, type }) => [id, type]));
  return loads.flatMap(({ containerId, surface, case: kind, pressurePa }): ActionLoad[] => {
    const type = typeOf.get(containerId);
    if (kind !== which || type === undefined) return [];
    return [
      { kind: "on", containerId, surface, patch: evenPatch(containerDimensions(type).face(surface), pressurePa) },
    ];
  });
}
