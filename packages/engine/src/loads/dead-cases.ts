import type { Scheme } from "@cornerway/schema";
import { containerDimensions } from "../catalog/container-dimensions.ts";
import { gravity } from "../catalog/gravity.ts";
import { evenPatch, type ActionCase, type ActionLoad } from "./action-case.ts";
import { addedSteel } from "./added-steel.ts";
import type { DeadState } from "./dead-state.ts";
import { freeLoadsOf } from "./free-loads.ts";
import { tareOf } from "./tare.ts";

/**
 * Dead load in one state. `most` takes the upper tare with finishes, plant and added steel; `least` the lower tare with
 * added steel and finishes but without plant, which may not be there yet; `bare` the lower tare alone, as units stand
 * on the day they arrive.
 */
export function deadCase(scheme: Scheme, state: DeadState): ActionCase {
  return {
    id: `D ${state}`,
    symbol: "D",
    loads: [
      ...scheme.containers.map((container): ActionLoad => ({
        kind: "own weight",
        containerId: container.id,
        weightN: tareOf(container, state).value * gravity.value,
      })),
      ...(state === "bare" ? [] : [...finishes(scheme), ...freeLoadsOf(scheme, "finish"), ...steel(scheme)]),
      ...(state === "most" ? freeLoadsOf(scheme, "plant") : []),
    ],
  };
}

function finishes(scheme: Scheme): ActionLoad[] {
  const types = new Map(scheme.containers.map(({ id, type }) => [id, type]));
  return scheme.loads.flatMap(({ containerId, surface, case: kind, pressurePa }): ActionLoad[] => {
    const type = types.get(containerId);
    if (type === undefined || kind !== "finish") return [];
    return [
      { kind: "on", containerId, surface, patch: evenPatch(containerDimensions(type).face(surface), pressurePa) },
    ];
  });
}

/** Steel that belongs to a unit loads that unit; the rest loads itself. */
const steel = (scheme: Scheme): ActionLoad[] =>
  addedSteel(scheme).map(({ elementId, containerId, at, weightN, surface }) => ({
    kind: "point",
    elementId: containerId ?? elementId,
    ...(surface !== undefined && { surface }),
    at,
    xN: 0,
    yN: 0,
    zN: -weightN,
  }));
