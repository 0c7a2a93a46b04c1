import type { Container, Scheme } from "@cornerway/schema";
import { gravity } from "../catalog/gravity.ts";
import { containerDimensions } from "../catalog/container-dimensions.ts";
import { openWorking } from "../working/open-working.ts";
import type { Clause, Working } from "../working/working.ts";
import { addedSteel } from "./added-steel.ts";
import type { DeadState } from "./dead-state.ts";
import { downOf } from "./free-loads.ts";
import { tareOf } from "./tare.ts";

/** How the dead load of one unit in one state comes about: the sum of what `deadCase` puts on it, N. */
export function deadWorking(scheme: Scheme, container: Container, state: DeadState): Working {
  const tare = tareOf(container, state);
  const { lengthMm, widthMm } = containerDimensions(container.type);
  const w = openWorking(`Dead load of ${container.tag}, ${state}`, sum);
  w.let("m", tare.value, "kg", "tare", tare.certainty, tare.source);
  w.let("g", gravity.value, "m/s²", "gravity", gravity.certainty, gravity.source);
  w.let("A", (lengthMm * widthMm) / 1e6, "m²", "plan area between outer faces", "derived");
  w.let(
    "p",
    state === "bare" ? 0 : finishPa(scheme, container.id),
    "Pa",
    "finishes on floor and roof",
    "common practice",
    "as drawn",
  );
  w.let(
    "P",
    freePart(scheme, container.id, state),
    "N",
    "plant and finishes put where someone said",
    "common practice",
    "as entered",
  );
  w.let("S", state === "bare" ? 0 : weightOf(addedSteel(scheme), container.id), "N", "added steel", "derived");
  w.compute("D", "m * g + p * A + P + S", "N");
  return w.giving("D");
}

const sum: Clause = { document: "Statics", edition: "", place: "sum of weights", certainty: "derived" };

export const finishPa = (scheme: Scheme, containerId: string): number =>
  scheme.loads
    .filter((load) => load.containerId === containerId && load.case === "finish")
    .reduce((total, { pressurePa }) => total + pressurePa, 0);

export const weightOf = (items: readonly { containerId?: string; weightN: number }[], containerId: string): number =>
  items.filter((item) => item.containerId === containerId).reduce((total, { weightN }) => total + weightN, 0);

/** Nothing of it on the day a unit arrives; plant may not be there at the least. */
function freePart({ freeLoads }: Scheme, containerId: string, state: DeadState): number {
  if (state === "bare") return 0;
  return freeLoads
    .filter((load) => load.containerId === containerId)
    .filter((load) => load.case === "finish" || (load.case === "plant" && state === "most"))
    .reduce((sum, load) => sum + downOf(load), 0);
}
